// The quantile and the target: of all programmes within the limits (or those with the highest expected totals,
// where they are too many) what could be among the best by coarse odds, and of these what is by fine ones.
#include <algorithm>
#include <cmath>
#include <set>
#include <span>

#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_odds_worth.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// The k-th highest of what is certain; nothing while there are fewer.
std::optional<double> level(const std::vector<Weighed>& known, std::size_t how_many) {
  if (known.size() < how_many) return std::nullopt;
  std::vector<double> least;
  for (const Weighed& one : known) least.push_back(one.least);
  std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many - 1), least.end(),
                   std::greater<>());
  return least[how_many - 1];
}

// Those that differ by no more than sums do by chance stay in their order: of higher expected totals first.
void put_best_first(std::span<Weighed> all) {
  std::vector<Weighed> sorted(all.begin(), all.end());
  std::vector<std::size_t> places(all.size());
  for (std::size_t i = 0; i < places.size(); ++i) places[i] = i;
  std::stable_sort(places.begin(), places.end(),
                   [&](std::size_t a, std::size_t b) { return sorted[a].value > sorted[b].value; });
  for (auto from = places.begin(); from != places.end();) {
    const double equal = sorted[*from].value - last_bits;
    const auto next =
        std::find_if(from, places.end(), [&](std::size_t one) { return sorted[one].value < equal; });
    std::sort(from, next);
    from = next;
  }
  for (std::size_t i = 0; i < places.size(); ++i) all[i] = sorted[places[i]];
}

