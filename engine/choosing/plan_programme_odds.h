// Programmes weighed by odds: what each is worth to the aim, and between which two values for certain.
//
//   ProgrammeOdds weighing(inputs, pieces);
//   weighing.of({0, 1, 0}).least        // of these choices: its quantile in points, or its chance
//
// Each is worked out once in a plan. Only plan*.cpp include this.
#pragma once

#include <map>

#include "engine/chances/grid_sum.h"
#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_pieces.h"
#include "engine/choosing/plan_reach.h"
#include "tables/decimal.h"

namespace landdrill {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// Its value lies between the two for certain, as far as the model goes. In points, or a chance.
struct WeighedProgramme {
  std::vector<std::size_t> choices;
  double value = 0, least = 0, most = 0;
  Exact exact;
};

class ProgrammeOdds {
 public:
  ProgrammeOdds(const AimInputs& inputs, const Pieces& pieces) : inputs_(inputs), pieces_(pieces) {}
  const WeighedProgramme& of(const std::vector<std::size_t>& choices);

 private:
  WeighedProgramme roughly(const std::vector<std::size_t>& choices);
  void narrow(WeighedProgramme& weighed);
  void narrow_quantile(WeighedProgramme& weighed, const Reach::Survival& survival, double total) const;

  const AimInputs& inputs_;
  const Pieces& pieces_;
  std::optional<GridStep> step_;
  std::optional<Reach> fine_;
  std::map<std::vector<std::size_t>, WeighedProgramme> known_;
};

}  // namespace landdrill
