#include "engine/choosing/compare.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/choosing/duel.h"
#include "engine/choosing/part_worth.h"
#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

// One element, its options one after another in the routine.
class Comparing {
 public:
  Comparing(const Routine& routine, std::size_t element, const Wish& wish, const ForecastWish& how)
      : routine_(routine), index_(element), element_(routine.elements[element]), wish_(wish), how_(how) {
    wish_.options.resize(std::max(wish.options.size(), element + 1), 0);
    result_.element = element;
    result_.label = name_of(element_);
  }

  Comparison all() &&;

 private:
  const Wish& with(std::size_t option) {
    wish_.options[index_] = option;
    return wish_;
  }
  Obstacles obstacles();
  bool has_totals(const Worth& worth) const;
  OptionWorth tell(const Rival& rival, const Worth& worth);
  std::optional<Decimal> spread(std::size_t option);

  const Routine& routine_;
  const std::size_t index_;
  const Element& element_;
  Wish wish_;
  const ForecastWish& how_;
  std::vector<Rival> rivals_;
  Comparison result_;
};

Comparison Comparing::all() && {
  result_.obstacles = obstacles();
  if (!result_.obstacles.empty()) return std::move(result_);
  const Worth worth(routine_, index_, with(0));
  if (!has_totals(worth)) {
    Risked at_risk = risked(routine_, with(0));
    if (element_.kind->base) at_risk.chances[index_].percent = Decimal::whole(50);
    result_.obstacles = {no_total(routine_, at_risk)};
    return std::move(result_);
  }
  for (const Rival& rival : rivals_) result_.options.push_back(tell(rival, worth));
  for (std::size_t i = 1; i < rivals_.size(); ++i)
    result_.duels.push_back(duel(worth, rivals_.front(), rivals_[i]));
  return std::move(result_);
}

// And the options that are without obstacles.
Obstacles Comparing::obstacles() {
  const std::vector<int> here{element_.number};
  if (element_.panel == nullptr) return {{Obstacle::Of::own_mark_missing, {.elements = here}}};
  Obstacles result;
  for (std::size_t i = 0; i < element_.options.size(); ++i) {
    const Option& option = element_.options[i];
    const std::optional<Mark> mark = expected_mark(routine_, index_, option, wish_.runs).mark;
    if (mark) {
      rivals_.push_back(
          {i, &option, {*option.declared, *mark, base_chance(routine_, index_, with(i)).percent}});
    } else if (option.title.empty()) {
      result.push_back({Obstacle::Of::elements_unmarked, {.elements = here}});
    } else {
      result.push_back(
          {Obstacle::Of::option_unmarked, {.elements = here, .names = {std::string(option.title)}}});
    }
  }
  const Obstacles others = missing_marks(routine_, with(0), index_);
  result.insert(result.end(), others.begin(), others.end());
  return result;
}

// As declared and on the base mark, and with both possible: the three cases that all others lie between.
bool Comparing::has_totals(const Worth& worth) const {
  for (const Rival& rival : rivals_) {
    for (int percent : {0, 50, 100}) {
      if (!worth.total({rival.way.declared, rival.way.mark, Decimal::whole(percent)})) return false;
    }
  }
  return true;
}

OptionWorth Comparing::tell(const Rival& rival, const Worth& worth) {
  OptionWorth result;
  result.option = rival.option;
  result.title = rival.option == 0 ? "as written" : std::string(rival.is->title);
  result.declared = rival.way.declared;
  result.base = element_.kind->base;
  result.mark = expected_mark(routine_, index_, *rival.is, wish_.runs);
  result.chance = base_chance(routine_, index_, with(rival.option));
  if (const std::optional<RiskedPoints> alone = worth.alone(rival.way)) {
    result.clean = alone->declared;
    result.on_base = alone->base;
  }
  result.expected = rounded(routine_, *worth.own(rival.way));
  result.total = *worth.points(rival.way);
  result.spread = spread(rival.option);
  result.parts = part_worths(routine_, *rival.is, worth, rival.way);
  for (const Objection& limit : objections_to(*rival.is, *element_.kind, *routine_.set))
    result.breaks.push_back(limit.words());
  return result;
}

// Of the line that the element's points are in: its own, or the one of its rule.
std::optional<Decimal> Comparing::spread(std::size_t option) {
  ForecastLines lines(routine_, with(option), how_, index_);
  if (!lines.obstacles().empty()) return std::nullopt;
  const std::optional<Chance> deviation = lines.deviation_of(index_);
  if (!deviation) return std::nullopt;
  constexpr double ten_thousandths = 1e4;
  return Decimal::from_units(std::llround(*deviation * ten_thousandths) * (Decimal::one / 10'000));
}

}  // namespace

Comparison compare(const Routine& routine, std::size_t element, const Wish& wish, const ForecastWish& how) {
  assert(element < routine.elements.size());
  return Comparing(routine, element, wish, how).all();
}

}  // namespace landdrill
