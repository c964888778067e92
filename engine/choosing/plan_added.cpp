// Points that add up, element by element: the choosing itself, with the expected points as worths.
#include <algorithm>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// The least power of ten, at least millionths, of which all points are whole multiples.
std::int64_t parts_of_a_point(const std::vector<std::vector<Exact>>& points) {
  constexpr std::int64_t finest = 100'000'000;
  const auto is_whole = [](Exact value, std::int64_t times) {
    return (value * Exact(Decimal::whole(times))).decimal().has_value();
  };
  std::int64_t times = 1;
  for (const auto& list : points) {
    for (const Exact& one : list) {
      while (times < finest && !is_whole(one, times)) times *= 10;
    }
  }
  return times;
}

class Added : public PlanAim {
 public:
  Added(const AimInputs& inputs, std::vector<std::vector<Exact>> points)
      : inputs_(inputs), points_(std::move(points)), times_(parts_of_a_point(points_)) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    const BestChoices found = choose_best(priced(choosing), wish(how_many));
    AimedBest result;
    result.proved = found.proved;
    result.infeasible = found.infeasible;
    result.conflict = found.conflict;
    for (const Chosen& chosen : found.best) {
      result.best.push_back({inputs_.programmes.options_of(chosen.choices), value_of(chosen.worth)});
    }
    if (found.at_most) result.at_most = value_of(*found.at_most);
    return result;
  }

 private:
  Choosing priced(Choosing choosing) const {
    const Exact times = Exact(Decimal::whole(times_));
    for (std::size_t i = 0; i < points_.size(); ++i) {
      for (std::size_t c = 0; c < points_[i].size(); ++c) {
        // More than fourteen places come of nothing a sheet can say.
        choosing.lists[i][c].worth =
            round(points_[i][c] * times, Decimal::places, Rounding::half_even).units();
      }
    }
    return choosing;
  }
  Exact value_of(std::int64_t worth) const {
    return Exact(Decimal::from_units(worth)) / Exact(Decimal::whole(times_));
  }
  ChooseWish wish(std::size_t how_many) const {
    // The choice tells its nodes from the start; patience wants those that are new.
    auto before = std::make_shared<std::uint64_t>(0);
    return {how_many, [this, before](std::uint64_t nodes) {
              const std::uint64_t more = nodes - std::min(nodes, *before);
              *before = nodes;
              return inputs_.patience.more(more);
            }};
  }

  const AimInputs inputs_;
  const std::vector<std::vector<Exact>> points_;
  const std::int64_t times_;
};

}  // namespace

Wish wish_for(const AimInputs& inputs, std::size_t place) {
  Wish wish{{}, inputs.wish.runs};
  for (const auto& list : inputs.programmes.options) {
    std::size_t option = list.empty() ? 0 : list[std::min(place, list.size() - 1)];
    if (option == leave_out) option = list.front();
    wish.options.push_back(option == leave_out ? 0 : option);
  }
  return wish;
}

std::vector<std::vector<Exact>> expected_points(const AimInputs& inputs) {
  std::vector<std::vector<Exact>> points;
  std::size_t most = 0;
  for (const auto& list : inputs.programmes.options) {
    points.emplace_back(list.size());
    most = std::max(most, list.size());
  }
  for (std::size_t place = 0; place < most; ++place) {
    const Risked all = risked(inputs.routine, wish_for(inputs, place));
    for (std::size_t i = 0; i < points.size(); ++i) {
      if (place >= points[i].size() || inputs.programmes.options[i][place] == leave_out) continue;
      const std::optional<RiskedPoints> one = risked_points(inputs.routine, all, i);
      if (one) points[i][place] = one->expected;
    }
  }
  return points;
}

std::unique_ptr<PlanAim> added_aim(const AimInputs& inputs, Obstacles&) {
  return std::make_unique<Added>(inputs, expected_points(inputs));
}

}  // namespace landdrill
