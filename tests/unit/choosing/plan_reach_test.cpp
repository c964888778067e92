// The bounds of plans by odds, against every programme of small made-up sheets.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/choosing/plan_search.h"
#include "tests/unit/kit/planning_kit.h"

namespace landdrill {
namespace {

using kit::Dice;
using kit::pond;
using kit::ReadSheet;

// The limits are those of the sheet alone, so that there is much to choose from.
PlanWish wish_for(PlanWish::For aim) {
  PlanWish how;
  how.aim = aim;
  how.event_limits = false;
  how.share = 0.2;
  return how;
}

std::string long_sheet(std::uint64_t seed, int elements, int options) {
  Dice dice(seed);
  const auto number = [&](std::int64_t least, std::int64_t most) {
    return std::to_string(dice.from_to(least, most));
  };
  std::string text = "routine \"Long\"\nevent open\nvalues pond\ntempo 120\nspread 0.4\nday 0.3\n";
  text += "limit seconds most " + std::to_string(8 * elements) + "\nlimit under least " +
          std::to_string(2 * elements) + "\nlimit breath most 20\n";
  for (int i = 1; i <= elements; ++i) {
    text += "element " + std::to_string(i) + " throw\n";
    for (int option = 0; option < options; ++option) {
      if (i == 2 && option == 1) text += "optional\n";
      if (option > 0) text += "option \"way " + std::to_string(option) + "\"\n";
      text += "difficulty " + number(1, 2) + "." + number(0, 9) + "\ncounts " + number(2, 12) + " under, " +
              number(4, 10) + " surface\nexpect " + number(6, 9) + "\nslip " + number(1, 25) + "%\n";
    }
  }
  return text + "impression choreography 7.5, performance 8\n";
}

std::string sheet_with_spreads(std::uint64_t seed) {
  Dice dice(seed);
  kit::MadeSheet made = kit::made_up_sheet(dice);
  made.head += "spread 0.4\nday 0.3\n";
  made.tail += "errors small 1.5\nrisk overtime 10%\n";
  return made.text();
}

// A sheet with its pieces, and every programme within the limits.
struct Small {
  explicit Small(std::uint64_t seed, PlanWish::For aim = PlanWish::For::target)
      : Small(sheet_with_spreads(seed), wish_for(aim)) {}
  Small(std::string sheet_text, const PlanWish& wished)
      : text(std::move(sheet_text)), sheet(text, pond()), how(wished) {
    Obstacles none;
    pieces = pieces_of(inputs, none);
    all_within({});
  }

  void all_within(std::vector<std::size_t> chosen) {
    if (chosen.size() == programmes.choosing.lists.size()) {
      if (programmes.allowed(programmes.options_of(chosen))) within.push_back(chosen);
      return;
    }
    for (std::size_t c = 0; c < programmes.choosing.lists[chosen.size()].size(); ++c) {
      chosen.push_back(c);
      all_within(chosen);
      chosen.pop_back();
    }
  }
  const TotalOdds& total(const std::vector<std::size_t>& choices) const {
    auto known = totals.find(choices);
    if (known != totals.end()) return known->second;
    GridWish fine;
    fine.grid = kit::number("0.005");
    return totals.emplace(choices, pieces.total(choices, fine)).first->second;
  }
  // A total that the programme misses with a chance of so much, or a little more.
  Decimal missed(const std::vector<std::size_t>& choices, Chance share) const {
    return total(choices).odds.quantile(share);
  }

