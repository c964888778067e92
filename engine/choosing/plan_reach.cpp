#include "engine/choosing/plan_reach.h"

#include <algorithm>
#include <map>

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_programme_odds.h"
#include "tables/decimal.h"

namespace landdrill {

OpenLists Openings::all() const {
  OpenLists open;
  for (const auto& list : choosing_.lists) {
    auto& here = open.emplace_back();
    for (std::size_t c = 0; c < list.size(); ++c) here.push_back(c);
  }
  return open;
}

bool Openings::narrow(OpenLists& open) const {
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t j = 0; j < choosing_.limits.size(); ++j) {
      if (!narrow_by_limit(open, j, changed)) return false;
    }
    if (!narrow_by_chain(open, changed)) return false;
  }
  return true;
}

bool Openings::narrow_by_limit(OpenLists& open, std::size_t limit, bool& changed) const {
  const ChoiceLimit& sides = choosing_.limits[limit];
  const auto uses = [&](std::size_t i, std::size_t c) { return choosing_.lists[i][c].uses[limit]; };
  std::vector<std::pair<std::int64_t, std::int64_t>> range;
  std::int64_t least = 0, most = 0;
  for (std::size_t i = 0; i < open.size(); ++i) {
    if (open[i].empty()) return false;
    range.emplace_back(uses(i, open[i].front()), uses(i, open[i].front()));
    for (const std::size_t c : open[i]) {
      range[i].first = std::min(range[i].first, uses(i, c));
      range[i].second = std::max(range[i].second, uses(i, c));
    }
    least += range[i].first;
    most += range[i].second;
  }
  for (std::size_t i = 0; i < open.size(); ++i) {
    const std::size_t before = open[i].size();
    std::erase_if(open[i], [&](std::size_t c) {
      return (sides.most && least - range[i].first + uses(i, c) > *sides.most) ||
             (sides.least && most - range[i].second + uses(i, c) < *sides.least);
    });
    changed |= open[i].size() != before;
    if (open[i].empty()) return false;
  }
  return true;
}

// A choice stays when some state that the lists before it can lead to goes on through it to an allowed end.
bool Openings::narrow_by_chain(OpenLists& open, bool& changed) const {
  if (!choosing_.chain) return true;
  const ChoiceChain& chain = *choosing_.chain;
  std::vector<std::vector<bool>> reached(open.size() + 1, std::vector<bool>(chain.states));
  reached[0][chain.start] = true;
  for (std::size_t i = 0; i < open.size(); ++i) {
    for (const std::size_t c : open[i]) {
      for (std::uint32_t state = 0; state < chain.states; ++state) {
        const std::uint32_t next = chain.next[i][c][state];
        if (reached[i][state] && next != broken) reached[i + 1][next] = true;
      }
    }
  }
  std::vector<bool> ends = chain.may_end;
  for (std::size_t i = open.size(); i-- > 0;) {
    std::vector<bool> before(chain.states);
    const std::size_t count = open[i].size();
    std::erase_if(open[i], [&](std::size_t c) {
      bool leads = false;
      for (std::uint32_t state = 0; state < chain.states; ++state) {
        const std::uint32_t next = chain.next[i][c][state];
        if (!reached[i][state] || next == broken || !ends[next]) continue;
        leads = before[state] = true;
      }
      return !leads;
    });
    changed |= open[i].size() != count;
    if (open[i].empty()) return false;
    ends = std::move(before);
  }
  return true;
}

namespace {

constexpr Chance next_to_nothing = 1e-15;

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

}  // namespace

Reach::Reach(const Pieces& pieces, GridStep step) : pieces_(pieces), step_(step) {
  for (std::size_t i = 0; i < pieces.choices.size(); ++i) {
    if (pieces.choices[i].size() > 1) order_.push_back(i);
  }
  put_on_grid();
  look_behind();
}