class ByOdds : public PlanAim {
 public:
  ByOdds(const AimInputs& inputs, std::unique_ptr<OddsWorth> odds, std::unique_ptr<PlanAim> totals)
      : inputs_(inputs),
        weighted_(!weighting_rules(inputs.routine).empty()),
        odds_(std::move(odds)),
        totals_(std::move(totals)) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many,
                 const std::vector<std::size_t>& known) override {
    if (!known.empty()) return sifted(choosing, 1, better_than(inputs_.programmes.places_of(known)));
    const AimedBest by_total = by_expected_total(choosing);
    if (by_total.best.empty()) return by_total;
    Promising found = programmes_of(by_total);
    std::vector<std::vector<std::size_t>> good = found.programmes;
    if (good.size() > std::max(how_many, good_ones)) good.resize(std::max(how_many, good_ones));
    // Nothing is to be changed for nothing.
    const std::vector<std::size_t> as_written(choosing.lists.size());
    if (meets(choosing, as_written)) good.push_back(as_written);
    leave_as_good_as(good, how_many, found);
    return sifted(choosing, how_many, found);
  }

  std::optional<double> worth(const std::vector<std::size_t>& options) const override {
    return odds_->coarsely(inputs_.programmes.places_of(options)).value;
  }

  void tell(PlanChoice& choice) const override {
    if (!inputs_.programmes.has_choices(choice.options)) return;
    const Weighed weighed = told(inputs_.programmes.places_of(choice.options));
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
  static constexpr std::size_t good_ones = 12;

  // All programmes within the limits, and one more than are tried where they are more; of far too many, some.
  AimedBest by_expected_total(const Choosing& choosing) const {
    const std::size_t most = weighted_ ? most_weighted_forecasts + 1 : programmes_to_try(choosing, inputs_);
    AimedBest found = totals_->best(choosing, most, {});
    if (found.best.size() == most) found.proved = false;
    return found;
  }
  Promising programmes_of(const AimedBest& by_total) const {
    Promising found{{}, by_total.proved, by_total.best.size()};
    if (!found.all) found.tried = std::min(found.tried, most_promising);
    for (std::size_t i = 0; i < found.tried; ++i)
      found.programmes.push_back(inputs_.programmes.places_of(by_total.best[i].options));
    return found;
  }

  // The good ones, and what may be as good as the k-th of them.
  void leave_as_good_as(const std::vector<std::vector<std::size_t>>& good, std::size_t how_many,
                        Promising& found) const {
    std::vector<Weighed> known;
    for (const auto& choices : good) {
      if (known.empty() || inputs_.patience.more(1)) known.push_back(odds_->coarsely(choices));
    }
    const std::optional<double> beaten = level(known, how_many);
    // Certain as it is, or out of reach for all.
    if (beaten && is_target() && odds_->highest() <= *beaten + 2 * last_bits) {
      found = {good, true, found.tried};
      return;
    }
    std::erase_if(found.programmes, [&](const std::vector<std::size_t>& choices) {
      const bool goes_on = inputs_.patience.more(1);
      found.all = found.all && goes_on;
      return beaten && goes_on && !odds_->may_be_worth(choices, *beaten);
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

  AimedBest sifted(const Choosing& choosing, std::size_t how_many, const Promising& found) const {
    std::set<std::vector<std::size_t>> seen;
    std::vector<Weighed> left;
    for (const auto& choices : found.programmes) {
      if (meets(choosing, choices) && seen.insert(choices).second) left.push_back({choices});
    }
    bool all = sift(left, how_many, [this](const auto& choices) { return odds_->coarsely(choices); });
    if (left.size() > how_many && !are_alike(left))
      all = sift(left, how_many, [this](const auto& choices) { return odds_->finely(choices); }) && all;
    // Those that are told are as told.
    const std::span first(left.data(), std::min(how_many, left.size()));
    for (Weighed& one : first) one = told(one.choices);
    put_best_first(first);
    return as_best(left, how_many, found, all);
  }
  AimedBest as_best(const std::vector<Weighed>& left, std::size_t how_many, const Promising& found,
                    bool all) const {
    AimedBest result;
    for (std::size_t i = 0; i < left.size(); ++i) {
      if (i > 0 && left[i].most >= left.front().least) ++result.not_told_apart;
      if (i < how_many)
        result.best.push_back({inputs_.programmes.options_of(left[i].choices), left[i].exact});
    }
    result.proved = all && found.all;
    if (!result.proved && !left.empty()) {
      result.tried = inputs_.patience.over() ? 0 : found.tried;
      result.at_most = at_most(left.front());
    }
    return result;
  }

  // Keeps what may be among the best, best first; false when it had to stop. What it does not come to keeps its
  // place.
  template <class Weigh>
  bool sift(std::vector<Weighed>& left, std::size_t how_many, const Weigh& weigh) const {
    std::size_t weighed = 0;
    // Whoever has to stop tells the first all the same.
    for (; weighed < left.size() && (inputs_.patience.more(1) || weighed == 0); ++weighed)
      left[weighed] = weigh(left[weighed].choices);
    const bool all = weighed == left.size();
    put_best_first(left);
    if (const std::optional<double> beaten = level(left, how_many))
      std::erase_if(left, [&](const Weighed& one) { return one.most < *beaten; });
    return all;
  }

  // Whether nobody would notice which of them it is.
  bool are_alike(const std::vector<Weighed>& all) const {
    double least = all.front().least, most = all.front().most;
    for (const Weighed& one : all) {
      least = std::min(least, one.least);
      most = std::max(most, one.most);
    }
    return most - least <= std::max(4 * last_bits, noticed(inputs_, most));
  }

  // The same above the best by hundredths, rounded up.
  Exact at_most(const Weighed& best) const {
    double lead = std::max(odds_->highest(), best.most) - best.value;
    if (is_target()) lead = std::max(0.0, std::min(lead, 1 - best.value) - 2 * last_bits);
    return best.exact +
           Exact(Decimal::from_units(std::llround(std::ceil((is_target() ? 10'000 : 100) * lead)) *
                                     (Decimal::one / 100)));
  }

  Weighed told(const std::vector<std::size_t>& choices) const {
    return inputs_.patience.over() ? odds_->coarsely(choices) : odds_->finely(choices);
  }
  bool is_target() const { return inputs_.how.aim == PlanWish::For::target; }

  const AimInputs inputs_;
  const bool weighted_;
  const std::unique_ptr<OddsWorth> odds_;
  const std::unique_ptr<PlanAim> totals_;
  std::optional<Promising> better_;  // than the best, were every limit wider by one
};

// No routine has so many ways to swim its elements: then the highest expected totals are told, and nothing is proved.
class TooManyForOdds : public PlanAim {
 public:
  explicit TooManyForOdds(std::unique_ptr<PlanAim> totals) : totals_(std::move(totals)) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    AimedBest found = totals_->best(choosing, how_many, {});
    found.proved = false;
    found.tried = found.best.size();
    found.at_most.reset();
    return found;
  }
  std::optional<double> worth(const std::vector<std::size_t>&) const override { return std::nullopt; }

 private:
  const std::unique_ptr<PlanAim> totals_;
};

}  // namespace

bool too_many_for_odds(const AimInputs& inputs) {
  std::size_t ways = 0;
  for (const auto& list : inputs.programmes.options) ways += list.size();
  return ways > most_ways_by_odds;
}

std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles) {
  std::unique_ptr<PlanAim> totals = weighting_rules(inputs.routine).empty() ? added_aim(inputs, obstacles)
                                                                            : weighted_aim(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  if (too_many_for_odds(inputs)) return std::make_unique<TooManyForOdds>(std::move(totals));
  std::unique_ptr<OddsWorth> odds = odds_worth(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByOdds>(inputs, std::move(odds), std::move(totals));
}

}  // namespace landdrill
