#include "engine/choosing/plan_reach.h"

#include <algorithm>
#include <map>

#include "engine/chances/days.h"
#include "engine/chances/forecast.h"
#include "engine/chances/mark_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/chances/what_if.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_wish.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/dropped_marks.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

class PiecesOf {
 public:
  explicit PiecesOf(const AimInputs& inputs) : inputs_(inputs) {}

  Pieces run(Obstacles& obstacles) {
    const Wish first = wish_for(inputs_, 0);
    ForecastWish coarse = inputs_.how.forecast;
    coarse.grid.grid = Decimal::whole(10);
    const Forecast told = forecast(inputs_.routine, first, coarse);
    obstacles = told.obstacles;
    if (!obstacles.empty()) return {};
    look_at_places(obstacles);
    if (!obstacles.empty()) return {};
    pieces_.days = days_of(told.day.marks, lines());
    add_shared(told);
    for (std::size_t place = 0; place < places_.size(); ++place) add_choices(place);
    return std::move(pieces_);
  }

 private:
  void add_shared(const Forecast& told) {
    for (const ForecastLine& line : told.lines) {
      if (line.what == ForecastLine::What::aspect) {
        const PanelRule& rule = *inputs_.routine.aspects[line.index];
        pieces_.shared.push_back(marked(rule, *line.expected_mark, line.spread,
                                        [&](const Odds& kept) { return plain_odds(rule, kept); }));
      } else if (line.what == ForecastLine::What::sync || line.what == ForecastLine::What::penalties) {
        pieces_.shared.push_back({line.points});
      }
    }
  }

  template <class OddsOf>
  std::vector<Odds> marked(const PanelRule& rule, Decimal mark, const Spread& spread, OddsOf odds_of) {
    std::vector<Odds> by_day;
    for (const Odds::Case& day : pieces_.days.shifts.cases()) {
      by_day.push_back(odds_of(memory_.kept(rule, mark + day.value, spread.marks).odds));
    }
    return by_day;
  }

  // With the options in one place of the lists.
  void look_at_places(Obstacles& obstacles) {
    std::size_t most = 1;  // a routine of passages alone has its aspects
    for (const auto& list : inputs_.programmes.options) most = std::max(most, list.size());
    for (std::size_t place = 0; place < most; ++place) {
      const Inputs& here = places_.emplace_back(inputs_for(inputs_, wish_for(inputs_, place)));
      for (Obstacle& one : obstacles_before(inputs_.routine, here.at_risk, here.spread)) {
        if (std::find(obstacles.begin(), obstacles.end(), one) == obstacles.end())
          obstacles.push_back(std::move(one));
      }
    }
  }

  // Of the ways to swim an element the one that judges agree on most, and all that they agree on wholly.
  std::vector<DayLine> lines() const {
    std::vector<DayLine> lines;
    for (std::size_t i = 0; i < inputs_.programmes.options.size(); ++i) {
      const std::vector<std::size_t>& list = inputs_.programmes.options[i];
      std::optional<DayLine> closest;
      for (std::size_t place = 0; place < list.size(); ++place) {
        const std::optional<KeptMarks>& marks = places_[place].at_risk.showing.elements[i].marks;
        if (list[place] == leave_out || !marks) continue;
        const DayLine line{inputs_.routine.elements[i].panel, mean_mark(*marks),
                           places_[place].spread.elements[i].marks};
        if (line.spread == Decimal()) {
          lines.push_back(line);
        } else if (!closest || line.spread < closest->spread) {
          closest = line;
        }
      }
      if (closest) lines.push_back(*closest);
    }
    const Inputs& first = places_.front();
    for (std::size_t i = 0; i < first.at_risk.showing.aspects.size(); ++i) {
      const ShownAspect& aspect = first.at_risk.showing.aspects[i];
      lines.push_back({aspect.rule, mean_mark(*aspect.marks), first.spread.aspects[i].marks});
    }
    return lines;
  }