  std::string text;
  ReadSheet sheet;
  Wish wish;
  PlanWish how;
  Programmes programmes{sheet.routine(), wish, how};
  Patience patience{{}};
  AimInputs inputs{sheet.routine(), wish, how, programmes, patience};
  Pieces pieces;
  std::vector<std::vector<std::size_t>> within;
  mutable std::map<std::vector<std::size_t>, TotalOdds> totals;
};

bool is_among(const std::vector<std::size_t>& choices, const OpenLists& open) {
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (std::find(open[i].begin(), open[i].end(), choices[i]) == open[i].end()) return false;
  }
  return true;
}

std::vector<std::size_t> unsettled(const OpenLists& open) {
  std::vector<std::size_t> lists;
  for (std::size_t i = 0; i < open.size(); ++i) {
    if (open[i].size() > 1) lists.push_back(i);
  }
  return lists;
}

// Everything open, or the first list settled to what `like` has.
std::vector<OpenLists> beginnings(const Small& small, const std::vector<std::size_t>& like) {
  const OpenLists root = Openings(small.programmes.choosing).all();
  OpenLists settled = root;
  settled.back() = {like.back()};
  OpenLists more = settled;
  more.front() = {like.front()};
  return {root, settled, more};
}

TEST(Reach, IsNoLowerThanTheChanceOfAnyProgrammeWithinTheLimits) {
  int looked_at = 0;
  for (std::uint64_t seed = 0; seed < 25; ++seed) {
    const Small small(seed);
    if (small.within.empty()) continue;
    SCOPED_TRACE(small.text);
    Dice dice(seed + 100);
    const std::vector<std::size_t>& like = small.within[static_cast<std::size_t>(
        dice.from_to(0, static_cast<std::int64_t>(small.within.size()) - 1))];
    for (const Chance share : {0.05, 0.4, 0.8}) {
      const Decimal target = small.missed(like, share);
      // A grid so coarse that it matters.
      const Reach reach(small.pieces, like, 24, static_cast<double>(target.units()));
      Patience patience({});
      const Tightening tightening(reach, small.programmes.choosing, small.pieces.days, patience);
      const auto prices = std::make_shared<TiePrices>(tightening.beside(like));
      for (const OpenLists& open : beginnings(small, like)) {
        const int steps = static_cast<int>(dice.from_to(0, 12));
        const Tightened told = tightening.run({open, unsettled(open), prices, 0, steps});
        for (const std::vector<std::size_t>& choices : small.within) {
          if (!is_among(choices, open)) continue;
          ++looked_at;
          const Chance least = reaches(small.total(choices), target).least;
          EXPECT_GE(told.most, least - 1e-9);
          if (told.order.empty()) continue;
          const auto& first = open[told.order.front()];
          const auto place =
              std::find(first.begin(), first.end(), choices[told.order.front()]) - first.begin();
          EXPECT_GE(told.first[static_cast<std::size_t>(place)], least - 1e-9);
        }
      }
    }
  }
  EXPECT_GT(looked_at, 1000);
}

TEST(Reach, IsLowerTheLongerItIsTightened) {
  double first = 0, last = 0;
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const Small small(seed);
    if (small.within.empty()) continue;
    const std::vector<std::size_t>& like = small.within.front();
    const Reach reach(small.pieces, like, 64, static_cast<double>(small.missed(like, 0.3).units()));
    Patience patience({});
    const Tightening tightening(reach, small.programmes.choosing, small.pieces.days, patience);
    const auto prices = std::make_shared<TiePrices>(tightening.beside(like));
    const OpenLists open = Openings(small.programmes.choosing).all();
    double before = 1e9;
    for (const int steps : {0, 5, 20}) {
      const double most = tightening.run({open, unsettled(open), prices, 0, steps}).most;
      EXPECT_LE(most, before);
      before = most;
      if (steps == 0) first += most;
      if (steps == 20) last += most;
    }
  }
  EXPECT_LT(last, first - 0.02);
}

TEST(Reach, TellsTheChanceOfOneProgrammeFromBothSides) {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const Small small(seed);
    for (const std::vector<std::size_t>& choices : small.within) {
      const TotalOdds total = small.total(choices);
      const double about = static_cast<double>(total.odds.quantile(0.3).units());
      for (const int points : {40, 400}) {
        const Reach reach(small.pieces, small.within.front(), points, about);
        const Reach::Survival told = reach.survival(choices);
        for (const int steps : {-5, -3, -1, 0, 1, 2, 4, 7}) {
          const auto at = static_cast<std::size_t>(static_cast<int>(told.zero) + steps);
          const ChanceBounds chance =
              reaches(total, Decimal::from_units(std::llround(about - steps * told.step)));
          EXPECT_LE(told.least[at], chance.most + 1e-9);
          EXPECT_GE(told.most[at], chance.least - 1e-9);
          EXPECT_LT(told.most[at] - told.least[at], points == 400 ? 0.02 : 0.6);
        }
      }
    }
  }
}

