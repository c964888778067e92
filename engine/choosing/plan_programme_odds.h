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
#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_reach.h"
#include "tables/decimal.h"

namespace landdrill {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// Its value lies between the two for certain, as far as the model goes. In points, or a chance.
struct WeighedProgramme {
  std::vector<std::size_t> choices;
  double value = 0, least = 0, most = 0;
  // On the finest grid:
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
  std::size_t finest() const { return grids_.size(); }
  // Whether it may be worth as much, as far as the coarsest grid can tell: far sooner done than weighing it.
  bool may_be_worth(const std::vector<std::size_t>& choices, double value);
  // What no programme exceeds, were there no limits.
  double highest();

 private:
  Reach& on(std::size_t grid);
  WeighedProgramme weighed(const std::vector<std::size_t>& choices, const Reach& reach) const;
  WeighedProgramme forecast_of(const std::vector<std::size_t>& choices) const;

  const AimInputs& inputs_;
  const Pieces& pieces_;
  const bool quantile_;
  std::vector<std::optional<Reach>>
      grids_;  // coarse ones first; the finest is that of a forecast, its own for each
  std::vector<std::map<std::vector<std::size_t>, WeighedProgramme>> known_;  // by grid
};

}  // namespace landdrill
