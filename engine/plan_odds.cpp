// The quantile and the target: partial programmes are bounded by odds that are at least as good as those of
// any option that is still open, day by day.
#include <algorithm>
#include <cmath>
#include <map>

#include "engine/grid_sum.h"
#include "engine/plan_pieces.h"

namespace landdrill {
namespace {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// Odds with the lowest distribution function of all: at least as good as each of them.
Gridded at_least_as_good(const std::vector<Gridded>& several) {
  std::map<std::int64_t, std::vector<Chance>> at;
  for (std::size_t i = 0; i < several.size(); ++i) {
    for (const Gridded::Case& one : several[i].cases) {
      auto& here = at[one.point];
      here.resize(several.size());
      here[i] += one.chance;
    }
  }
  Gridded result;
  std::vector<Chance> below(several.size());
  Chance reached = 0;
  for (const auto& [point, chances] : at) {
    for (std::size_t i = 0; i < below.size(); ++i) below[i] += chances[i];
    const Chance lowest = std::min(*std::min_element(below.begin(), below.end()), 1.0);
    if (lowest > reached) result.cases.push_back({point, lowest - reached});
    reached = std::max(reached, lowest);
  }
  for (const Gridded& one : several) result.largest_move = std::max(result.largest_move, one.largest_move);
  return result;
}

// What a day's odds add up to from each point on.
struct Survival {
  std::int64_t first = 0;
  std::vector<Chance> at_least;  // [0]: of `first` or more
  Chance of(std::int64_t point) const {
    if (point <= first) return at_least.front();
    const auto place = static_cast<std::size_t>(point - first);
    return place < at_least.size() ? at_least[place] : 0;
  }
};
Survival survival(const GridSum& sum) {
  Survival result{sum.first, sum.chances};
  for (std::size_t i = result.at_least.size() - 1; i-- > 0;) result.at_least[i] += result.at_least[i + 1];
  return result;
}

// A programme with its odds worked out finely: its value lies between the two for certain, as far as the
// model goes. In points, or a chance.
struct Weighed {
  std::vector<std::size_t> choices;
  double value = 0, least = 0, most = 0;
  Exact exact;
};

// The search for one choosing.
class OddsSearch {
 public:
  OddsSearch(const AimInputs& inputs, const Pieces& pieces, const Choosing& choosing, std::size_t how_many)
      : inputs_(inputs),
        pieces_(pieces),
        choosing_(choosing),
        how_many_(how_many),
        quantile_(inputs.how.aim == PlanWish::For::quantile) {
    lay_grid();
    measure();
  }

  void weigh_first(const std::vector<std::size_t>& choices) { weigh(choices); }

  AimedBest run() {
    std::vector<GridSum> nothing(pieces_.days.cases().size(), GridSum{0, {1.0}});
    const std::vector<std::int64_t> used(choosing_.limits.size());
    open_bound_ = 0;
    descend(0, nothing, used, choosing_.chain ? choosing_.chain->start : 0);
    return gathered();
  }

 private:
  std::size_t lists() const { return choosing_.lists.size(); }
  std::size_t days() const { return pieces_.days.cases().size(); }

  // Fine enough to tell programmes apart, coarse enough for a sum of all elements to have few points.
  void lay_grid() {
    constexpr std::int64_t points = 1'500;
    std::int64_t span = 0;
    const auto widest = [](const Odds& odds) {
      return (odds.cases().back().value - odds.cases().front().value).units();
    };
    for (const auto& list : pieces_.choices) {
      Decimal low = list.front().front().cases().front().value, high = low;
      for (const auto& choice : list) {
        for (const Odds& odds : choice) {
          low = std::min(low, odds.cases().front().value);
          high = std::max(high, odds.cases().back().value);
        }
      }
      span += (high - low).units();
    }
    for (const auto& piece : pieces_.shared) span += widest(piece.front());
    step_ = std::max<std::int64_t>(span / points, 1);
    for (const auto& list : pieces_.choices) {
      auto& here = gridded_.emplace_back();
      std::int64_t largest = 0;
      for (const auto& choice : list) {
        auto& by_day = here.emplace_back();
        for (const Odds& odds : choice) {
          Chance lost = 0;
          by_day.push_back(gridded(without_tails(odds, last_bits / 1000, lost), {step_}));
          largest = std::max(largest, by_day.back().largest_move);
        }
      }
      bound_ += largest;
    }
  }

