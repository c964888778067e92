// The grid of the bounds: where it lies, the choices on it, and what all programmes share.
#include <algorithm>
#include <cmath>

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_pieces.h"
#include "engine/choosing/plan_reach.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

double mean_in_millionths(const Odds& odds) {
  return odds.mean() * Decimal::one;
}

double variance_in_millionths(const Odds& odds) {
  const double deviation = odds.deviation() * Decimal::one;
  return deviation * deviation;
}

}  // namespace

Reach::Reach(const Pieces& pieces, const std::vector<std::size_t>& about, int points, double total)
    : pieces_(pieces), points_(points), days_(pieces.days.cases().size()) {
  measure(about, total);
  for (std::size_t day = 0; day < days(); ++day) {
    lay_out(day, about);
    add_shared(day);
  }
  aim_at(total);
}

// How far the sums of elements go from those of `about`: some standard deviations (they fall further than
// they rise, for base marks are far below), what one other choice is worth, and as far as the total to reach
// lies.
void Reach::measure(const std::vector<std::size_t>& about, double total) {
  const std::size_t day = days() / 2;
  double variance = 1, widest = 0, mean = 0;
  for (std::size_t i = 0; i < about.size(); ++i) {
    const Odds& here = pieces_.choices[i][about[i]][day];
    variance += variance_in_millionths(here);
    mean += mean_in_millionths(here);
    for (const auto& choice : pieces_.choices[i])
      widest = std::max(widest, mean_in_millionths(choice[day]) - mean_in_millionths(here));
  }
  for (std::size_t i = 0; i < pieces_.shared.size(); ++i)
    mean += mean_in_millionths(pieces_.shared_on(i, day));
  const double deviation = std::sqrt(variance), lead = total - mean;
  const double below = 3 * deviation + widest + std::max(0.0, -lead);
  const double above = 2 * deviation + widest + std::max(0.0, lead);
  step_ = (below + above) / (points_ - 1);
  zero_ = static_cast<int>(std::lround(below / step_));
}

void Reach::lay_out(std::size_t day, const std::vector<std::size_t>& about) {
  Day& here = days_[day];
  for (std::size_t i = 0; i < about.size(); ++i) {
    const double stands = std::round(mean_in_millionths(pieces_.choices[i][about[i]][day]) / step_);
    auto& list = here.choices.emplace_back();
    for (const auto& choice : pieces_.choices[i]) list.push_back(split(choice[day], stands));
    here.stands += stands * step_;
  }
}

Reach::Cases Reach::split(const Odds& odds, double stands) const {
  std::vector<Case> all(static_cast<std::size_t>(2 * points_ + 1));
  const auto at = [&](int point) -> Case& {
    return all[static_cast<std::size_t>(std::clamp(point, -points_, points_) + points_)];
  };
  Chance below = 0, above = 0;
  for (const Odds::Case& one : odds.cases()) above += one.chance;
  for (const Odds::Case& one : odds.cases()) {
    below += one.chance;
    above -= one.chance;
    if (below < small_tail) continue;
    const double place = binary_millionths(one.value) / step_ - stands;
    const double down = std::floor(std::clamp<double>(place, -points_, points_));
    const int point = static_cast<int>(down);
    const double part = std::clamp(place - down, 0.0, 1.0);
    at(point).chance += below * (1 - part);
    at(point + 1).chance += below * part;
    if (point >= -points_ && point < points_) at(point + 1).bulge += below * part * (1 - part);
    below = 0;
    if (above < small_tail) break;
  }
  at(points_).chance += below + std::max(above, 0.0);
  Cases cases;
  for (int point = -points_; point <= points_; ++point) {
    Case one = at(point);
    one.at = point;
    if (one.chance > 0 || one.bulge > 0) cases.push_back(one);
  }
  return cases;
}

void Reach::add_shared(std::size_t day) {
  Day& here = days_[day];
  World world{1, {}};
  const Odds nothing = Odds::certain(Decimal());
  world.pieces.push_back(&nothing);
  for (std::size_t i = 0; i < pieces_.shared.size(); ++i) world.pieces.push_back(&pieces_.shared_on(i, day));
  GridWish wish;
  wish.work = 2'000'000;
  const TotalOdds total = total_odds({&world, 1}, wish);
  for (const Odds::Case& one : total.odds.cases()) {
    here.value.push_back(binary_millionths(one.value));
    here.at_least.push_back(one.chance);
  }
  for (std::size_t i = here.at_least.size() - 1; i-- > 0;) here.at_least[i] += here.at_least[i + 1];
  moved_ = std::max(moved_, binary_millionths(total.bound));
}

void Reach::aim_at(double total) {
  for (Day& day : days_) begin_end(day, total);
}

// The chance that what all share makes up for the rest, at every `parts`-th of a step, from one step below
// the window on.
constexpr std::size_t parts = 32;
std::vector<Chance> Reach::shared_from(const Day& day, double total) const {
  std::vector<Chance> fine((static_cast<std::size_t>(points_) + 1) * parts + 1);
  std::size_t at = day.value.size();
  for (std::size_t i = 0; i < fine.size(); ++i) {
    const double sum = day.stands + (static_cast<double>(i) / parts - 1 - static_cast<double>(zero_)) * step_;
    while (at > 0 && day.value[at - 1] >= total - sum) --at;
    fine[i] = at < day.value.size() ? day.at_least[at] : 0;
  }
  return fine;
}

// Between two points the steps of what all share lie on either side of the line.
void Reach::begin_end(Day& day, double total) const {
  const std::size_t count = static_cast<std::size_t>(points_);
  const std::vector<Chance> high = shared_from(day, total - moved_ - 1),
                            low = shared_from(day, total + moved_ + 1);
  std::vector<double> above(count + 1), below(count + 1);
  for (std::size_t cell = 0; cell <= count; ++cell) {
    const std::size_t from = cell * parts, to = from + parts;
    for (std::size_t i = from; i < to; ++i) {
      const double part = static_cast<double>(i - from) / parts;
      above[cell] = std::max(above[cell], high[i + 1] - high[from] - (high[to] - high[from]) * part);
      below[cell] = std::max(below[cell], low[from] + (low[to] - low[from]) * (part + 1.0 / parts) - low[i]);
    }
  }
  day.end.assign(3 * count, 0);
  day.least_end.assign(3 * count, 0);
  for (std::size_t i = 0; i < count; ++i) {
    day.end[count + i] = high[(i + 1) * parts] + std::max(above[i], above[i + 1]);
    day.least_end[count + i] = low[(i + 1) * parts] - std::max(below[i], below[i + 1]);
  }
  pad(day.end, 1);
  pad_below(day.least_end);
}

}  // namespace landdrill
