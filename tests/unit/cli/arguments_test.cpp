// What a command line means, and what is said when it means nothing.
#include <gtest/gtest.h>

#include "engine/cli/command_table.h"

namespace landdrill::cli {
namespace {

const Command& command(const std::vector<std::string>& words) {
  return *find_command(words).command;
}

Arguments read(const std::string& name, const std::vector<std::string>& words) {
  return read_arguments(command({name}), words);
}

TEST(Arguments, TakeOptionsBeforeAndAfterOperands) {
  const Arguments read_back = read("score", {"--brief", "a.sheet", "--format", "json", "b.sheet"});
  EXPECT_EQ(read_back.mistake, "");
  EXPECT_TRUE(read_back.given.has("--brief"));
  EXPECT_EQ(read_back.given.value("--format"), "json");
  EXPECT_EQ(read_back.given.operands, (std::vector<std::string>{"a.sheet", "b.sheet"}));
}

TEST(Arguments, TakeAValueAfterAnEqualsSign) {
  EXPECT_EQ(read("score", {"--format=csv", "a"}).given.value("--format"), "csv");
  EXPECT_EQ(read("score", {"--option=2=safer", "a"}).given.values("--option"),
            (std::vector<std::string>{"2=safer"}));
}

TEST(Arguments, KeepEveryValueOfARepeatedOptionInOrderAndTheLastOfAnyOther) {
  EXPECT_EQ(read("score", {"a", "--option", "1=x", "--option", "2=y"}).given.values("--option"),
            (std::vector<std::string>{"1=x", "2=y"}));
  EXPECT_EQ(read("score", {"a", "--format", "csv", "--format", "json"}).given.value("--format"), "json");
}

TEST(Arguments, TakeAnOptionsValueOnlyOnce) {
  EXPECT_EQ(read("score", {"--option", "1=x", "a"}).given.operands, (std::vector<std::string>{"a"}));
}

TEST(Arguments, TakeAHyphenAsAnOperandAndEverythingAfterTwo) {
  EXPECT_EQ(read("score", {"-"}).given.operands, (std::vector<std::string>{"-"}));
  EXPECT_EQ(read("score", {"--", "--brief"}).given.operands, (std::vector<std::string>{"--brief"}));
  EXPECT_FALSE(read("score", {"--", "--brief"}).given.has("--brief"));
}

TEST(Arguments, TakeNegativeNumbersAndBracketsAsOperands) {
  const Command& edit = command({"values", "edit"});
  EXPECT_EQ(
      read_arguments(edit, std::vector<std::string>{"s", "parts", "r", "value", "-1"}).given.operands.back(),
      "-1");
  EXPECT_EQ(read("score", {"[a,b]"}).given.operands, (std::vector<std::string>{"[a,b]"}));
}

TEST(Arguments, GiveTheOtherwiseOfAnOptionThatIsNotThere) {
  EXPECT_EQ(read("score", {"a"}).given.value("--runs", "latest"), "latest");
  EXPECT_FALSE(read("score", {"a"}).given.has("--brief"));
}

TEST(Arguments, UnderstandTheOtherSpellingOfColour) {
  EXPECT_EQ(read("score", {"a", "--color", "never"}).given.value("--colour"), "never");
}

TEST(Arguments, NameTheNearestOptionForOneThatIsUnknown) {
  EXPECT_EQ(read("score", {"a", "--formt", "json"}).mistake,
            "found --formt; expected an option of `landdrill score`\n  hint: the nearest is --format");
  EXPECT_EQ(
      read("score", {"a", "--write"}).mistake,
      "found --write; expected an option of `landdrill score`\n  hint: --write belongs to `landdrill tidy`");
}

TEST(Arguments, NameTheChoicesOfAnOption) {
  EXPECT_EQ(read("score", {"a", "--format", "xml"}).mistake,
            "found --format \"xml\"; expected text, json or csv");
}

TEST(Arguments, CountOperands) {
  EXPECT_NE(read("score", {}).mistake.find("FILE is missing"), std::string::npos);
  const Command& copy = command({"values", "copy"});
  EXPECT_NE(read_arguments(copy, std::vector<std::string>{"a", "b", "c"}).mistake.find("found \"c\" after"),
            std::string::npos);
}

TEST(Arguments, PutHelpBeforeEveryMistake) {
  EXPECT_TRUE(read("score", {"--nonsense", "--help"}).wants_help);
  EXPECT_TRUE(read("score", {"-h"}).wants_help);
}

TEST(UnknownCommand, NamesTheNearest) {
  EXPECT_EQ(unknown_command(std::vector<std::string>{"scroe"}),
            "found \"scroe\"; expected a command\n  hint: the nearest is score");
  EXPECT_EQ(unknown_command(std::vector<std::string>{"values", "comparre"}),
            "found \"values comparre\"; expected one of the values commands\n  hint: the nearest is compare");
}

}  // namespace
}  // namespace landdrill::cli
