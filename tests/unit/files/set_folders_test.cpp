// Value sets from folders, each read once.
#include <gtest/gtest.h>

#include "engine/files/value_sets.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;

void copy_set(const std::string& folder) {
  fs::copy(fs::path(SHIPPED_SETS) / "kingfisher-2026", folder, fs::copy_options::recursive);
}

TEST(SetFolders, ReadASetOnceForSheetsOfOneFolder) {
  const test::Scratch scratch;
  copy_set(scratch.path("near-2026"));
  SetFolders folders({});
  EXPECT_EQ(folders.last_of_sheet("near-2026", scratch.path("a.sheet")), nullptr);
  const auto first = folders.of_sheet("near-2026", scratch.path("a.sheet"));
  ASSERT_TRUE(first && (*first)->loaded.set);
  EXPECT_EQ(*folders.of_sheet("near-2026", scratch.path("b.sheet")), *first);
  EXPECT_EQ(folders.last_of_sheet("near-2026", scratch.path("c.sheet")), *first);
  EXPECT_EQ(folders.last_of_sheet("near-2026", "elsewhere/c.sheet"), nullptr);
  EXPECT_EQ(*folders.of_path(scratch.path("near-2026")), *first);
}

TEST(SetFolders, NameWhatCanBeFoundBesideASheet) {
  const test::Scratch scratch;
  copy_set(scratch.path("near-2026"));
  SetFolders folders({});
  const std::vector<std::string>& names = folders.names(scratch.path("a.sheet"));
  EXPECT_EQ(std::count(names.begin(), names.end(), "near-2026"), 1);
  EXPECT_FALSE(folders.of_sheet("far-2026", scratch.path("a.sheet")));
}

TEST(WholePath, IsTheSameForEveryWayToWriteAFolder) {
  const std::string here = fs::current_path().string();
  for (const char* written : {"sets", "sets/", "./sets", "x/../sets/"})
    EXPECT_EQ(whole_path(written), here + "/sets") << written;
  EXPECT_EQ(whole_path("."), here);
}

}  // namespace
}  // namespace landdrill