  void add_choices(std::size_t place) {
    const std::vector<std::vector<std::size_t>>& options = inputs_.programmes.options;
    const std::vector<Odds> nothing(pieces_.days.shifts.cases().size(), Odds::certain(Decimal()));
    const auto& [all, spread] = places_[place];
    pieces_.choices.resize(options.size());
    for (std::size_t i = 0; i < options.size(); ++i) {
      if (place >= options[i].size()) continue;
      const PanelRule* rule = inputs_.routine.elements[i].panel;
      if (options[i][place] == leave_out || rule == nullptr) {
        pieces_.choices[i].push_back(nothing);
        continue;
      }
      pieces_.choices[i].push_back(marked(*rule, mean_mark(*all.showing.elements[i].marks),
                                          spread.elements[i], [&, &all = all](const Odds& kept) {
                                            return element_odds(*rule, kept,
                                                                credited(inputs_.routine, all, i));
                                          }));
    }
  }

  const AimInputs& inputs_;
  std::vector<Inputs> places_;
  KeptMemory memory_;
  Pieces pieces_;
};

}  // namespace

std::vector<World> Pieces::worlds(const std::vector<std::size_t>& chosen) const {
  std::vector<World> worlds;
  for (std::size_t day = 0; day < days.shifts.cases().size(); ++day) {
    World world{days.shifts.cases()[day].chance, {&nothing}};
    for (std::size_t i = 0; i < chosen.size(); ++i) world.pieces.push_back(&choices[i][chosen[i]][day]);
    for (std::size_t i = 0; i < shared.size(); ++i) world.pieces.push_back(&shared_on(i, day));
    worlds.push_back(std::move(world));
  }
  return worlds;
}

TotalOdds Pieces::total(const std::vector<std::size_t>& chosen, const GridWish& wish) const {
  TotalOdds total = total_odds(worlds(chosen), wish);
  total.off = days.off;
  return total;
}

GridStep Pieces::step_for(const std::vector<std::size_t>& chosen, const GridWish& wish) const {
  return chosen_step(worlds(chosen), wish);
}

Pieces pieces_of(const AimInputs& inputs, Obstacles& obstacles) {
  return PiecesOf(inputs).run(obstacles);
}

namespace {

constexpr Chance next_to_nothing = 1e-15;
// No more halves are kept: with a few megabytes each they would fill the memory.
constexpr std::size_t most_halves = 256;

// The chance of as much or more that is the highest of any, total by total.
Gridded best_of(const std::vector<std::vector<Gridded>>& choices, std::size_t day) {
  std::map<std::int64_t, Chance> at_least;
  for (const auto& choice : choices) {
    for (const Gridded::Case& one : choice[day].cases) at_least.emplace(one.point, 0);
  }
  for (const auto& choice : choices) {
    const std::vector<Gridded::Case>& cases = choice[day].cases;
    auto at = at_least.rbegin();
    Chance sum = 0;
    for (auto one = cases.rbegin(); one != cases.rend(); ++one) {
      for (; at->first > one->point; ++at) at->second = std::max(at->second, sum);
      sum += one->chance;
    }
    for (; at != at_least.rend(); ++at) at->second = std::max(at->second, sum);
  }
  Gridded best;
  Chance above = 0;
  for (auto at = at_least.rbegin(); at != at_least.rend(); ++at) {
    if (at->second > above) best.cases.push_back({at->first, at->second - above});
    above = std::max(above, at->second);
  }
  std::reverse(best.cases.begin(), best.cases.end());
  return best;
}

// `tail` has the chances of every point or more.
Chance at_least(const GridSum& sum, const GridSum& tail, std::int64_t point) {
  // What is as far down as the tail is long reaches nothing; from its first point on, all.
  const std::int64_t end = sum.first + static_cast<std::int64_t>(sum.chances.size());
  const std::int64_t from =
      std::clamp(point - tail.first - static_cast<std::int64_t>(tail.chances.size()) + 1, sum.first, end);
  const std::int64_t sure = std::clamp(point - tail.first, from, end);
  const auto chance = [&](std::int64_t i) { return sum.chances[static_cast<std::size_t>(i - sum.first)]; };
  Chance here = 0, certain = 0;
  for (std::int64_t i = from; i < sure; ++i)
    here += chance(i) * tail.chances[static_cast<std::size_t>(point - i - tail.first)];
  for (std::int64_t i = sure; i < end; ++i) certain += chance(i);
  return here + certain * tail.chances.front();
}

}  // namespace

Reach::Reach(const Pieces& pieces, GridStep step) : pieces_(pieces), step_(step) {
  put_on_grid();
  halve();
}

