#include "grammar/diagnostics.h"

#include <gtest/gtest.h>

#include <string>

#include "grammar/problems.h"

namespace landdrill {
namespace {

std::string message(std::string_view text, std::size_t offset, std::size_t length, std::string hint = {}) {
  const Source source{"a.sheet", text};
  return to_string(
      diagnostic_at(source, text.substr(offset, length), {Problem::syntax, "this", "that", std::move(hint)}));
}

TEST(Message, ShowsPlaceLineCaretAndHint) {
  EXPECT_EQ(message("event duet\n  tempo fast\n", 19, 4, "say it in beats"),
            "a.sheet:2:9: error: found this; expected that [syntax]\n"
            "    tempo fast\n"
            "          ^~~~\n"
            "  hint: say it in beats\n");
}
TEST(Message, PutsTheCaretBehindTheLastCharacterAtTheEndOfALine) {
  EXPECT_EQ(message("tempo\n", 5, 0),
            "a.sheet:1:6: error: found this; expected that [syntax]\n  tempo\n       ^\n");
}
TEST(Message, KeepsTabsAboveTheCaret) {
  EXPECT_EQ(message("\ttempo\tx", 7, 1),
            "a.sheet:1:8: error: found this; expected that [syntax]\n  \ttempo\tx\n  \t     \t^\n");
}
TEST(Message, UnderlinesCharactersNotBytes) {
  EXPECT_EQ(
      message("Größe Überschlag!", 8, 11),
      "a.sheet:1:7: error: found this; expected that [syntax]\n  Größe Überschlag!\n        ^~~~~~~~~~\n");
}
TEST(Message, SpellsOutWhatWouldUpsetATerminal) {
  EXPECT_EQ(message("a\x1B[2Jb\xF6x", 7, 1),
            "a.sheet:1:8: error: found this; expected that [syntax]\n  a\\x1B[2Jb\\xF6x\n               ^\n");
}
TEST(Message, SpellsOutControlBytesInNamesToo) {
  const Diagnostic about = diagnostic_about("a\nb\x1B.sheet", {Problem::syntax, "x\x07", "y", "z\r"});
  EXPECT_EQ(to_string(about),
            "a\\x0Ab\\x1B.sheet: error: found x\\x07; expected y [syntax]\n  hint: z\\x0D\n");
}
TEST(Message, ShowsThePartOfALongLineAroundThePiece) {
  const std::string text = std::string(1000, 'a') + "HERE" + std::string(1000, 'b');
  const std::string shown = message(text, 1000, 4);
  EXPECT_LT(shown.size(), 450u);
  const std::size_t line = shown.find("\n  ...") + 1;
  const std::size_t caret = shown.find('\n', line) + 1;
  EXPECT_EQ(shown.find("^~~~") - caret, shown.find("HERE") - line);
  EXPECT_NE(shown.find("bbb...\n"), std::string::npos);
}
TEST(Message, CutsALongLineBetweenCharacters) {
  std::string text;
  for (int i = 0; i < 500; ++i) text += "ö";
  for (std::size_t at = 0; at < text.size(); at += 2)
    EXPECT_EQ(message(text, at, 2).find("\\x"), std::string::npos) << at;
}
TEST(Message, CarriesTheCodeWithHyphens) {
  EXPECT_EQ(code_of(Problem::unknown_keyword), "unknown-keyword");
  EXPECT_EQ(severity_of(Problem::syntax), Severity::error);
  EXPECT_FALSE(Problem::syntax.meaning.empty());
}

Diagnostic at_line(std::size_t line, std::string file = "a") {
  Diagnostic diagnostic = diagnostic_about(file, {Problem::syntax, "x", "y"});
  diagnostic.at = {line, 1};
  return diagnostic;
}

TEST(Diagnostics, KeepAHundredAndCountTheRest) {
  Diagnostics list;
  for (int i = 0; i < 250; ++i) list.add(at_line(1));
  EXPECT_FALSE(list.wants_more());
  list.count_only(Severity::error);
  EXPECT_EQ(list.list().size(), Diagnostics::most);
  EXPECT_EQ(list.errors(), 251u);
  EXPECT_TRUE(to_string(list).ends_with("and 151 more messages\n"));
}
TEST(Diagnostics, AppendWithinTheSameBound) {
  Diagnostics one, other;
  for (int i = 0; i < 60; ++i) one.add(at_line(1)), other.add(at_line(2));
  one.append(std::move(other));
  EXPECT_EQ(one.list().size(), 100u);
  EXPECT_EQ(one.errors(), 120u);
}
TEST(Diagnostics, SortByFileInOrderOfAppearanceThenByPlace) {
  Diagnostics list;
  list.add(at_line(3, "z"));
  list.add(at_line(9, "a"));
  list.add(at_line(1, "z"));
  list.sort();
  EXPECT_EQ(list.list()[0].file + std::to_string(list.list()[0].at.line), "z1");
  EXPECT_EQ(list.list()[1].file + std::to_string(list.list()[1].at.line), "z3");
  EXPECT_EQ(list.list()[2].file, "a");
}
TEST(Diagnostics, AreOkWithoutErrors) {
  Diagnostics list;
  EXPECT_TRUE(list.ok());
  list.count_only(Severity::warning);
  EXPECT_TRUE(list.ok());
  list.count_only(Severity::error);
  EXPECT_FALSE(list.ok());
}

}  // namespace
}  // namespace landdrill
