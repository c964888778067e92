#include "engine/report/width.h"

#include <gtest/gtest.h>

namespace landdrill::report {
namespace {

TEST(Width, CountsColumnsNotBytes) {
  EXPECT_EQ(width_of("Undertow"), 8);
  EXPECT_EQ(width_of("Élan"), 4);
  EXPECT_EQ(width_of("E\u0301lan"), 4);  // the accent as a character of its own
  EXPECT_EQ(width_of("水の精"), 6);
  EXPECT_EQ(width_of("🌊"), 2);
  EXPECT_EQ(width_of("\xFF\xFE"), 2);
}

TEST(Width, GivesMarksOfAnyScriptNoRoomOfTheirOwn) {
  EXPECT_EQ(width_of("и\u0306"), 1);               // Cyrillic
  EXPECT_EQ(width_of("ש\u05B8\u05C1"), 1);         // Hebrew points
  EXPECT_EQ(width_of("م\u064F\u0670"), 1);         // Arabic
  EXPECT_EQ(width_of("ܐ\u0730"), 1);               // Syriac
  EXPECT_EQ(width_of("क\u0941\u0902"), 1);         // Devanagari
  EXPECT_EQ(width_of("த\u0BC0"), 1);               // Tamil
  EXPECT_EQ(width_of("น\u0E49\u0E33"), 2);         // Thai: the last is a letter
  EXPECT_EQ(width_of("ཀ\u0F71\u0F72"), 1);         // Tibetan
  EXPECT_EQ(width_of("က\u103B\u102D"), 1);         // Myanmar
  EXPECT_EQ(width_of("ក\u17D2\u179A"), 2);         // Khmer: a letter below, in a column of its own
  EXPECT_EQ(width_of("か\u3099"), 2);              // Japanese: a voiced syllable
  EXPECT_EQ(width_of("\u1112\u1161\u11AB"), 2);    // Korean: a syllable in its letters
  EXPECT_EQ(width_of("\U0001D1BA\U0001D165"), 1);  // music: a note with its stem
}

TEST(Width, GivesWhatIsDrawnAsOneTwoColumnsAtMost) {
  EXPECT_EQ(width_of("👩\u200D👧\u200D👦"), 2);
  EXPECT_EQ(width_of("🇸🇪🇳🇴"), 4);
  EXPECT_EQ(width_of("🏊\U0001F3FD"), 2);
  EXPECT_EQ(width_of("12345678e\u0301"), 9);
}

TEST(Width, CutsWithAnEllipsisAndNeverWithinACharacter) {
  EXPECT_EQ(cut("Long way down", 8), "Long wa…");
  EXPECT_EQ(cut("Long way", 8), "Long way");
  EXPECT_EQ(cut("水の精", 4), "水…");
  EXPECT_EQ(cut("E\u0301lan vital", 5), "E\u0301lan…");
  EXPECT_EQ(cut("a 👩\u200D👧 b c", 4), "a …");
  EXPECT_EQ(cut("a 👩\u200D👧 b c", 5), "a 👩\u200D👧…");
  EXPECT_EQ(cut("🇸🇪🇳🇴🇫🇮", 4), "🇸🇪…");
}

TEST(Width, WrapsAtBlanks) {
  EXPECT_EQ(wrap("the long way down", 8), (std::vector<std::string>{"the long", "way down"}));
  EXPECT_EQ(wrap("the long  way", 8), (std::vector<std::string>{"the long", "way"}));
  EXPECT_EQ(wrap("", 8), (std::vector<std::string>{""}));
}

TEST(Width, BreaksAWordThatIsLongerThanTheLine) {
  EXPECT_EQ(wrap("a Donaudampfschiff", 6), (std::vector<std::string>{"a", "Donaud", "ampfsc", "hiff"}));
  EXPECT_EQ(wrap("水水水", 1), (std::vector<std::string>{"水", "水", "水"}));
}

TEST(Width, HangsAParagraphBehindItsStart) {
  EXPECT_EQ(paragraph("  - ", "one two three", 10), "  - one\n    two\n    three\n");
}

TEST(Width, CountsAWideLetterWhereverItStands) {
  for (std::size_t at = 0; at < 20; ++at) {
    std::string text(20, 'a');
    text.replace(at, 1, "水");
    EXPECT_EQ(width_of(text), 21) << text;
  }
}

TEST(Width, SpellsOutWhatCouldSteerATerminal) {
  EXPECT_EQ(plain("a\x1b[31mb"), "a\\x1b[31mb");
  EXPECT_EQ(plain("a\tb\nc"), "a b c");
  for (const std::string_view turns : {"\u061C", "\u200E", "\u200F", "\u202A", "\u202E", "\u2066", "\u2069"})
    EXPECT_TRUE(plain(turns).starts_with("\\u")) << plain(turns);
  EXPECT_EQ(plain("a\u202Eb"), "a\\u202eb");
  EXPECT_EQ(plain("\uFEFFa\u2028b"), "\\ufeffa\\u2028b");
  EXPECT_EQ(plain("👩\u200D👧 Sonnen\u00ADtag"), "👩\u200D👧 Sonnen\u00ADtag");
  EXPECT_EQ(plain("a\x80z"), "a\\x80z");
  EXPECT_EQ(plain("\u009b1m"), "\\u009b1m");  // the one-character form of an escape sequence
  EXPECT_EQ(plain("Élan 水"), "Élan 水");
}

TEST(Width, RefusesUtf8ThatIsTooLongOrASurrogate) {
  EXPECT_EQ(plain("\xC0\xAF"), "\\xc0\\xaf");
  EXPECT_EQ(plain("\xED\xA0\x80"), "\\xed\\xa0\\x80");
  EXPECT_EQ(plain("\xE6\xB0"), "\\xe6\\xb0");
}

}  // namespace
}  // namespace landdrill::report
