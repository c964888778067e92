#include "engine/report/grid.h"

#include <gtest/gtest.h>

#include "sample.h"

namespace landdrill::report {
namespace {

using enum Align;

TEST(Grid, PutsDecimalPointsInOneLine) {
  Grid grid({{"", "element"}, {"", "points", amount}});
  grid.add({"Undertow", "38.0625"});
  grid.add({"Lantern", "9.5"});
  grid.add({"Penalties", "-12"});
  EXPECT_EQ(grid.text(80),
            "element      points\n"
            "Undertow    38.0625\n"
            "Lantern      9.5\n"
            "Penalties  -12\n");
}

TEST(Grid, PutsWordsInAnAmountColumnAtTheRightEdge) {
  Grid grid({{"", "element"}, {"", "DD", amount}});
  grid.add({"Undertow", "4.25"});
  grid.add({"Performance", "x 3"});
  EXPECT_EQ(grid.text(80),
            "element        DD\n"
            "Undertow     4.25\n"
            "Performance   x 3\n");
}

TEST(Grid, AlignsWideAndAccentedTitles) {
  Grid grid({{"", "element"}, {"", "points", amount}});
  grid.add({"水の精", "1.5"});
  grid.add({"Élan", "10.5"});
  EXPECT_EQ(grid.text(80),
            "element  points\n"
            "水の精      1.5\n"
            "Élan       10.5\n");
}

TEST(Grid, WrapsTheColumnThatMay) {
  Grid grid({{"", "element", words, Wraps::yes}, {"", "points", amount}});
  grid.add({"The long way down", "9.5"});
  EXPECT_EQ(grid.text(17),
            "element    points\n"
            "The long      9.5\n"
            "way down\n");
}

TEST(Grid, NeverDrawsALineWiderThanAskedWhileThereIsAColumnToWrap) {
  Grid grid({{"", "element", words, Wraps::yes}, {"", "why", words, Wraps::yes}, {"", "points", amount}});
  grid.add(
      {"The long way down the river and back", "because of the bent knee and the short spin", "-34.5833"});
  for (int width = 14; width < 100; ++width)
    EXPECT_EQ(report_test::layout_fault(grid.text(width), width), "");
}

TEST(Grid, PutsAGroupsHeadingAboveItsFirstColumn) {
  Grid grid({{"", "element"},
             {"", "mark", amount, Wraps::no, Seen::always, "estimate"},
             {"", "points", amount, Wraps::no, Seen::always, "estimate"},
             {"", "mark", amount, Wraps::no, Seen::always, "panel"}});
  grid.add({"Undertow", "7.25", "38.0625", "6.75"});
  EXPECT_EQ(grid.text(80),
            "          estimate       panel\n"
            "element   mark   points  mark\n"
            "Undertow  7.25  38.0625  6.75\n");
}

TEST(Grid, WithoutRowsIsEmpty) {
  EXPECT_EQ(Grid({PageColumn{"", "element"}}).text(80), "");
}

TEST(Grid, ColoursWholeLinesAndOnlyWhenAsked) {
  Grid grid({PageColumn{"", "element"}});
  grid.add({"Total"}, Look::total);
  EXPECT_EQ(grid.text(80, true), "element\n\x1b[1mTotal\x1b[0m\n");
  EXPECT_EQ(grid.text(80, false), "element\nTotal\n");
}

}  // namespace
}  // namespace landdrill::report
