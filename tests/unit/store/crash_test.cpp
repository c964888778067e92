// Processes that are killed, and processes that write at the same time: what was acknowledged is there.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <random>
#include <thread>

#include "scene.h"
#include "tables/store/database.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;

class Crash : public SeasonTest {};

Edit edit_number(int number) {
  return {"tarn-pool",           "parts", "spin-360", "value", "2." + std::to_string(1000 + number),
          std::to_string(number)};
}

// 200 edits; a byte into the pipe once each has been acknowledged.
[[noreturn]] void edit_until_killed(const std::filesystem::path& file, int acknowledge) {
  Result<Season> season = Season::open(file, Mode::write);
  for (int number = 1; season && number <= 200; ++number) {
    if (!season->edit(edit_number(number))) _exit(2);
    if (write(acknowledge, "a", 1) != 1) _exit(3);
  }
  _exit(season ? 0 : 4);
}

int read_all(int from) {
  char buffer[4096];
  int bytes = 0;
  for (ssize_t size; (size = read(from, buffer, sizeof buffer)) > 0;) bytes += static_cast<int>(size);
  return bytes;
}

struct Killed {
  int acknowledged = 0;
  int status = 0;
};

// How many bytes came, at most `most` of them; fewer where the other end is closed.
int wait_for(int from, int most) {
  char byte;
  int came = 0;
  while (came < most && read(from, &byte, 1) == 1) ++came;
  return came;
}

// Killed a moment after so many edits were acknowledged, however fast or slow the disk is.
Killed kill_after(const std::filesystem::path& file, int edits, std::chrono::microseconds moment) {
  int ends[2];
  if (pipe(ends) != 0) std::abort();
  const pid_t child = fork();
  if (child == 0) edit_until_killed(file, ends[1]);
  close(ends[1]);
  Killed killed;
  killed.acknowledged = wait_for(ends[0], edits);
  std::this_thread::sleep_for(moment);
  kill(child, SIGKILL);
  killed.acknowledged += read_all(ends[0]);
  close(ends[0]);
  waitpid(child, &killed.status, 0);
  return killed;
}

std::vector<std::string> reasons_of_edits(const Season& season) {
  std::vector<std::string> reasons;
  const std::vector<EditRecord> history = season.history("tarn-pool").value();
  for (const EditRecord& record : history) {
    if (record.did == EditRecord::Did::edit) reasons.push_back(record.why);
  }
  return reasons;
}

// The history holds edits 1, 2, 3 ... up to the last acknowledged one, or one more that was on its way.
void expect_all_there(const Season& season, int acknowledged) {
  const std::vector<std::string> reasons = reasons_of_edits(season);
  const int kept = static_cast<int>(reasons.size());
  EXPECT_GE(kept, acknowledged);
  EXPECT_LE(kept, acknowledged + 1);
  for (int i = 0; i < kept; ++i) EXPECT_EQ(reasons[static_cast<std::size_t>(i)], std::to_string(i + 1));
  std::string expected = bytes_of(odd_set());
  if (kept > 0) expected = with_change(expected, "\",0.9,", "\"," + edit_number(kept).value + ",");
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool").value()), expected);
  EXPECT_EQ(trouble_in(season.check()), "");
}

