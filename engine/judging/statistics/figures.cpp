#include "engine/judging/statistics/figures.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>

#include "tables/decimal.h"

namespace landdrill {
namespace {

std::optional<Decimal> in_six_places(double number) {
  constexpr double most = Decimal::most_units / Decimal::one;
  if (!(std::abs(number) < most)) return std::nullopt;
  return Decimal::from_units(std::llround(number * Decimal::one));
}

}  // namespace

std::string figure(double number, int places) {
  const std::optional<Decimal> exact = in_six_places(number);
  if (!exact) return fmt::format("{:.{}f}", number, places);
  return round(Exact(*exact), places, Rounding::half_up).text(places);
}

std::string exact_figure(double number) {
  const std::optional<Decimal> exact = in_six_places(number);
  return exact ? exact->text() : fmt::format("{:.0f}", number);
}

}  // namespace landdrill
