// What a plan aims at, as something to search with: the best programmes of a choosing, by one aim.
//
//   std::unique_ptr<PlanAim> aim = added_aim({routine, wish, how, programmes, patience}, obstacles);
//   aim->best(programmes.choosing, 6, {}).best[0].options
//
// Three of them: points that add up (choose_best.h), every programme worked out (weighted events), and odds
// (plan_odds.cpp), which are of either kind. Values are in points; for a target, chances in per cent. Only plan*.cpp include this.
#pragma once

#include <memory>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/what_if.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill {

struct AimedProgramme {
  std::vector<std::size_t> options;
  Exact value;
};
struct AimedBest {
  std::vector<AimedProgramme> best;
  bool proved = true;
  bool infeasible = false;
  std::optional<Exact> at_most;  // when not proved, and anything bounds it
  std::size_t not_told_apart = 0;
  std::size_t tried = 0;  // when not proved for that reason: see Plan
  std::vector<LimitSide> conflict;
};
// How long a search may go on, over all that a plan searches for.
class Patience {
 public:
  explicit Patience(std::function<bool(std::uint64_t)> go_on) : go_on_(std::move(go_on)) {}
  // Counts steps; false once it was told to stop.
  bool more(std::uint64_t steps) {
    steps_ += steps;
    if (!over_ && go_on_ && !go_on_(steps_)) over_ = true;
    return !over_;
  }
  bool over() const { return over_; }

 private:
  std::function<bool(std::uint64_t)> go_on_;
  std::uint64_t steps_ = 0;
  bool over_ = false;
};

class PlanAim {
 public:
  virtual ~PlanAim() = default;
  // `known`: options of a programme that `choosing` allows, if one is known.
  virtual AimedBest best(const Choosing& choosing, std::size_t how_many,
                         const std::vector<std::size_t>& known) = 0;
  // What a programme is worth by this aim, coarsely where that is sooner done: points, or a chance. Nothing where there is
  // none.
  virtual std::optional<double> worth(const std::vector<std::size_t>& options) const = 0;
  // What is told of a programme beside its expected total: its quantile, or its chance.
  virtual void tell(PlanChoice&) const {}
};

struct AimInputs {
  const Routine& routine;
  const Wish& wish;
  const PlanWish& how;
  const Programmes& programmes;
  Patience& patience;
};
// Each fills `obstacles` instead when it cannot.
std::unique_ptr<PlanAim> added_aim(const AimInputs& inputs, Obstacles& obstacles);
std::unique_ptr<PlanAim> weighted_aim(const AimInputs& inputs, Obstacles& obstacles);
std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles);
bool too_many_for_odds(const AimInputs& inputs);
// The one of the wish.
std::unique_ptr<PlanAim> aim_of(const AimInputs& inputs, Obstacles& obstacles);

// By less than this nobody notices that one programme is better by the aim: points, of totals about so high, or a
// chance.
double noticed(const AimInputs& inputs, double total);
// What is at risk, and how marks scatter, changed as the wish says.
Inputs inputs_for(const AimInputs& inputs, const Wish& wish);

// How much it hangs on what goes in that the first of these choices is the best of them (plan_doubt.cpp).
PlanDoubt doubt_of(const AimInputs& inputs, const std::vector<PlanChoice>& choices);

// One more than are tried where programmes may be no more than that; of far too many, only the most promising.
std::size_t programmes_to_try(const Choosing& choosing, const AimInputs& inputs);
// The expected points of each choice, by element; nothing for elements that are not marked or left out.
std::vector<std::vector<Exact>> expected_points(const AimInputs& inputs);
// A wish for the `place`-th choice of each element, or its last; where that is to leave it out, another.
Wish wish_for(const AimInputs& inputs, std::size_t place);

}  // namespace landdrill
