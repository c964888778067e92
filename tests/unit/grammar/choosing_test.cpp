// The lines that are said for choosing: read, put into their blocks, printed; and old sheets that use the
// same words for something else.
#include <gtest/gtest.h>

#include "dump.h"
#include "grammar/print.h"

namespace landdrill::test {
namespace {

struct Row {
  const char* text;
  const char* tree;
};

class Choosing : public testing::TestWithParam<Row> {};

TEST_P(Choosing, ReadsEveryStatement) {
  EXPECT_EQ(dump_text(GetParam().text), GetParam().tree) << GetParam().text;
}

constexpr Row rows[] = {
    {"spread 0.35", "spread(0.35)"},
    {"best 8.5", "best(8.5)"},
    {"day 0,2 # all marks", "day(0,2) #\"# all marks\""},
    {"errors small 2.5, clear 0.4", "errors(small=2.5, clear=0.4)"},
    {"ERRORS: small: 2", "errors(small=2)"},
    {"risk overtime 10%, \"the bottom\" 2 %", "risk(overtime=10, 'the bottom'=2)"},
    {"Optional", "optional"},
    {"stays:", "stays"},
    {"limit hybrid least 2 most 5", "limit(hybrid code least 2 most 5)"},
    {"limit: hybrid Most 5", "limit(hybrid code most 5)"},
    {"limit Seconds least 165.5", "limit(Seconds least 165.5)"},
    {"limit \"seconds\" most 2", "limit('seconds' code most 2)"},
    {"limit \"most\" most 2", "limit('most' code most 2)"},
    {"limit most 2", "error"},
    {"limit hybrid", "error"},
    {"spread: 0.35", "aspect(spread: 0.35)"},
    {"best: 8.5", "aspect(best: 8.5)"},
    {"day: 7.5 7.25", "aspect(day: 7.5, 7.25)"},
    {"limit: 8 -", "aspect(limit: 8, missing)"},
    {"errors: 7.5", "aspect(errors: 7.5)"},
    {"risk: 7.5", "aspect(risk: 7.5)"},
    {"optional: 7.5", "aspect(optional: 7.5)"},
    {"stays: 7.5", "aspect(stays: 7.5)"},
    {"event spread", "event(spread)"},
    {"element 1 optional", "element(1 optional)"},
    {"parts day, limit x2", "parts(day, limit*2)"},
    {"sync: errors x2", "sync(errors*2)"},
    {"penalty: risk, stays", "penalty(risk, stays)"},
    {"element 1: spread small, lost day", "faults(1: spread/small, lost:day)"},
};
INSTANTIATE_TEST_SUITE_P(Lines, Choosing, testing::ValuesIn(rows));

// Also when printed: what an old sheet says of such an aspect stays as it was typed.
TEST(ChoosingLines, PrintAsTheyAreReadAgain) {
  for (const Row& row : rows) {
    if (std::string_view(row.tree) == "error") continue;
    const Source source{"a.sheet", row.text};
    const ast::Lines lines = parse(source).lines;
    const std::string text = print(lines);
    const Source again{"a.sheet", text};
    const ast::Lines reread = parse(again).lines;
    ASSERT_EQ(reread.size(), 1u) << text;
    EXPECT_EQ(reread[0].statement, lines[0].statement) << text;
    EXPECT_EQ(reread[0].comment, lines[0].comment) << text;
    EXPECT_EQ(print(reread), text);
  }
}

constexpr const char* sheet = R"(routine "Low Water"
event e
spread: 0.3
day 0.2
limit hybrid most 3
limit seconds least 100
limit "seconds" most 1
element 1 hybrid
  optional
  parts a
  spread 0.4
  option "o"
    parts b
    spread 0.5
element 2 hybrid
  stays
  parts c
errors small 2
risk overtime 10%
errors clear 1
)";

TEST(ChoosingLines, GoIntoTheBlocksTheyBelongTo) {
  const Source source{"a.sheet", sheet};
  Assembled assembled;
  assemble(source, assembled);
  EXPECT_EQ(to_string(assembled.diagnostics), "");
  const ast::Routine& routine = assembled.sheets.at(0).routine;
  EXPECT_EQ(routine.spread->text, "0.3");
  EXPECT_EQ(routine.day->text, "0.2");
  ASSERT_EQ(routine.limits.size(), 3u);
  EXPECT_EQ(routine.limits[1].word(), "seconds");
  EXPECT_EQ(routine.limits[2].word(), "");
  const auto& first = std::get<ast::Element>(routine.items.at(0));
  const auto& second = std::get<ast::Element>(routine.items.at(1));
  EXPECT_EQ(first.optional.data(), source.text.data() + source.text.find("optional"));
  EXPECT_EQ(first.stays, "");
  EXPECT_EQ(second.stays, "stays");
  EXPECT_EQ(first.variants.at(0).spread->text, "0.4");
  EXPECT_EQ(first.variants.at(1).spread->text, "0.5");
  EXPECT_FALSE(second.variants.at(0).spread);
  ASSERT_EQ(routine.errors.size(), 2u);
  EXPECT_EQ(routine.errors[1].name.text, "clear");
  EXPECT_EQ(routine.risks.at(0).number.text, "10");
}

TEST(ChoosingLines, AreTidiedInTheirColumns) {
  const Source source{
      "a.sheet",
      "routine \"A\"\nspread 0,3\nDAY 0.2\nlimit SECONDS  most 9\nlimit \"under\" least 1\n"
      "element 1 h\nspread 0.4\nOptional\noption \"o\"\nspread 0.5\nerrors a 2,b 1\nrisk c 5 %\n"};
  EXPECT_EQ(print(parse(source).lines),
            "routine \"A\"\n"
            "spread   0.3\n"
            "day      0.2\n"
            "limit    seconds most 9\n"
            "limit    \"under\" least 1\n"
            "element 1 h\n"
            "  spread 0.4\n"
            "  optional\n"
            "  option \"o\"\n"
            "    spread 0.5\n"
            "errors a 2, b 1\n"
            "risk c 5%\n");
}

}  // namespace
}  // namespace landdrill::test
