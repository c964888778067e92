// Plans by odds, against a forecast of every programme as a sheet of its own.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/unit/kit/planning_kit.h"

namespace landdrill {
namespace {

using kit::Dice;
using kit::MadeSheet;
using kit::pond;
using kit::ReadSheet;

PlanWish wish_for(PlanWish::For aim, Chance share, std::string_view target) {
  PlanWish how;
  how.aim = aim;
  how.share = share;
  how.target = kit::number(target);
  how.how_many = 3;
  how.doubts = false;
  how.forecast.grid.grid = kit::number("0.01");
  return how;
}

MadeSheet sheet_with_spreads(Dice& dice) {
  MadeSheet made = kit::made_up_sheet(dice);
  made.head += "spread 0.4\nday 0.3\n";
  made.tail += "errors small 1.5\nrisk overtime 10%\n";
  return made;
}

// What each programme reaches, best first, and the widest bound of all.
struct Reached {
  std::vector<double> values;
  double bound = 0;
};
Reached all_reached(const MadeSheet& made, const PlanWish& how) {
  Reached reached;
  for (const kit::Tried& tried : kit::all_programmes(made, pond(), how.event_limits)) {
    const ReadSheet programme(made.text(tried.options), pond());
    const Forecast told = forecast(programme.routine(), {}, how.forecast);
    const bool quantile = how.aim == PlanWish::For::quantile;
    const double off = static_cast<double>(told.total->bound.units()) / Decimal::one;
    const ChanceBounds chance = reaches(*told.total, how.target);
    reached.values.push_back(quantile ? static_cast<double>(told.total->odds.quantile(how.share).units()) /
                                            Decimal::one
                                      : chance.chance);
    reached.bound = std::max(reached.bound, quantile ? off : chance.most - chance.least);
  }
  std::sort(reached.values.begin(), reached.values.end(), std::greater<>());
  return reached;
}

double value_of(const PlanChoice& choice) {
  if (choice.reaches) return choice.reaches->chance;
  return static_cast<double>(choice.quantile->units()) / Decimal::one;
}

// In how many sheets the best is another programme than that of the highest expected total.
int expect_as_by_trying_all(const PlanWish& how, std::uint64_t seeds) {
  int others = 0;
  for (std::uint64_t seed = 0; seed < seeds; ++seed) {
    Dice dice(seed);
    MadeSheet made = sheet_with_spreads(dice);
    if (!how.event_limits) made.limits.clear();
    SCOPED_TRACE(made.text());
    const Reached all = all_reached(made, how);
    const ReadSheet sheet(made.text(), pond());
    const Plan found = plan(sheet.routine(), {}, how);
    EXPECT_TRUE(found.obstacles.empty());
    EXPECT_TRUE(found.proved);
    EXPECT_EQ(found.choices.size(), std::min(how.how_many, all.values.size()));
    for (std::size_t i = 0; i < found.choices.size(); ++i) {
      EXPECT_NEAR(value_of(found.choices[i]), all.values[i], 2 * all.bound + 1e-12) << i;
      if (!how.event_limits) continue;
      EXPECT_TRUE(kit::keeps_limits(ReadSheet(made.text(found.choices[i].options), pond()), sheet.routine()));
    }
    PlanWish expected = how;
    expected.aim = PlanWish::For::expected;
    const Plan plain = plan(sheet.routine(), {}, expected);
    if (!plain.choices.empty()) others += plain.choices[0].options != found.choices[0].options ? 1 : 0;
  }
  return others;
}

TEST(PlanByOdds, HasTheHighestQuantileWithinTheLimits) {
  expect_as_by_trying_all(wish_for(PlanWish::For::quantile, 0.05, "0"), 30);
}

TEST(PlanByOdds, HasTheHighestChanceToReachATargetWithinTheLimits) {
  expect_as_by_trying_all(wish_for(PlanWish::For::target, 0.5, "105"), 30);
}

// Without limits there is more to choose, and little risk is not what the highest expected total has.
PlanWish only_the_best(PlanWish how) {
  how.event_limits = false;
  how.how_many = 1;
  return how;
}

TEST(PlanByOdds, FindsAHigherQuantileThanThatOfTheHighestExpectedTotal) {
  EXPECT_GT(expect_as_by_trying_all(only_the_best(wish_for(PlanWish::For::quantile, 0.02, "0")), 12), 2);
}

TEST(PlanByOdds, FindsAHigherChanceThanThatOfTheHighestExpectedTotal) {
  EXPECT_GT(expect_as_by_trying_all(only_the_best(wish_for(PlanWish::For::target, 0, "95")), 12), 2);
}

const std::string risky =
    "routine \"Mill\"\nevent open\nvalues pond\nspread 0.4\n"
    "element 1 throw\ndifficulty 3\nexpect 8\nslip 20%\noption \"safe\"\ndifficulty 2.2\nexpect 8\n"
    "impression choreography 7.50, performance 8.00\n";

TEST(PlanByOdds, PlaysSafeForALowQuantileAndDaresForAHighTarget) {
  const ReadSheet sheet(risky, pond());
  PlanWish how = wish_for(PlanWish::For::quantile, 0.1, "0");
  how.event_limits = false;
  EXPECT_EQ(plan(sheet.routine(), {}, how).choices[0].options[0], 1u);
  how.aim = PlanWish::For::target;
  how.target = kit::number("76");
  EXPECT_EQ(plan(sheet.routine(), {}, how).choices[0].options[0], 0u);
  how.aim = PlanWish::For::expected;
  EXPECT_EQ(plan(sheet.routine(), {}, how).choices[0].options[0], 0u);
}

TEST(PlanByOdds, NeedsASpread) {
  const ReadSheet sheet(kit::replaced(risky, "spread 0.4\n", ""), pond());
  const Plan none = plan(sheet.routine(), {}, wish_for(PlanWish::For::quantile, 0.1, "0"));
  EXPECT_FALSE(none.obstacles.empty());
}

TEST(PlanByOdds, RefusesAChanceThatIsNone) {
  const ReadSheet sheet(risky, pond());
  EXPECT_EQ(plan(sheet.routine(), {}, wish_for(PlanWish::For::quantile, 0, "0")).obstacles.size(), 1u);
  EXPECT_EQ(plan(sheet.routine(), {}, wish_for(PlanWish::For::quantile, 1, "0")).obstacles.size(), 1u);
}

TEST(PlanByOdds, StopsWhenToldAndSaysHowMuchBetterAnotherCouldBe) {
  int stopped = 0;
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    Dice dice(seed);
    MadeSheet made = sheet_with_spreads(dice);
    made.limits.clear();
    const ReadSheet sheet(made.text(), pond());
    for (PlanWish how :
         {wish_for(PlanWish::For::quantile, 0.3, "0"), wish_for(PlanWish::For::target, 0, "100")}) {
      const Plan whole = plan(sheet.routine(), {}, how);
      how.most_programmes = 1;
      const Plan cut = plan(sheet.routine(), {}, how);
      if (cut.proved || cut.choices.empty()) continue;
      ++stopped;
      ASSERT_TRUE(cut.gap);
      const double unit = how.aim == PlanWish::For::target ? 100 : 1;
      EXPECT_LE(unit * (value_of(whole.choices[0]) - value_of(cut.choices[0])),
                static_cast<double>(cut.gap->units()) / Decimal::one + 0.05);
    }
  }
  EXPECT_GT(stopped, 5);
}

}  // namespace
}  // namespace landdrill
