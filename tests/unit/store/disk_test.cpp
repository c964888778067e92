// What the disk and other programs refuse: read-only, locked, full. Each is said, and nothing is lost.
#include <sched.h>
#include <sys/mount.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>

#include "scene.h"
#include "tables/store/database.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
namespace fs = std::filesystem;

const Edit to_one = {"tarn-pool", "parts", "spin-360", "value", "1.0", "new catalogue"};

class Disk : public SeasonTest {
 protected:
  // Runs as a user whom permissions bind: they do not bind root.
  std::string as_ordinary_user(const std::function<std::string()>& work) const {
    return in_child([&]() -> std::string {
      if (geteuid() == 0 && (setgid(65534) != 0 || setuid(65534) != 0)) return "cannot stop being root";
      return work();
    });
  }
  void set_mode(const fs::path& path, mode_t mode) const { ASSERT_EQ(chmod(path.c_str(), mode), 0); }
  std::string try_edit() const {
    Result<Season> season = Season::open(file, Mode::write);
    if (!season) return trouble_in(season);
    return trouble_in(season->edit(to_one));
  }
};

TEST_F(Disk, AReadOnlyFileInAReadOnlyFolderIsRead) {
  season_with_set();
  const std::string before = bytes_on_disk();
  set_mode(file, 0444);
  set_mode(folder, 0555);
  EXPECT_EQ(as_ordinary_user([&] { return exported(); }), bytes_of(odd_set()));
  EXPECT_EQ(bytes_on_disk(), before);
}