void Reach::put_on_grid() {
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
    if (list.size() > 1) bound_ += move;  // else it is shared
  }
  std::int64_t shared = 0;
  for (std::size_t day = 0; day < pieces_.days.cases().size(); ++day) {
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

void Reach::look_behind() {
  const std::size_t days = shared_.size();
  tails_.resize(order_.size());
  best_.assign(days, {0, {1.0}});
  for (std::size_t place = order_.size(); place-- > 0;) {
    const auto& list = choices_[order_[place]];
    for (std::size_t day = 0; day < days; ++day) {
      for (std::size_t c = 0; c < list.size(); ++c) {
        if (day == 0) tails_[place].emplace_back();
        GridSum sum = plus(best_[day], list[c][day]);
        for (std::size_t i = sum.chances.size() - 1; i-- > 0;) sum.chances[i] += sum.chances[i + 1];
        tails_[place][c].push_back({sum.first, std::move(sum.chances)});
      }
      best_[day] = plus(best_[day], best_of(list, day));
    }
  }
  for (std::size_t day = 0; day < days; ++day) {
    // The sum of both: the longer one is moved along the cases of the shorter one.
    Gridded rest;
    for (std::size_t i = 0; i < best_[day].chances.size(); ++i) {
      if (best_[day].chances[i] > next_to_nothing)
        rest.cases.push_back({best_[day].first + static_cast<std::int64_t>(i), best_[day].chances[i]});
    }
    best_[day] = plus(shared_[day], rest);
  }
}

// The first point from which on a sum may in truth be the total.
std::int64_t Reach::lowest_point(Decimal total) const {
  const Int128 parts = Int128{total.units() - bound_ - 1} * step_.parts;
  const Int128 down = parts / step_.millionths;
  return static_cast<std::int64_t>(down * step_.millionths < parts ? down + 1 : down);
}

Chance Reach::reached(const Days& begun, std::size_t place, std::size_t choice, std::int64_t point) const {
  Chance all = 0;
  for (std::size_t day = 0; day < begun.size(); ++day) {
    const GridSum& sum = begun[day];
    const Tail& tail = tails_[place][choice][day];
    // What is as far down as the tail is long reaches nothing; from its first point on, all.
    const std::int64_t end = sum.first + static_cast<std::int64_t>(sum.chances.size());
    const std::int64_t from =
        std::clamp(point - tail.first - static_cast<std::int64_t>(tail.at_least.size()) + 1, sum.first, end);
    const std::int64_t sure = std::clamp(point - tail.first, from, end);
    const auto chance = [&](std::int64_t i) { return sum.chances[static_cast<std::size_t>(i - sum.first)]; };
    Chance here = 0, certain = 0;
    for (std::int64_t i = from; i < sure; ++i)
      here += chance(i) * tail.at_least[static_cast<std::size_t>(point - i - tail.first)];
    for (std::int64_t i = sure; i < end; ++i) certain += chance(i);
    all += pieces_.days.cases()[day].chance * (here + certain * tail.at_least.front());
  }
  return all;
}

Reach::Days Reach::with(const Days& begun, std::size_t list, std::size_t choice) const {
  Days sums;
  for (std::size_t day = 0; day < begun.size(); ++day) {
    sums.push_back(plus(begun[day], choices_[list][choice][day]));
    cut_tails(sums.back(), next_to_nothing);
  }
  return sums;
}

struct Reach::Walk {
  const Openings& openings;
  const ReachWish& wish;
  std::int64_t point = 0;
  std::uint64_t steps = 0;
  ReachFound found;
};

// The likeliest choice first.
void Reach::look_into(Walk& walk, const OpenLists& open, const Days& begun, std::size_t place) const {
  const std::size_t list = order_[place];
  std::vector<std::pair<Chance, std::size_t>> ways;
  for (const std::size_t choice : open[list]) {
    const Chance chance = reached(begun, place, choice, walk.point);
    if (chance >= walk.wish.often) ways.emplace_back(chance, choice);
  }
  std::stable_sort(ways.begin(), ways.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
  for (const auto& [chance, choice] : ways) {
    OpenLists rest = open;
    rest[list] = {choice};
    if (!walk.openings.narrow(rest)) continue;
    walk.found.all =
        walk.found.all && ++walk.steps <= walk.wish.most_steps && (!walk.wish.go_on || walk.wish.go_on());
    if (!walk.found.all) return;
    if (place + 1 < order_.size()) {
      look_into(walk, rest, with(begun, list, choice), place + 1);
    } else {
      auto& found = walk.found.programmes.emplace_back();
      for (const auto& one : rest) found.push_back(one.front());
    }
  }
}

ReachFound Reach::walk(const Openings& openings, const ReachWish& wish) const {
  Walk walk{openings, wish, lowest_point(wish.total), 0, {}};
  OpenLists open = openings.all();
  if (!openings.narrow(open)) return {};
  if (order_.empty()) {
    walk.found.programmes.emplace_back(open.size());
  } else {
    look_into(walk, open, shared_, 0);
  }
  return std::move(walk.found);
}

GridSum Reach::best_total() const {
  GridSum total;
  for (std::size_t day = 0; day < best_.size(); ++day)
    mix_in(total, best_[day], pieces_.days.cases()[day].chance);
  return total;
}

Decimal Reach::most_missed(Chance share) const {
  const GridSum total = best_total();
  Chance below = 0;
  std::int64_t point = total.first;
  for (const Chance one : total.chances) {
    below += one;
    if (below >= share) break;
    ++point;
  }
  return value_at(point, step_) + Decimal::from_units(bound_ + 1);
}

Chance Reach::most_often(Decimal total) const {
  const GridSum best = best_total();
  const std::int64_t from = lowest_point(total);
  Chance sum = 0;
  for (std::size_t i = 0; i < best.chances.size(); ++i)
    sum += best.first + static_cast<std::int64_t>(i) >= from ? best.chances[i] : 0;
  return sum;
}

}  // namespace landdrill
