#include "engine/cli/totals.h"

namespace landdrill::cli {

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const int places = places_of(routine);
  const Score estimate = score(routine, expected(routine, wish));
  Totals result;
  result.difficulty = estimate.credited.text(2);
  if (estimate.total) result.estimate = estimate.total->text(places);
  if (!panel) return result;
  const RecordedPanel& seen = routine.panels[*panel];
  const Score judged = score(routine, recorded(routine, seen, wish));
  if (judged.total) result.recorded = judged.total->text(places);
  if (seen.result) result.announced = seen.result->text(places);
  if (!estimate.total || !judged.total) return result;
  const Points difference = *judged.total - *estimate.total;
  result.difference = (difference > Points() ? "+" : "") + difference.text(places);
  return result;
}

}  // namespace landdrill::cli
