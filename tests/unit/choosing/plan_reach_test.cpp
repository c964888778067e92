// What plans by odds work out, against every programme of small made-up sheets.
#include "engine/choosing/plan_reach.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "tests/unit/kit/planning_kit.h"

namespace landdrill {
namespace {

constexpr Chance last_bits = 1e-12;

using kit::Dice;
using kit::pond;
using kit::ReadSheet;

// The limits are those of the sheet alone, so that there is much to choose from.
PlanWish wish_for(PlanWish::For aim) {
  PlanWish how;
  how.aim = aim;
  how.event_limits = false;
  how.share = 0.2;
  how.doubts = false;
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

TEST(Reach, HoldsHowOftenEveryProgrammeReachesATotal) {
  for (std::uint64_t seed = 0; seed < 25; ++seed) {
    const Small small(seed);
    SCOPED_TRACE(small.text);
    for (const GridStep step : {GridStep(5'000), GridStep(100'000)}) {
      const Reach reach(small.pieces, step);
      for (const std::vector<std::size_t>& choices : small.within) {
        for (const Chance share : {0.05, 0.4, 0.8}) {
          const Decimal total = small.missed(choices, share);
          const ChanceBounds truly = reaches(small.total(choices), total);
          EXPECT_LE(reach.often(choices, total + reach.bound()), truly.most + last_bits);
          EXPECT_GE(reach.often(choices, total - reach.bound()), truly.least - last_bits);
          const Decimal off = reach.bound() + small.total(choices).bound,
                        missed = reach.missed(choices, share);
          EXPECT_LE(missed, total + off);
          EXPECT_GE(missed, total - off);
        }
      }
    }
  }
}

TEST(Reach, KnowsWhatNoProgrammeExceeds) {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const Small small(seed);
    const Reach reach(small.pieces, GridStep(50'000));
    double highest = 0;
    for (const std::vector<std::size_t>& choices : small.within) {
      for (const Chance share : {0.1, 0.5, 0.9}) {
        const Decimal missed = small.missed(choices, share);
        EXPECT_GE(reach.missed(reach.ideal(), share) + reach.bound() + small.total(choices).bound, missed);
        const Chance often = reaches(small.total(choices), missed).least;
        const Chance most = reach.often(reach.ideal(), missed - reach.bound());
        EXPECT_GE(most + last_bits, often);
        highest = std::max(highest, most - often);
      }
    }
    EXPECT_LT(highest, 1);
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

TEST(PlanByOdds, ProvesTenElementsOfTwoOptions) {
  for (std::uint64_t seed = 0; seed < 2; ++seed) {
    const ReadSheet sheet(long_sheet(seed, 10, 2), pond());
    PlanWish how = wish_for(PlanWish::For::quantile);
    EXPECT_TRUE(plan(sheet.routine(), {}, how).proved);
    how.aim = PlanWish::For::target;
    how.target = kit::number("200");
    EXPECT_TRUE(plan(sheet.routine(), {}, how).proved);
  }
}

TEST(PlanByOdds, TriesTheMostPromisingWhereThereAreTooManyAndSaysHowMuchBetterAnotherCouldBe) {
  const ReadSheet many(long_sheet(5, 12, 6), pond()), few(long_sheet(5, 7, 3), pond());
  for (PlanWish how : {wish_for(PlanWish::For::quantile), wish_for(PlanWish::For::target)}) {
    how.limits_worth = false;
    how.target = kit::number("280");
    const Plan promising = plan(many.routine(), {}, how);
    EXPECT_FALSE(promising.proved);
    EXPECT_EQ(promising.tried, 300u);
    ASSERT_TRUE(promising.gap);
    EXPECT_GT(*promising.gap, Decimal());
    how.target = kit::number("150");
    const Plan best = plan(few.routine(), {}, how);
    EXPECT_TRUE(best.proved);
    how.most_programmes = 20;
    const Plan told = plan(few.routine(), {}, how);
    EXPECT_FALSE(told.proved);
    EXPECT_EQ(told.tried, 21u);
    ASSERT_TRUE(told.gap);
    const double unit = how.aim == PlanWish::For::target ? 100 : 1;
    EXPECT_GE(value_of(best.choices[0]), value_of(told.choices[0]));
    EXPECT_LE(unit * (value_of(best.choices[0]) - value_of(told.choices[0])),
              static_cast<double>(told.gap->units()) / Decimal::one);
  }
}

TEST(PlanByOdds, ProvesAtOnceWhatIsOutOfReachOrCertain) {
  const ReadSheet sheet(long_sheet(5, 12, 6), pond());
  PlanWish how = wish_for(PlanWish::For::target);
  const PlanWish for_totals = wish_for(PlanWish::For::expected);
  for (const auto& [target, chance] : {std::pair("5000", 0.0), std::pair("0", 1.0)}) {
    how.target = kit::number(target);
    const Plan found = plan(sheet.routine(), {}, how);
    EXPECT_TRUE(found.proved) << target;
    EXPECT_EQ(found.choices.size(), how.how_many);
    EXPECT_NEAR(found.choices[0].reaches->chance, chance, 1e-12);
    // Then the highest expected total counts.
    EXPECT_EQ(found.choices[0].options, plan(sheet.routine(), {}, for_totals).choices.at(0).options);
  }
}

TEST(PlanByOdds, TellsTheNextBestTooWhenItHasToStop) {
  const ReadSheet sheet(long_sheet(5, 9, 4), pond());
  for (PlanWish how : {wish_for(PlanWish::For::quantile), wish_for(PlanWish::For::target)}) {
    how.target = kit::number("210");
    std::uint64_t asked = 0;
    how.go_on = [&](std::uint64_t) { return ++asked > 0; };
    how.limits_worth = false;
    const Plan whole = plan(sheet.routine(), {}, how);
    const std::uint64_t in_all = asked;
    for (const std::uint64_t part : {1, 2, 5, 9}) {
      asked = 0;
      how.go_on = [&](std::uint64_t) { return ++asked < in_all * part / 10; };
      const Plan cut = plan(sheet.routine(), {}, how);
      EXPECT_FALSE(cut.proved) << part;
      EXPECT_EQ(cut.choices.size(), whole.choices.size()) << part;
    }
  }
}

}  // namespace
}  // namespace landdrill
