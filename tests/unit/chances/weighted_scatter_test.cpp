#include <gtest/gtest.h>

#include "engine/chances/weighted_odds.h"
#include "tests/unit/kit/choosing_kit.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

const PanelRule& session_rule() {
  for (const PanelRule& rule : kit::pond().panels) {
    if (rule.event == "session") return rule;
  }
  throw std::runtime_error("the pond has lost its session");
}

Odds some_marks(kit::Dice& dice) {
  const std::int64_t low = dice.from_to(150, 250) * Decimal::one / 10;
  std::vector<Odds::Case> cases;
  for (int i = 0; i < 4; ++i) cases.push_back({Decimal::from_units(low + i * Decimal::one / 10), 0.25});
  return Odds(std::move(cases));
}

// Against every case worked out, over two kinds of day.
TEST(WeightedScatter, IsTheDeviationOfEveryCaseWorkedOut) {
  for (std::uint64_t seed = 0; seed < 30; ++seed) {
    kit::Dice dice(seed);
    std::vector<Odds> marks;
    for (int i = 0; i < 8; ++i) marks.push_back(some_marks(dice));
    std::vector<std::vector<WeightedElement>> days(2);
    for (std::size_t i = 0; i < 4; ++i) {
      const Difficulty declared(Decimal::from_units(dice.from_to(10, 35) * Decimal::one / 10));
      const Credited credited{declared, Difficulty(*Decimal::parse("0.5")),
                              static_cast<Chance>(dice.from_to(0, 4)) / 10};
      for (std::size_t day = 0; day < 2; ++day) days[day].push_back({&marks[4 * day + i], credited});
    }
    WeightedScatter scatter(session_rule());
    WeightedOdds all(session_rule());
    const Odds first = all.odds(days[0])->odds, second = all.odds(days[1])->odds;
    scatter.add_day(0.3, days[0]);
    scatter.add_day(0.7, days[1]);
    const WeighedOdds both[] = {{0.3, &first}, {0.7, &second}};
    // The odds are of points rounded to four places: rounding moves a deviation by half a place at most.
    EXPECT_NEAR(scatter.deviation(), mixed(both).deviation(), 5e-5) << seed;
    EXPECT_GT(scatter.deviation(), 0.1);
  }
}

}  // namespace
}  // namespace landdrill
