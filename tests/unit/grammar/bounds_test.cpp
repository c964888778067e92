// Whatever is typed, the answer is bounded and nothing crashes.
#include <gtest/gtest.h>

#include <string>

#include "dump.h"
#include "grammar/parse.h"

namespace landdrill::test {
namespace {

std::size_t errors_of(const std::string& text) {
  const Source source{"a.sheet", text};
  return parse(source).diagnostics.errors();
}

TEST(Bounds, OneLineOfFiftyMillionBracketsIsOneMessage) {
  const std::string text(50'000'000, '[');
  const std::string said = messages(text);
  EXPECT_TRUE(said.starts_with("a.sheet:1:1: error: found a line of more than 65,536 bytes"))
      << said.substr(0, 200);
  EXPECT_LT(said.size(), 500u);
}
TEST(Bounds, BracketsInABracketDoNotRecurse) {
  EXPECT_EQ(errors_of("parts " + std::string(60'000, '(')), 1u);
  EXPECT_EQ(errors_of("parts " + std::string(60'000, '"')), 1u);
}
TEST(Bounds, AMillionErrorsAreCountedAndAHundredKept) {
  std::string text;
  for (int i = 0; i < 1'000'000; ++i) text += "tempo x\n";
  const Source source{"a.sheet", text};
  const Parsed parsed = parse(source);
  EXPECT_EQ(parsed.diagnostics.errors(), 1'000'000u);
  EXPECT_EQ(parsed.diagnostics.list().size(), Diagnostics::most);
}
TEST(Bounds, AFileOfTooManyLinesIsReadUpToTheBound) {
  const std::string text(2'000'001, '\n');
  EXPECT_EQ(errors_of(text), 1u);
  EXPECT_EQ(errors_of(text.substr(1)), 0u);
}
TEST(Bounds, ALineMayHave64KiB) {
  const std::string longest = "# " + std::string(64 * 1024 - 2, 'x');
  EXPECT_EQ(errors_of(longest), 0u);
  EXPECT_EQ(errors_of(longest + "x"), 1u);
}
TEST(Bounds, AListMayHaveTenThousandItems) {
  std::string list = "parts a";
  for (int i = 1; i < 10'000; ++i) list += ",a";
  EXPECT_EQ(errors_of(list), 0u);
  EXPECT_EQ(errors_of(list + ",a"), 1u);
}
TEST(Bounds, ANumberMayHave18Digits) {
  EXPECT_EQ(dump_text("expect 1234567890.12345678"), "expect(1234567890.12345678)");
  EXPECT_EQ(dump_text("expect 1234567890.123456789"), "error");
  EXPECT_EQ(dump_text("parts a x1234567890123456789"), "error");
}
TEST(Bounds, EveryByteAloneAndDoubledIsAnswered) {
  for (int byte = 0; byte < 256; ++byte) {
    const std::string one(1, static_cast<char>(byte));
    for (const std::string& text :
         {one, one + one, "tempo " + one, "parts a" + one, "element 1:" + one, "x:" + one})
      EXPECT_LT(messages(text).size(), 2000u) << byte;
  }
}
TEST(Bounds, EveryCutOfASheetIsAnswered) {
  const std::string sheet =
      "routine “Tarn”\nelement 1 hybrid \"U\"\n parts a ×2, «b»\n slip 1,5%\nrun 2026-04-14\n element 1 "
      "base: lost a, "
      "k s x2\npanel 2026-05-09\n element 1: 7,5 – 8\n sync: a x2\n";
  for (std::size_t from = 0; from < sheet.size(); ++from)
    for (std::size_t to = from; to <= sheet.size(); to += 3) {
      const std::string said = messages(sheet.substr(from, to - from));
      EXPECT_LT(said.size(), 10'000u);
    }
}

}  // namespace
}  // namespace landdrill::test
