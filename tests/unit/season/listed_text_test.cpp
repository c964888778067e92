// Panels of a list as text: new ones, and marks put into kept ones.
#include "engine/season/listed_text.h"

#include <gtest/gtest.h>

namespace landdrill {
namespace {

const std::string heading = "date,meet,routine,element,judge,mark\n";

class ListedTextTest : public testing::Test {
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
    const ListedText merged = written_into(kept, panel(list), std::vector<std::string>{"choreography"});
    const MarksApart& marks = merged.marks;
    return merged.text + std::to_string(marks.there) + " there, " +
           std::to_string(marks.changed + marks.gone) + " changed, " + std::to_string(marks.added) +
           " added, " + std::to_string(marks.based) + " based, " + std::to_string(marks.unbased) + " not";
  }

 private:
  std::string text_;
  std::vector<ListedPanel> panels_;
};

const std::string kept =
    "# from the evening\npanel 2026-05-09 \"Tarn Open\"\n"
    "  element 1: 7 7.25 -\n"
    "  element 3 base: 6.5 6.5 6.5  # lost a part\n"
    "  sync: small x2\n  penalty: overtime\n  result: 101.5\n";

TEST_F(ListedTextTest, WritesANewPanelWithADashForASeatWithoutARow) {
  EXPECT_EQ(written(panel(rows({"2,1,7.25", "2,3,7.5", "Choreography,1,8"})),
                    std::vector<std::string>{"choreography"})
                .text,
            "panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.25 - 7.50\n  choreography: 8.00\n");
}

TEST_F(ListedTextTest, PutsAMarkInThePlaceOfTheKeptOneAndLeavesTheRest) {
  EXPECT_EQ(into(kept, rows({"1,2,7.75"})),
            "# from the evening\npanel 2026-05-09 \"Tarn Open\"\n"
            "  element 1: 7 7.75 -\n"
            "  element 3 base: 6.5 6.5 6.5  # lost a part\n"
            "  sync: small x2\n  penalty: overtime\n  result: 101.5\n"
            "5 there, 1 changed, 0 added, 0 based, 0 not");
}

TEST_F(ListedTextTest, ChangesNothingWhenTheListSaysTheSame) {
  EXPECT_EQ(into(kept, rows({"1,1,7.00", "1,2,7.25", "1,3,-", "3,1,6.50"})),
            kept + "5 there, 0 changed, 0 added, 0 based, 0 not");
}

TEST_F(ListedTextTest, TakesAMarkAwayAndGivesOneThatWasMissing) {
  EXPECT_EQ(into("panel 2026-05-09\n  element 1: 7 7.25 -\n", rows({"1,1,-", "1,3,7.5"})),
            "panel 2026-05-09\n  element 1: - 7.25 7.50\n2 there, 1 changed, 1 added, 0 based, 0 not");
}

TEST_F(ListedTextTest, PutsNewLinesInTheirPlaces) {
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

TEST_F(ListedTextTest, LeavesTheBaseMarkUnlessTheListHasAColumnForIt) {
  EXPECT_EQ(into("panel 2026-05-09\n  element 3 base: 6.5\n", rows({"3,1,6.75"})),
            "panel 2026-05-09\n  element 3 base: 6.75\n1 there, 1 changed, 0 added, 0 based, 0 not");
  const std::string with = "date,meet,routine,element,judge,mark,base\n2026-05-09,Tarn Open,Low Water,";
  EXPECT_EQ(
      into("panel 2026-05-09\n  element 3 base: 6.5\n  element 4: 7\n",
           with + "3,1,6.5,\n2026-05-09,Tarn Open,Low Water,4,1,7,yes\n"),
      "panel 2026-05-09\n  element 3: 6.5\n  element 4 base: 7\n2 there, 0 changed, 0 added, 1 based, 1 not");
}

TEST_F(ListedTextTest, KnowsWhereInTheListAPieceOfTheTextStands) {
  const ListedText text = written(panel(rows({"12,1,7.25", "12,3,7.5"})), {});
  //                                  "  element 12: 7.25 - 7.50"
  EXPECT_EQ(text.piece_at(1, 15), "7.25");
  EXPECT_EQ(text.piece_at(1, 20), "12");  // nothing was given for this seat
  EXPECT_EQ(text.piece_at(1, 22), "7.5");
  EXPECT_EQ(text.piece_at(1, 11), "12");
  EXPECT_EQ(text.piece_at(0, 1), "");
  EXPECT_EQ(text.piece_at(2, 1), "");
}

TEST_F(ListedTextTest, SaysNothingOfKeptLinesThatTheListDoesNotSpeakOf) {
  const ListedText text = written_into(kept, panel(rows({"3,2,9"})), {});
  EXPECT_EQ(text.piece_at(2, 14), "");
  EXPECT_EQ(text.piece_at(3, 23), "9");
}

TEST_F(ListedTextTest, TakesANumberThatIsTooLargeForAnElementAsANewLine) {
  EXPECT_EQ(
      into("panel 2026-05-09\n  element 1: 7\n", rows({"99999999999999999999999999,1,8"})),
      "panel 2026-05-09\n  element 1: 7\n  element 99999999999999999999999999: 8.00\n1 there, 0 changed, 1 "
      "added, 0 based, 0 not");
}

}  // namespace
}  // namespace landdrill
