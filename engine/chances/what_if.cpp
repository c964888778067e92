#include "engine/chances/what_if.h"

#include <algorithm>

#include "tables/decimal.h"

namespace landdrill {
namespace {

Decimal times_quarters(Decimal value, int quarters) {
  return round(Exact(value) * Exact(Decimal::whole(quarters)) / Exact(Decimal::whole(4)), Decimal::places,
               Rounding::half_up);
}

void move_chances(Inputs& inputs, int quarters) {
  for (BaseChance& chance : inputs.at_risk.chances)
    chance.percent = std::min(times_quarters(chance.percent, quarters), hundred_percent);
}

void widen(std::vector<Spread>& spreads) {
  for (Spread& one : spreads) one.marks = times_quarters(one.marks, 5);
}

}  // namespace

Change change_to(WhatIf what) {
  switch (what) {
    case WhatIf::base_likelier:
      return [](const Wish&, Inputs& inputs) { move_chances(inputs, 5); };
    case WhatIf::base_rarer:
      return [](const Wish&, Inputs& inputs) { move_chances(inputs, 3); };
    case WhatIf::wider:
      return [](const Wish&, Inputs& inputs) {
        widen(inputs.spread.elements);
        widen(inputs.spread.aspects);
      };
    case WhatIf::no_day:
      return [](const Wish&, Inputs& inputs) { inputs.spread.day.marks = Decimal(); };
  }
  return {};
}

Inputs inputs_of(const Routine& routine, const Wish& wish, const SpreadWish& spread, const Change& change) {
  Inputs inputs{risked(routine, wish), spreads(routine, wish, spread)};
  if (change) change(wish, inputs);
  return inputs;
}

}  // namespace landdrill
