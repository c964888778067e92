#include <gtest/gtest.h>

#include "engine/judging/lessons.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

std::vector<ProgressPoint> progress_of(const std::string& text,
                                       const std::vector<std::size_t>& options = {}) {
  const ReadSheet sheet(text, kit::pond());
  return progress(sheet.routine(), options);
}
std::string text_of(const std::optional<Points>& points) {
  return points ? points->text() : "none";
}

const std::string full_run =
    "run 2026-05-01 \"Tuesday\"\n"
    "element 1: bent-knee medium\n"
    "element 2: bent-knee large\n"
    "choreography: 7.5\n"
    "performance: 8\n"
    "sync: small x2\n"
    "penalty: overtime\n";
const std::string full_panel =
    "panel 2026-05-01 \"Tarn Open\"\n"
    "element 1: 7.5 7.5 7.5 7 8\n"
    "element 2 base: 6 6 6 5 7\n"
    "choreography: 7.5 7.5 7.5 7.5 7.5\n"
    "performance: 8 8 8 8 8\n"
    "sync: small x3\n"
    "result: 70\n";

TEST(Progress, HasAPointForEachRunAndPanelByDateRunsFirst) {
  const std::vector<ProgressPoint> points =
      progress_of(kit::reeds + full_panel + "run 2026-05-02\nelement 1: splash small\n" + full_run +
                  "run 2026-04-01\nelement 1: bent-knee small\n");
  std::string order;
  for (const ProgressPoint& point : points) order += point.date + (point.panel ? " panel, " : " run, ");
  EXPECT_EQ(order, "2026-04-01 run, 2026-05-01 run, 2026-05-01 panel, 2026-05-02 run, ");
  EXPECT_EQ(points[1].title, "Tuesday");
  EXPECT_EQ(points[2].title, "Tarn Open");
}

// 1.8 x 7.5 = 13.5; base 0.5 x 6 = 3; 4 x 7.5 + 3 x 8 = 54; less 0.3.
TEST(Progress, OfAPanelHasItsPointsAndWhatWasTaken) {
  const ProgressPoint point = progress_of(kit::reeds + full_panel).front();
  EXPECT_TRUE(point.panel);
  EXPECT_EQ(point.declared, kit::difficulty("4.5"));
  EXPECT_EQ(point.credited, kit::difficulty("2.3"));
  EXPECT_EQ(point.base_marks, 1u);
  EXPECT_DOUBLE_EQ(*point.mark, 6.75);
  EXPECT_EQ(point.marked, 2u);
  EXPECT_EQ(point.of, 2u);
  EXPECT_EQ(point.elements, kit::points("16.5"));
  EXPECT_EQ(point.impression, kit::points("54"));
  EXPECT_EQ(point.sync, kit::points("0.3"));
  EXPECT_EQ(point.penalties, kit::points("0"));
  EXPECT_EQ(point.total, kit::points("70.2"));
  EXPECT_EQ(point.announced, kit::points("70"));
}

// 1.8 x 9.5 + 2.7 x 9 = 41.4; 54; less 0.2 and 1.
TEST(Progress, OfARunHasWhatTheCoachSaw) {
  const ProgressPoint point = progress_of(kit::reeds + full_run).front();
  EXPECT_FALSE(point.panel);
  EXPECT_DOUBLE_EQ(*point.mark, 9.25);
  EXPECT_EQ(point.elements, kit::points("41.4"));
  EXPECT_EQ(point.sync, kit::points("0.2"));
  EXPECT_EQ(point.penalties, kit::points("1"));
  EXPECT_EQ(point.total, kit::points("94.2"));
  EXPECT_FALSE(point.announced);
}

TEST(Progress, OfARunThatSawOnlyAPartHasNoTotalAndNothingFromTheSheet) {
  const ProgressPoint point =
      progress_of(kit::reeds + "run 2026-05-01\nelement 1 base: bent-knee large\n").front();
  EXPECT_DOUBLE_EQ(*point.mark, 9);
  EXPECT_EQ(point.marked, 1u);
  EXPECT_EQ(point.of, 2u);
  EXPECT_EQ(point.base_marks, 1u);
  EXPECT_EQ(point.credited, kit::difficulty("3.2"));
  EXPECT_EQ(text_of(point.elements) + " " + text_of(point.impression) + " " + text_of(point.total),
            "none none none");
  EXPECT_EQ(text_of(point.sync) + " " + text_of(point.penalties), "none none");
}

TEST(Progress, TellsTwoRunsOfOneDayApart) {
  const std::vector<ProgressPoint> points =
      progress_of(kit::reeds +
                  "run 2026-05-01\nelement 1: bent-knee small\nrun 2026-05-01\nelement 1: bent-knee large\n");
  ASSERT_EQ(points.size(), 2u);
  EXPECT_DOUBLE_EQ(*points[0].mark, 9.75);
  EXPECT_DOUBLE_EQ(*points[1].mark, 9);
}

TEST(Progress, TakesTheOptionsForPanelsAndRunsAsWritten) {
  const std::string sheet = kit::replaced(kit::reeds, "expect 7.5\n",
                                          "expect 7.5\noption \"harder\"\nparts spin-a, spin-b\nexpect 6\n");
  const std::vector<ProgressPoint> points = progress_of(sheet + full_run + full_panel, {1});
  EXPECT_EQ(points[0].declared, kit::difficulty("4.5"));
  EXPECT_EQ(points[1].declared, kit::difficulty("5.5"));
}

// 10 x (2.1 x 6.7 + 1.4 x 7) / 3.5, to four places.
TEST(Progress, HasThePointsOfElementsThatAreWeightedTogether) {
  const std::string figures =
      "routine \"Figures\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\n"
      "element 2 figure\nparts otter\n";
  const std::vector<ProgressPoint> points =
      progress_of(figures + "panel 2026-05-09\nelement 1: 6.5 6.6 6.7 6.8 6.9\nelement 2: 7 7 7 7 7\n" +
                  "panel 2026-05-10\nelement 1: 6.5 6.6 6.7 6.8 6.9\n");
  EXPECT_EQ(points[0].elements, kit::points("68.2"));
  EXPECT_EQ(points[0].total, kit::points("68.2"));
  EXPECT_FALSE(points[0].impression);
  EXPECT_FALSE(points[1].elements);
  EXPECT_NEAR(*points[1].mark, 6.7, 1e-12);
}

TEST(Progress, OfARoutineMarkedAsAWholeHasNoMarkOfElements) {
  const std::string whole =
      "routine \"Whole\"\nevent whole\nvalues pond\nelement 1 figure\nparts heron\n"
      "panel 2026-05-09\nchoreography: 7 7 7\nperformance: 8 8 8\n";
  const ProgressPoint point = progress_of(whole).front();
  EXPECT_FALSE(point.mark || point.elements);
  EXPECT_EQ(point.of, 0u);
  EXPECT_EQ(point.impression, kit::points("74"));
  EXPECT_EQ(point.total, kit::points("74"));
}

TEST(Progress, OfNoRunAndNoPanelIsEmpty) {
  EXPECT_TRUE(progress_of(kit::reeds).empty());
}

}  // namespace
}  // namespace landdrill
