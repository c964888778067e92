// The good or bad day against a fine numerical integral: forty random routines of every shipped scheme that has no gaps,
// each swum on 161 days of its own that the integral (equal steps within six spreads) takes together. It asks the
// forecast only for single days, with every expected mark moved, and knows nothing of the kinds of day it takes
// (days.cpp).
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <random>
#include <sstream>

#include "engine/chances/forecast.h"
#include "engine/report/sentences.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

constexpr int days = 160;
constexpr double spreads = 6;

struct Example {
  std::string sheet, set;
};
const std::vector<Example>& examples() {
  static const std::vector<Example> all = {{"age-group-2009", "routines-2009"},
                                           {"figure-session", "figures-2009"},
                                           {"free-1996", "routines-1996"},
                                           {"free-2013", "routines-2013"},
                                           {"harbour-lights", "kingfisher-2026"},
                                           {"springboard-2000", "springboard-2000"},
                                           {"springboard-later", "springboard-later"},
                                           {"team-technical", "kingfisher-2026"},
                                           {"technical-2013", "routines-2013"}};
  return all;
}

std::string text_of(const std::string& example) {
  std::ifstream file(LANDDRILL_EXAMPLES "/" + example + ".sheet");
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

class Dice {
 public:
  explicit Dice(unsigned seed) : random_(seed) {}
  // From `least` to `most`, in hundredths.
  Decimal hundredths(int least, int most) {
    return Decimal::from_units(
        (least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1))) *
        (Decimal::one / 100));
  }
  Mark mark(const PanelRule& rule) {
    const Decimal width = rule.most.value() - rule.least.value();
    return rule.least + Mark(Decimal::from_units(width.units() / 100 *
                                                 (hundredths(50, 98).units() / (Decimal::one / 100))));
  }

 private:
  std::minstd_rand random_;
};

// Somebody else's marks, slips, spreads and day.
Routine thrown(Routine routine, Dice& dice) {
  routine.runs.clear();
  routine.panels.clear();
  for (Element& element : routine.elements) {
    if (element.panel == nullptr) continue;
    Option& option = element.options.front();
    option.expect = dice.mark(*element.panel);
    option.slip = element.kind->base ? std::optional(dice.hundredths(0, 2000)) : std::nullopt;
    option.spread.reset();
  }
  routine.impressions.clear();
  for (const PanelRule* rule : routine.aspects) routine.impressions.push_back({rule, dice.mark(*rule)});
  routine.spread = dice.hundredths(8, 60);
  routine.day = dice.hundredths(5, 60);
  return routine;
}

Routine on_day(Routine routine, double shift) {
  const auto moved = Decimal::from_units(std::llround(shift * static_cast<double>(Decimal::one)));
  for (Element& element : routine.elements) {
    if (element.panel != nullptr) *element.options.front().expect += Mark(moved);
  }
  for (AspectMark& aspect : routine.impressions) aspect.mark += Mark(moved);
  routine.day = Decimal();
  return routine;
}

// The chance of each target, at least and at most, as the grid of single days has it.
std::vector<ChanceBounds> integrals(const Routine& routine, const std::vector<Decimal>& targets) {
  const double spread = static_cast<double>(routine.day->units()) / 1e6;
  std::vector<ChanceBounds> sums(targets.size());
  double whole = 0;
  for (int day = 0; day <= days; ++day) {
    const double z = spreads * (2.0 * day / days - 1), chance = std::exp(-z * z / 2);
    ForecastWish coarse;
    coarse.grid.work = 8'000'000;
    const Forecast told = forecast(on_day(routine, z * spread), {}, coarse);
    whole += chance;
    for (std::size_t i = 0; i < targets.size(); ++i) {
      const ChanceBounds reached = reaches(*told.total, targets[i]);
      sums[i].least += chance * reached.least;
      sums[i].most += chance * reached.most;
    }
  }
  for (ChanceBounds& sum : sums) sum = {0, sum.least / whole, sum.most / whole};
  return sums;
}

TEST(DayIntegral, GivesTheChancesOfFortyRandomRoutines) {
  Dice dice(20261129);
  double widest = 0;
  for (int which = 0; which < 40; ++which) {
    const Example& example = examples().at(static_cast<std::size_t>(which) % examples().size());
    SCOPED_TRACE(example.sheet + " " + std::to_string(which));
    const kit::ReadSheet sheet(text_of(example.sheet), kit::shipped(example.set));
    const Routine routine = thrown(sheet.routine(), dice);
    const Forecast told = forecast(routine, {}, {});
    ASSERT_TRUE(told.total) << (told.obstacles.empty() ? "" : report::words_of(told.obstacles.front()));
    std::vector<Decimal> targets;
    // Beside a total that is likely: whether it reaches itself may hang on the last place.
    for (double share : {0.1, 0.4, 0.7, 0.9})
      targets.push_back(told.total->odds.quantile(share) + kit::number("0.005"));
    const std::vector<ChanceBounds> truth = integrals(routine, targets);
    for (std::size_t i = 0; i < targets.size(); ++i) {
      const ChanceBounds said = reaches(*told.total, targets[i]);
      EXPECT_GE(said.most + 1e-9, truth[i].least) << targets[i].text();
      EXPECT_LE(said.least - 1e-9, truth[i].most) << targets[i].text();
      EXPECT_LT(truth[i].most - truth[i].least, 0.005) << targets[i].text();
      widest = std::max(widest, said.most - said.least);
    }
  }
  EXPECT_LT(widest, 0.001);
}

}  // namespace
}  // namespace landdrill
