// Where elements are weighted by difficulty together, no element has points of its own: every programme is
// worked out.
#include <algorithm>
#include <cmath>

#include "engine/plan_aims.h"

namespace landdrill {
namespace {

class Weighted : public PlanAim {
 public:
  explicit Weighted(const AimInputs& inputs) : inputs_(inputs) {}

  // All programmes once; whatever is asked later only looks at them.
  void work_out(Obstacles& obstacles) {
    std::vector<std::size_t> choices(inputs_.programmes.options.size());
    do {
      if (!inputs_.patience.more(1)) {
        stopped_ = true;
        break;
      }
      const std::vector<std::size_t> options = inputs_.programmes.options_of(choices);
      std::optional<Exact> value = value_of(options);
      if (value) known_.push_back({choices, {options, *value}});
    } while (next(choices));
    if (known_.empty() && !stopped_)
      obstacles.push_back("no programme has an expected total under these rules");
    std::stable_sort(known_.begin(), known_.end(),
                     [](const Known& a, const Known& b) { return a.programme.value > b.programme.value; });
  }

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    AimedBest result;
    result.proved = !stopped_;
    for (const Known& one : known_) {
      if (result.best.size() == how_many) break;
      if (meets(choosing, one.choices)) result.best.push_back(one.programme);
    }
    if (result.best.empty()) {
      const BestChoices found =
          choose_best(choosing, {1, [this](std::uint64_t) { return inputs_.patience.more(0); }});
      result.infeasible = found.infeasible;
      result.conflict = found.conflict;
    }
    return result;
  }

  void tell(PlanChoice& choice) const override {
    if (inputs_.how.aim == PlanWish::For::expected) return;
    const Programme programme = programme_of(inputs_.routine, inputs_.wish, choice.options);
    const Forecast told = forecast(programme.routine, programme.wish, inputs_.how.forecast);
    if (!told.total) return;
    if (inputs_.how.aim == PlanWish::For::quantile) {
      choice.quantile = told.total->odds.quantile(inputs_.how.share);
    } else {
      choice.reaches = reaches(*told.total, inputs_.how.target);
    }
  }

 private:
  struct Known {
    std::vector<std::size_t> choices;
    AimedProgramme programme;
  };

  bool next(std::vector<std::size_t>& choices) const {
    for (std::size_t i = choices.size(); i-- > 0;) {
      if (++choices[i] < inputs_.programmes.options[i].size()) return true;
      choices[i] = 0;
    }
    return false;
  }

  std::optional<Exact> value_of(const std::vector<std::size_t>& options) const {
    const Programme programme = programme_of(inputs_.routine, inputs_.wish, options);
    if (inputs_.how.aim == PlanWish::For::expected) {
      return expected_total(programme.routine, risked(programme.routine, programme.wish));
    }
    const Forecast told = forecast(programme.routine, programme.wish, inputs_.how.forecast);
    if (!told.total) return std::nullopt;
    if (inputs_.how.aim == PlanWish::For::quantile)
      return Exact(told.total->odds.quantile(inputs_.how.share));
    const Chance chance = reaches(*told.total, inputs_.how.target).chance;
    return Exact(Decimal::from_units(std::llround(chance * 100 * Decimal::one)));
  }

  static bool meets(const Choosing& choosing, const std::vector<std::size_t>& choices) {
    for (std::size_t j = 0; j < choosing.limits.size(); ++j) {
      std::int64_t used = 0;
      for (std::size_t i = 0; i < choices.size(); ++i) used += choosing.lists[i][choices[i]].uses[j];
      const ChoiceLimit& limit = choosing.limits[j];
      if ((limit.least && used < *limit.least) || (limit.most && used > *limit.most)) return false;
    }
    if (!choosing.chain) return true;
    std::uint32_t state = choosing.chain->start;
    for (std::size_t i = 0; i < choices.size() && state != broken; ++i) {
      state = choosing.chain->next[i][choices[i]][state];
    }
    return state != broken && choosing.chain->may_end[state];
  }

  const AimInputs inputs_;
  std::vector<Known> known_;
  bool stopped_ = false;
};

}  // namespace

std::unique_ptr<PlanAim> weighted_aim(const AimInputs& inputs, Obstacles& obstacles) {
  const bool odds = inputs.how.aim != PlanWish::For::expected;
  const std::size_t most = odds ? most_weighted_forecasts : most_weighted_programmes;
  std::size_t programmes = 1;
  for (const auto& list : inputs.programmes.options) {
    programmes *= list.size();
    if (programmes > most) {
      obstacles.push_back(
          "elements are weighted by difficulty together, so every programme has to be worked out, and there "
          "are more than " +
          std::to_string(most) + ": let more elements stay, or give fewer options");
      return nullptr;
    }
  }
  auto aim = std::make_unique<Weighted>(inputs);
  aim->work_out(obstacles);
  return aim;
}

}  // namespace landdrill
