#include "engine/choosing/plan_programme_odds.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

constexpr std::int64_t programme_work = 4'000'000;
constexpr int fine_points = 640;

// How many steps above `zero`, in parts of a step, the rising chances first come to `chance`; nothing when
// they do not within the window.
std::optional<double> first_at(const std::vector<Chance>& rising, std::size_t zero, Chance chance) {
  for (std::size_t i = 1; i < rising.size(); ++i) {
    if (rising[i] < chance) continue;
    if (rising[i - 1] >= chance) return std::nullopt;
    const double part = (chance - rising[i - 1]) / (rising[i] - rising[i - 1]);
    return static_cast<double>(i - 1) + part - static_cast<double>(zero);
  }
  return std::nullopt;
}

}  // namespace

const WeighedProgramme& ProgrammeOdds::of(const std::vector<std::size_t>& choices) {
  auto known = known_.find(choices);
  if (known != known_.end()) return known->second;
  WeighedProgramme weighed = roughly(choices);
  if (weighed.most > weighed.least + 2 * last_bits) narrow(weighed);
  return known_.emplace(choices, std::move(weighed)).first->second;
}

// By the grid of a forecast. The best step for one programme is a good one for all.
WeighedProgramme ProgrammeOdds::roughly(const std::vector<std::size_t>& choices) {
  if (!step_) {
    GridWish grid = inputs_.how.forecast.grid;
    grid.work = std::min(grid.work, programme_work);
    step_ = pieces_.step_for(choices, grid);
  }
  const TotalOdds total = pieces_.total(choices, *step_);
  WeighedProgramme weighed{choices, 0, 0, 0, {}};
  const double off = binary(total.bound);
  if (inputs_.how.aim == PlanWish::For::quantile) {
    const Decimal value = total.odds.quantile(inputs_.how.share);
    weighed.value = binary(value);
    weighed.least = weighed.value - off;
    weighed.most = weighed.value + off;
    weighed.exact = Exact(value);
  } else {
    const ChanceBounds chance = reaches(total, inputs_.how.target);
    weighed.value = chance.chance;
    weighed.least = chance.least - last_bits;
    weighed.most = chance.most + last_bits;
    weighed.exact = Exact(Decimal::from_units(std::llround(chance.chance * 100 * Decimal::one)));
  }
  return weighed;
}

// The table errs far less than a grid to which every case is moved.
void ProgrammeOdds::narrow(WeighedProgramme& weighed) {
  const bool quantile = inputs_.how.aim == PlanWish::For::quantile;
  const double total = quantile ? weighed.value * Decimal::one : binary_millionths(inputs_.how.target);
  if (!fine_) fine_.emplace(pieces_, weighed.choices, fine_points, total);
  fine_->aim_at(total);
  const Reach::Survival survival = fine_->survival(weighed.choices);
  if (quantile) {
    narrow_quantile(weighed, survival, total);
  } else {
    weighed.least = std::max(weighed.least, survival.least[survival.zero] - last_bits);
    weighed.most = std::min(weighed.most, survival.most[survival.zero] + last_bits);
  }
  const double inside = std::clamp(weighed.value, weighed.least, std::max(weighed.least, weighed.most));
  if (inside == weighed.value) return;
  weighed.value = inside;
  const double told = quantile ? inside : 100 * inside;
  weighed.exact = Exact(Decimal::from_units(std::llround(told * Decimal::one)));
}

void ProgrammeOdds::narrow_quantile(WeighedProgramme& weighed, const Reach::Survival& survival,
                                    double total) const {
  const Chance often = 1 - inputs_.how.share;
  const auto points = [&](double steps) { return (total - steps * survival.step) / Decimal::one; };
  if (const auto steps = first_at(survival.least, survival.zero, often + last_bits))
    weighed.least = std::max(weighed.least, points(*steps));
  if (const auto steps = first_at(survival.most, survival.zero, often - last_bits))
    weighed.most = std::min(weighed.most, points(*steps));
}

}  // namespace landdrill
