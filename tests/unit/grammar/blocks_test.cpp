// Which block a line belongs to.
#include "grammar/blocks.h"

#include <gtest/gtest.h>

#include "dump.h"

namespace landdrill::test {
namespace {

// Keeps the texts alive that the tree points into.
struct Book {
  explicit Book(std::vector<std::string> texts) : kept(std::move(texts)) {
    for (const std::string& text : kept) sources.push_back({"a.sheet", text});
    for (const Source& source : sources) assemble(source, assembled);
  }
  std::vector<std::string> kept;
  std::vector<Source> sources;
  Assembled assembled;
};

constexpr const char* whole = R"(routine "Harbour Lights"
event duet-free
tempo 128
element 1 lift "Lantern"
  parts stand-feet
  counts 8 under
element 2 hybrid
  parts spin-720
  option "safer"
    parts spin-360
    slip 3%
passage "Arms"
  counts 5 under
impression choreography 7.50
impression performance 7.75
run 2026-04-14
  element 1: clean
  choreography: 7.25
  sync: small x3
panel 2026-05-09
  element 1: 7.25 7.50
  choreography: 7.50 7.75
  penalty: none
  result: 187.3425
)";

TEST(Blocks, HoldTheHeaderOfTheRoutine) {
  const Book book({whole});
  ASSERT_EQ(book.assembled.sheets.size(), 1u);
  const ast::Routine& routine = book.assembled.sheets[0].routine;
  EXPECT_EQ(routine.head.title.text, "Harbour Lights");
  EXPECT_EQ(routine.event->text, "duet-free");
  EXPECT_EQ(routine.tempo->text, "128");
  EXPECT_FALSE(routine.values || routine.swimmers || routine.incomplete);
  EXPECT_TRUE(book.assembled.diagnostics.ok());
}
TEST(Blocks, HoldElementsAndPassagesInOrder) {
  const Book book({whole});
  const auto& items = book.assembled.sheets[0].routine.items;
  ASSERT_EQ(items.size(), 3u);
  EXPECT_EQ(std::get<ast::Element>(items[0]).head.number.text, "1");
  EXPECT_EQ(std::get<ast::Element>(items[1]).head.number.text, "2");
  EXPECT_EQ(std::get<ast::Passage>(items[2]).counts->size(), 1u);
}
TEST(Blocks, HoldTheElementAsWrittenThenItsOptions) {
  const Book book({whole});
  const auto& variants = std::get<ast::Element>(book.assembled.sheets[0].routine.items[1]).variants;
  ASSERT_EQ(variants.size(), 2u);
  EXPECT_FALSE(variants[0].title);
  EXPECT_EQ(variants[0].parts->front().code.text, "spin-720");
  EXPECT_FALSE(variants[0].slip);
  EXPECT_EQ(variants[1].title->text, "safer");
  EXPECT_EQ(variants[1].parts->front().code.text, "spin-360");
  EXPECT_EQ(variants[1].slip->text, "3");
}
TEST(Blocks, GatherAllImpressionLines) {
  const Book book({whole});
  const auto& impressions = book.assembled.sheets[0].routine.impressions;
  ASSERT_EQ(impressions.size(), 2u);
  EXPECT_EQ(impressions[1].name.text, "performance");
}
TEST(Blocks, HoldRunsAndPanels) {
  const Book book({whole});
  const ast::Sheet& sheet = book.assembled.sheets[0];
  ASSERT_EQ(sheet.runs.size(), 1u);
  ASSERT_EQ(sheet.panels.size(), 1u);
  EXPECT_EQ(sheet.runs[0].elements.size(), 1u);
  EXPECT_EQ(sheet.runs[0].aspects.size(), 1u);
  EXPECT_EQ(sheet.runs[0].sync->size(), 1u);
  EXPECT_FALSE(sheet.runs[0].penalty);
  EXPECT_EQ(sheet.panels[0].elements[0].marks.size(), 2u);
  EXPECT_TRUE(sheet.panels[0].penalty);
  EXPECT_EQ(sheet.panels[0].result->text, "187.3425");
  EXPECT_EQ(&sheet.sources.of(sheet.panels[0].head.date.text), &book.sources[0]);
}
TEST(Blocks, TakeTheCoachsOneMarkOfAnElementInARun) {
  const std::string run = "routine \"A\"\nelement 1 lift\nrun 2026-01-01\n";
  const Book one({run + "element 1 base: 7.25\n"});
  ASSERT_TRUE(one.assembled.diagnostics.ok());
  const ast::ElementMarksLine& line = one.assembled.sheets[0].runs[0].marks.at(0);
  EXPECT_EQ(line.marks.at(0)->text, "7.25");
  EXPECT_TRUE(line.base);
  for (const char* other : {"element 1: 7.25 7.5\n", "element 1: -\n", "element 1: 7\nelement 1: clean\n"})
    EXPECT_EQ(Book({run + other}).assembled.diagnostics.errors(), 1u) << other;
}
TEST(Blocks, HoldTheBestMarkInTheHeaderAnElementAndAnOption) {
  const Book book({"routine \"A\"\nbest 8\nelement 1 lift\nbest 8.5\noption \"b\"\nbest: 9\n"});
  EXPECT_TRUE(book.assembled.diagnostics.ok());
  const ast::Routine& routine = book.assembled.sheets[0].routine;
  const auto& element = std::get<ast::Element>(routine.items[0]);
  EXPECT_EQ(routine.best->text, "8");
  EXPECT_EQ(element.variants[0].best->text, "8.5");
  EXPECT_EQ(element.variants[1].best->text, "9");
}
TEST(Blocks, StartANewSheetAtEveryRoutine) {
  const Book book({"routine \"A\"\nelement 1 lift\nrun 2026-01-01\nroutine \"B\"\nelement 1 lift\n"});
  ASSERT_EQ(book.assembled.sheets.size(), 2u);
  EXPECT_EQ(book.assembled.sheets[0].runs.size(), 1u);
  EXPECT_EQ(book.assembled.sheets[1].routine.items.size(), 1u);
  EXPECT_TRUE(book.assembled.diagnostics.ok());
}
TEST(Blocks, ContinueTheLastSheetInTheNextFile) {
  const Book book({"routine \"A\"\nelement 1 lift\n", "panel 2026-05-09\n element 1: 7\n"});
  ASSERT_EQ(book.assembled.sheets.size(), 1u);
  const ast::Sheet& sheet = book.assembled.sheets[0];
  ASSERT_EQ(sheet.panels.size(), 1u);
  EXPECT_EQ(&sheet.sources.of(sheet.panels[0].head.date.text), &book.sources[1]);
  EXPECT_EQ(&sheet.sources.of(sheet.routine.head.title.text), &book.sources[0]);
  EXPECT_TRUE(book.assembled.diagnostics.ok());
}
TEST(Blocks, ReadDifficultyWithAColonInAnElement) {
  const Book book({"routine \"A\"\nelement 1 lift\n difficulty: 2.4\npanel 2026-05-09\n difficulty: 7.5\n"});
  const auto& element = std::get<ast::Element>(book.assembled.sheets[0].routine.items[0]);
  EXPECT_EQ(element.variants[0].difficulty->text, "2.4");
  EXPECT_EQ(book.assembled.sheets[0].panels[0].aspects[0].aspect.text, "difficulty");
  EXPECT_TRUE(book.assembled.diagnostics.ok());
}
TEST(Blocks, AcceptManyElementsAndStillFindARepeatedOne) {
  std::string text = "routine \"A\"\n";
  for (int i = 1; i <= 3000; ++i) text += "element " + std::to_string(i) + " lift\n";
  text += "element 1700 lift\n";
  const Book book({text});
  EXPECT_EQ(book.assembled.diagnostics.errors(), 1u);
  EXPECT_EQ(book.assembled.diagnostics.list()[0].hint, "the first is on line 1701");
  EXPECT_EQ(book.assembled.sheets[0].routine.items.size(), 3000u);
}

TEST(Dates, MustExist) {
  const auto ok = [](const std::string& date) { return messages("routine \"A\"\nrun " + date).empty(); };
  EXPECT_TRUE(ok("2024-02-29"));
  EXPECT_TRUE(ok("2000-02-29"));
  EXPECT_TRUE(ok("2026-12-31"));
  EXPECT_FALSE(ok("2026-02-29"));
  EXPECT_FALSE(ok("1900-02-29"));
  EXPECT_FALSE(ok("2026-04-31"));
  EXPECT_FALSE(ok("2026-00-10"));
  EXPECT_FALSE(ok("2026-01-00"));
  EXPECT_FALSE(ok("0000-01-01"));
}

}  // namespace
}  // namespace landdrill::test
