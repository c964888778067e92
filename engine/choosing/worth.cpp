#include "engine/choosing/worth.h"

#include <algorithm>
#include <cassert>

#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "engine/score/panel.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

Worth::Worth(const Routine& routine, std::size_t element, const Wish& wish)
    : routine_(routine), element_(element), risked_(risked(routine, wish)) {
  assert(routine.elements[element].panel != nullptr);
  if (rule().use == Use::weighted) others_ = weighted_beside(routine, risked_, element);
  rest_ = total_without(routine, risked_, element);
}

std::optional<RiskedPoints> Worth::alone(const Way& way) const {
  ShownElement here = risked_.showing.elements[element_];
  here.declared = here.credited = way.declared;
  here.marks = all_giving(rule(), way.mark);
  return risked_points(routine_.elements[element_], here,
                       kind().base ? way.chance : risked_.chances[element_].percent);
}

std::optional<Exact> Worth::together(const Way& way) const {
  if (!others_) return std::nullopt;
  const KeptMarks marks = all_giving(rule(), way.mark);
  const std::optional<Difficulty>& base = kind().base;
  return others_->expected(
      {combined(rule(), marks), way.declared, base.value_or(way.declared), base ? way.chance : Decimal()});
}

std::optional<Exact> Worth::own(const Way& way) const {
  if (rule().use == Use::weighted) return together(way);
  const std::optional<RiskedPoints> points = alone(way);
  if (!points) return std::nullopt;
  return points->expected;
}

std::optional<Exact> Worth::total(const Way& way) const {
  try {
    const std::optional<Exact> here = own(way);
    if (!rest_ || !here) return std::nullopt;
    return *rest_ + *here;
  } catch (const Overflow&) {
    return std::nullopt;  // a part that nobody swims can be next in its family
  }
}

std::optional<Points> Worth::points(const Way& way) const {
  const std::optional<Exact> exact = total(way);
  if (!exact) return std::nullopt;
  return rounded(routine_, *exact);
}

Points rounded(const Routine& routine, Exact points) {
  return Points(round(points, std::max(4, places_of(routine)), Rounding::half_up));
}

Obstacles missing_marks(const Routine& routine, const Wish& wish, std::optional<std::size_t> asked_apart) {
  Showing showing = expected(routine, wish);
  if (asked_apart) showing.elements[*asked_apart].marks = KeptMarks{};
  return unmarked_lines(unmarked(routine, showing));
}

Obstacle no_total(const Routine& routine, const Risked& risked) {
  for (const PanelRule* rule : weighting_rules(routine)) {
    int risky = 0;
    for (std::size_t i = 0; i < routine.elements.size(); ++i) {
      const Decimal percent = risked.chances[i].percent;
      if (routine.elements[i].panel == rule && percent > Decimal() && percent < hundred_percent) ++risky;
    }
    if (risky > most_risky)
      return {Obstacle::Of::bases_too_many, {.amount = Decimal::whole(risky), .most = most_risky}};
  }
  return {Obstacle::Of::all_may_be_zero};
}

}  // namespace landdrill