TEST(ProgrammeOdds, LiesBetweenItsTwoSidesAndThoseOfAForecast) {
  for (const PlanWish::For aim : {PlanWish::For::target, PlanWish::For::quantile}) {
    double width = 0, rough_width = 0;
    for (std::uint64_t seed = 0; seed < 8; ++seed) {
      Small small(seed, aim);
      if (small.within.empty()) continue;
      small.how.target = small.missed(small.within.front(), 0.4);
      small.how.forecast.grid.grid = kit::number("0.5");
      ProgrammeOdds weighing(small.inputs, small.pieces);
      for (const std::vector<std::size_t>& choices : small.within) {
        const WeighedProgramme& told = weighing.of(choices);
        EXPECT_LE(told.least, told.value);
        EXPECT_LE(told.value, told.most);
        const TotalOdds total = small.total(choices);
        const double off = static_cast<double>(total.bound.units()) / Decimal::one;
        const bool quantile = aim == PlanWish::For::quantile;
        const ChanceBounds chance = reaches(total, small.how.target);
        const double value = static_cast<double>(total.odds.quantile(0.2).units()) / Decimal::one;
        EXPECT_LE(told.least, quantile ? value + off : chance.most);
        EXPECT_GE(told.most, quantile ? value - off : chance.least);
        const TotalOdds rough = small.pieces.total(choices, small.how.forecast.grid);
        const ChanceBounds rough_chance = reaches(rough, small.how.target);
        width += told.most - told.least;
        rough_width += quantile ? 2 * static_cast<double>(rough.bound.units()) / Decimal::one
                                : rough_chance.most - rough_chance.least;
      }
    }
    EXPECT_LT(width, 0.5 * rough_width);
  }
}

double value_of(const PlanChoice& choice) {
  return choice.reaches ? choice.reaches->chance
                        : static_cast<double>(choice.quantile->units()) / Decimal::one;
}

TEST(PlanByOdds, HasTheBestOfAllProgrammesOfALongerSheet) {
  for (std::uint64_t seed = 0; seed < 2; ++seed) {
    PlanWish how = wish_for(PlanWish::For::quantile);
    how.forecast.grid.grid = kit::number("0.02");
    const Small small(long_sheet(seed, 6, 3), how);
    ASSERT_GT(small.within.size(), 20u);
    std::vector<double> quantiles, chances;
    how.target = kit::number("130");
    double bound = 0, apart = 0;
    for (const std::vector<std::size_t>& choices : small.within) {
      const TotalOdds total = small.pieces.total(choices, how.forecast.grid);
      const ChanceBounds chance = reaches(total, how.target);
      quantiles.push_back(static_cast<double>(total.odds.quantile(how.share).units()) / Decimal::one);
      chances.push_back(chance.chance);
      bound = std::max(bound, 2 * static_cast<double>(total.bound.units()) / Decimal::one);
      apart = std::max(apart, chance.most - chance.least);
    }
    std::sort(quantiles.begin(), quantiles.end(), std::greater<>());
    std::sort(chances.begin(), chances.end(), std::greater<>());
    for (const PlanWish::For aim : {PlanWish::For::quantile, PlanWish::For::target}) {
      how.aim = aim;
      const Plan found = plan(small.sheet.routine(), {}, how);
      ASSERT_TRUE(found.proved);
      const bool quantile = aim == PlanWish::For::quantile;
      for (std::size_t i = 0; i < found.choices.size(); ++i)
        EXPECT_NEAR(value_of(found.choices[i]), (quantile ? quantiles : chances)[i], quantile ? bound : apart)
            << i;
    }
  }
}

TEST(PlanByOdds, ProvesTwelveElementsOfThreeOptions) {
  for (std::uint64_t seed = 0; seed < 2; ++seed) {
    const ReadSheet sheet(long_sheet(seed, 12, 3), pond());
    PlanWish how = wish_for(PlanWish::For::quantile);
    how.limits_worth = false;
    how.most_steps = 4'000;
    EXPECT_TRUE(plan(sheet.routine(), {}, how).proved);
    how.aim = PlanWish::For::target;
    how.target = kit::number("250");
    EXPECT_TRUE(plan(sheet.routine(), {}, how).proved);
  }
}

