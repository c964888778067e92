#include "grammar/characters.h"

#include <gtest/gtest.h>

#include <string>

namespace landdrill::characters {
namespace {

// How many bytes are good before the first bad one.
std::size_t good(std::string_view text) {
  const char* last = text.data() + text.size();
  return static_cast<std::size_t>(first_bad_byte(text.data(), last) - text.data());
}

TEST(Utf8, AcceptsTheFirstAndLastCharacterOfEveryLength) {
  for (std::string_view text : {"\x01", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF",
                                "\xEE\x80\x80", "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
    EXPECT_EQ(good(text), text.size()) << text;
}
TEST(Utf8, RefusesOverlongSurrogateAndTooHighCharacters) {
  for (std::string_view text :
       {"\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xF0\x8F\xBF\xBF", "\xED\xA0\x80", "\xED\xBF\xBF",
        "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\x80", "\xBF"})
    EXPECT_EQ(good(text), 0u) << text;
}
TEST(Utf8, RefusesACharacterCutShort) {
  for (std::string_view text : {"ab\xC3", "ab\xE2\x80", "ab\xF0\x90\x80", "ab\xC3 ", "ab\xE2\x80x"})
    EXPECT_EQ(good(text), 2u) << text;
}
TEST(Utf8, FindsABadByteAnywhereInALongText) {
  for (std::size_t at = 0; at < 40; ++at) {
    std::string text(40, 'a');
    text[at] = '\0';
    EXPECT_EQ(good(text), at);
    text[at] = '\xFF';
    EXPECT_EQ(good(text), at);
  }
}

std::string code(std::string_view text) {
  return std::string(text.data(), code_end(text.data(), text.data() + text.size()));
}

TEST(Code, EndsWhereAnotherSignStands) {
  EXPECT_EQ(code("split-hold x2"), "split-hold");
  EXPECT_EQ(code("a+b"), "a+");
  EXPECT_EQ(code("a++"), "a+");
  EXPECT_EQ(code("a,b"), "a");
  EXPECT_EQ(code("a:"), "a");
  EXPECT_EQ(code("a(b"), "a");
}
TEST(Code, NeedsALetterOrADigit) {
  EXPECT_EQ(code("-"), "");
  EXPECT_EQ(code(".-_*/'"), "");
  EXPECT_EQ(code("–"), "");
  EXPECT_EQ(code("-+"), "");
  EXPECT_EQ(code("--1"), "--1");
  EXPECT_EQ(code("–é"), "–é");
}
TEST(Code, HoldsLettersOfAnyAlphabetButNoTypographicSigns) {
  EXPECT_EQ(code("Überschlag+ x"), "Überschlag+");
  EXPECT_EQ(code("旋转×2"), "旋转");
  EXPECT_EQ(code("a“b"), "a");
  EXPECT_EQ(code("a\xC2\xA0"
                 "b"),
            "a");
  EXPECT_EQ(code("a\xE2\x80\xA8"
                 "b"),
            "a");
}
TEST(Code, IsBareOnlyAsAWhole) {
  EXPECT_TRUE(is_bare_code("C4+"));
  EXPECT_FALSE(is_bare_code("C4+ "));
  EXPECT_FALSE(is_bare_code(""));
  EXPECT_FALSE(is_bare_code("a b"));
}

TEST(Number, TakesOneDecimalSignWithDigitsBehindIt) {
  const auto number = [](std::string_view text) {
    return std::string(text.data(), number_end(text.data(), text.data() + text.size()));
  };
  EXPECT_EQ(number("7.25 7"), "7.25");
  EXPECT_EQ(number("7,25,3"), "7,25");
  EXPECT_EQ(number("-7"), "-7");
  EXPECT_EQ(number("7."), "7");
  EXPECT_EQ(number(".5"), "");
  EXPECT_EQ(number("-"), "");
  EXPECT_EQ(number("+-7"), "");
}

}  // namespace
}  // namespace landdrill::characters
