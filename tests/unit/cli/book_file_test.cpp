#include "engine/cli/book_file.h"

#include <gtest/gtest.h>

namespace landdrill::cli {
namespace {

TEST(ShellQuoted, IsPlainWhereItCanBe) {
  EXPECT_EQ(shell_quoted("club.season"), "club.season");
  EXPECT_EQ(shell_quoted("Tarn Open"), "'Tarn Open'");
  EXPECT_EQ(shell_quoted("Robin's"), "'Robin'\\''s'");
  EXPECT_EQ(shell_quoted(""), "''");
}

}  // namespace
}  // namespace landdrill::cli
