// Names of trainees: what is taken for one, and which are the same.
#include <gtest/gtest.h>

#include "tables/marks_list.h"

namespace landdrill {
namespace {

std::string read(std::string_view typed) {
  const auto name = trainee_name(typed);
  return name ? *name : "found " + name.error().found + "; expected " + name.error().expected;
}

TEST(TraineeName, IsKeptWithoutBlanksToSpare) {
  EXPECT_EQ(read("Robin"), "Robin");
  EXPECT_EQ(read("  Robin \t Reed\xC2\xA0 "), "Robin Reed");
  EXPECT_EQ(read("Zo\xC3\xAB van der Meer"), "Zo\xC3\xAB van der Meer");
}

TEST(TraineeName, IsNothingThatATerminalWouldObey) {
  const std::string control =
      "found a name with a control character in it; expected a name on one line, such as Robin";
  EXPECT_EQ(read("Ro\x1b[2Jbin"), control);
  EXPECT_EQ(read("Ro\nbin"), control);
  EXPECT_EQ(read("Robin\x7F"), control);
  EXPECT_EQ(read("Ro\xC2\x9B"
                 "bin"),
            control);
  EXPECT_EQ(read("Ro\xFF"),
            "found a name that is not UTF-8 text; expected a name on one line, such as Robin");
  EXPECT_EQ(read(std::string_view("Ro\0bin", 6)),
            "found a name that is not UTF-8 text; expected a name on one line, such as Robin");
}

TEST(TraineeName, IsNeitherEmptyNorWithoutEnd) {
  EXPECT_EQ(read(""), "found an empty name; expected a name on one line, such as Robin");
  EXPECT_EQ(read(" \t "), "found an empty name; expected a name on one line, such as Robin");
  std::string long_name;
  for (int i = 0; i < 80; ++i) long_name += "\xC3\xAB";
  EXPECT_EQ(read(long_name), long_name);
  EXPECT_EQ(read(long_name + "e"), "found a name of 81 characters; expected at most 80");
}

TEST(TraineeName, IsTheSameInAnyCase) {
  EXPECT_TRUE(same_trainee("Robin", "robin"));
  EXPECT_TRUE(same_trainee("\xC3\x89lise", "\xC3\xA9LISE"));
  EXPECT_FALSE(same_trainee("Elise", "\xC3\xA9lise"));
  EXPECT_FALSE(same_trainee("Robin", "Robina"));
  EXPECT_FALSE(same_trainee("Robin", ""));
  EXPECT_FALSE(same_trainee("\xFF", "\xFE"));
}

}  // namespace
}  // namespace landdrill
