// Programmes weighed by odds: what each is worth to the aim, and between which two values for certain.
//
//   ProgrammeOdds weighing(inputs, pieces);
//   weighing.of({0, 1, 0}, 0).most                   // of these choices, on the coarsest of the grids
//   weighing.of({0, 1, 0}, weighing.finest()).value  // its quantile in points, or its chance, as forecast
//
// Each is worked out once on every grid. Only plan*.cpp include this.
#pragma once

#include <map>
#include <span>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_aims.h"
#include "tables/decimal.h"

namespace landdrill {

// The odds that a plan adds up: of every choice on every day, and of what all programmes share.
//
//   Pieces pieces = pieces_of(inputs, obstacles);
//   pieces.total({0, 1, 0}, {}).odds.quantile(0.25)    // of the programme of these choices
//
// The same model as forecast.h; spreads are those of the whole sheet, whatever is left out. Only plan*.cpp
// include this.

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

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// Its value lies between the two for certain, as far as the model goes. In points, or a chance.
struct WeighedProgramme {
  std::vector<std::size_t> choices;
  double value = 0, least = 0, most = 0;
  Exact exact;                      // in points, or per cent
  std::optional<Decimal> quantile;  // one of the two, by the aim
  std::optional<ChanceBounds> reaches;
};

// The k-th highest of what is certain; nothing while there are fewer.
std::optional<double> level(const std::vector<WeighedProgramme>& known, std::size_t how_many);
// Those that differ by no more than sums do by chance are equal: earlier choices first.
void put_best_first(std::span<WeighedProgramme> all);
// Whether no finer grid tells any chance from another.
bool are_alike(const std::vector<WeighedProgramme>& all);

class ProgrammeOdds {
 public:
  ProgrammeOdds(const AimInputs& inputs, const Pieces& pieces);
  const WeighedProgramme& of(const std::vector<std::size_t>& choices, std::size_t grid);
  std::size_t finest() const { return steps_.size(); }
  // So coarse that a good part of all programmes can soon be looked into.
  GridStep coarsest() const { return steps_.front(); }

 private:
  WeighedProgramme weighed(const std::vector<std::size_t>& choices, const TotalOdds& total) const;

  const AimInputs& inputs_;
  const Pieces& pieces_;
  std::vector<GridStep> steps_;  // coarse ones first; the finest is that of a forecast, its own for each
  std::vector<std::map<std::vector<std::size_t>, WeighedProgramme>> known_;  // by grid
};

}  // namespace landdrill
