// The odds that a plan adds up: of every choice on every day, and of what all programmes share.
//
//   Pieces pieces = pieces_of(inputs, obstacles);
//   pieces.total({0, 1, 0}, {}).odds.quantile(0.25)    // of the programme of these choices
//
// The same model as forecast.h; spreads are those of the whole sheet, whatever is left out. Only plan*.cpp
// include this.
#pragma once

#include "engine/chances/forecast.h"
#include "engine/chances/grid_sum.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_aims.h"
#include "tables/decimal.h"

namespace landdrill {

struct Pieces {
  Odds days;
  std::vector<std::vector<std::vector<Odds>>> choices;  // [element][choice][day]
  std::vector<std::vector<Odds>> shared;                // [piece][day, or only one]

  const Odds& shared_on(std::size_t piece, std::size_t day) const {
    return shared[piece][shared[piece].size() == 1 ? 0 : day];
  }
  // Of one choice for each element.
  TotalOdds total(const std::vector<std::size_t>& chosen, const GridWish& wish) const;
  // On a grid chosen once, which is most of the work: of programmes that are to be told apart.
  GridStep step_for(const std::vector<std::size_t>& chosen, const GridWish& wish) const;
  TotalOdds total(const std::vector<std::size_t>& chosen, GridStep step) const;

  Odds nothing = Odds::certain(Decimal());  // what a world of no pieces has

 private:
  std::vector<World> worlds(const std::vector<std::size_t>& chosen) const;
};
// Fills `obstacles` instead when there can be no forecast.
Pieces pieces_of(const AimInputs& inputs, Obstacles& obstacles);

}  // namespace landdrill
