#include "engine/choosing/plan_reach.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/chances/odds.h"

namespace landdrill {
namespace {

// to[i] += a weight x from[i + at], four cases at a time: the sums stay in the cache.
template <class Weight, class Cases>
void add_shifted(double* to, int count, const double* from, const Cases& cases, Weight weight) {
  std::size_t c = 0;
  for (; c + 4 <= cases.size(); c += 4) {
    const double w0 = weight(cases[c]), w1 = weight(cases[c + 1]), w2 = weight(cases[c + 2]),
                 w3 = weight(cases[c + 3]);
    const double *f0 = from + cases[c].at, *f1 = from + cases[c + 1].at, *f2 = from + cases[c + 2].at,
                 *f3 = from + cases[c + 3].at;
    for (int i = 0; i < count; ++i) to[i] += (w0 * f0[i] + w1 * f1[i]) + (w2 * f2[i] + w3 * f3[i]);
  }
  for (; c < cases.size(); ++c) {
    const double w = weight(cases[c]);
    const double* f = from + cases[c].at;
    for (int i = 0; i < count; ++i) to[i] += w * f[i];
  }
}

}  // namespace

// Below the window nothing is better than at its foot; above it nothing than `above`.
void Reach::pad(Padded& values, double above) const {
  const auto count = static_cast<std::ptrdiff_t>(points_);
  std::fill(values.begin(), values.begin() + count, values[static_cast<std::size_t>(count)]);
  std::fill(values.begin() + 2 * count - 1, values.end(), std::max(above, values[2 * count - 1]));
}

// Below the window there may be nothing, and above it at least what is at its top.
void Reach::pad_below(Padded& values) const {
  const auto count = static_cast<std::ptrdiff_t>(points_);
  std::fill(values.begin(), values.begin() + count + 1, 0.0);
  std::fill(values.begin() + 2 * count, values.end(), values[static_cast<std::size_t>(2 * count) - 1]);
}

std::vector<double> Reach::after(const Cases& cases, const Padded& values) const {
  std::vector<double> result(static_cast<std::size_t>(points_));
  add_shifted(result.data(), points_, values.data() + points_, cases,
              [](const Case& one) { return one.chance; });
  return result;
}

// `way` 1: as high as it may be between the points; -1: as low.
std::vector<double> Reach::lifted(const Cases& cases, const Padded& values, const Padded& bends,
                                  double way) const {
  std::vector<double> result = after(cases, values);
  std::vector<double> bulge(static_cast<std::size_t>(points_) + 1);
  add_shifted(bulge.data(), points_ + 1, bends.data() + points_, cases,
              [](const Case& one) { return one.bulge; });
  for (std::size_t i = 0; i < result.size(); ++i) result[i] += way * std::max(bulge[i], bulge[i + 1]);
  return result;
}

// How far V bends down (`way` 1) or up (-1) at each point; one place further on.
Reach::Padded Reach::bends(const Padded& values, double way) const {
  Padded result(values.size() + 2);
  for (std::size_t i = 1; i + 1 < values.size(); ++i)
    result[i + 1] = std::max(0.0, way * (2 * values[i] - values[i - 1] - values[i + 1]));
  return result;
}

Reach::Survival Reach::survival(const std::vector<std::size_t>& programme) const {
  const auto count = static_cast<std::size_t>(points_);
  Survival result{step_, static_cast<std::size_t>(zero_), std::vector<Chance>(count),
                  std::vector<Chance>(count)};
  // Tails that were moved up.
  const Chance moved_up = 2 * small_tail * static_cast<Chance>(programme.size());
  for (std::size_t d = 0; d < days(); ++d) {
    const Chance chance = pieces_.days.cases()[d].chance;
    Padded high = days_[d].end, low = days_[d].least_end;
    for (std::size_t i = 0; i < programme.size(); ++i) {
      const Cases& cases = days_[d].choices[i][programme[i]];
      const std::vector<double> up = lifted(cases, high, bends(high, 1), 1),
                                down = lifted(cases, low, bends(low, -1), -1);
      put(up, high);
      put(down, low);
      pad(high, 1);
      pad_below(low);
    }
    for (std::size_t g = 0; g < count; ++g) {
      result.most[g] += chance * high[count + g];
      result.least[g] += chance * (low[count + g] - moved_up);
    }
  }
  return result;
}

// V after the lists that are settled: they are put behind all others, which then know nothing of them.
Reach::Padded Reach::settled(const Day& day, const OpenLists& open) const {
  Padded values = day.end;
  for (std::size_t i = 0; i < open.size(); ++i) {
    if (open[i].size() != 1) continue;
    put(lifted(day.choices[i][open[i][0]], values, bends(values, 1), 1), values);
    pad(values, 1);
  }
  return values;
}

void Reach::put(const std::vector<double>& window, Padded& values) const {
  std::copy(window.begin(), window.end(), values.begin() + points_);
}

// V of a list, over V of what follows; `best`: the place of the choice that is taken at each point.
void Reach::choose(const std::vector<Cases>& choices, const std::vector<std::size_t>& open,
                   const std::vector<double>& added, Padded& values, std::vector<std::uint16_t>& best) const {
  const Padded bend = bends(values, 1);
  const auto count = static_cast<std::size_t>(points_);
  std::vector<double> highest(count, -HUGE_VAL);
  best.assign(count, 0);
  for (std::size_t c = 0; c < open.size(); ++c) {
    const std::vector<double> one = lifted(choices[open[c]], values, bend, 1);
    for (std::size_t g = 0; g < count; ++g) {
      if (one[g] + added[open[c]] <= highest[g]) continue;
      highest[g] = one[g] + added[open[c]];
      best[g] = static_cast<std::uint16_t>(c);
    }
  }
  put(highest, values);
}

double Reach::look_on(std::size_t d, const OpenLists& open, const std::vector<std::size_t>& order,
                      const ByDay& added, Looked& looked) const {
  const Day& day = days_[d];
  const auto at_zero = static_cast<std::size_t>(points_ + zero_);
  Padded values = settled(day, open);
  double fixed = 0, later = 0;
  for (std::size_t i = 0; i < open.size(); ++i) fixed += open[i].size() == 1 ? added[d][i][open[i][0]] : 0;
  if (order.empty()) return fixed + values[at_zero];
  std::vector<std::vector<std::uint16_t>> best(order.size());
  for (std::size_t k = order.size(); k-- > 1;) {
    const std::size_t i = order[k];
    choose(day.choices[i], open[i], added[d][i], values, best[k]);
    double most = -HUGE_VAL;
    for (const std::size_t c : open[i]) most = std::max(most, added[d][i][c]);
    later += most;
    pad(values, 1 + later);
  }
  // Of the first list only one point is asked for, and nothing lies between.
  const std::size_t first = order.front();
  double most = -HUGE_VAL;
  best.front().assign(static_cast<std::size_t>(points_), 0);
  for (std::size_t c = 0; c < open[first].size(); ++c) {
    double value = fixed + added[d][first][open[first][c]];
    for (const Case& one : day.choices[first][open[first][c]])
      value += one.chance * values[static_cast<std::size_t>(points_ + zero_ + one.at)];
    looked.first[c] += pieces_.days.cases()[d].chance * value;
    if (value <= most) continue;
    most = value;
    best.front()[static_cast<std::size_t>(zero_)] = static_cast<std::uint16_t>(c);
  }
  follow(day, open, order, best, looked.taken[d]);
  return most;
}

// How often each choice is taken, from the first list on.
void Reach::follow(const Day& day, const OpenLists& open, const std::vector<std::size_t>& order,
                   const std::vector<std::vector<std::uint16_t>>& best,
                   std::vector<std::vector<Chance>>& taken) const {
  constexpr Chance too_little = 1e-9;
  const auto count = static_cast<std::size_t>(points_);
  std::vector<Chance> sum(count);
  sum[static_cast<std::size_t>(zero_)] = 1;
  for (std::size_t k = 0; k < order.size(); ++k) {
    const std::size_t i = order[k];
    std::vector<Chance> next(count);
    for (std::size_t g = 0; g < count; ++g) {
      if (sum[g] < too_little) continue;
      const std::size_t c = open[i][best[k][g]];
      taken[i][c] += sum[g];
      spread(day.choices[i][c], g, sum[g], next);
    }
    sum = std::move(next);
  }
}

void Reach::spread(const Cases& cases, std::size_t from, Chance chance, std::vector<Chance>& to) const {
  for (const Case& one : cases) {
    const int at = std::clamp(static_cast<int>(from) + one.at, 0, points_ - 1);
    to[static_cast<std::size_t>(at)] += one.chance * chance;
  }
}

Reach::Looked Reach::look(const OpenLists& open, const std::vector<std::size_t>& order,
                          const ByDay& added) const {
  Looked looked;
  if (!order.empty()) looked.first.assign(open[order.front()].size(), 0);
  for (std::size_t d = 0; d < days(); ++d) {
    auto& taken = looked.taken.emplace_back();
    for (const auto& list : days_[d].choices) taken.emplace_back(list.size(), 0.0);
    looked.most += pieces_.days.cases()[d].chance * look_on(d, open, order, added, looked);
  }
  return looked;
}

ByDay Reach::worths(const std::vector<std::size_t>& programme) const {
  ByDay result;
  for (const Day& day : days_) result.push_back(worths_on(day, programme));
  return result;
}

// Of every choice between the sum of the lists before it and V of the lists behind it.
std::vector<std::vector<Chance>> Reach::worths_on(const Day& day,
                                                  const std::vector<std::size_t>& programme) const {
  std::vector<Padded> rest(programme.size() + 1, day.end);
  for (std::size_t i = programme.size(); i-- > 0;) {
    put(after(day.choices[i][programme[i]], rest[i + 1]), rest[i]);
    pad(rest[i], 1);
  }
  std::vector<std::vector<Chance>> result;
  std::vector<Chance> sum(static_cast<std::size_t>(points_));
  sum[static_cast<std::size_t>(zero_)] = 1;
  for (std::size_t i = 0; i < programme.size(); ++i) {
    auto& list = result.emplace_back();
    for (const Cases& cases : day.choices[i]) {
      const std::vector<double> value = after(cases, rest[i + 1]);
      list.push_back(std::inner_product(sum.begin(), sum.end(), value.begin(), 0.0));
    }
    std::vector<Chance> next(sum.size());
    for (std::size_t g = 0; g < sum.size(); ++g) spread(day.choices[i][programme[i]], g, sum[g], next);
    sum = std::move(next);
  }
  return result;
}

}  // namespace landdrill
