#include "scene.h"

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace landdrill {

TableFiles odd_set() {
  return {
      "tarn-pool",
      "",
      {{"set.csv",
        "\xEF\xBB\xBFtitle;edition;note;source;status\r\n"
        "Tarn Pool trial;2026;\"for tests; invented\";invented for a test;invented\r\n"},
       {"parts.csv",
        "code,family,title,value,seen,source,status\n"
        "spin-360,,\"Spin, 360\",0.9,\"said \"\"yes\"\"\",invented for a test,invented\n"
        "spin-720,,Spin 720,\"1.5\",,invented for a test,invented\n"
        "\n"
        "join-foot,,,  0.2,, invented for a test ,invented"},
       {"kinds.csv",
        "code,title,formula,base,source,status\n"
        "hybrid,Hybrid,base + sum(parts),0.5,invented for a test,invented\n"},
       {"events.csv",
        "code,title,least_swimmers,most_swimmers,seconds,tolerance,source,status\n"
        "solo-free,Solo,1,1,120,5,invented for a test,invented\n"},
       {"panels.csv",
        "event,aspect,kind,title,per,judges,drop_high,drop_low,combine,step,least,most,use,weight,places,"
        "rounding,"
        "missing,missing_step,source,status\n"
        "solo-free,execution,,Execution,element,5,1,1,mean,0.25,0,10,times-difficulty,1,4,half-up,refuse,,"
        "invented for a test,invented\n"
        "solo-free,execution,hybrid,Execution,element,5,1,1,mean,0.1,0,10,times-difficulty,1,4,half-up,"
        "refuse,,"
        "invented for a test,invented\n"}}};
}

std::string bytes_of(const TableFiles& files) {
  std::string bytes;
  for (const TableFile& file : files.files) bytes += "[" + file.file + "]\n" + file.text + "\n";
  return bytes;
}

std::string with_change(std::string bytes, std::string_view before, std::string_view after) {
  const std::size_t at = bytes.find(before);
  EXPECT_NE(at, std::string::npos) << before;
  return at == std::string::npos ? bytes : bytes.replace(at, before.size(), after);
}

std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// A disk in memory where there is one: thousands of edits that each wait for the disk would take minutes. A
// killed process is no power cut; what it wrote stays in memory as it would on a disk.
static std::filesystem::path quick_disk() {
  const std::filesystem::path in_memory = "/dev/shm";
  return access(in_memory.c_str(), W_OK) == 0 ? in_memory : std::filesystem::temp_directory_path();
}

SeasonTest::SeasonTest() {
  std::string pattern = (quick_disk() / "season-XXXXXX").string();
  if (mkdtemp(pattern.data()) == nullptr) std::abort();
  folder = pattern;
  file = folder / "club.season";
}

SeasonTest::~SeasonTest() {
  std::error_code ignored;
  std::filesystem::permissions(folder, std::filesystem::perms::owner_all, ignored);
  std::filesystem::remove_all(folder, ignored);
}

Season SeasonTest::open(Season::Mode mode) const {
  Result<Season> season = Season::open(file, mode);
  if (!season) ADD_FAILURE() << trouble_in(season);
  return std::move(season).value();
}

Season SeasonTest::season_with_set() const {
  Season season = open(Season::Mode::create);
  EXPECT_EQ(trouble_in(season.import_set(odd_set(), "first import")), "");
  return season;
}

std::string SeasonTest::exported() const {
  const Result<TableFiles> files = open(Season::Mode::read).export_set("tarn-pool");
  return files ? bytes_of(*files) : trouble_in(files);
}

std::string SeasonTest::bytes_on_disk() const {
  return text_of(file);
}

void SeasonTest::write_file(std::string_view bytes) const {
  std::ofstream(file, std::ios::binary | std::ios::trunc)
      .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

std::string in_child(const std::function<std::string()>& work) {
  int ends[2];
  if (pipe(ends) != 0) return "no pipe";
  const pid_t child = fork();
  if (child == 0) {
    const std::string said = work();
    const bool whole = write(ends[1], said.data(), said.size()) == static_cast<ssize_t>(said.size());
    _exit(whole ? 0 : 1);
  }
  close(ends[1]);
  std::string said;
  char buffer[4096];
  for (ssize_t size; (size = read(ends[0], buffer, sizeof buffer)) > 0;)
    said.append(buffer, static_cast<std::size_t>(size));
  close(ends[0]);
  int status = 0;
  waitpid(child, &status, 0);
  return status == 0 ? said : said + " [the child ended with status " + std::to_string(status) + "]";
}

}  // namespace landdrill
