// A file is rewritten whole or not at all.
#include "tables/folder.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>

#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

using test::Scratch;
using test::text_of;
namespace fs = std::filesystem;

TEST(ReplaceFile, PutsTheNewTextInPlaceAndLeavesNothingBesideIt) {
  const Scratch scratch;
  const std::string file = scratch.file("a.sheet", "old");
  ASSERT_TRUE(replace_file(file, "new"));
  EXPECT_EQ(text_of(file), "new");
  EXPECT_EQ(std::distance(fs::directory_iterator(scratch.path("")), fs::directory_iterator()), 1);
}

TEST(ReplaceFile, KeepsThePermissions) {
  const Scratch scratch;
  const std::string file = scratch.file("a.sheet", "old");
  fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
  ASSERT_TRUE(replace_file(file, "new"));
  EXPECT_EQ(static_cast<int>(fs::status(file).permissions()), 0640);
}

TEST(ReplaceFile, FollowsASymbolicLink) {
  const Scratch scratch;
  const std::string file = scratch.file("a.sheet", "old"), link = scratch.path("link");
  fs::create_symlink("a.sheet", link);
  ASSERT_TRUE(replace_file(link, "new"));
  EXPECT_TRUE(fs::is_symlink(link));
  EXPECT_EQ(text_of(file), "new");
}

TEST(ReplaceFile, SaysSoWhenTheFolderIsNotThere) {
  const Scratch scratch;
  EXPECT_FALSE(replace_file(scratch.path("nowhere/a.sheet"), "new"));
}

}  // namespace
}  // namespace landdrill
