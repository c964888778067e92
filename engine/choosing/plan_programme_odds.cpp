#include "engine/choosing/plan_programme_odds.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/grid_sum.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan.h"
#include "engine/choosing/plan_pieces.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// How many beginnings of programmes there are to look into.
double beginnings_of(const Pieces& pieces) {
  double all = 0, here = 1;
  for (const auto& list : pieces.choices) {
    if (list.size() > 1) all += here;
    here *= static_cast<double>(list.size());
  }
  return std::max(all, 1.0);
}

// From one on which all beginnings take half a second, about, to that of a forecast.
std::vector<GridStep> steps_for(const Pieces& pieces, GridWish wish) {
  constexpr double work_of_all = 5e8, least_work = 1e7, most_work = 3e7, finer = 5;
  const std::vector<std::size_t> first(pieces.choices.size());
  const auto whole = static_cast<double>(wish.work);
  double work = std::min(whole, std::clamp(work_of_all / beginnings_of(pieces), least_work, most_work));
  std::vector<GridStep> steps;
  for (; steps.empty() || work < whole; work *= finer) {
    wish.work = static_cast<std::int64_t>(work);
    steps.push_back(pieces.step_for(first, wish));
  }
  return steps;
}

}  // namespace

std::optional<double> level(const std::vector<WeighedProgramme>& known, std::size_t how_many) {
  if (known.size() < how_many) return std::nullopt;
  std::vector<double> least;
  for (const WeighedProgramme& one : known) least.push_back(one.least);
  std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many - 1), least.end(),
                   std::greater<>());
  return least[how_many - 1];
}

void put_best_first(std::span<WeighedProgramme> all) {
  std::sort(all.begin(), all.end(),
            [](const WeighedProgramme& a, const WeighedProgramme& b) { return a.value > b.value; });
  for (auto from = all.begin(); from != all.end();) {
    const double equal = from->value - last_bits;
    const auto next =
        std::find_if(from, all.end(), [equal](const WeighedProgramme& one) { return one.value < equal; });
    std::sort(from, next,
              [](const WeighedProgramme& a, const WeighedProgramme& b) { return a.choices < b.choices; });
    from = next;
  }
}

bool are_alike(const std::vector<WeighedProgramme>& all) {
  double least = all.front().least, most = all.front().most;
  for (const WeighedProgramme& one : all) {
    least = std::min(least, one.least);
    most = std::max(most, one.most);
  }
  return most - least <= 4 * last_bits;
}

ProgrammeOdds::ProgrammeOdds(const AimInputs& inputs, const Pieces& pieces)
    : inputs_(inputs),
      pieces_(pieces),
      steps_(steps_for(pieces, inputs.how.forecast.grid)),
      known_(steps_.size() + 1) {}

const WeighedProgramme& ProgrammeOdds::of(const std::vector<std::size_t>& choices, std::size_t grid) {
  const auto known = known_[grid].find(choices);
  if (known != known_[grid].end()) return known->second;
  const TotalOdds total = grid < finest() ? pieces_.total(choices, steps_[grid])
                                          : pieces_.total(choices, inputs_.how.forecast.grid);
  return known_[grid].emplace(choices, weighed(choices, total)).first->second;
}

WeighedProgramme ProgrammeOdds::weighed(const std::vector<std::size_t>& choices,
                                        const TotalOdds& total) const {
  WeighedProgramme result{choices, 0, 0, 0, {}, {}, {}};
  if (inputs_.how.aim == PlanWish::For::quantile) {
    const double off = binary(total.bound);
    result.quantile = total.odds.quantile(inputs_.how.share);
    result.exact = Exact(*result.quantile);
    result.value = binary(*result.quantile);
    result.least = result.value - off;
    result.most = result.value + off;
  } else {
    result.reaches = reaches(total, inputs_.how.target);
    result.exact = Exact(Decimal::from_units(std::llround(result.reaches->chance * 100 * Decimal::one)));
    result.value = result.reaches->chance;
    result.least = result.reaches->least - last_bits;
    result.most = result.reaches->most + last_bits;
  }
  return result;
}

}  // namespace landdrill
