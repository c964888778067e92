#include "engine/cli/totals.h"

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "tables/quantity.h"

namespace landdrill::cli {

Estimated::Estimated(const Routine& routine, const Wish& wish)
    : routine_(routine), wish_(wish), places_(places_of(routine)) {
  const Score estimate = score(routine, expected(routine, wish));
  total_ = estimate.total;
  alone_.difficulty = estimate.credited.text(2);
  if (total_) alone_.estimate = total_->text(places_);
}

Totals Estimated::beside(const RecordedPanel& seen) const {
  Totals result = alone_;
  const Score judged = score(routine_, recorded(routine_, seen, wish_));
  if (judged.total) result.recorded = judged.total->text(places_);
  if (seen.result) result.announced = seen.result->text(places_);
  if (!total_ || !judged.total) return result;
  const Points difference = *judged.total - *total_;
  result.difference = (difference > Points() ? "+" : "") + difference.text(places_);
  return result;
}

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const Estimated estimated(routine, wish);
  return panel ? estimated.beside(routine.panels[*panel]) : estimated.alone();
}

}  // namespace landdrill::cli
