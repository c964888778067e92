// The best programmes where marks are weighted by difficulty, against all programmes tried one after another
// in whole numbers: sum(c m) / sum(c) x 10, rounded half up to four places, as FINA Synchronised Swimming
// Rules 2009-2013, SS 12.1-12.2 have it for figure sessions. The numbers are those that the sheet was written
// from; no part of the program makes them.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/choosing/plan.h"
#include "tests/unit/kit/choosing_kit.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

struct Way {
  std::int64_t difficulty = 0, mark = 0, under = 0;  // tenths, tenths, counts
};
struct Model {
  std::vector<std::vector<Way>> elements;
  std::vector<bool> optional;
  std::int64_t most_under = 0;
  std::string sheet;
};

Model made_up(kit::Dice& dice, std::int64_t elements, std::int64_t options) {
  Model model;
  std::int64_t least = 0, most = 0;
  for (std::int64_t i = 0; i < elements; ++i) {
    auto& list = model.elements.emplace_back();
    std::int64_t low = 1000, high = 0;
    for (std::int64_t c = 0; c < options; ++c) {
      const std::int64_t difficulty = dice.from_to(12, 36);
      list.push_back({difficulty, std::clamp<std::int64_t>(95 - difficulty + dice.from_to(-6, 6), 0, 100),
                      4 * dice.from_to(1, 5) + difficulty / 4});
      low = std::min(low, list.back().under);
      high = std::max(high, list.back().under);
    }
    model.optional.push_back(dice.from_to(0, 3) == 0);
    least += model.optional.back() ? 0 : low;
    most += high;
  }
  // At 120 beats a minute two counts are a second.
  model.most_under = (least + (most - least) * dice.from_to(20, 110) / 100) / 2 * 2;
  model.sheet = "routine \"Made up\"\nevent session\nvalues pond\ntempo 120\nlimit under most " +
                std::to_string(model.most_under / 2) + "\n";
  const auto tenths = [](std::int64_t number) {
    return std::to_string(number / 10) + "." + std::to_string(number % 10);
  };
  for (std::size_t i = 0; i < model.elements.size(); ++i) {
    for (std::size_t c = 0; c < model.elements[i].size(); ++c) {
      const Way& way = model.elements[i][c];
      if (c > 0) model.sheet += "option \"way " + std::to_string(c) + "\"\n";
      if (c == 0) model.sheet += "element " + std::to_string(i + 1) + " hybrid\n";
      model.sheet += "difficulty " + tenths(way.difficulty) + "\ncounts " + std::to_string(way.under) +
                     " under\nexpect " + tenths(way.mark) + "\n";
      if (c == 0 && model.optional[i]) model.sheet += "optional\n";
    }
  }
  return model;
}

// The totals of the best, in ten-thousandths.
class Tried {
 public:
  Tried(const Model& model, std::size_t how_many) : model_(model), how_many_(how_many) {}

  std::vector<std::int64_t> run() {
    try_from(0, 0, 0, 0);
    std::sort(best_.begin(), best_.end(), std::greater<>());
    best_.resize(std::min(best_.size(), how_many_));
    return best_;
  }

 private:
  void try_from(std::size_t element, std::int64_t merit, std::int64_t difficulty, std::int64_t under) {
    if (under > model_.most_under) return;
    if (element == model_.elements.size()) {
      // Nothing swum is nothing scored.
      note(difficulty == 0 ? 0 : (2 * merit * 10'000 + difficulty) / (2 * difficulty));
      return;
    }
    for (const Way& way : model_.elements[element]) {
      try_from(element + 1, merit + way.difficulty * way.mark, difficulty + way.difficulty,
               under + way.under);
    }
    if (model_.optional[element]) try_from(element + 1, merit, difficulty, under);
  }
  void note(std::int64_t total) {
    best_.push_back(total);
    if (best_.size() < 4096) return;
    std::nth_element(best_.begin(), best_.begin() + static_cast<std::ptrdiff_t>(how_many_), best_.end(),
                     std::greater<>());
    best_.resize(how_many_);
  }

  const Model& model_;
  std::size_t how_many_;
  std::vector<std::int64_t> best_;
};

struct Planned {
  Plan plan;
  std::vector<std::int64_t> totals;
};

Planned planned(const Model& model) {
  const kit::ReadSheet sheet(model.sheet, kit::pond());
  PlanWish how;
  how.event_limits = false;
  how.limits_worth = false;
  Planned result{plan(sheet.routine(), {}, how), {}};
  for (const PlanChoice& choice : result.plan.choices)
    result.totals.push_back(choice.total.value().units() / 100);
  return result;
}

TEST(PlanBesideAllQuotients, HasTheSameSixBestTotals) {
  int feasible = 0;
  for (std::uint64_t seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    kit::Dice dice(seed);
    const Model model = made_up(dice, 6, 3);
    const Planned found = planned(model);
    const std::vector<std::int64_t> all = Tried(model, 6).run();
    EXPECT_TRUE(found.plan.proved);
    EXPECT_EQ(found.totals, all);
    feasible += all.empty() ? 0 : 1;
  }
  EXPECT_GT(feasible, 100);
}

// Up to 390,625 programmes: more than are tried, so nothing is said to be proved.
TEST(PlanBesideAllQuotients, HasTheSameBestTotalsOfManyWithoutSayingThatTheyAre) {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    kit::Dice dice(seed);
    const Model model = made_up(dice, 8, 4);
    const Planned found = planned(model);
    EXPECT_EQ(found.totals, Tried(model, 6).run());
  }
}

}  // namespace
}  // namespace landdrill
