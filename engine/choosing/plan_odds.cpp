// The quantile and the target: of all programmes within the limits (or those with the highest expected totals, where
// they are too many) what could be among the best by odds on a coarse grid, then what still could on finer ones,
// down to that of a forecast.
#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <span>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_programme_odds.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/plan_weighted_search.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// Of what is not weighed yet.
constexpr double unknown = -std::numeric_limits<double>::infinity();

class ByOdds : public PlanAim {
 public:
  ByOdds(const AimInputs& inputs, Pieces pieces)
      : inputs_(inputs),
        pieces_(std::move(pieces)),
        quantile_(inputs.how.aim == PlanWish::For::quantile),
        weighing_(inputs_, pieces_) {
    Obstacles none;
    added_ = added_aim(inputs_, none);
  }

  AimedBest best(const Choosing& choosing, std::size_t how_many,
                 const std::vector<std::size_t>& known) override {
    if (!known.empty()) return sifted(choosing, 1, better_than(places_of(known)));
    const AimedBest by_total = by_expected_total(choosing);
    if (by_total.best.empty()) return by_total;
    Promising found = programmes_of(by_total);
    std::vector<std::vector<std::size_t>> good = found.programmes;
    if (good.size() > std::max(how_many, good_ones)) good.resize(std::max(how_many, good_ones));
    // Nothing is to be changed for nothing.
    const std::vector<std::size_t> earliest(choosing.lists.size());
    if (meets(choosing, earliest)) good.push_back(earliest);
    leave_as_good_as(good, how_many, found);
    return sifted(choosing, how_many, found);
  }

  void tell(PlanChoice& choice) const override {
    if (!has_choices(choice.options)) return;
    const WeighedProgramme& weighed = weighing_.of(places_of(choice.options), weighing_.finest());
    choice.quantile = weighed.quantile;
    choice.reaches = weighed.reaches;
  }

 private:
  // What may be among the best.
  struct Promising {
    std::vector<std::vector<std::size_t>> programmes;
    bool all = true;        // false: others may be, too
    std::size_t tried = 0;  // of so many
  };
  static constexpr std::size_t good_ones = 12, most_promising = 300;

  // All programmes within the limits, and one more than are tried where they are more; of far too many, some.
  AimedBest by_expected_total(const Choosing& choosing) const {
    constexpr double soon_counted = 1e6;
    double ways = 1;
    for (const auto& list : choosing.lists) ways *= static_cast<double>(list.size());
    const std::size_t most = ways > soon_counted ? most_promising : inputs_.how.most_programmes + 1;
    AimedBest found = added_->best(choosing, most, {});
    if (found.best.size() == most) found.proved = false;
    return found;
  }
  Promising programmes_of(const AimedBest& by_total) const {
    Promising found{{}, by_total.proved, by_total.best.size()};
    if (!found.all) found.tried = std::min(found.tried, most_promising);
    for (std::size_t i = 0; i < found.tried; ++i)
      found.programmes.push_back(places_of(by_total.best[i].options));
    return found;
  }

  // The good ones, and what may be as good as the k-th of them.
  void leave_as_good_as(const std::vector<std::vector<std::size_t>>& good, std::size_t how_many,
                        Promising& found) {
    std::vector<WeighedProgramme> known;
    for (const auto& choices : good) known.push_back(weighing_.of(choices, 0));
    const std::optional<double> beaten = level(known, how_many);
    // Certain as it is, or out of reach for all.
    if (beaten && !quantile_ && weighing_.highest() <= *beaten + 2 * last_bits) {
      found = {good, true, found.tried};
      return;
    }
    std::erase_if(found.programmes, [&](const std::vector<std::size_t>& choices) {
      const bool goes_on = inputs_.patience.more(1);
      found.all = found.all && goes_on;
      return beaten && goes_on && !weighing_.may_be_worth(choices, *beaten);
    });
    found.programmes.insert(found.programmes.begin(), good.begin(), good.end());
  }

  // Asked for one limit after another that is moved by one: worked out for all of them at once.
  const Promising& better_than(const std::vector<std::size_t>& best) {
    if (!better_) {
      better_ = programmes_of(by_expected_total(inputs_.programmes.loosened()));
      leave_as_good_as({best}, 1, *better_);
    }
    return *better_;
  }

