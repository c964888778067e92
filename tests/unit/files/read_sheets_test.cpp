// Many files as one stream of sheets: where one ends and the next begins, whatever the sizes and line
// endings.
#include <gtest/gtest.h>

#include "engine/files/sheet_reader.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

using test::Scratch;

// "a:1[routine A\n]|a:2[routine B\n]": each sheet's pieces with the line they start at; names without
// folders.
std::string sheets(std::vector<std::string> files) {
  SheetStream stream(std::move(files));
  std::string all;
  while (const auto pieces = stream.next()) {
    if (!all.empty()) all += "|";
    for (const NamedText& piece : *pieces)
      all += piece.name.substr(piece.name.rfind('/') + 1) + ":" + std::to_string(piece.first_line) + "[" +
             std::string(piece.text) + "]";
  }
  for (const Trouble& trouble : stream.take_troubles()) all += " trouble: " + trouble.why;
  return all;
}

std::string of(std::string_view text) {
  const Scratch scratch;
  return sheets({scratch.file("a", text)});
}

TEST(SheetStream, EndsASheetWhereTheNextRoutineStarts) {
  EXPECT_EQ(of("routine A\nevent x\nroutine B\n"), "a:1[routine A\nevent x\n]|a:3[routine B\n]");
}

TEST(SheetStream, GivesCommentsToTheRoutineBelowThem) {
  EXPECT_EQ(of("routine A\nevent x\n\n# the next\n\nroutine B\n"),
            "a:1[routine A\nevent x\n]|a:3[\n# the next\n\nroutine B\n]");
}

TEST(SheetStream, GivesCommentsRightBelowALineToThatLineWhenAnEmptyLineFollows) {
  EXPECT_EQ(of("routine A\nevent x\n# of x\n\n# the next\nroutine B\n"),
            "a:1[routine A\nevent x\n# of x\n]|a:4[\n# the next\nroutine B\n]");
  EXPECT_EQ(of("routine A\nevent x\n# the next\nroutine B\n"),
            "a:1[routine A\nevent x\n]|a:3[# the next\nroutine B\n]");
}

TEST(SheetStream, KeepsWhatStandsBeforeTheFirstRoutineWithIt) {
  EXPECT_EQ(of("event x\nroutine A\nroutine B\n"), "a:1[event x\nroutine A\n]|a:3[routine B\n]");
}

TEST(SheetStream, KnowsARoutineLineHoweverItIsTyped) {
  EXPECT_EQ(of("routine A\n \tROUTINE B\nRoutine\"C\"\n"),
            "a:1[routine A\n]|a:2[ \tROUTINE B\n]|a:3[Routine\"C\"\n]");
  EXPECT_EQ(of("\xEF\xBB\xBFroutine A\nroutine B"), "a:1[\xEF\xBB\xBFroutine A\n]|a:2[routine B]");
  EXPECT_EQ(of("routine A\nroutines B\n# routine C\n"), "a:1[routine A\nroutines B\n# routine C\n]");
}

TEST(SheetStream, UnderstandsEveryLineEnding) {
  EXPECT_EQ(of("routine A\r\nx\r\nroutine B\r\n"), "a:1[routine A\r\nx\r\n]|a:3[routine B\r\n]");
  EXPECT_EQ(of("routine A\rx\rroutine B\r"), "a:1[routine A\rx\r]|a:3[routine B\r]");
}

TEST(SheetStream, GoesOnWithASheetInTheNextFile) {
  const Scratch scratch;
  const std::string a = scratch.file("a", "routine A\n"), b = scratch.file("b", "run x\nroutine B\n");
  EXPECT_EQ(sheets({a, b}), "a:1[routine A\n]b:1[run x\n]|b:2[routine B\n]");
  EXPECT_EQ(sheets({a, a}), "a:1[routine A\n]|a:1[routine A\n]");
}

TEST(SheetStream, IsEmptyWhenThereIsNothing) {
  EXPECT_EQ(of(""), "");
  EXPECT_EQ(sheets({}), "");
}

// The law behind the window: no size of sheet or place of a chunk's end changes what is handed out.
TEST(SheetStream, HandsOutTheSameTextWhereverAChunkEnds) {
  for (const std::string ending : {"\n", "\r\n", "\r"}) {
    for (std::size_t padding : {0, 1, 2, 3, 4, 5, 17, 262'120, 262'140, 262'143, 262'144, 600'000}) {
      const std::string first =
          "routine A" + ending + "# " + std::string(padding, 'x') + ending + "e" + ending;
      const std::string second = "routine B" + ending;
      EXPECT_EQ(of(first + second), "a:1[" + first + "]|a:4[" + second + "]")
          << padding << " before " << ending.size();
    }
  }
}

TEST(SheetStream, CountsLinesAcrossChunks) {
  const Scratch scratch;
  std::string text;
  for (int i = 0; i < 30'000; ++i) text += "routine A\n# one\ncounts 8 under\n";
  SheetStream stream({scratch.file("a", text)});
  std::size_t line = 1;
  while (const auto pieces = stream.next()) {
    ASSERT_EQ(pieces->front().first_line, line);
    line += 3;
  }
  EXPECT_EQ(line, 90'001u);
}

TEST(SheetStream, SaysWhetherAnotherSheetFollows) {
  const Scratch scratch;
  SheetStream stream({scratch.file("a", "routine A\nroutine B\n")});
  stream.next();
  EXPECT_TRUE(stream.more());
  stream.next();
  EXPECT_FALSE(stream.more());
}

TEST(SheetStream, LeavesOutASheetThatNeverEndsAndGoesOn) {
  const Scratch scratch;
  const std::string b = scratch.file("b", "routine B\n");
  std::string lines = "routine A\n";
  while (lines.size() <= longest_sheet) lines += std::string(999, 'x') + "\n";
  for (const std::string& endless : {"routine A\n" + std::string(longest_sheet + 1, 'x'), lines})
    EXPECT_EQ(sheets({scratch.file("a", endless), b}), "b:1[routine B\n] trouble: a sheet longer than 64 MB");
}

TEST(SheetStream, TellsOfAFileThatCannotBeOpenedAndGoesOn) {
  const Scratch scratch;
  EXPECT_EQ(sheets({scratch.path("nowhere"), scratch.file("b", "routine B\n")}),
            "b:1[routine B\n] trouble: there is no such file");
}

TEST(Unreadable, NamesEveryFileThatCannotBeRead) {
  const Scratch scratch;
  const auto troubles = unreadable({scratch.file("a", ""), scratch.path("nowhere"), scratch.path(""), "-"});
  ASSERT_EQ(troubles.size(), 2u);
  EXPECT_EQ(troubles[0].why, "there is no such file");
  EXPECT_EQ(troubles[1].why, "this is a folder, not a sheet");
}

}  // namespace
}  // namespace landdrill
