#include <gtest/gtest.h>

#include "grammar/print.h"

namespace landdrill {
namespace {

TEST(Tidy, PutsWordsIntoColumnsAndKeepsComments) {
  EXPECT_EQ(tidy({"a", "routine   \"Reeds\"   # ours\nevent open\n\n\n\nvalues pond\n"}).text,
            "routine \"Reeds\"  # ours\nevent    open\n\nvalues   pond\n");
}

TEST(Tidy, LeavesWhatIsTidyAsItIs) {
  const std::string once = tidy({"a", "routine \"Reeds\"\nelement 1   hybrid\nparts spin-a,hold x2\n"}).text;
  EXPECT_NE(once, "");
  EXPECT_EQ(tidy({"a", once}).text, once);
}

TEST(Tidy, GivesNoTextOfASheetWithAMistakeButSaysIt) {
  const Tidied sheet = tidy({"a", "routine \"Reeds\"\nelement one hybrid\n"});
  EXPECT_EQ(sheet.text, "");
  EXPECT_EQ(sheet.messages.errors(), 1u);
}

}  // namespace
}  // namespace landdrill
