// The quantile and the target: partial programmes are bounded by odds that are at least as good as those of
// any option that is still open, day by day.
#include <algorithm>
#include <cmath>

#include "engine/plan_bounds.h"

namespace landdrill {
namespace {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

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
        quantile_(inputs.how.aim == PlanWish::For::quantile),
        bounds_(pieces) {
    measure();
  }

  void weigh_first(const std::vector<std::size_t>& choices) { weigh(choices); }

  AimedBest run() {
    const std::vector<std::int64_t> used(choosing_.limits.size());
    open_bound_ = 0;
    descend(0, bounds_.nothing(), used, choosing_.chain ? choosing_.chain->start : 0);
    return gathered();
  }

 private:
  std::size_t lists() const { return choosing_.lists.size(); }

  // What the lists from one on can use in all.
  void measure() {
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
    return bounds_.point_of(quantile_ ? beaten * Decimal::one
                                      : static_cast<double>(inputs_.how.target.units()));
  }
  Chance chance_to_reach(double beaten) const { return quantile_ ? 1 - inputs_.how.share : beaten; }

  void descend(std::size_t list, const OddsBounds::Sums& before, const std::vector<std::int64_t>& used,
               std::uint32_t state) {
    if (list == lists()) {
      if (!choosing_.chain || choosing_.chain->may_end[state]) weigh(now_);
      return;
    }
    OddsBounds::Known known = bounds_.nothing_known();
    std::vector<std::pair<Chance, std::size_t>> open;
    const std::optional<double> beaten = to_beat();
    for (std::size_t c = 0; c < choosing_.lists[list].size(); ++c) {
      const Chance reached = beaten ? bounds_.reach(before, list, c, point_to_reach(*beaten), known) : 1;
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
      now_.push_back(c);
      descend(list + 1, bounds_.with(before, list, c), after, next);
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
    return Exact(bounds_.highest_quantile(inputs_.how.share));
  }

  const AimInputs& inputs_;
  const Pieces& pieces_;
  const Choosing& choosing_;
  std::size_t how_many_;
  bool quantile_;
  const OddsBounds bounds_;
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