TEST_F(Disk, AReadOnlyFileIsNotEdited) {
  season_with_set();
  set_mode(folder, 0777);
  set_mode(file, 0444);
  EXPECT_EQ(as_ordinary_user([&] { return try_edit(); }),
            file.string() +
                ": it is read-only, so nothing can be changed in it (allow writing to it (chmod u+w '" +
                file.string() + "'), or work on a copy)");
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(Disk, AFileInAReadOnlyFolderIsNotEdited) {
  season_with_set();
  set_mode(file, 0666);
  set_mode(folder, 0555);
  const std::string trouble = as_ordinary_user([&] { return try_edit(); });
  EXPECT_EQ(trouble.find(file.string() + ": its folder is read-only"), 0u) << trouble;
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(Disk, ANewFileInAReadOnlyFolderIsRefused) {
  set_mode(folder, 0555);
  const std::string trouble = as_ordinary_user([&] { return trouble_in(Season::open(file, Mode::create)); });
  EXPECT_EQ(trouble.find(file.string() + ": its folder is read-only, so no file can be made in it"), 0u)
      << trouble;
}

TEST_F(Disk, AFileThatMayNotBeReadIsRefused) {
  season_with_set();
  set_mode(folder, 0755);
  set_mode(file, 0000);
  const std::string trouble = as_ordinary_user([&] { return trouble_in(Season::open(file, Mode::read)); });
  EXPECT_EQ(trouble.find(file.string() + ": it cannot be opened (Permission denied)"), 0u) << trouble;
}

TEST_F(Disk, ALockedFileIsSaidToBeInUseAndEditedLater) {
  Season season = season_with_set();
  {
    store::Database other(file, store::Database::Access::write);
    store::Transaction holds_it(other, store::Transaction::Kind::write);
    EXPECT_EQ(trouble_in(season.edit(to_one)),
              file.string() +
                  ": another program is using it and keeps it locked (nothing was changed; close the other "
                  "program, or wait until it is done, and try again)");
    EXPECT_EQ(exported(), bytes_of(odd_set()));  // a writer that has not finished does not stop readers
  }
  EXPECT_EQ(trouble_in(season.edit(to_one)), "");
}

TEST_F(Disk, AFileLockedAgainstReadersIsSaidToBeInUse) {
  season_with_set();
  store::Database other(file, store::Database::Access::write);
  other.run("BEGIN EXCLUSIVE");
  EXPECT_NE(trouble_in(Season::open(file, Mode::read)).find("another program is using it"),
            std::string::npos);
  EXPECT_NE(trouble_in(Season::open(file, Mode::write)).find("another program is using it"),
            std::string::npos);
}

const char* const no_small_disk = "a small disk cannot be mounted here";

bool write_line(const char* file, const std::string& line) {
  std::ofstream out(file);
  return static_cast<bool>(out.write(line.data(), static_cast<std::streamsize>(line.size())).flush());
}

// Who is not root may mount only where she is root: in a space of her own. Without a name there she owns
// nothing.
bool become_root_of_own_space() {
  const std::string user = std::to_string(geteuid()), group = std::to_string(getegid());
  return unshare(CLONE_NEWUSER) == 0 && write_line("/proc/self/setgroups", "deny") &&
         write_line("/proc/self/uid_map", "0 " + user + " 1") &&
         write_line("/proc/self/gid_map", "0 " + group + " 1");
}

// A disk of 256 kB that only this process sees and that goes away with it.
bool mount_small_disk(const fs::path& at) {
  if (geteuid() != 0 && !become_root_of_own_space()) return false;
  if (unshare(CLONE_NEWNS) != 0) return false;
  if (mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0) return false;
  return mount("tmpfs", at.c_str(), "tmpfs", 0, "size=256k") == 0;
}

void fill_disk(const fs::path& filler) {
  std::ofstream out(filler, std::ios::binary | std::ios::app);
  const std::string block(1024, 'x');
  while (out.write(block.data(), 1024).flush()) {
  }
}

// An edit on the full disk says so and changes nothing; with space again it goes through.
std::string edit_on_a_full_disk(const fs::path& file) {
  Result<Season> season = Season::open(file, Mode::create);
  if (!season) return trouble_in(season);
  if (const auto imported = season->import_set(odd_set(), ""); !imported) return trouble_in(imported);
  fill_disk(file.parent_path() / "filler");
  std::string said = trouble_in(season->edit(to_one)) + "\n";
  if (bytes_of(season->export_set("tarn-pool").value()) != bytes_of(odd_set()))
    said += "the set has changed\n";
  said += trouble_in(season->check());
  fs::remove(file.parent_path() / "filler");
  said += trouble_in(season->edit(to_one));
  said += "then " + season->history("tarn-pool")->back().after;
  return said;
}

TEST_F(Disk, AFullDiskIsSaidAndNothingIsLost) {
  const std::string said = in_child(
      [&]() -> std::string { return mount_small_disk(folder) ? edit_on_a_full_disk(file) : no_small_disk; });
  if (said == no_small_disk) GTEST_SKIP() << no_small_disk;
  EXPECT_EQ(said, file.string() +
                      ": there is no space left on the disk (nothing was changed; free some space and try "
                      "again)\nthen 1.0");
}

// A set too large for the disk: what was there before the import is still there.
std::string import_on_a_full_disk(const fs::path& file) {
  Result<Season> season = Season::open(file, Mode::create);
  if (!season) return trouble_in(season);
  if (const auto imported = season->import_set(odd_set(), ""); !imported) return trouble_in(imported);
  TableFiles large = odd_set();
  large.name = "large";
  large.files[1].text = "code,value,source,status\n";
  for (int i = 0; i < 9000; ++i)
    large.files[1].text += "spin-" + std::to_string(i) + ",1,invented,invented\n";
  std::string said = trouble_in(season->import_set(large, ""));
  said += trouble_in(season->check());
  if (season->sets()->size() != 1) said += " the other set is there in part";
  return said;
}

TEST_F(Disk, AnImportThatDoesNotFitLeavesNothingBehind) {
  const std::string said = in_child([&]() -> std::string {
    return mount_small_disk(folder) ? import_on_a_full_disk(file) : no_small_disk;
  });
  if (said == no_small_disk) GTEST_SKIP() << no_small_disk;
  EXPECT_EQ(said, file.string() +
                      ": there is no space left on the disk (nothing was changed; free some space and try "
                      "again)");
}

}  // namespace
}  // namespace landdrill
