#include "engine/chances/spreads.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

std::string text(const Spread& spread) {
  return std::string(word_of(spread.from)) + " " + spread.marks.text() + " " + spread.says;
}
std::string spread_of_all() {
  return replaced(reeds, "tempo 120\n", "tempo 120\nspread 0.4\nday 0.2\n");
}
const std::string three_panels =
    "panel 2026-05-01 \"One\"\nelement 1: 7 7.5 8 7.5 7.5\nelement 2: 7 7 7 7 7\nchoreography: 7.5 7.5 7.5 "
    "7.5 7.5\n"
    "performance: 8 8 8 8 8\n"
    "panel 2026-05-02 \"Two\"\nelement 1: 8 8.5 8 8 7.5\nelement 2: 7.5 7.5 7.5 7.5 7.5\n"
    "choreography: 8 8 8 8 8\nperformance: 8.5 8.5 8.5 8.5 8.5\n"
    "panel 2026-05-03 \"Three\"\nelement 1: 7 7 7 7 7\nelement 2: 6.5 6.5 6.5 6.5 6.5\n"
    "choreography: 7 7 7.5 6.5 7\nperformance: 7.5 7.5 7.5 7.5 7.5\n";

TEST(Spreads, AreEmptyWhereNothingSaysThemAndTheDayIsZero) {
  const ReadSheet sheet(reeds, pond());
  const Spreads found = spreads(sheet.routine(), {}, {});
  ASSERT_EQ(found.elements.size(), 2u);
  ASSERT_EQ(found.aspects.size(), 2u);
  EXPECT_EQ(text(found.elements[0]), " 0 ");
  EXPECT_EQ(text(found.aspects[1]), " 0 ");
  EXPECT_EQ(text(found.day), " 0 ");
}
TEST(Spreads, OfTheSheetHoldForEveryLineAndThoseOfAnElementForIt) {
  const ReadSheet sheet(replaced(spread_of_all(), "expect 7\n", "expect 7\nspread 0.6\n"), pond());
  const Spreads found = spreads(sheet.routine(), {}, {});
  EXPECT_EQ(text(found.elements[0]), "sheet 0.4 spread 0.4 in the sheet");
  EXPECT_EQ(text(found.elements[1]), "sheet 0.6 spread 0.6 in the sheet");
  EXPECT_EQ(text(found.aspects[0]), "sheet 0.4 spread 0.4 in the sheet");
  EXPECT_EQ(text(found.day), "sheet 0.2 day 0.2 in the sheet");
}
TEST(Spreads, ToldByHandComeBeforeTheSheet) {
  const ReadSheet sheet(spread_of_all(), pond());
  const Spreads found = spreads(sheet.routine(), {}, {number("0.7"), number("0"), std::nullopt});
  EXPECT_EQ(text(found.elements[1]), "told 0.7 told: 0.7");
  EXPECT_EQ(text(found.aspects[1]), "told 0.7 told: 0.7");
  EXPECT_EQ(text(found.day), "told 0 told: 0");
}
// Elements: squares 0.5 (first panel) + 0.5 (second), freedom 6 lines x 4 = 24: sqrt(1 / 24) = 0.2041.
// Aspects: 0.5 of 24: sqrt(0.5 / 24) = 0.1443.
TEST(Spreads, OfRecordedPanelsArePooledOverTheirLines) {
  const ReadSheet sheet(reeds + three_panels, pond());
  const Spreads found = spreads(sheet.routine(), {}, {});
  EXPECT_EQ(text(found.elements[0]), "panels 0.204 3 recorded panels, 30 marks");
  EXPECT_EQ(text(found.elements[1]), "panels 0.204 3 recorded panels, 30 marks");
  EXPECT_EQ(text(found.aspects[0]), "panels 0.144 3 recorded panels, 30 marks");
}
// Kept means lie off 7.5, 7, 7.5, 8 by 0; by 0.5; by -0.5, -0.5, -0.5, -0.5: standard deviation 0.5.
TEST(Spreads, OfTheDayAreHowPanelsLieOffTheExpectedMarks) {
  const ReadSheet sheet(reeds + three_panels, pond());
  EXPECT_EQ(text(spreads(sheet.routine(), {}, {}).day), "panels 0.5 3 recorded panels");
}
TEST(Spreads, OfTooFewMarksOrPanelsSayNothing) {
  const ReadSheet sheet(reeds + three_panels.substr(0, three_panels.find("panel 2026-05-02")), pond());
  const Spreads found = spreads(sheet.routine(), {}, {});
  EXPECT_EQ(text(found.elements[0]), " 0 ");  // 8 degrees of freedom
  EXPECT_EQ(text(found.day), " 0 ");
}
TEST(Spreads, OfTheSetComeLastWithTheirRow) {
  ValueSet set = pond();
  SpreadRule judges{SpreadRule::What::judges, "", "", number("0.33"), {}};
  judges.from.line = 2;
  SpreadRule day{SpreadRule::What::day, "", "", number("0.11"), {}};
  day.from.line = 3;
  set.spreads = {judges, day};
  const ReadSheet sheet(reeds, set);
  const Spreads found = spreads(sheet.routine(), {}, {});
  EXPECT_EQ(text(found.elements[0]), "set 0.33 spreads.csv line 2");
  EXPECT_EQ(found.elements[0].row, &set.spreads[0].from);
  EXPECT_EQ(text(found.day), "set 0.11 spreads.csv line 3");
  const ReadSheet with_panels(reeds + three_panels, set);
  EXPECT_EQ(spreads(with_panels.routine(), {}, {}).elements[0].from, SpreadFrom::panels);
}
TEST(Spreads, AskedOfOneSourceOnlyDoNotFallBackOnAnother) {
  const ReadSheet sheet(spread_of_all() + three_panels, pond());
  const Spreads panels = spreads(sheet.routine(), {}, {{}, {}, SpreadFrom::panels});
  EXPECT_EQ(panels.elements[0].marks.text(), "0.204");
  EXPECT_EQ(panels.day.marks.text(), "0.5");
  EXPECT_EQ(text(spreads(sheet.routine(), {}, {{}, {}, SpreadFrom::set}).elements[0]), " 0 ");
}
TEST(Spreads, OfAnotherOptionAreItsOwn) {
  const std::string text_of = replaced(reeds, "expect 7\n",
                                       "expect 7\nspread 0.6\noption \"easy\"\nparts spin-a, hold\nexpect 8\n"
                                       "spread 0.3\n");
  const ReadSheet sheet(text_of, pond());
  EXPECT_EQ(spreads(sheet.routine(), {{0, 1}, {}}, {}).elements[1].marks.text(), "0.3");
  EXPECT_EQ(spreads(sheet.routine(), {}, {}).elements[1].marks.text(), "0.6");
}

}  // namespace
}  // namespace landdrill
