#include "engine/routine/timing.h"

#include "engine/routine/breath.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

std::optional<Decimal> tenths(int counts, std::optional<Decimal> tempo) {
  if (!tempo) return std::nullopt;
  return round(seconds_of(counts, *tempo), 1, Rounding::half_up);
}

}  // namespace

Exact seconds_of(int counts, Decimal beats_a_minute) {
  return Exact(Decimal::whole(counts)) * Exact(Decimal::whole(60)) / Exact(beats_a_minute);
}

Timing timing(const Routine& routine, const Wish& wish) {
  Timing result;
  Breath breath;
  for (std::size_t i = 0; i < routine.order.size(); ++i) {
    const Item item = routine.order[i];
    ItemTime time{item, 0, 0, {}, {}};
    const CountUses& counts =
        item.is_element ? chosen(routine, item.index, wish).counts : routine.passages[item.index].counts;
    for (const CountUse& use : counts) {
      time.counts += use.counts;
      if (use.under) time.under += use.counts;
      breath.swim(use, i);
    }
    time.seconds = tenths(time.counts, routine.tempo);
    time.under_seconds = tenths(time.under, routine.tempo);
    result.counts += time.counts;
    result.under += time.under;
    result.items.push_back(time);
  }
  result.longest_under = breath.longest();
  result.longest_starts = breath.longest_starts();
  result.seconds = tenths(result.counts, routine.tempo);
  result.under_seconds = tenths(result.under, routine.tempo);
  result.longest_under_seconds = tenths(result.longest_under, routine.tempo);
  if (result.counts > 0) {
    const Exact share = Exact(Decimal::whole(100)) * Exact(Decimal::whole(result.under));
    result.under_share = round(share / Exact(Decimal::whole(result.counts)), 1, Rounding::half_up);
  }
  return result;
}

}  // namespace landdrill