TEST(PlanByOdds, LeavesNoWiderGapTheLongerItSearches) {
  const ReadSheet sheet(long_sheet(5, 12, 6), pond());
  for (PlanWish how : {wish_for(PlanWish::For::quantile), wish_for(PlanWish::For::target)}) {
    how.limits_worth = false;
    how.how_many = 1;
    how.target = kit::number("280");
    std::vector<double> at_most;
    for (const std::uint64_t steps : {1, 40, 3'000}) {
      how.most_steps = steps;
      const Plan told = plan(sheet.routine(), {}, how);
      const double gap = told.gap ? static_cast<double>(told.gap->units()) / Decimal::one : 0;
      EXPECT_TRUE(told.proved || gap > 0);
      at_most.push_back(value_of(told.choices[0]) * (how.aim == PlanWish::For::target ? 100 : 1) + gap);
    }
    EXPECT_LE(at_most[1], at_most[0] + 0.01);
    EXPECT_LE(at_most[2], at_most[1] + 0.01);
    EXPECT_LT(at_most[2], at_most[0]);
  }
}

// What is split between two points scatters more: over many elements that would show, were V not lifted.
TEST(Reach, TellsTheChanceOfALongProgrammeFromBothSides) {
  std::string text = "routine \"Long\"\nevent open\nvalues pond\nspread 0.3\nday 0.1\n";
  for (int i = 0; i < 16; ++i)
    text += "element " + std::to_string(i + 1) + " throw\ndifficulty 2." + std::to_string(i % 10) +
            "\nexpect 7.25\n";
  const Small small(text + "impression choreography 7.5, performance 8\n", wish_for(PlanWish::For::target));
  const std::vector<std::size_t>& choices = small.within.front();
  const TotalOdds& total = small.total(choices);
  for (const Chance share : {0.02, 0.1, 0.25, 0.5, 0.75, 0.9}) {
    const Decimal target = small.missed(choices, share);
    const ChanceBounds chance = reaches(total, target);
    for (const int points : {16, 24, 32, 48}) {
      const Reach reach(small.pieces, choices, points, static_cast<double>(target.units()));
      const Reach::Survival told = reach.survival(choices);
      EXPECT_LE(told.least[told.zero], chance.most + 1e-9) << points;
      EXPECT_GE(told.most[told.zero], chance.least - 1e-9) << points;
    }
  }
}

// No climbing, and from the worst of all, or from those behind the best: what the bounds rule out is all that
// is not looked at.
TEST(OddsSearch, FindsTheBestThreeFromWorseOnes) {
  for (const PlanWish::For aim : {PlanWish::For::target, PlanWish::For::quantile}) {
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
      Small small(seed, aim);
      if (small.within.size() < 3) continue;
      SCOPED_TRACE(small.text);
      small.how.target = small.missed(small.within.front(), 0.4);
      ProgrammeOdds weighing(small.inputs, small.pieces), of_all(small.inputs, small.pieces);
      std::vector<WeighedProgramme> all;
      for (const std::vector<std::size_t>& choices : small.within) all.push_back(of_all.of(choices));
      std::sort(all.begin(), all.end(),
                [](const WeighedProgramme& a, const WeighedProgramme& b) { return a.value > b.value; });
      for (const std::size_t from : {std::size_t{1}, all.size() - 3}) {
        OddsSearch search(small.inputs, small.pieces, small.programmes.choosing, weighing);
        for (std::size_t i = from; i < std::min(from + 3, all.size()); ++i) search.weigh(all[i].choices);
        const AimedBest found = search.run(3, false);
        ASSERT_TRUE(found.proved);
        for (std::size_t i = 0; i < 3; ++i) {
          const auto is_found = [&](const WeighedProgramme& one) {
            return small.programmes.options_of(one.choices) == found.best[i].options;
          };
          const auto told = std::find_if(all.begin(), all.end(), is_found);
          ASSERT_NE(told, all.end());
          EXPECT_GE(told->most, all[i].least) << i;
        }
      }
    }
  }
}

TEST(Openings, TakeOutOnlyWhatNoProgrammeWithinTheLimitsHolds) {
  int taken_out = 0, none_left = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    const Small small(seed);
    const Openings openings(small.programmes.choosing);
    OpenLists open = openings.all();
    const OpenLists all = open;
    const bool left = openings.narrow(open);
    none_left += left ? 0 : 1;
    if (!left) {
      EXPECT_TRUE(small.within.empty()) << small.text;
      continue;
    }
    for (const std::vector<std::size_t>& choices : small.within)
      EXPECT_TRUE(is_among(choices, open)) << small.text;
    for (std::size_t i = 0; i < open.size(); ++i) taken_out += open[i].size() < all[i].size() ? 1 : 0;
    for (auto& list : open) list = {list.front()};
    // All settled: within the limits or not, and nothing between.
    std::vector<std::size_t> chosen;
    for (const auto& list : open) chosen.push_back(list.front());
    const bool within = std::find(small.within.begin(), small.within.end(), chosen) != small.within.end();
    EXPECT_EQ(openings.narrow(open), within) << small.text;
  }
  EXPECT_GT(taken_out, 20);
  EXPECT_GT(none_left, 3);
}

}  // namespace
}  // namespace landdrill
