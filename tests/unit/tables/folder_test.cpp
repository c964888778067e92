// Value sets on disk: where they are found, and that they are read and written whole or not at all.
#include "tables/folder.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>

#include "kit.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;
using test::bytes_of;
using test::put_bytes;
using test::ScratchFolder;

void make_set(const fs::path& folder, std::string_view title = "A set") {
  put_bytes(folder / "set.csv", "title,source,status\n" + std::string(title) + ",x,invented\n");
}

fs::path found(std::string_view name, const Search& search) {
  const auto place = find_set(name, search);
  return place ? place->folder : fs::path("none");
}

TEST(FindSet, LooksWhereTheUserTold) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "club");
  EXPECT_EQ(found("club", {{scratch.path()}, {}}), scratch.path() / "club");
  EXPECT_EQ(found("club", {{scratch.path() / "club"}, {}}), scratch.path() / "club");
  EXPECT_EQ(find_set("club", {{scratch.path() / "club"}, {}})->name, "club");
}

TEST(FindSet, TakesAToldFolderWithTablesUnderAnotherName) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "copy");
  make_set(scratch.path() / "shelf/club");
  EXPECT_EQ(found("club", {{scratch.path() / "copy"}, {}}), scratch.path() / "copy");
  EXPECT_EQ(found("club", {{scratch.path() / "copy", scratch.path() / "shelf"}, {}}),
            scratch.path() / "shelf/club");
}

TEST(FindSet, LooksBesideTheSheet) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "values/club");
  EXPECT_EQ(found("club", {{}, {scratch.path()}}), scratch.path() / "values/club");
  make_set(scratch.path() / "club");
  EXPECT_EQ(found("club", {{}, {scratch.path()}}), scratch.path() / "club");
}

TEST(FindSet, LooksInTheFoldersOfTheEnvironment) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "one/club");
  make_set(scratch.path() / "two/other");
  ::setenv("LANDDRILL_VALUES",
           ((scratch.path() / "one").string() + ":" + (scratch.path() / "two").string()).c_str(), 1);
  EXPECT_EQ(found("club", {}), scratch.path() / "one/club");
  EXPECT_EQ(found("other", {}), scratch.path() / "two/other");
  ::unsetenv("LANDDRILL_VALUES");
  EXPECT_EQ(found("other", {}), "none");
}

TEST(FindSet, LooksAmongTheUsersDataBehindTheEnvironmentAndBeforeTheShippedSets) {
  const ScratchFolder scratch;
  const std::string home = scratch.path().string();
  make_set(scratch.path() / ".local/share/landdrill/values/kingfisher-2026");
  make_set(scratch.path() / "data/landdrill/values/club");
  ::setenv("HOME", home.c_str(), 1);
  ::unsetenv("XDG_DATA_HOME");
  EXPECT_EQ(found("kingfisher-2026", {}), scratch.path() / ".local/share/landdrill/values/kingfisher-2026");
  ::setenv("XDG_DATA_HOME", (home + "/data").c_str(), 1);
  EXPECT_EQ(found("club", {}), scratch.path() / "data/landdrill/values/club");
  EXPECT_EQ(found("kingfisher-2026", {}), fs::canonical(SHIPPED_SETS) / "kingfisher-2026");
  ::setenv("XDG_DATA_HOME", "data", 1);  // the specification has it ignored
  EXPECT_EQ(found("club", {}), "none");
  ::unsetenv("XDG_DATA_HOME");
}

TEST(FindSet, TellsByWhichRuleASetWasFound) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "club");
  EXPECT_EQ(find_set("club", {{scratch.path()}, {}})->from, SetFrom::told);
  EXPECT_EQ(find_set("club", {{}, {scratch.path()}})->from, SetFrom::beside);
  EXPECT_EQ(find_set("kingfisher-2026", {})->from, SetFrom::program);
  ::setenv("LANDDRILL_VALUES", scratch.path().c_str(), 1);
  ::setenv("XDG_DATA_HOME", "/data", 1);
  EXPECT_EQ(find_set("club", {})->from, SetFrom::environment);
  std::vector<SetFrom> order;
  for (const SearchedFolder& one : searched_folders({{"told"}, {"beside"}})) order.push_back(one.from);
  using enum SetFrom;
  EXPECT_EQ(order, (std::vector{told, beside, beside, environment, user, program}));
  ::unsetenv("LANDDRILL_VALUES");
  ::unsetenv("XDG_DATA_HOME");
}

