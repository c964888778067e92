// The quantile and the target: of all programmes within the limits (or those with the highest expected totals,
// where they are too many) what could be among the best by odds on a coarse grid, and of these what is by forecasts.
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <span>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// Of what is not weighed yet.
constexpr double unknown = -std::numeric_limits<double>::infinity();

// Its value lies between the two for certain, as far as the model goes. In points, or a chance.
struct Weighed {
  std::vector<std::size_t> choices;
  double value = unknown, least = unknown, most = unknown;
  // As forecast:
  Exact exact = {};                      // in points, or per cent
  std::optional<Decimal> quantile = {};  // one of the two, by the aim
  std::optional<ChanceBounds> reaches = {};
};

// The k-th highest of what is certain; nothing while there are fewer.
std::optional<double> level(const std::vector<Weighed>& known, std::size_t how_many) {
  if (known.size() < how_many) return std::nullopt;
  std::vector<double> least;
  for (const Weighed& one : known) least.push_back(one.least);
  std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many - 1), least.end(),
                   std::greater<>());
  return least[how_many - 1];
}

// Those that differ by no more than sums do by chance are equal: earlier choices first.
void put_best_first(std::span<Weighed> all) {
  std::sort(all.begin(), all.end(), [](const Weighed& a, const Weighed& b) { return a.value > b.value; });
  for (auto from = all.begin(); from != all.end();) {
    const double equal = from->value - last_bits;
    const auto next =
        std::find_if(from, all.end(), [equal](const Weighed& one) { return one.value < equal; });
    std::sort(from, next, [](const Weighed& a, const Weighed& b) { return a.choices < b.choices; });
    from = next;
  }
}

// Whether no finer grid tells any chance from another.
bool are_alike(const std::vector<Weighed>& all) {
  double least = all.front().least, most = all.front().most;
  for (const Weighed& one : all) {
    least = std::min(least, one.least);
    most = std::max(most, one.most);
  }
  return most - least <= 4 * last_bits;
}

