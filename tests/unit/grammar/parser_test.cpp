// What every statement means: text on the left, the tree on the right.
#include <gtest/gtest.h>

#include "dump.h"

namespace landdrill::test {
namespace {

struct Row {
  const char* text;
  const char* tree;
};

class Parser : public testing::TestWithParam<Row> {};

TEST_P(Parser, ReadsEveryStatement) {
  EXPECT_EQ(dump_text(GetParam().text), GetParam().tree) << GetParam().text;
}

constexpr Row header[] = {
    {"routine \"Harbour Lights\"", "routine('Harbour Lights')"},
    {"event duet-free", "event(duet-free)"},
    {"values kingfisher-2026", "values(kingfisher-2026)"},
    {"tempo 128", "tempo(128)"},
    {"swimmers 2", "swimmers(2)"},
    {"swimmers 2.5", "swimmers(2.5)"},
    {"event \"duet (free)\"", "event('duet (free)')"},
};
constexpr Row elements[] = {
    {"element 1 lift \"Lantern\"", "element(1 lift 'Lantern')"},
    {"element 12 hybrid", "element(12 hybrid)"},
    {"element 1 base", "element(1 base)"},
    {"element 1 \"2nd kind\" \"Title\"", "element(1 '2nd kind' 'Title')"},
    {"option \"safer\"", "option('safer')"},
    {"parts a", "parts(a)"},
    {"parts thrust-high, spin-720, split-hold x2", "parts(thrust-high, spin-720, split-hold*2)"},
    {"parts C4+, 2r.5, RU1*, F1a/b, it's, 101", "parts(C4+, 2r.5, RU1*, F1a/b, it's, 101)"},
    {"parts \"a+b\" x3, \"(c)\"", "parts('a+b'*3, '(c)')"},
    {"parts вертолёт, Überschlag x2, 旋转", "parts(вертолёт, Überschlag*2, 旋转)"},
    {"parts x2, x x2", "parts(x2, x*2)"},
    {"counts 16 under, 8 surface", "counts(16@under, 8@surface)"},
    {"counts 4.5 under", "counts(4.5@under)"},
    {"difficulty 2.45", "difficulty(2.45)"},
    {"expect 7.50", "expect(7.50)"},
    {"slip 12%", "slip(12)"},
    {"slip 12.5 %", "slip(12.5)"},
    {"passage \"Arm sequence\"", "passage('Arm sequence')"},
    {"impression choreography 7.50, performance 7.75", "impression(choreography=7.50, performance=7.75)"},
};
constexpr Row runs[] = {
    {"run 2026-04-14", "run(2026-04-14)"},
    {"run 2026-04-14 \"Tuesday\"", "run(2026-04-14 'Tuesday')"},
    {"panel 2026-05-09 \"Tarn Open\"", "panel(2026-05-09 'Tarn Open')"},
    {"element 1: bent-knee small, low-height medium x2", "faults(1: bent-knee/small, low-height/medium*2)"},
    {"element 2 base: travel small, lost spin-720", "faults(2 base: travel/small, lost:spin-720)"},
    {"element 2: lost \"lost\"", "faults(2: lost:'lost')"},
    {"element 2: \"lost\" small", "faults(2: 'lost'/small)"},
    {"element 3: clean", "faults(3: )"},
    {"element 3 base: clean", "faults(3 base: )"},
    {"element 3: bent-knee 0.5", "faults(3: bent-knee/0.5)"},
    {"element 1: 7.25 7.50 7.25 7.00 7.75", "marks(1: 7.25, 7.50, 7.25, 7.00, 7.75)"},
    {"element 2 base: 6.75 - 6.50", "marks(2 base: 6.75, missing, 6.50)"},
    {"element 2: - 7", "marks(2: missing, 7)"},
    {"element 2: -", "marks(2: missing)"},
    {"element 2: -1 +2", "marks(2: -1, +2)"},
    {"element 2: -x small", "faults(2: -x/small)"},
    {"choreography: 7.50 7.75", "aspect(choreography: 7.50, 7.75)"},
    {"\"music and time\": 7", "aspect('music and time': 7)"},
    {"\"tempo\": 7", "aspect('tempo': 7)"},
    {"difficulty: 7.5 7.6", "aspect(difficulty: 7.5, 7.6)"},
    {"sync: small x3, clear", "sync(small*3, clear)"},
    {"sync: none", "sync()"},
    {"sync: \"none\"", "sync('none')"},
    {"penalty: overtime, bottom x2", "penalty(overtime, bottom*2)"},
    {"penalty: none", "penalty()"},
    {"result: 187.3425", "result(187.3425)"},
};
constexpr Row comments[] = {
    {"# alone", "empty #\"# alone\""},
    {"tempo 128 # beats", "tempo(128) #\"# beats\""},
    {"tempo 128# beats  ", "tempo(128) #\"# beats\""},
    {"routine \"Set #2\" # two", "routine('Set #2') #\"# two\""},
    {"parts a,b#c", "parts(a, b) #\"#c\""},
    {"element 1: - #", "marks(1: missing) #\"#\""},
    {"", ""},
    {"\n\n  \n", ""},
    {"tempo 1\n\n\n\ntempo 2\n\n", "tempo(1) | empty | tempo(2)"},
    {"tempo 1\n#\n\n#\n", "tempo(1) | empty #\"#\" | empty | empty #\"#\""},
};

INSTANTIATE_TEST_SUITE_P(Header, Parser, testing::ValuesIn(header));
INSTANTIATE_TEST_SUITE_P(Elements, Parser, testing::ValuesIn(elements));
INSTANTIATE_TEST_SUITE_P(RunsAndPanels, Parser, testing::ValuesIn(runs));
INSTANTIATE_TEST_SUITE_P(Comments, Parser, testing::ValuesIn(comments));

TEST(ParserViews, PointIntoTheSource) {
  const std::string text = "element 2 hybrid \"Undertow\"\n";
  const Source source{"a.sheet", text};
  const Parsed parsed = parse(source);
  const auto& line = std::get<ast::ElementLine>(parsed.lines.at(0).statement);
  EXPECT_EQ(line.title->text.data(), text.data() + 18);
  EXPECT_EQ(line.number.text.data(), text.data() + 8);
  EXPECT_EQ(parsed.lines.at(0).text, "element 2 hybrid \"Undertow\"");
}

TEST(ParserNumbers, AreEqualWithPointAndWithComma) {
  EXPECT_EQ(ast::Number{"7,25"}, ast::Number{"7.25"});
  EXPECT_NE(ast::Number{"7.25"}, ast::Number{"7.250"});
}

TEST(ParserNames, AreEqualWithAndWithoutQuotationMarks) {
  EXPECT_EQ((ast::Name{"spin", true}), (ast::Name{"spin", false}));
  EXPECT_NE((ast::Name{"spin", true}), (ast::Name{"Spin", true}));
}

TEST(ParserRecovers, ReadsOnAfterEveryMistake) {
  EXPECT_EQ(dump_text("tempo 1\ntempo x\ntempi 3\n  ( \ntempo 4"),
            "tempo(1) | error | error | error | tempo(4)");
}

TEST(ParserRecovers, KeepsALineInErrorAsTyped) {
  const Source source{"a.sheet", "  tempo  fast # very\n"};
  const Parsed parsed = parse(source);
  EXPECT_EQ(std::get<ast::BadLine>(parsed.lines.at(0).statement).text, "  tempo  fast # very");
}

TEST(ParserRecovers, GuessesWhatALineInErrorWasToStart) {
  const auto opens = [](std::string_view text) {
    const Source source{"a.sheet", text};
    return std::get<ast::BadLine>(parse(source).lines.at(0).statement).opens;
  };
  EXPECT_EQ(opens("elment 1 hybrid"), ast::Opens::element);
  EXPECT_EQ(opens("passage Arms"), ast::Opens::passage);
  EXPECT_EQ(opens("pannel 2026-01-01"), ast::Opens::panel);
  EXPECT_EQ(opens("expect much"), ast::Opens::nothing);
  EXPECT_EQ(opens("whatever"), ast::Opens::unknown);
}

}  // namespace
}  // namespace landdrill::test
