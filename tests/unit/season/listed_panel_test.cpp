// Panels of a list as text: new ones, and marks put into kept ones.
#include <gtest/gtest.h>

#include <algorithm>

#include "engine/season/marks_import.h"
#include "grammar/print.h"

namespace landdrill {
namespace {

const std::string heading = "date,meet,routine,element,judge,mark\n";

class ListedPanelTest : public testing::Test {
 protected:
  const ListedPanel& panel(const std::string& list) {
    text_ = list;
    Diagnostics diagnostics;
    panels_ = read_marks_list({"marks.csv", text_}, diagnostics);
    EXPECT_EQ(to_string(diagnostics), "");
    return panels_.at(0);
  }
  std::string rows(const std::vector<std::string>& cells) const {
    std::string text = heading;
    for (const std::string& each : cells) text += "2026-05-09,Tarn Open,Low Water," + each + "\n";
    return text;
  }
  // The text, and what was counted.
  std::string into(const std::string& kept, const std::string& list) {
    const ListedLines merged =
        written_into(kept, panel(list), std::vector<std::string>{"choreography"}, spellings_);
    const MarksApart& marks = merged.marks;
    return print(merged.lines) + std::to_string(marks.there) + " there, " +
           std::to_string(marks.changed + marks.gone) + " changed, " + std::to_string(marks.added) +
           " added, " + std::to_string(marks.based) + " based, " + std::to_string(marks.unbased) + " not";
  }

  // Line, column and words of what was typed in the list for a view.
  std::string place_of(std::string_view piece) const {
    const std::string_view typed = spellings_.typed(piece);
    const Position at = position_of({"marks.csv", text_}, typed);
    return std::to_string(at.line) + ":" + std::to_string(at.column) + " " + std::string(typed);
  }

  Spellings spellings_;