TEST(FindSet, TellsOfFurtherSetsOfTheSameNameButNotOfTheSameFolderTwice) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "kingfisher-2026");
  fs::create_directory_symlink(scratch.path(), scratch.path() / "values");
  const auto place = find_set("kingfisher-2026", {{}, {scratch.path()}});
  ASSERT_TRUE(place);
  EXPECT_EQ(place->folder, scratch.path() / "kingfisher-2026");
  EXPECT_EQ(place->hidden, std::vector{fs::canonical(SHIPPED_SETS) / "kingfisher-2026"});
}

TEST(FindSet, FindsTheShippedSetsButPrefersTheCoachsOwn) {
  EXPECT_EQ(found("kingfisher-2026", {}), fs::canonical(SHIPPED_SETS) / "kingfisher-2026");
  const ScratchFolder scratch;
  make_set(scratch.path() / "kingfisher-2026");
  EXPECT_EQ(found("kingfisher-2026", {{}, {scratch.path()}}), scratch.path() / "kingfisher-2026");
}

TEST(FindSet, FollowsAPathButNeverANameOutOfItsFolder) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "sets/club");
  fs::create_directories(scratch.path() / "sheets");
  EXPECT_EQ(found((scratch.path() / "sets/club").string(), {}), scratch.path() / "sets/club");
  EXPECT_EQ(fs::canonical(found("../sets/club", {{}, {scratch.path() / "sheets"}})),
            scratch.path() / "sets/club");
  EXPECT_EQ(find_set("../sets/club/", {{}, {scratch.path() / "sheets"}})->name, "club");
  EXPECT_EQ(found("../sets", {{}, {scratch.path() / "sheets"}}), "none");
  // Told folders are searched for names only.
  EXPECT_EQ(found("../club", {{scratch.path() / "sets/club"}, {}}), "none");
  EXPECT_EQ(found("..", {{scratch.path() / "sets/club"}, {}}), "none");
}

TEST(FindSet, NamesTheNearestAndWhereItLooked) {
  const ScratchFolder scratch;
  const auto place = find_set("kingfsher-2026", {{scratch.path()}, {}});
  ASSERT_FALSE(place);
  const std::string message = to_string(place.error());
  EXPECT_NE(message.find("the value set \"kingfsher-2026\""), std::string::npos) << message;
  EXPECT_NE(message.find("hint: the nearest is kingfisher-2026"), std::string::npos) << message;
  EXPECT_NE(message.find(scratch.path().string()), std::string::npos) << message;
  EXPECT_FALSE(find_set("", {}));
}

TEST(AllSets, NamesEachSetOnceWithTheFirstPlace) {
  const ScratchFolder scratch;
  make_set(scratch.path() / "b");
  make_set(scratch.path() / "a");
  make_set(scratch.path() / "kingfisher-2026");
  fs::create_directories(scratch.path() / "no-set");
  const auto sets = all_sets({{scratch.path()}, {}});
  ASSERT_GE(sets.size(), 4u);
  EXPECT_EQ(sets[0].name, "a");
  EXPECT_EQ(sets[1].name, "b");
  EXPECT_EQ(sets[2].folder, scratch.path() / "kingfisher-2026");
  EXPECT_EQ(std::count_if(sets.begin(), sets.end(),
                          [](const SetPlace& set) { return set.name == "kingfisher-2026"; }),
            1);
  EXPECT_EQ(sets[2].hidden, std::vector{fs::canonical(SHIPPED_SETS) / "kingfisher-2026"});
}

TEST(ReadFolder, ReadsEveryTableByteForByte) {
  const auto files = read_folder(BAD_TABLES "/base");
  ASSERT_TRUE(files);
  EXPECT_EQ(files->name, "base");
  EXPECT_EQ(files->place, BAD_TABLES "/base/");
  EXPECT_EQ(files->files.size(), 13u);
  EXPECT_EQ(test::text_of(*files, "sync.csv"), bytes_of(BAD_TABLES "/base/sync.csv"));
}

