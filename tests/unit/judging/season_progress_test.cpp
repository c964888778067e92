#include <gtest/gtest.h>

#include "engine/judging/progress.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

ProgressPoint panel(const std::string& date, double mark, const char* total) {
  ProgressPoint point;
  point.date = date;
  point.mark = mark;
  point.marked = point.of = 2;
  point.total = kit::points(total);
  point.sync = point.penalties = Points();
  return point;
}
ProgressVersion version(int number, const char* difficulty, std::vector<ProgressPoint> points) {
  return {number, 3, {}, "pond", 2, kit::difficulty(difficulty), 2, std::move(points), "as written", 1};
}
std::vector<std::string> sentences(std::vector<ProgressVersion> versions) {
  return season_progress({"Reeds", "open", "Open water"}, std::move(versions)).sentences;
}
using Texts = std::vector<std::string>;

TEST(SeasonProgress, ComparesTheFirstPanelWithTheLast) {
  EXPECT_EQ(sentences({version(1, "4",
                               {panel("2026-03-01", 7.25, "80.5"), panel("2026-04-01", 9, "99"),
                                panel("2026-05-01", 7.5, "79.25")})}),
            (Texts{"From the panel of 2026-03-01 to that of 2026-05-01 the mean mark of an element went from "
                   "7.25 to 7.50 (+0.25).",
                   "The total went from 80.50 to 79.25 (-1.25)."}));
}

TEST(SeasonProgress, TakesTheChangeFromTheMarksAndNotFromTheirFigures) {
  EXPECT_EQ(
      sentences({version(1, "4", {panel("2026-03-01", 7.125, "80"), panel("2026-05-01", 7.6, "80")})})
          .front(),
      "From the panel of 2026-03-01 to that of 2026-05-01 the mean mark of an element went from 7.13 to "
      "7.60 (+0.48).");
}

TEST(SeasonProgress, SaysWhatStayed) {
  EXPECT_EQ(sentences({version(1, "4", {panel("2026-03-01", 7.5, "80"), panel("2026-05-01", 7.5, "80")})}),
            (Texts{"From the panel of 2026-03-01 to that of 2026-05-01 the mean mark of an element stayed at "
                   "7.50.",
                   "The total stayed at 80.00."}));
}

TEST(SeasonProgress, SaysThatTheRoutineChanged) {
  const Texts said = sentences({version(1, "4", {panel("2026-03-01", 7.5, "80")}),
                                version(3, "3.5", {panel("2026-05-01", 7.5, "80")})});
  EXPECT_EQ(said.back(),
            "The routine was changed, version 1 to 3: its difficulty went from 4.00 to 3.50 (-0.50).");
}

TEST(SeasonProgress, TellsWhetherTheValueSetChanged) {
  const ProgressVersion first = version(1, "4", {panel("2026-03-01", 7.5, "80")});
  ProgressVersion second = version(2, "4", {panel("2026-05-01", 7.5, "80")});
  second.edition = 2;
  EXPECT_EQ(sentences({first, second}).back(),
            "The value set was changed, version 1 to 2: its difficulty stayed at 4.00.");
  second.words = "in other words";
  EXPECT_EQ(sentences({first, second}).back(),
            "The routine and its value set were changed, version 1 to 2: its difficulty stayed at 4.00.");
}

TEST(SeasonProgress, TakesFirstAndLastByTheirDayWhateverTheVersion) {
  ProgressPoint spring = panel("2026-03-01", 7.25, "75"), summer = panel("2026-06-01", 7.75, "122.1");
  spring.title = "Heron Cup";
  const Texts said = sentences({version(1, "4", {summer}), version(2, "4", {spring})});
  EXPECT_EQ(said[0],
            "From the panel of 2026-03-01 \"Heron Cup\" to that of 2026-06-01 the mean mark of an element "
            "went from 7.25 to 7.75 (+0.50).");
  EXPECT_EQ(said[1], "The total went from 75.00 to 122.10 (+47.10).");
}

TEST(SeasonProgress, TakesPanelsOfOneDayByTheirTitles) {
  ProgressPoint final = panel("2026-05-01", 7.75, "80"), heat = panel("2026-05-01", 7.5, "79");
  final.title = "Final";
  heat.title = "Heat";
  const Texts said =
      sentences({version(1, "4", {panel("2026-03-01", 7.25, "75"), heat}), version(2, "4", {final})});
  EXPECT_NE(said[0].find("to that of 2026-05-01 \"Heat\""), std::string::npos) << said[0];

  const SeasonProgress one_day =
      season_progress({"Reeds", "open", "Open water"}, {version(1, "4", {final, heat})});
  EXPECT_TRUE(one_day.sentences.empty());
  EXPECT_EQ(one_day.warnings, (Texts{"All panels are of one day: there is no course to see yet."}));
}

TEST(SeasonProgress, SaysTheDifficultyOfAVersionThatWasNotSwumYet) {
  const Texts said = sentences({version(1, "4", {panel("2026-03-01", 7.5, "80")}), version(2, "4.5", {})});
  EXPECT_EQ(said,
            (Texts{"The routine was changed, version 1 to 2: its difficulty went from 4.00 to 4.50 (+0.50).",
                   "Version 2 was not swum yet."}));
}

TEST(SeasonProgress, NamesThePanelsWithTheTotalWhenTheirMarksAreNotThere) {
  ProgressPoint first = panel("2026-03-01", 7.5, "80");
  first.mark.reset();
  EXPECT_EQ(sentences({version(1, "4", {first, panel("2026-05-01", 7.5, "80")})}),
            (Texts{"From the panel of 2026-03-01 to that of 2026-05-01 the total stayed at 80.00."}));
}

TEST(SeasonProgress, SaysWhatPanelsTook) {
  ProgressPoint first = panel("2026-03-01", 7.5, "80"), last = panel("2026-05-01", 7.5, "80");
  first.sync = kit::points("0.4");
  first.penalties = kit::points("1");
  last.base_marks = 2;
  const Texts said = sentences({version(1, "4", {first, last})});
  ASSERT_EQ(said.size(), 4u);
  EXPECT_EQ(said[2], "What panels took for sync errors and penalties went from 1.40 to 0.00.");
  EXPECT_EQ(said[3], "Base marks: 0 at the first, 2 at the last.");
}

TEST(SeasonProgress, LeavesRunsOutOfWhatPanelsSaw) {
  ProgressPoint run = panel("2026-02-01", 5, "50");
  run.panel = false;
  const SeasonProgress season = season_progress({"Reeds", "open", "Open water"},
                                                {version(1, "4", {run, panel("2026-03-01", 7.5, "80")})});
  EXPECT_TRUE(season.sentences.empty());
  EXPECT_EQ(season.warnings, (Texts{"One panel only: there is no course to see yet."}));
}

TEST(SeasonProgress, WarnsOfAPanelThatDidNotMarkAll) {
  ProgressPoint part = panel("2026-03-01", 7.5, "80");
  part.marked = 1;
  part.total.reset();
  const SeasonProgress season = season_progress({"Reeds", "open", "Open water"},
                                                {version(1, "4", {part, panel("2026-05-01", 7.5, "80")})});
  EXPECT_EQ(season.warnings, (Texts{"The panel of 2026-03-01 marked 1 of 2 elements: it has no total."}));
  EXPECT_EQ(season.sentences.size(), 1u);
}

}  // namespace
}  // namespace landdrill