  // From each list on: the odds that are as good as any that can follow, and what can be used.
  void measure() {
    rest_.assign(lists() + 1, std::vector<Survival>(days()));
    std::int64_t shared_move = 0;
    for (std::size_t day = 0; day < days(); ++day) {
      GridSum sum{0, {1.0}};
      std::int64_t moved = 0;
      for (const auto& piece : pieces_.shared) {
        Chance lost = 0;
        const Odds& odds = piece[piece.size() == 1 ? 0 : day];
        const Gridded number = gridded(without_tails(odds, last_bits / 1000, lost), {step_});
        moved += number.largest_move;
        sum = plus(sum, number);
      }
      shared_move = std::max(shared_move, moved);
      rest_[lists()][day] = survival(sum);
      for (std::size_t i = lists(); i-- > 0;) {
        std::vector<Gridded> several;
        for (const auto& choice : gridded_[i]) several.push_back(choice[day]);
        sum = plus(sum, at_least_as_good(several));
        rest_[i][day] = survival(sum);
      }
    }
    bound_ += shared_move;
    use_.assign(lists() + 1, std::vector<Range>(choosing_.limits.size()));
    for (std::size_t i = lists(); i-- > 0;) {
      for (std::size_t j = 0; j < choosing_.limits.size(); ++j) {
        std::int64_t least = choosing_.lists[i].front().uses[j], most = least;
        for (const Choice& choice : choosing_.lists[i]) {
          least = std::min(least, choice.uses[j]);
          most = std::max(most, choice.uses[j]);
        }
        use_[i][j] = {use_[i + 1][j].least + least, use_[i + 1][j].most + most};
      }
    }
  }

  struct Range {
    std::int64_t least = 0, most = 0;
  };

  bool fits(const std::vector<std::int64_t>& used, std::size_t list) const {
    for (std::size_t j = 0; j < used.size(); ++j) {
      const ChoiceLimit& limit = choosing_.limits[j];
      if (limit.most && used[j] + use_[list][j].least > *limit.most) return false;
      if (limit.least && used[j] + use_[list][j].most < *limit.least) return false;
    }
    return true;
  }

  // The k-th best for certain so far; nothing while there are fewer.
  std::optional<double> to_beat() const {
    if (found_.size() < how_many_) return std::nullopt;
    std::vector<double> least;
    for (const Weighed& one : found_) least.push_back(one.least);
    std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many_ - 1), least.end(),
                     std::greater<>());
    return least[how_many_ - 1];
  }

  // The point of the grid that whatever beats it has to reach; moved down by all that the grid may move.
  std::int64_t point_to_reach(double beaten) const {
    const double units = quantile_ ? beaten * Decimal::one : static_cast<double>(inputs_.how.target.units());
    return static_cast<std::int64_t>(
        std::floor((units - static_cast<double>(bound_)) / static_cast<double>(step_)));
  }
  Chance chance_to_reach(double beaten) const { return quantile_ ? 1 - inputs_.how.share : beaten; }

  // An upper bound on the chance to reach the point with a choice after what was chosen, and any after it.
  Chance bound(const std::vector<GridSum>& before, std::size_t list, std::size_t choice, std::int64_t point,
               std::vector<std::map<std::int64_t, Chance>>& known) const {
    Chance sum = 0;
    for (std::size_t day = 0; day < days(); ++day) {
      const Survival& rest = rest_[list + 1][day];
      Chance on_day = 0;
      for (const Gridded::Case& one : gridded_[list][choice][day].cases) {
        const auto [place, made] = known[day].try_emplace(point - one.point, 0.0);
        if (made) {
          for (std::size_t i = 0; i < before[day].chances.size(); ++i) {
            place->second += before[day].chances[i] *
                             rest.of(place->first - before[day].first - static_cast<std::int64_t>(i));
          }
        }
        on_day += one.chance * place->second;
      }
      sum += pieces_.days.cases()[day].chance * on_day;
    }
    return sum;
  }