TEST(ReadFolder, SaysWhatTheWorldRefuses) {
  const ScratchFolder scratch;
  const auto trouble = [](const fs::path& folder) {
    const auto files = read_folder(folder);
    return files ? "none" : to_string(files.error());
  };
  const std::string here = scratch.path().string();
  EXPECT_EQ(trouble(scratch.path() / "gone"), here + "/gone: there is no such folder\n");
  EXPECT_EQ(trouble(scratch.path()),
            here +
                ": there is no table in it\n"
                "  hint: a value set is a folder with set.csv, events.csv, panels.csv ...\n");
  fs::create_directories(scratch.path() / "a/set.csv");
  EXPECT_EQ(trouble(scratch.path() / "a"), here + "/a/set.csv: it is not a file with text\n");
  fs::create_directories(scratch.path() / "b");
  ASSERT_EQ(::mkfifo((scratch.path() / "b/set.csv").c_str(), 0600), 0);
  EXPECT_EQ(trouble(scratch.path() / "b"), here + "/b/set.csv: it is not a file with text\n");
  make_set(scratch.path() / "c");
  fs::resize_file(scratch.path() / "c/set.csv", 64 * 1024 * 1024 + 1);
  EXPECT_EQ(trouble(scratch.path() / "c"),
            here + "/c/set.csv: it is larger than 64 MB, and no table of a value set is\n");
  fs::create_directories(scratch.path() / "d");
  fs::create_symlink("nowhere", scratch.path() / "d/set.csv");
  EXPECT_EQ(trouble(scratch.path() / "d"), here + "/d/set.csv: No such file or directory\n");
}

TEST(WriteFolder, WritesOnlyTheFilesThatDiffer) {
  const ScratchFolder scratch;
  const fs::path folder = scratch.path() / "new/club";
  TableFiles files{"club", "", {{"set.csv", "a"}, {"parts.csv", "b"}}};
  ASSERT_TRUE(write_folder(files, folder));
  EXPECT_EQ(bytes_of(folder / "parts.csv"), "b");

  const auto long_ago = fs::file_time_type::clock::now() - std::chrono::hours(24);
  fs::last_write_time(folder / "set.csv", long_ago);
  fs::last_write_time(folder / "parts.csv", long_ago);
  fs::permissions(folder / "parts.csv", fs::perms(0640));
  files.files[1].text = "c";
  ASSERT_TRUE(write_folder(files, folder));
  EXPECT_EQ(bytes_of(folder / "parts.csv"), "c");
  EXPECT_EQ(fs::last_write_time(folder / "set.csv"), long_ago);
  EXPECT_NE(fs::last_write_time(folder / "parts.csv"), long_ago);
  EXPECT_EQ(fs::status(folder / "parts.csv").permissions(), fs::perms(0640));
  EXPECT_EQ(std::distance(fs::directory_iterator(folder), fs::directory_iterator()), 2);
}

TEST(WriteFolder, LeavesTheOldTextWhenItCannotWrite) {
  const ScratchFolder scratch;
  put_bytes(scratch.path() / "file", "in the way");
  const auto no_folder = write_folder({"club", "", {{"set.csv", "a"}}}, scratch.path() / "file");
  ASSERT_FALSE(no_folder);
  EXPECT_EQ(bytes_of(scratch.path() / "file"), "in the way");

  fs::create_directories(scratch.path() / "club/set.csv");
  const auto no_file = write_folder({"club", "", {{"set.csv", "a"}}}, scratch.path() / "club");
  ASSERT_FALSE(no_file);
  EXPECT_EQ(no_file.error().what, (scratch.path() / "club/set.csv").string());
  EXPECT_EQ(std::distance(fs::directory_iterator(scratch.path() / "club"), fs::directory_iterator()), 1);
}

TEST(WriteFolder, RefusesNamesThatLeadOutOfTheFolder) {
  const ScratchFolder scratch;
  for (const char* name : {"../set.csv", "/tmp/set.csv", "a/set.csv", "", "..", "."}) {
    EXPECT_FALSE(write_folder({"club", "", {{name, "a"}}}, scratch.path() / "club")) << name;
  }
  EXPECT_FALSE(fs::exists(scratch.path() / "set.csv"));
}

}  // namespace
}  // namespace landdrill
