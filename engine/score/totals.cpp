#include "engine/score/totals.h"

namespace landdrill {

Estimated::Estimated(const Routine& routine, const Wish& wish) : routine_(routine), wish_(wish) {
  const Score estimate = score(routine, expected(routine, wish));
  alone_.places = places_of(routine);
  alone_.estimate = estimate.total;
  alone_.difficulty = estimate.credited;
}

Totals Estimated::beside(const RecordedPanel& seen) const {
  Totals result = alone_;
  result.recorded = score(routine_, recorded(routine_, seen, wish_)).total;
  result.announced = seen.result;
  if (result.estimate && result.recorded) result.difference = *result.recorded - *result.estimate;
  return result;
}

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const Estimated estimated(routine, wish);
  return panel ? estimated.beside(routine.panels[*panel]) : estimated.alone();
}

}  // namespace landdrill
