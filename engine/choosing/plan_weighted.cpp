// Where elements are weighted by difficulty together, no element has points of its own: programme by programme is
// worked out, all of them, or the most promising (plan_weighing.h).
#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_weighing.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/choosing/worth.h"
#include "engine/routine/wish.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

class WeightedExpected : public PlanAim {
 public:
  explicit WeightedExpected(const AimInputs& inputs)
      : inputs_(inputs), weighing_(inputs), search_(weighing_, inputs) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    return search_.best(choosing, how_many);
  }
  std::optional<double> worth(const std::vector<std::size_t>& options) const override {
    const std::optional<Exact> value = weighing_.value(inputs_.programmes.places_of(options));
    if (!value) return std::nullopt;
    return binary(round(*value, Decimal::places, Rounding::half_up));
  }

 private:
  const AimInputs inputs_;
  const Weighing weighing_;
  WeightedSearch search_;
};

// Whether what is credited under a rule can be above 0 whatever falls to its base mark, with few enough that
// may fall.
bool can_have_points(const Weighing& weighing, std::size_t rule) {
  int risky = 0;
  bool any = false, spared = true;
  for (const auto& list : weighing.ways()) {
    bool safe = false, other = false;
    for (const WeighingWay& way : list) {
      const TogetherElement& element = way.together;
      other |= way.rule != rule;
      safe |= way.rule != rule || !element.risky();
      any |= way.rule == rule && !way.credited.is_zero() && (!element.risky() || element.base > Difficulty());
    }
    risky += safe ? 0 : 1;
    spared &= other;
  }
  return spared || (any && risky <= most_risky);
}

}  // namespace

std::unique_ptr<PlanAim> weighted_aim(const AimInputs& inputs, Obstacles& obstacles) {
  const Weighing weighing(inputs);
  const Wish first = wish_for(inputs, 0);
  for (std::size_t rule = 0; rule < weighing.rules().size(); ++rule) {
    if (can_have_points(weighing, rule)) continue;
    obstacles.push_back(no_total(inputs.routine, risked(inputs.routine, first)));
    return nullptr;
  }
  return std::make_unique<WeightedExpected>(inputs);
}

}  // namespace landdrill
