#include "grammar/span.h"

#include <gtest/gtest.h>

#include "grammar/diagnostics.h"
#include "grammar/problems.h"

namespace landdrill {
namespace {

std::string place(std::string_view text, std::size_t offset) {
  const Source source{"a", text};
  const Position position = position_of(source, text.substr(offset, 0));
  return std::to_string(position.line) + ":" + std::to_string(position.column);
}

TEST(Position, CountsLinesAndColumnsFromOne) {
  EXPECT_EQ(place("routine \"Tarn\"\nevent duet-free\n", 0), "1:1");
  EXPECT_EQ(place("routine \"Tarn\"\nevent duet-free\n", 21), "2:7");
}
TEST(Position, CountsCharactersNotBytes) {
  EXPECT_EQ(place("Überschlag x", 11), "1:11");
}
TEST(Position, CountsEveryBrokenByteAsOneCharacter) {
  EXPECT_EQ(place("\xF6\xBF\x80 x", 4), "1:5");
}
TEST(Position, KnowsAllLineEndings) {
  EXPECT_EQ(place("a\r\nb\rc\nd", 3), "2:1");
  EXPECT_EQ(place("a\r\nb\rc\nd", 5), "3:1");
  EXPECT_EQ(place("a\r\nb\rc\nd", 7), "4:1");
}
TEST(Position, DoesNotCountTheByteOrderMark) {
  EXPECT_EQ(place("\xEF\xBB\xBFtempo", 3), "1:1");
}
TEST(Position, CountsTheLinesOfALongText) {
  for (const char* ending : {"\n", "\r\n", "\r"}) {
    std::string text;
    for (int line = 1; line < 1000; ++line)
      text += std::string(static_cast<std::size_t>(line % 7), 'x') + ending;
    EXPECT_EQ(place(text, text.size()), "1000:1") << text.size();
  }
}
TEST(Position, StandsAtTheEndOfTheText) {
  EXPECT_EQ(place("tempo", 5), "1:6");
}

TEST(LineAround, IsTheWholeLineWithoutItsEnding) {
  const std::string_view text = "one\r\ntwo 2\nthree";
  const Source source{"a", text};
  EXPECT_EQ(line_around(source, text.substr(1, 1)), "one");
  EXPECT_EQ(line_around(source, text.substr(9, 1)), "two 2");
  EXPECT_EQ(line_around(source, text.substr(16, 0)), "three");
}

TEST(Sources, TellWhereAPieceIsFromByItsPlaceNotByItsWords) {
  const std::string one = "tempo 128\n", same = "tempo 128\n", third = "tempo 128\n";
  const Source a{"a", one}, b{"b", same}, c{"c", third};
  Sources sources;
  for (const Source* each : {&a, &b, &c}) sources.add(*each);
  for (const Source* each : {&c, &a, &b}) EXPECT_EQ(&sources.of(each->text.substr(6, 3)), each);
}

TEST(Spellings, AreReadInPlaceOfWhatWasTyped) {
  const std::string text = "7,25;7.50";
  const Source source{"marks.csv", text};
  const std::string_view typed = source.text.substr(0, 4), same = source.text.substr(5);
  Spellings spellings;
  const std::string_view read = spellings.add("7.25", typed);
  EXPECT_EQ(read, "7.25");
  EXPECT_EQ(spellings.add("7.50", same).data(), same.data());
  for (int i = 0; i < 1000; ++i) spellings.add("8", same);
  EXPECT_EQ(spellings.typed(read).data(), typed.data());
  EXPECT_EQ(spellings.typed(read.substr(2)), "7,25");
  EXPECT_EQ(spellings.typed(same).data(), same.data());
  Sources sources;
  sources.add(source);
  sources.add(spellings);
  EXPECT_EQ(diagnostic_at(sources, read, {Problem::repeated, "it", "another"}).line, text);
}

}  // namespace
}  // namespace landdrill