void Reach::put_on_grid() {
  const std::size_t days = pieces_.days.shifts.cases().size();
  for (const auto& list : pieces_.choices) {
    std::int64_t move = 0;
    auto& here = choices_.emplace_back();
    for (const auto& choice : list) {
      auto& by_day = here.emplace_back();
      for (const Odds& odds : choice) {
        by_day.push_back(gridded(odds, step_));
        move = std::max(move, by_day.back().largest_move);
      }
    }
    if (list.size() == 1) continue;  // it is shared
    bound_ += move;
    std::vector<Gridded> ideal;
    for (std::size_t day = 0; day < days; ++day) ideal.push_back(best_of(here, day));
    here.push_back(std::move(ideal));
  }
  std::int64_t shared = 0;
  for (std::size_t day = 0; day < days; ++day) {
    World world{1, {&pieces_.nothing}};
    for (const auto& list : pieces_.choices) {
      if (list.size() == 1) world.pieces.push_back(&list.front()[day]);
    }
    for (std::size_t i = 0; i < pieces_.shared.size(); ++i)
      world.pieces.push_back(&pieces_.shared_on(i, day));
    WorldSum sum = world_sum(world, step_);
    shared = std::max(shared, sum.bound);
    shared_.push_back(std::move(sum.sum));
  }
  bound_ += shared;
}

// So that both halves have about as many ways to choose.
void Reach::halve() {
  std::array<double, 2> ways = {1, 1};
  for (std::size_t i = 0; i < pieces_.choices.size(); ++i) {
    if (pieces_.choices[i].size() == 1) continue;
    const std::size_t which = ways[0] <= ways[1] ? 0 : 1;
    lists_[which].push_back(i);
    ways[which] *= static_cast<double>(pieces_.choices[i].size());
  }
}

const Reach::Days& Reach::half(std::size_t which, const Choices& choices) const {
  Choices chosen;
  for (const std::size_t list : lists_[which]) chosen.push_back(choices[list]);
  std::map<Choices, Days>& known = halves_[which];
  if (const auto at = known.find(chosen); at != known.end()) return at->second;
  if (known.size() == most_halves) known.clear();
  Days sums = which == 0 ? shared_ : Days(shared_.size(), GridSum{0, {1.0}});
  for (std::size_t day = 0; day < sums.size(); ++day) {
    GridSum& sum = sums[day];
    for (const std::size_t list : lists_[which]) {
      sum = plus(sum, choices_[list][choices[list]][day]);
      cut_tails(sum, next_to_nothing);
    }
    for (std::size_t i = sum.chances.size() - 1; which == 1 && i-- > 0;) sum.chances[i] += sum.chances[i + 1];
  }
  return known.emplace(std::move(chosen), std::move(sums)).first->second;
}

// The first point that is no less than the total.
std::int64_t Reach::point_of(Decimal total) const {
  const Int128 parts = Int128{total.units()} * step_.parts;
  const Int128 down = parts / step_.millionths;
  return static_cast<std::int64_t>(down * step_.millionths < parts ? down + 1 : down);
}

Chance Reach::often_at(const Choices& choices, std::int64_t point) const {
  const Days &sums = half(0, choices), &tails = half(1, choices);
  Chance often = 0;
  for (std::size_t day = 0; day < sums.size(); ++day)
    often += pieces_.days.shifts.cases()[day].chance * at_least(sums[day], tails[day], point);
  return often;
}

Chance Reach::often(const Choices& choices, Decimal total) const {
  return often_at(choices, point_of(total));
}

Decimal Reach::missed(const Choices& choices, Chance share) const {
  const Days &sums = half(0, choices), &tails = half(1, choices);
  std::int64_t low = sums.front().first + tails.front().first, high = low;
  for (std::size_t day = 0; day < sums.size(); ++day) {
    const std::int64_t first = sums[day].first + tails[day].first;
    low = std::min(low, first);
    high = std::max(high,
                    first + static_cast<std::int64_t>(sums[day].chances.size() + tails[day].chances.size()));
  }
  while (low < high) {
    const std::int64_t middle = low + (high - low) / 2;
    if (often_at(choices, middle + 1) <= 1 - share) {
      high = middle;
    } else {
      low = middle + 1;
    }
  }
  return value_at(low, step_);
}

Reach::Choices Reach::ideal() const {
  Choices choices;
  for (const auto& list : pieces_.choices) choices.push_back(list.size() == 1 ? 0 : list.size());
  return choices;
}

}  // namespace landdrill
