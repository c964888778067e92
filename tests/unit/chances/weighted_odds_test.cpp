#include "engine/chances/weighted_odds.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

const PanelRule& session_rule() {
  for (const PanelRule& rule : kit::pond().panels)
    if (rule.event == "session") return rule;
  throw std::logic_error("the pond has a session");
}

struct Two {
  Odds heron, otter;
  std::vector<WeightedElement> elements;
};
void fill(Two& two) {
  const PanelRule& rule = session_rule();
  two.heron = kept_odds(rule, mark_odds(rule, kit::number("7.13"), kit::number("0.4")));
  two.otter = kept_odds(rule, mark_odds(rule, kit::number("6.5"), kit::number("0.5")));
  const Difficulty base(kit::number("0.5"));
  two.elements = {{&two.heron, {Difficulty(kit::number("2.137")), base, 0.2}},
                  {&two.otter, {Difficulty(kit::number("1.411")), base, 0.1}}};
}

// With few states: what is certain of a total lies between the chances a bound further up and further down.
TEST(WeightedOdds, WithFewStatesLiesWithinItsBound) {
  Two two;
  fill(two);
  const WeightedOdds::Told exact = *WeightedOdds(session_rule()).odds(two.elements);
  EXPECT_EQ(exact.bound, Decimal());
  std::size_t before = exact.odds.cases().size();
  for (const std::size_t states : {3000, 600, 150}) {
    const WeightedOdds::Told few = *WeightedOdds(session_rule(), states).odds(two.elements);
    EXPECT_LT(few.odds.cases().size(), before);
    before = few.odds.cases().size();
    EXPECT_GT(few.bound, Decimal());
    for (int points = 40; points < 90; ++points) {
      const Decimal total = Decimal::whole(points);
      EXPECT_LE(few.odds.at_least(total + few.bound), exact.odds.at_least(total) + 1e-12) << points;
      EXPECT_GE(few.odds.at_least(total - few.bound), exact.odds.at_least(total) - 1e-12) << points;
    }
  }
}

}  // namespace
}  // namespace landdrill