 private:
  std::string text_;
  std::vector<ListedPanel> panels_;
};

const std::string kept =
    "# from the evening\npanel 2026-05-09 \"Tarn Open\"\n"
    "  element 1: 7 7.25 -\n"
    "  element 3 base: 6.5 6.5 6.5  # lost a part\n"
    "  sync: small x2\n  penalty: overtime\n  result: 101.5\n";

TEST_F(ListedPanelTest, WritesANewPanelWithADashForASeatWithoutARow) {
  EXPECT_EQ(print(written(panel(rows({"2,1,7.25", "2,3,7.5", "Choreography,1,8"})),
                          std::vector<std::string>{"choreography"}, spellings_)
                      .lines),
            "panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.25 - 7.50\n  choreography: 8.00\n");
}

TEST_F(ListedPanelTest, PutsAMarkInThePlaceOfTheKeptOneAndLeavesTheRest) {
  EXPECT_EQ(into(kept, rows({"1,2,7.75"})),
            "# from the evening\npanel 2026-05-09 \"Tarn Open\"\n"
            "  element 1: 7 7.75 -\n"
            "  element 3 base: 6.5 6.5 6.5  # lost a part\n"
            "  sync: small x2\n  penalty: overtime\n  result: 101.5\n"
            "5 there, 1 changed, 0 added, 0 based, 0 not");
}

TEST_F(ListedPanelTest, ChangesNothingWhenTheListSaysTheSame) {
  EXPECT_EQ(into(kept, rows({"1,1,7.00", "1,2,7.25", "1,3,-", "3,1,6.50"})),
            kept + "5 there, 0 changed, 0 added, 0 based, 0 not");
}

TEST_F(ListedPanelTest, TakesAMarkAwayAndGivesOneThatWasMissing) {
  EXPECT_EQ(into("panel 2026-05-09\n  element 1: 7 7.25 -\n", rows({"1,1,-", "1,3,7.5"})),
            "panel 2026-05-09\n  element 1: - 7.25 7.50\n2 there, 1 changed, 1 added, 0 based, 0 not");
}

TEST_F(ListedPanelTest, PutsNewLinesInTheirPlaces) {
  EXPECT_EQ(into(kept, rows({"2,1,8", "4,1,9", "CHOREOGRAPHY,2,6"})),
            "# from the evening\npanel 2026-05-09 \"Tarn Open\"\n"
            "  element 1: 7 7.25 -\n"
            "  element 2: 8.00\n"
            "  element 3 base: 6.5 6.5 6.5  # lost a part\n"
            "  element 4: 9.00\n"
            "  choreography: - 6.00\n"
            "  sync: small x2\n  penalty: overtime\n  result: 101.5\n"
            "5 there, 0 changed, 3 added, 0 based, 0 not");
}

TEST_F(ListedPanelTest, LeavesTheBaseMarkUnlessTheListHasAColumnForIt) {
  EXPECT_EQ(into("panel 2026-05-09\n  element 3 base: 6.5\n", rows({"3,1,6.75"})),
            "panel 2026-05-09\n  element 3 base: 6.75\n1 there, 1 changed, 0 added, 0 based, 0 not");
  const std::string with = "date,meet,routine,element,judge,mark,base\n2026-05-09,Tarn Open,Low Water,";
  EXPECT_EQ(
      into("panel 2026-05-09\n  element 3 base: 6.5\n  element 4: 7\n",
           with + "3,1,6.5,\n2026-05-09,Tarn Open,Low Water,4,1,7,yes\n"),
      "panel 2026-05-09\n  element 3: 6.5\n  element 4 base: 7\n2 there, 0 changed, 0 added, 1 based, 1 not");
}

TEST_F(ListedPanelTest, PointsIntoTheListWhereverItsSpellingAllowsIt) {
  const ast::Panel block =
      panel_of(written(panel(rows({"Element 12,1,7.25", "Element 12,3,7.5"})), {}, spellings_).lines);
  const ast::ElementMarksLine& line = block.elements.at(0);
  EXPECT_EQ(place_of(line.element.text), "2:32 Element 12");
  EXPECT_EQ(place_of(line.marks[0]->text), "2:45 7.25");
  EXPECT_FALSE(line.marks[1]);
  EXPECT_EQ(line.marks[2]->text, "7.50");
  EXPECT_EQ(place_of(line.marks[2]->text), "3:45 7.5");
  EXPECT_EQ(place_of(block.head.title->text), "2:12 Tarn Open");
}

TEST_F(ListedPanelTest, SaysWhatIsWrongWithKeptWordsOfItsLineOrElseOfItsDate) {
  const ast::Panel block =
      panel_of(written_into(kept, panel(rows({"3,2,9", "3,3,6.5"})), {}, spellings_).lines);
  EXPECT_EQ(place_of(block.elements.at(0).marks[1]->text), "2:1 2026-05-09");
  EXPECT_EQ(place_of((*block.sync)[0].code.text), "2:1 2026-05-09");
  EXPECT_EQ(place_of(block.elements.at(1).marks[0]->text), "2:32 3");
  EXPECT_EQ(place_of(block.elements.at(1).marks[1]->text), "2:36 9");
  EXPECT_EQ(place_of(block.elements.at(1).marks[2]->text), "3:36 6.5");
}

// Of element 2, or 02.
ast::JudgeMarks marks_of_2(const ast::Panel& panel) {
  for (const ast::ElementMarksLine& line : panel.elements)
    if (line.element.text.ends_with('2')) return line.marks;
  return {};
}

TEST_F(ListedPanelTest, PutsRowsOfOneLineInTwoSpellingsTogether) {
  const ListedPanel& both = panel(rows({"2,1,7", "02,2,7.25", "Choreography,1,8", "choreography,2,8.25"}));
  const std::vector<std::string> aspects = {"choreography"};
  for (const ListedLines& lines :
       {written(both, aspects, spellings_), written_into(kept, both, aspects, spellings_)}) {
    EXPECT_TRUE(lines.twice.empty());
    const ast::Panel block = panel_of(lines.lines);
    const ast::JudgeMarks second = marks_of_2(block);
    ASSERT_GE(second.size(), 2u);
    EXPECT_EQ(second[0]->text, "7.00");
    EXPECT_EQ(second[1]->text, "7.25");
    ASSERT_EQ(block.aspects.size(), 1u);
    EXPECT_EQ(block.aspects[0].marks[1]->text, "8.25");
  }
}

TEST_F(ListedPanelTest, KnowsOfTwoLinesThatGiveOneJudgesMarkAndKeepsTheFirst) {
  const ListedPanel& both = panel(rows({"2,1,7", "02,1,6.5", "02,2,7.25"}));
  for (const ListedLines& lines : {written(both, {}, spellings_), written_into(kept, both, {}, spellings_)}) {
    ASSERT_EQ(lines.twice.size(), 1u);
    EXPECT_EQ(lines.twice[0].line->name + " " + lines.twice[0].first->name, "02 2");
    EXPECT_EQ(lines.twice[0].judge, 1u);
    const ast::Panel block = panel_of(lines.lines);
    const ast::JudgeMarks second = marks_of_2(block);
    ASSERT_GE(second.size(), 2u);
    EXPECT_EQ(second[0]->text, "7.00");
    EXPECT_EQ(second[1]->text, "7.25");
  }
}

TEST_F(ListedPanelTest, TakesANumberThatIsTooLargeForAnElementAsANewLine) {
  EXPECT_EQ(
      into("panel 2026-05-09\n  element 1: 7\n", rows({"99999999999999999999999999,1,8"})),
      "panel 2026-05-09\n  element 1: 7\n  element 99999999999999999999999999: 8.00\n1 there, 0 changed, 1 "
      "added, 0 based, 0 not");
}

}  // namespace
}  // namespace landdrill