  AimedBest sifted(const Choosing& choosing, std::size_t how_many, const Promising& found) {
    std::set<std::vector<std::size_t>> seen;
    std::vector<WeighedProgramme> left;
    for (const auto& choices : found.programmes) {
      if (meets(choosing, choices) && seen.insert(choices).second)
        left.push_back({choices, unknown, unknown, unknown, {}, {}, {}});
    }
    const bool all = sift_finer_and_finer(left, how_many) && found.all;
    weigh_first(left, how_many);
    AimedBest result;
    for (std::size_t i = 0; i < left.size(); ++i) {
      if (i > 0 && left[i].most >= left.front().least) ++result.not_told_apart;
      if (i < how_many)
        result.best.push_back({inputs_.programmes.options_of(left[i].choices), left[i].exact});
    }
    result.proved = all;
    if (!all) {
      result.tried = inputs_.patience.over() ? 0 : found.tried;
      result.at_most = highest(left.front());
    }
    return result;
  }

  // Keeps what may be among the best, best first; false when it had to stop.
  bool sift_finer_and_finer(std::vector<WeighedProgramme>& left, std::size_t how_many) {
    for (std::size_t grid = 0; grid <= weighing_.finest() && left.size() > how_many; ++grid) {
      if (!sift(left, how_many, grid)) return false;
      if (!quantile_ && are_alike(left)) return true;
    }
    return true;
  }
  // What it does not come to keeps the place that a coarser grid gave it. Good ones are known on the coarsest.
  bool sift(std::vector<WeighedProgramme>& left, std::size_t how_many, std::size_t grid) {
    const std::size_t in_any_case = grid == 0 ? good_ones : 0;
    std::size_t weighed = 0;
    for (; weighed < left.size() && (weighed < in_any_case || inputs_.patience.more(1)); ++weighed)
      left[weighed] = weighing_.of(left[weighed].choices, grid);
    const bool all = weighed == left.size();
    put_best_first(left);
    if (const std::optional<double> beaten = level(left, how_many))
      std::erase_if(left, [&](const WeighedProgramme& one) { return one.most < *beaten; });
    return all;
  }
  // Those that are told are as forecast.
  void weigh_first(std::vector<WeighedProgramme>& left, std::size_t how_many) {
    const std::span first(left.data(), std::min(how_many, left.size()));
    for (WeighedProgramme& one : first) one = weighing_.of(one.choices, weighing_.finest());
    put_best_first(first);
  }

  // What no programme exceeds, were there no limits: above the best by hundredths, rounded up.
  Exact highest(const WeighedProgramme& best) {
    double lead = std::max(weighing_.highest(), best.most) - best.value;
    if (!quantile_) lead = std::max(0.0, std::min(lead, 1 - best.value) - 2 * last_bits);
    return best.exact + Exact(Decimal::from_units(std::llround(std::ceil((quantile_ ? 100 : 10'000) * lead)) *
                                                  (Decimal::one / 100)));
  }

  std::size_t place_of(std::size_t element, std::size_t option) const {
    const auto& list = inputs_.programmes.options[element];
    return static_cast<std::size_t>(std::find(list.begin(), list.end(), option) - list.begin());
  }
  bool has_choices(const std::vector<std::size_t>& options) const {
    for (std::size_t i = 0; i < options.size(); ++i) {
      if (place_of(i, options[i]) == inputs_.programmes.options[i].size()) return false;
    }
    return true;
  }
  std::vector<std::size_t> places_of(const std::vector<std::size_t>& options) const {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < options.size(); ++i) places.push_back(place_of(i, options[i]));
    return places;
  }

  const AimInputs inputs_;
  const Pieces pieces_;
  const bool quantile_;
  std::unique_ptr<PlanAim> added_;
  mutable ProgrammeOdds weighing_;
  std::optional<Promising> better_;  // than the best, were every limit wider by one
};

}  // namespace

std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles) {
  Pieces pieces = pieces_of(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByOdds>(inputs, std::move(pieces));
}

}  // namespace landdrill
