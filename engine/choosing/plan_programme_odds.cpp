#include "engine/choosing/plan_programme_odds.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/mark_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_wish.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/objections.h"
#include "grammar/diagnostics.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// A routine cut down to one programme.

namespace {

// The new index of each element; leave_out for those that are gone.
std::vector<std::size_t> new_places(const std::vector<std::size_t>& options) {
  std::vector<std::size_t> places;
  std::size_t next = 0;
  for (const std::size_t option : options) places.push_back(option == leave_out ? leave_out : next++);
  return places;
}

template <class Seen>
void renumber(std::vector<Seen>& seen, const std::vector<std::size_t>& places) {
  std::erase_if(seen, [&](const Seen& one) { return places[one.element] == leave_out; });
  for (Seen& one : seen) one.element = places[one.element];
}

}  // namespace

Programme programme_of(const Routine& routine, const Wish& wish, const std::vector<std::size_t>& options) {
  Programme result{routine, {{}, wish.runs}};
  const std::vector<std::size_t> places = new_places(options);
  for (const std::size_t option : options) {
    if (option != leave_out) result.wish.options.push_back(option);
  }
  if (result.wish.options.size() == options.size()) return result;
  std::vector<Element>& elements = result.routine.elements;
  for (std::size_t i = 0; i < options.size(); ++i) {
    if (options[i] != leave_out && places[i] != i) elements[places[i]] = std::move(elements[i]);
  }
  elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(result.wish.options.size()), elements.end());
  std::vector<Item>& order = result.routine.order;
  std::erase_if(order, [&](const Item& item) { return item.is_element && places[item.index] == leave_out; });
  for (Item& item : order) item.index = item.is_element ? places[item.index] : item.index;
  for (Run& run : result.routine.runs) renumber(run.elements, places);
  for (RecordedPanel& panel : result.routine.panels) renumber(panel.elements, places);
  return result;
}

Diagnostics objections_with(const Routine& routine, const Wish& wish, const PlanChoice& choice,
                            const Diagnostics& of_sheet) {
  const Programme programme = programme_of(routine, wish, choice.options);
  return objections_with(programme.routine, programme.wish, of_sheet);
}

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

namespace {

// Multiplications for one programme on the coarsest grid, and how many times as many on every finer one.
constexpr std::int64_t least_work = 10'000'000, finer = 5;

std::size_t grids_for(std::int64_t whole_work) {
  std::size_t grids = 1;
  for (std::int64_t work = least_work * finer; work < whole_work; work *= finer) ++grids;
  return grids;
}

}  // namespace

ProgrammeOdds::ProgrammeOdds(const AimInputs& inputs, const Pieces& pieces)
    : inputs_(inputs),
      pieces_(pieces),
      quantile_(inputs.how.aim == PlanWish::For::quantile),
      grids_(grids_for(inputs.how.forecast.grid.work)),
      known_(grids_.size() + 1) {}

Reach& ProgrammeOdds::on(std::size_t grid) {
  std::optional<Reach>& reach = grids_[grid];
  if (!reach) {
    GridWish wish = inputs_.how.forecast.grid;
    std::int64_t work = least_work;
    for (std::size_t i = 0; i < grid; ++i) work *= finer;
    wish.work = std::min(wish.work, work);
    reach.emplace(pieces_, pieces_.step_for(std::vector<std::size_t>(pieces_.choices.size()), wish));
  }
  return *reach;
}

const WeighedProgramme& ProgrammeOdds::of(const std::vector<std::size_t>& choices, std::size_t grid) {
  const auto known = known_[grid].find(choices);
  if (known != known_[grid].end()) return known->second;
  return known_[grid]
      .emplace(choices, grid < finest() ? weighed(choices, on(grid)) : forecast_of(choices))
      .first->second;
}

WeighedProgramme ProgrammeOdds::weighed(const std::vector<std::size_t>& choices, const Reach& reach) const {
  WeighedProgramme result{choices, 0, 0, 0, {}, {}, {}};
  if (quantile_) {
    const double off = binary(reach.bound());
    result.value = binary(reach.missed(choices, inputs_.how.share));
    result.least = result.value - off;
    result.most = result.value + off;
  } else {
    const Decimal target = inputs_.how.target;
    result.value = reach.often(choices, target);
    result.least = reach.often(choices, target + reach.bound()) - last_bits;
    result.most = reach.often(choices, target - reach.bound()) + last_bits;
  }
  return result;
}

WeighedProgramme ProgrammeOdds::forecast_of(const std::vector<std::size_t>& choices) const {
  WeighedProgramme result{choices, 0, 0, 0, {}, {}, {}};
  const TotalOdds total = pieces_.total(choices, inputs_.how.forecast.grid);
  if (quantile_) {
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

bool ProgrammeOdds::may_be_worth(const std::vector<std::size_t>& choices, double value) {
  const Reach& reach = on(0);
  const Decimal total = quantile_
                            ? Decimal::from_units(static_cast<std::int64_t>(std::floor(value * Decimal::one)))
                            : inputs_.how.target;
  return reach.often(choices, total - reach.bound()) >=
         (quantile_ ? 1 - inputs_.how.share : value) - last_bits;
}

double ProgrammeOdds::highest() {
  const Reach& reach = on(0);
  if (quantile_) return binary(reach.missed(reach.ideal(), inputs_.how.share) + reach.bound());
  return reach.often(reach.ideal(), inputs_.how.target - reach.bound());
}

}  // namespace landdrill
