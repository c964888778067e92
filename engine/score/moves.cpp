#include "engine/score/moves.h"

#include <fmt/format.h>

#include "engine/score/score.h"
#include "engine/score/totals.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

constexpr int places_of_difficulty = 2;

std::optional<Decimal> amount_of(const std::optional<Points>& points) {
  return points ? std::optional(points->value()) : std::nullopt;
}

}  // namespace

std::optional<Decimal> SheetMove::change() const {
  if (!before || !after) return std::nullopt;
  return *after - *before;
}

std::vector<SheetMove> moves(const PricedSheet& before, const PricedSheet& after) {
  std::vector<SheetMove> found;
  const auto add = [&](std::string line, std::optional<Decimal> a, std::optional<Decimal> b, int places) {
    if (a != b) found.push_back({std::move(line), a, b, places});
  };
  const Showing was = expected(before.routine, before.wish), is = expected(after.routine, after.wish);
  for (std::size_t i = 0; i < was.elements.size(); ++i) {
    const Element& element = before.routine.elements[i];
    add(fmt::format("{} {}", element.number, element.title), was.elements[i].declared.value(),
        is.elements[i].declared.value(), places_of_difficulty);
  }
  const Totals from = totals(before.routine, before.wish, {}), to = totals(after.routine, after.wish, {});
  add("difficulty, all elements", from.difficulty.value(), to.difficulty.value(), places_of_difficulty);
  add("total, as estimated", amount_of(from.estimate), amount_of(to.estimate), from.places);
  return found;
}

}  // namespace landdrill
