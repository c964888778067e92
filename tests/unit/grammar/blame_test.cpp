// One mistake, one message: the lines below a line in error are not blamed for it.
#include <gtest/gtest.h>

#include <algorithm>

#include "dump.h"
#include "grammar/blocks.h"

namespace landdrill::test {
namespace {

// The codes of all messages, with their lines: "syntax@2 misplaced@5".
std::string codes(std::string_view text) {
  const Source source{"a.sheet", text};
  Assembled assembled;
  assemble(source, assembled);
  assembled.diagnostics.sort();
  std::string all;
  for (const Diagnostic& each : assembled.diagnostics.list())
    all += (all.empty() ? "" : " ") + std::string(code_of(each.problem)) + "@" + std::to_string(each.at.line);
  return all;
}

Assembled assembled_of(std::string_view text) {
  static std::vector<std::string> kept;
  static std::vector<Source> sources;
  kept.reserve(100);
  sources.reserve(100);
  kept.emplace_back(text);
  sources.push_back({"a.sheet", kept.back()});
  Assembled assembled;
  assemble(sources.back(), assembled);
  return assembled;
}

TEST(Blame, AnElementInErrorTakesItsLinesWithIt) {
  EXPECT_EQ(codes("routine \"A\"\nelement one lift\n parts a\n slip 1%\n option \"o\"\n parts c\nelement 2 "
                  "lift\n parts a\n"),
            "syntax@2");
}
TEST(Blame, AMisspelledOpenerStillOpens) {
  EXPECT_EQ(codes("rutine \"A\"\nevent e\nelment 1 lift\n parts a\npasage \"P\"\n counts 1 up\n"),
            "unknown-keyword@1 unknown-keyword@3 unknown-keyword@5");
}
TEST(Blame, ARunOrPanelInErrorTakesItsLinesWithIt) {
  EXPECT_EQ(codes("routine \"A\"\nrun yesterday\n element 1: clean\n sync: none\npanel 1.1.2026\n element 1: "
                  "7\n result: 5\n"),
            "syntax@2 bad-date@5");
}
TEST(Blame, ADayThatDoesNotExistTakesItsRunWithIt) {
  EXPECT_EQ(codes("routine \"A\"\nrun 2026-02-30\n element 1: clean\n"), "bad-date@2");
  EXPECT_TRUE(assembled_of("routine \"A\"\nrun 2026-02-30\n element 1: clean\n").sheets[0].runs.empty());
}
TEST(Blame, ALineNobodyCanGuessMakesTheReaderForgiving) {
  EXPECT_EQ(codes("routine \"A\"\n(((\n parts a\n parts b\nelement 1 lift\n sync: none\n"),
            "unknown-keyword@2 misplaced@6");
}
TEST(Blame, AMisplacedBlockIsSaidOnce) {
  EXPECT_EQ(
      codes("routine \"A\"\nelement 1: clean\nelement 2: clean\nsync: none\nelement 3 lift\n result: 5\n"),
      "misplaced@2 misplaced@6");
}
TEST(Blame, AMissingRoutineIsSaidOnce) {
  EXPECT_EQ(codes("event e\ntempo 1\nelement 1 lift\n parts a\nrun 2026-01-01\n element 1: clean\npanel "
                  "2026-01-02\n"),
            "misplaced@1");
  EXPECT_EQ(codes("run 2026-01-01\n element 1: clean\npanel 2026-01-02\n element 1: 7\n"), "misplaced@1");
}
TEST(Blame, ABlockInErrorBeforeAnyRoutineIsSaidOnce) {
  EXPECT_EQ(codes("run yesterday\n element 1: clean\nrun 2026-01-01\n element 1: clean\n"), "syntax@1");
  EXPECT_EQ(codes("element x\n parts a\npanel 2026-01-01\n element 1: 7\n"), "syntax@1");
}
TEST(Blame, EachHeaderLineOutOfPlaceIsSaid) {
  EXPECT_EQ(codes("routine \"A\"\nelement 1 lift\nevent e\ntempo 1\n parts a\n"), "misplaced@3 misplaced@4");
}
TEST(Blame, AMarkedElementInErrorLeavesTheRunAsItIs) {
  EXPECT_EQ(codes("routine \"A\"\nrun 2026-01-01\n element 1: oops\n element 2: clean\n sync: none\n"),
            "syntax@3");
}
TEST(Blame, TheSecondHalfOfABrokenListIsNoSecondMistake) {
  EXPECT_EQ(codes("routine \"A\"\nelement 1 lift\n parts a,\n  b,\n  c\n expect 7\n"), "syntax@3");
}

TEST(Incomplete, SaysWhereALineWasLost) {
  const Assembled all = assembled_of(
      "routine \"A\"\nelement 1 lift\n parts (\nelement 2 lift\n parts a\nrun 2026-01-01\n element 1: "
      "x\npanel 2026-01-02\n result: 5\n");
  const ast::Sheet& sheet = all.sheets.at(0);
  EXPECT_TRUE(sheet.routine.incomplete);
  EXPECT_TRUE(std::get<ast::Element>(sheet.routine.items[0]).variants[0].incomplete);
  EXPECT_FALSE(std::get<ast::Element>(sheet.routine.items[1]).variants[0].incomplete);
  EXPECT_TRUE(sheet.runs[0].incomplete);
  EXPECT_FALSE(sheet.panels[0].incomplete);
}
TEST(Incomplete, ALostRoutineIsNoSheetAndItsRunsGoWithIt) {
  const Assembled all = assembled_of("routine \"A\"\nrutine \"B\"\nevent e\nrun 2026-01-01\n");
  ASSERT_EQ(all.sheets.size(), 1u);
  EXPECT_TRUE(all.sheets[0].runs.empty());
  EXPECT_TRUE(all.routine_lost);
}
TEST(Incomplete, TheNextRoutineIsWhole) {
  const Assembled all = assembled_of("rutine \"A\"\nroutine \"B\"\nrun 2026-01-01\n");
  ASSERT_EQ(all.sheets.size(), 1u);
  EXPECT_EQ(all.sheets[0].runs.size(), 1u);
  EXPECT_FALSE(all.routine_lost);
}

}  // namespace
}  // namespace landdrill::test
