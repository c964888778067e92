#include "engine/judging/calibrated_estimate.h"

#include <cmath>

#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Mark in_four_places(double mark) {
  constexpr std::int64_t place = Decimal::one / 10'000;
  return Mark(Decimal::from_units(std::llround(mark * 10'000) * place));
}

Mark calibrated_mark(const Learned& learned, const Element& element, Mark raw) {
  const PanelRule& rule = *element.panel;
  Lesson lesson;
  lesson.kind = element.kind->code;
  lesson.expected = binary(raw);
  lesson.least = binary(rule.least);
  lesson.most = binary(rule.most);
  return in_four_places(calibrated(learned, lesson));
}

}  // namespace

CalibratedEstimate calibrated_estimate(const Routine& routine, const Wish& wish, const Learned& learned) {
  const Showing raw = expected(routine, wish);
  Showing moved = raw;
  CalibratedEstimate both;
  both.places = places_of(routine);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    CalibratedElement& row = both.elements.emplace_back();
    row.label = label_of(element);
    row.kind = element.kind->code;
    if (!raw.elements[i].marks) continue;
    row.raw = expected_mark(routine, i, chosen(routine, i, wish), wish.runs).mark;
    if (!row.raw) continue;
    row.calibrated = calibrated_mark(learned, element, *row.raw);
    moved.elements[i].marks = all_giving(*element.panel, *row.calibrated);
  }
  const Score before = score(routine, raw), after = score(routine, moved);
  for (std::size_t i = 0; i < both.elements.size(); ++i) {
    both.elements[i].raw_points = before.elements[i];
    both.elements[i].calibrated_points = after.elements[i];
  }
  both.raw_total = before.total;
  both.calibrated_total = after.total;
  if (before.total && after.total) both.change = *after.total - *before.total;
  return both;
}

}  // namespace landdrill