class ByOdds : public PlanAim {
 public:
  ByOdds(const AimInputs& inputs, Pieces pieces)
      : inputs_(inputs),
        pieces_(std::move(pieces)),
        quantile_(inputs.how.aim == PlanWish::For::quantile),
        reach_(pieces_, coarse_step()) {
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
    const Weighed& weighed = forecast_of(places_of(choice.options));
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
    const std::size_t most = programmes_to_try(choosing, inputs_);
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
                        Promising& found) const {
    std::vector<Weighed> known;
    for (const auto& choices : good) known.push_back(coarsely(choices));
    const std::optional<double> beaten = level(known, how_many);
    // Certain as it is, or out of reach for all.
    if (beaten && !quantile_ && highest() <= *beaten + 2 * last_bits) {
      found = {good, true, found.tried};
      return;
    }
    std::erase_if(found.programmes, [&](const std::vector<std::size_t>& choices) {
      const bool goes_on = inputs_.patience.more(1);
      found.all = found.all && goes_on;
      return beaten && goes_on && !may_be_worth(choices, *beaten);
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
    bool all = sift(left, how_many, good_ones, [this](const auto& choices) { return coarsely(choices); });
    if (left.size() > how_many && (quantile_ || !are_alike(left)))
      all = sift(left, how_many, 0, [this](const auto& choices) { return forecast_of(choices); }) && all;
    // Those that are told are as forecast.
    const std::span first(left.data(), std::min(how_many, left.size()));
    for (Weighed& one : first) one = forecast_of(one.choices);
    put_best_first(first);
    AimedBest result;
    for (std::size_t i = 0; i < left.size(); ++i) {
      if (i > 0 && left[i].most >= left.front().least) ++result.not_told_apart;
      if (i < how_many)
        result.best.push_back({inputs_.programmes.options_of(left[i].choices), left[i].exact});
    }
    result.proved = all && found.all;
    if (!result.proved) {
      result.tried = inputs_.patience.over() ? 0 : found.tried;
      result.at_most = at_most(left.front());
    }
    return result;
  }

  // Keeps what may be among the best, best first; false when it had to stop. What it does not come to keeps its
  // place; the good ones it comes to.
  template <class Weigh>
  bool sift(std::vector<Weighed>& left, std::size_t how_many, std::size_t in_any_case,
            const Weigh& weigh) const {
    std::size_t weighed = 0;
    for (; weighed < left.size() && (weighed < in_any_case || inputs_.patience.more(1)); ++weighed)
      left[weighed] = weigh(left[weighed].choices);
    const bool all = weighed == left.size();
    put_best_first(left);
    if (const std::optional<double> beaten = level(left, how_many))
      std::erase_if(left, [&](const Weighed& one) { return one.most < *beaten; });
    return all;
  }

  // So coarse that thousands of programmes are soon looked into.
  GridStep coarse_step() const {
    GridWish wish = inputs_.how.forecast.grid;
    wish.work = std::min<std::int64_t>(wish.work, 10'000'000);
    return pieces_.step_for(std::vector<std::size_t>(pieces_.choices.size()), wish);
  }
  Weighed coarsely(const std::vector<std::size_t>& choices) const {
    if (quantile_) {
      const double value = binary(reach_.missed(choices, inputs_.how.share)), off = binary(reach_.bound());
      return {choices, value, value - off, value + off};
    }
    const Decimal target = inputs_.how.target;
    return {choices, reach_.often(choices, target),
            reach_.often(choices, target + reach_.bound()) - last_bits,
            reach_.often(choices, target - reach_.bound()) + last_bits};
  }
  // Whether it may be worth as much, as far as the coarse grid can tell: far sooner done than weighing it.
  bool may_be_worth(const std::vector<std::size_t>& choices, double value) const {
    const Decimal total = quantile_ ? decimal_below(value) : inputs_.how.target;
    return reach_.often(choices, total - reach_.bound()) >=
           (quantile_ ? 1 - inputs_.how.share : value) - last_bits;
  }
  static Decimal decimal_below(double points) {
    return Decimal::from_units(static_cast<std::int64_t>(std::floor(points * Decimal::one)));
  }
  // What no programme exceeds, were there no limits.
  double highest() const {
    if (quantile_) return binary(reach_.missed(reach_.ideal(), inputs_.how.share) + reach_.bound());
    return reach_.often(reach_.ideal(), inputs_.how.target - reach_.bound());
  }
  // The same above the best by hundredths, rounded up.
  Exact at_most(const Weighed& best) const {
    double lead = std::max(highest(), best.most) - best.value;
    if (!quantile_) lead = std::max(0.0, std::min(lead, 1 - best.value) - 2 * last_bits);
    return best.exact + Exact(Decimal::from_units(std::llround(std::ceil((quantile_ ? 100 : 10'000) * lead)) *
                                                  (Decimal::one / 100)));
  }

  const Weighed& forecast_of(const std::vector<std::size_t>& choices) const {
    const auto [known, is_new] = forecasts_.try_emplace(choices);
    if (is_new) known->second = forecast(choices);
    return known->second;
  }
  Weighed forecast(const std::vector<std::size_t>& choices) const {
    const TotalOdds total = pieces_.total(choices, inputs_.how.forecast.grid);
    if (quantile_) {
      const Decimal quantile = total.odds.quantile(inputs_.how.share);
      const double value = binary(quantile), off = binary(total.bound);
      return {choices, value, value - off, value + off, Exact(quantile), quantile};
    }
    const ChanceBounds chance = reaches(total, inputs_.how.target);
    return {choices,
            chance.chance,
            chance.least - last_bits,
            chance.most + last_bits,
            Exact(Decimal::from_units(std::llround(chance.chance * 100 * Decimal::one))),
            {},
            chance};
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
  const Reach reach_;
  mutable std::map<std::vector<std::size_t>, Weighed> forecasts_;
  std::optional<Promising> better_;  // than the best, were every limit wider by one
};

}  // namespace

std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles) {
  Pieces pieces = pieces_of(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByOdds>(inputs, std::move(pieces));
}

}  // namespace landdrill