  void descend(std::size_t list, const std::vector<GridSum>& before, const std::vector<std::int64_t>& used,
               std::uint32_t state) {
    if (list == lists()) {
      if (!choosing_.chain || choosing_.chain->may_end[state]) weigh(now_);
      return;
    }
    std::vector<std::map<std::int64_t, Chance>> known(days());
    std::vector<std::pair<Chance, std::size_t>> open;
    const std::optional<double> beaten = to_beat();
    for (std::size_t c = 0; c < choosing_.lists[list].size(); ++c) {
      const Chance reached = beaten ? bound(before, list, c, point_to_reach(*beaten), known) : 1;
      open.push_back({reached, c});
    }
    std::stable_sort(open.begin(), open.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    for (const auto& [reached, c] : open) {
      std::vector<std::int64_t> after = used;
      for (std::size_t j = 0; j < after.size(); ++j) after[j] += choosing_.lists[list][c].uses[j];
      const std::uint32_t next = choosing_.chain ? choosing_.chain->next[list][c][state] : 0;
      if (next == broken || !fits(after, list + 1)) continue;
      const std::optional<double> best = to_beat();
      if (best && reached < chance_to_reach(*best) - last_bits) continue;
      stopped_ = stopped_ || !inputs_.patience.more(1) || ++steps_ > inputs_.how.most_steps;
      if (stopped_) {
        open_bound_ = std::max(open_bound_, reached);
        continue;
      }
      std::vector<GridSum> sums;
      for (std::size_t day = 0; day < days(); ++day)
        sums.push_back(plus(before[day], gridded_[list][c][day]));
      now_.push_back(c);
      descend(list + 1, sums, after, next);
      now_.pop_back();
    }
  }

  void weigh(const std::vector<std::size_t>& choices) {
    const auto same = [&](const Weighed& one) { return one.choices == choices; };
    if (std::any_of(found_.begin(), found_.end(), same)) return;
    GridWish fine = inputs_.how.forecast.grid;
    fine.work = std::min<std::int64_t>(fine.work, 4'000'000);
    const TotalOdds total = pieces_.total(choices, fine);
    Weighed weighed{choices, 0, 0, 0, {}};
    const double off = static_cast<double>(total.bound.units()) / Decimal::one;
    if (quantile_) {
      const Decimal value = total.odds.quantile(inputs_.how.share);
      weighed.value = static_cast<double>(value.units()) / Decimal::one;
      weighed.least = weighed.value - off;
      weighed.most = weighed.value + off;
      weighed.exact = Exact(value);
    } else {
      const ChanceBounds chance = reaches(total, inputs_.how.target);
      weighed.value = chance.chance;
      weighed.least = chance.least - last_bits;
      weighed.most = chance.most + last_bits;
      weighed.exact = Exact(Decimal::from_units(std::llround(chance.chance * 100 * Decimal::one)));
    }
    found_.push_back(std::move(weighed));
  }

  AimedBest gathered() {
    AimedBest result;
    std::sort(found_.begin(), found_.end(), [](const Weighed& a, const Weighed& b) {
      return a.value != b.value ? a.value > b.value : a.choices < b.choices;
    });
    for (std::size_t i = 0; i < found_.size(); ++i) {
      if (i > 0 && found_[i].most >= found_.front().least) ++result.not_told_apart;
      if (i < how_many_) {
        result.best.push_back({inputs_.programmes.options_of(found_[i].choices), found_[i].exact});
      }
    }
    result.proved = !stopped_;
    if (!result.proved) result.at_most = at_most();
    return result;
  }

  // Of what was left open: its chance, or the quantile of the best that any list offers.
  Exact at_most() const {
    if (!quantile_) {
      const Chance best = found_.empty() ? 0 : found_.front().most;
      const Chance most = std::min(1.0, std::max(open_bound_, best));
      return Exact(Decimal::from_units(std::llround(most * 100 * Decimal::one)));
    }
    std::int64_t low = rest_[0][0].first, high = low;
    for (const Survival& day : rest_[0]) {
      low = std::min(low, day.first);
      high = std::max(high, day.first + static_cast<std::int64_t>(day.at_least.size()));
    }
    while (high - low > 1) {
      const std::int64_t middle = low + (high - low) / 2;
      Chance reached = 0;
      for (std::size_t day = 0; day < days(); ++day) {
        reached += pieces_.days.cases()[day].chance * rest_[0][day].of(middle);
      }
      (reached > 1 - inputs_.how.share - last_bits ? low : high) = middle;
    }
    return Exact(Decimal::from_units(low * step_ + bound_));
  }

  const AimInputs& inputs_;
  const Pieces& pieces_;
  const Choosing& choosing_;
  std::size_t how_many_;
  bool quantile_;
  std::int64_t step_ = 1, bound_ = 0;  // of the grid, and how far it moves a total at most; in millionths
  std::vector<std::vector<std::vector<Gridded>>> gridded_;  // [list][choice][day]
  std::vector<std::vector<Survival>> rest_;                 // [list][day]
  std::vector<std::vector<Range>> use_;
  std::vector<std::size_t> now_;
  std::vector<Weighed> found_;
  Chance open_bound_ = 0;
  std::uint64_t steps_ = 0;
  bool stopped_ = false;
};

class ByOdds : public PlanAim {
 public:
  ByOdds(const AimInputs& inputs, Pieces pieces) : inputs_(inputs), pieces_(std::move(pieces)) {
    Obstacles none;
    added_ = added_aim(inputs_, none);
  }

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    // The best by their expected points are good ones, and whether there are any is known from then on.
    const AimedBest first = added_->best(choosing, how_many, {});
    if (first.best.empty()) return first;
    OddsSearch search(inputs_, pieces_, choosing, how_many);
    for (const AimedProgramme& one : first.best) search.weigh_first(places_of(one.options));
    return search.run();
  }

  void tell(PlanChoice& choice) const override {
    if (!has_choices(choice.options)) return;
    const TotalOdds total = pieces_.total(places_of(choice.options), inputs_.how.forecast.grid);
    if (inputs_.how.aim == PlanWish::For::quantile) {
      choice.quantile = total.odds.quantile(inputs_.how.share);
    } else {
      choice.reaches = reaches(total, inputs_.how.target);
    }
  }

 private:
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
  std::unique_ptr<PlanAim> added_;
};

}  // namespace

std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles) {
  Pieces pieces = pieces_of(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByOdds>(inputs, std::move(pieces));
}

}  // namespace landdrill
