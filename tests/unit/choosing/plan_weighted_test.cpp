// Plans where elements are weighted by difficulty together.
#include <gtest/gtest.h>

#include <algorithm>

#include "engine/choosing/plan_weighing.h"
#include "tests/unit/kit/planning_kit.h"

namespace landdrill {
namespace {

using kit::Dice;
using kit::MadeSheet;
using kit::pond;
using kit::ReadSheet;
using kit::replaced;

Plan planned(const std::string& text, const PlanWish& how = {}) {
  const ReadSheet sheet(text, pond());
  return plan(sheet.routine(), {}, how);
}

TEST(PlanWeighted, TakesTheHighestQuotientAndNotTheHighestDifficulty) {
  const std::string session =
      "routine \"Session\"\nevent session\nvalues pond\n"
      "element 1 figure\nparts heron\nexpect 7\noption \"other\"\nparts otter\nexpect 7.5\n"
      "element 2 figure\nparts heron\nexpect 6\noption \"other\"\nparts otter\nexpect 6.1\n";
  const Plan best = planned(session);
  ASSERT_EQ(best.choices.size(), 4u);
  // (7 x 2.1 + 6.1 x 1.4) / 3.5 x 10 = 66.4; both otters 68
  EXPECT_EQ(best.choices[0].options, (std::vector<std::size_t>{1, 1}));
  EXPECT_EQ(best.choices[0].total.text(), "68");
  EXPECT_EQ(best.choices[1].total.text(), "66.4");
}

// Against every programme read and scored as a sheet of its own.
int feasible = 0;
void expect_as_by_trying_all(const MadeSheet& made) {
  SCOPED_TRACE(made.text());
  const Plan found = planned(made.text());
  const std::vector<kit::Tried> all = kit::all_programmes(made, pond());
  EXPECT_TRUE(found.obstacles.empty());
  EXPECT_TRUE(found.proved);
  ASSERT_EQ(found.choices.size(), std::min<std::size_t>(all.size(), 6));
  for (std::size_t i = 0; i < found.choices.size(); ++i) {
    EXPECT_EQ(found.choices[i].options, all[i].options) << i;
    EXPECT_EQ(found.choices[i].total.value(), round(all[i].total, 6, Rounding::half_up)) << i;
  }
  feasible += all.empty() ? 0 : 1;
}

TEST(PlanWeighted, IsAsGoodAsTryingEveryProgramme) {
  for (const char* const event : {"session", "mixed"}) {
    feasible = 0;
    for (std::uint64_t seed = 0; seed < 150; ++seed) {
      SCOPED_TRACE("seed " + std::to_string(seed));
      Dice dice(seed);
      expect_as_by_trying_all(kit::made_up_weighted(dice, event));
    }
    EXPECT_GT(feasible, 60) << event;
  }
}

// Harder ways are marked lower; six in ten may get their base mark.
std::string large(Dice& dice, int elements, int options) {
  std::string sheet = "routine \"Large\"\nevent session\nvalues pond\ntempo 120\nlimit under most " +
                      std::to_string(elements * 5) + "\n";
  const auto tenths = [](std::int64_t number) {
    return Decimal::from_units(number * Decimal::one / 10).text();
  };
  for (int i = 1; i <= elements; ++i) {
    for (int c = 0; c < options; ++c) {
      sheet += c == 0 ? "element " + std::to_string(i) + " hybrid\n"
                      : "option \"way " + std::to_string(c) + "\"\n";
      const std::int64_t difficulty = dice.from_to(12, 40);
      sheet +=
          "difficulty " + tenths(difficulty) + "\ncounts " + std::to_string(dice.from_to(4, 16)) + " under\n";
      sheet += "expect " + tenths(90 - difficulty + dice.from_to(0, 12)) + "\n";
      if (dice.from_to(0, 9) < 6) sheet += "slip " + std::to_string(dice.from_to(1, 40)) + "%\n";
    }
  }
  return sheet;
}

TEST(PlanWeighted, ProvesTheBestOfThousandsWithUncertainBaseMarks) {
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  for (std::uint64_t seed = 0; seed < 5; ++seed) {
    Dice dice(seed);
    const Plan found = planned(large(dice, 7, 3), how);
    EXPECT_TRUE(found.proved) << seed;
    EXPECT_EQ(found.choices.size(), 6u);
  }
}

TEST(PlanWeighted, TriesTheMostPromisingOfTenMillionAndSaysHowMuchBetterAnotherCouldBe) {
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  for (std::uint64_t seed = 0; seed < 5; ++seed) {
    Dice dice(seed);
    const Plan found = planned(large(dice, 9, 6), how);
    EXPECT_FALSE(found.proved) << seed;
    EXPECT_GE(found.tried, 300u);
    EXPECT_EQ(found.choices.size(), 6u);
    ASSERT_TRUE(found.gap);
    EXPECT_GT(*found.gap, Decimal());
  }
}

TEST(PlanWeighted, OfFewTriedIsBehindTheBestByNoMoreThanItsGap) {
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Dice dice(seed);
    const std::string few = large(dice, 6, 3);
    const Plan best = planned(few, how);
    PlanWish shorter = how;
    shorter.most_programmes = 20;
    const Plan told = planned(few, shorter);
    EXPECT_FALSE(told.proved);
    ASSERT_TRUE(told.gap);
    EXPECT_LE(told.choices.at(0).total, best.choices.at(0).total);
    EXPECT_LE((best.choices.at(0).total - told.choices.at(0).total).value(), *told.gap);
    // As written it may be more under water than the sheet's limit allows.
    if (told.as_written_allowed) {
      EXPECT_GE(told.choices.at(0).total, told.as_written->total);
    }
  }
}

// 729 programmes of six figures.
std::string figures() {
  std::string sheet = "routine \"Figures\"\nevent session\nvalues pond\nspread 0.3\nday 0.2\n";
  for (int i = 1; i <= 6; ++i) {
    const std::string tenth = std::to_string(i);
    sheet += "element " + tenth + " figure\nparts heron\nexpect 7." + tenth +
             "\noption \"low\"\nparts otter\nexpect 7.4\noption \"slow\"\nparts heron\nexpect 6." + tenth +
             "\n";
  }
  return sheet;
}

TEST(PlanWeighted, TriesTheMostPromisingWhereOddsAreTooManyAndSaysSo) {
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  how.aim = PlanWish::For::quantile;
  const Plan found = planned(figures(), how);
  ASSERT_TRUE(found.obstacles.empty());
  EXPECT_FALSE(found.proved);
  EXPECT_GT(found.tried, 6u);
  EXPECT_LE(found.tried, most_weighted_forecasts);
  ASSERT_EQ(found.choices.size(), 6u);
  for (std::size_t i = 1; i < 6; ++i) EXPECT_LE(*found.choices[i].quantile, *found.choices[i - 1].quantile);
  EXPECT_GT(*found.choices[0].quantile, *found.as_written->quantile);
  // No total is above 100; rounded up to hundredths.
  ASSERT_TRUE(found.gap);
  EXPECT_GE(*found.gap, Decimal::whole(100) - *found.choices[0].quantile);
  EXPECT_LE(*found.gap, kit::number("100.02") - *found.choices[0].quantile);
  how.aim = PlanWish::For::target;
  how.target = Decimal::whole(200);
  // Out of reach for all: then the highest expected total counts.
  const PlanChoice first = planned(figures(), how).choices.at(0);
  how.aim = PlanWish::For::expected;
  EXPECT_EQ(first.total, planned(figures(), how).choices.at(0).total);
}

// 3 x 10 x 10 programmes: as many as are tried, and not one more.
TEST(PlanWeighted, ProvesTheBestOfAsManyAsAreTried) {
  std::string sheet = "routine \"Figures\"\nevent session\nvalues pond\nspread 0.3\nday 0.2\n";
  for (int i = 1; i <= 3; ++i) {
    sheet += "element " + std::to_string(i) + " figure\nparts heron\nexpect 7.5\n";
    for (int option = 1; option < (i == 1 ? 3 : 10); ++option)
      sheet += "option \"way " + std::to_string(option) + "\"\nparts otter\nexpect 6." +
               std::to_string(option) + "\n";
  }
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  how.aim = PlanWish::For::target;
  how.target = Decimal::whole(200);
  const Plan found = planned(sheet, how);
  EXPECT_TRUE(found.proved);
  // No option helps: nothing is to be changed for nothing.
  EXPECT_EQ(found.choices.at(0).options, std::vector<std::size_t>(3));
}

TEST(PlanWeighted, TellsOneProgrammeEvenWhenItHasToStopAtOnce) {
  PlanWish how;
  how.event_limits = false;
  how.doubts = false;
  how.go_on = [](std::uint64_t) { return false; };
  for (const PlanWish::For aim : {PlanWish::For::expected, PlanWish::For::target}) {
    how.aim = aim;
    how.target = Decimal::whole(70);
    const Plan found = planned(figures(), how);
    EXPECT_FALSE(found.choices.empty());
    EXPECT_FALSE(found.proved);
    EXPECT_EQ(found.tried, 0u);
    ASSERT_TRUE(found.gap);
    EXPECT_LE(*found.gap, Decimal::whole(100));
  }
}

}  // namespace
}  // namespace landdrill