TEST_F(Crash, EveryAcknowledgedEditOutlivesAKill) {
  std::mt19937 random(std::random_device{}());
  std::uniform_int_distribution<int> edits(0, 100), moment(0, 3'000);
  int in_the_middle = 0;
  for (int round = 0; round < 20; ++round) {
    std::filesystem::remove(file);
    season_with_set();
    const Killed killed =
        kill_after(file, round == 0 ? 0 : edits(random), std::chrono::microseconds(moment(random)));
    const bool finished = WIFEXITED(killed.status) && WEXITSTATUS(killed.status) == 0;
    ASSERT_TRUE(finished || WIFSIGNALED(killed.status)) << killed.status;
    in_the_middle += WIFSIGNALED(killed.status) && killed.acknowledged > 0;
    expect_all_there(open(round % 2 == 0 ? Mode::read : Mode::write), killed.acknowledged);
    if (HasFailure()) break;
  }
  EXPECT_GT(in_the_middle, 0) << "no process was killed in the middle of its edits, so nothing was tried";
}

// The moment at which a file is half-written: the pages are on the disk, the journal still there.
[[noreturn]] void die_in_the_middle_of_writing(const std::filesystem::path& file) {
  store::Database db(file, store::Database::Access::write);
  db.run("PRAGMA cache_size = 1; PRAGMA cache_spill = 1; BEGIN IMMEDIATE");
  db.run("UPDATE cell SET raw = raw || 'half-written'; UPDATE change SET why = 'half-written'");
  raise(SIGKILL);
  _exit(0);
}

class HalfWritten : public SeasonTest {
 protected:
  HalfWritten() {
    TableFiles large = odd_set();
    for (int i = 0; i < 3000; ++i) {
      large.files[1].text +=
          (i == 0 ? "\n" : "") + ("spin-x" + std::to_string(i)) + ",,,1,,invented,invented\n";
    }
    Season season = open(Mode::create);
    EXPECT_EQ(trouble_in(season.import_set(large, "")), "");
    before = bytes_of(large);
    const std::string whole = bytes_on_disk();
    in_child([&]() -> std::string { die_in_the_middle_of_writing(file); });
    EXPECT_TRUE(std::filesystem::exists(file.string() + "-journal"));
    EXPECT_NE(bytes_on_disk(), whole) << "nothing was half-written, so nothing is tried";
  }
  std::string before;
};

TEST_F(HalfWritten, TheNextWriterTakesItBack) {
  Season season = open(Mode::write);
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool").value()), before);
  EXPECT_EQ(trouble_in(season.check()), "");
  EXPECT_FALSE(std::filesystem::exists(file.string() + "-journal"));
}

TEST_F(HalfWritten, TheNextReaderTakesItBack) {
  EXPECT_EQ(exported(), before);
  EXPECT_FALSE(std::filesystem::exists(file.string() + "-journal"));
}

TEST_F(HalfWritten, AReaderWhoMayNotWriteSaysSo) {
  std::filesystem::permissions(folder, std::filesystem::perms(0555));
  std::filesystem::permissions(file, std::filesystem::perms(0444));
  std::filesystem::permissions(file.string() + "-journal", std::filesystem::perms(0444));
  const std::string said = in_child([&]() -> std::string {
    if (geteuid() == 0 && setuid(65534) != 0) return "cannot stop being root";
    return trouble_in(Season::open(file, Mode::read));
  });
  EXPECT_EQ(said.find(file.string() + ": a change was interrupted half-way"), 0u) << said;
}

constexpr int edits_each = 40;

// Everyone edits a part of their own and, in turn, one that all share.
std::string edit_alongside(const std::filesystem::path& file, const std::string& part,
                           const std::string& who) {
  Result<Season> season = Season::open(file, Mode::write);
  if (!season) return trouble_in(season);
  for (int i = 1; i <= edits_each; ++i) {
    const std::string value = who + "." + std::to_string(100 + i);
    const Edit wish = {"tarn-pool", "parts", i % 2 == 0 ? "join-foot" : part, "value", value, who};
    const Result<void> edit = season->edit(wish);
    if (!edit) return trouble_in(edit);
  }
  return {};
}

TEST_F(Crash, TwoProcessesAtOnceLoseNoEdit) {
  season_with_set();
  std::string first, second;
  std::thread one([&] { first = in_child([&] { return edit_alongside(file, "spin-360", "3"); }); });
  std::thread two([&] { second = in_child([&] { return edit_alongside(file, "spin-720", "4"); }); });
  one.join();
  two.join();
  EXPECT_EQ(first, "");
  EXPECT_EQ(second, "");
  Season season = open(Mode::write);
  std::string last = "  0.2";
  const std::vector<EditRecord> history = season.history("tarn-pool").value();
  for (const EditRecord& record : history) {
    if (record.did != EditRecord::Did::edit || record.key != "join-foot") continue;
    EXPECT_EQ(record.before, last);  // each saw what the other had just written
    last = record.after;
  }
  EXPECT_EQ(reasons_of_edits(season).size(), 2u * edits_each);
  std::string expected = with_change(bytes_of(odd_set()), "\",0.9,", "\",3.139,");
  expected = with_change(expected, "\"1.5\"", "4.139");
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool").value()), with_change(expected, "  0.2", last));
  for (int i = 0; i < 2 * edits_each; ++i) ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

std::string make_tables_slowly(const std::filesystem::path& file, const std::filesystem::path& begun) {
  store::Database db(file, store::Database::Access::create);
  db.run("BEGIN IMMEDIATE");
  std::filesystem::create_directory(begun);
  std::this_thread::sleep_for(std::chrono::milliseconds(300));
  for (const char* part : {"/schema.sql", "/book.sql", "/migrate_3_to_4.sql", "/migrate_4_to_5.sql"})
    db.run(text_of(std::string(STORE_SOURCE) + part).c_str());
  db.run("COMMIT");
  return {};
}

// Whoever comes second sees an empty file and waits for its turn; by then the tables have been made.
TEST_F(Crash, TwoProcessesMakeOneFile) {
  const std::filesystem::path begun = folder / "begun";
  std::string said = "nothing";
  std::thread first([&] { said = in_child([&] { return make_tables_slowly(file, begun); }); });
  while (!std::filesystem::exists(begun)) std::this_thread::sleep_for(std::chrono::milliseconds(1));
  EXPECT_EQ(trouble_in(Season::open(file, Mode::create)), "");
  first.join();
  EXPECT_EQ(said, "");
  EXPECT_EQ(trouble_in(open(Mode::write).import_set(odd_set(), "")), "");
}

}  // namespace
}  // namespace landdrill
