#include "engine/choosing/plan_tighten.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/odds.h"
#include "engine/choosing/plan_open.h"
#include "engine/choosing/search/choose_best.h"

namespace landdrill {
namespace {

using ByChoice = std::vector<std::vector<Chance>>;

double use_of(const Choosing& choosing, std::size_t list, std::size_t choice, std::size_t limit) {
  return static_cast<double>(choosing.lists[list][choice].uses[limit]);
}

// A price that is 0 goes no lower.
double heeded(double excess, double price) {
  return excess < 0 && price == 0 ? 0 : excess;
}

void go(std::vector<double>& prices, const std::vector<double>& along, double stride) {
  for (std::size_t j = 0; j < prices.size(); ++j) prices[j] = std::max(0.0, prices[j] + stride * along[j]);
}

void move_towards(ByDay& mean, const ByDay& to, double part) {
  for (std::size_t d = 0; d < mean.size(); ++d) {
    for (std::size_t i = 0; i < mean[d].size(); ++i) {
      for (std::size_t c = 0; c < mean[d][i].size(); ++c)
        mean[d][i][c] += part * (to[d][i][c] - mean[d][i][c]);
    }
  }
}

}  // namespace

ByChoice over_days(const ByDay& by_day, const Odds& days) {
  ByChoice mean = by_day.front();
  for (auto& list : mean) std::fill(list.begin(), list.end(), 0.0);
  for (std::size_t d = 0; d < by_day.size(); ++d) {
    for (std::size_t i = 0; i < mean.size(); ++i) {
      for (std::size_t c = 0; c < mean[i].size(); ++c) mean[i][c] += days.cases()[d].chance * by_day[d][i][c];
    }
  }
  return mean;
}

ByDay Tightening::added(const TiePrices& prices) const {
  ByDay result = prices.tie;
  for (std::size_t i = 0; i < choosing_.lists.size(); ++i) {
    for (std::size_t c = 0; c < choosing_.lists[i].size(); ++c) {
      double more = 0;
      for (std::size_t j = 0; j < prices.most.size(); ++j)
        more += (prices.least[j] - prices.most[j]) * use_of(choosing_, i, c, j);
      for (auto& day : result) day[i][c] += more;
    }
  }
  return result;
}

double Tightening::paid_back(const TiePrices& prices) const {
  double sum = 0;
  for (std::size_t j = 0; j < prices.most.size(); ++j) {
    const ChoiceLimit& limit = choosing_.limits[j];
    if (limit.most) sum += prices.most[j] * static_cast<double>(*limit.most);
    if (limit.least) sum -= prices.least[j] * static_cast<double>(*limit.least);
  }
  return sum;
}

// Ties with which every choice is worth as much on each day as over all, beside the programme.
TiePrices Tightening::beside(const std::vector<std::size_t>& programme) const {
  TiePrices prices{reach_.worths(programme), {}, {}};
  prices.most.resize(choosing_.limits.size());
  prices.least.resize(choosing_.limits.size());
  const ByChoice mean = over_days(prices.tie, days_);
  for (auto& day : prices.tie) {
    for (std::size_t i = 0; i < day.size(); ++i) {
      for (std::size_t c = 0; c < day[i].size(); ++c) day[i][c] = mean[i][c] - day[i][c];
    }
  }
  price_limits(mean, programme, prices);
  return prices;
}

Tightening::Excess Tightening::excess(const ByChoice& taken, const TiePrices& prices) const {
  Excess result{prices.most, prices.least};
  for (std::size_t j = 0; j < prices.most.size(); ++j) {
    double used = 0;
    for (std::size_t i = 0; i < taken.size(); ++i) {
      for (std::size_t c = 0; c < taken[i].size(); ++c) used += taken[i][c] * use_of(choosing_, i, c, j);
    }
    const ChoiceLimit& limit = choosing_.limits[j];
    result.most[j] = limit.most ? heeded(used - static_cast<double>(*limit.most), prices.most[j]) : 0;
    result.least[j] = limit.least ? heeded(static_cast<double>(*limit.least) - used, prices.least[j]) : 0;
  }
  return result;
}

// TiePrices for worths that add up, by steps against what is used too much or too little.
void Tightening::price_limits(const ByChoice& worth, const std::vector<std::size_t>& programme,
                              TiePrices& prices) const {
  constexpr int rounds = 300;
  double known = 0, lowest = HUGE_VAL, pace = 1;
  for (std::size_t i = 0; i < programme.size(); ++i) known += worth[i][programme[i]];
  TiePrices now{{}, prices.most, prices.least};
  for (int round = 0; round < rounds; ++round) {
    ByChoice taken;
    double bound = paid_back(now);
    for (std::size_t i = 0; i < worth.size(); ++i) {
      std::vector<double> values = worth[i];
      for (std::size_t c = 0; c < values.size(); ++c) {
        for (std::size_t j = 0; j < now.most.size(); ++j)
          values[c] += (now.least[j] - now.most[j]) * use_of(choosing_, i, c, j);
      }
      const auto best = std::max_element(values.begin(), values.end());
      bound += *best;
      taken.emplace_back(values.size())[static_cast<std::size_t>(best - values.begin())] = 1;
    }
    if (bound < lowest) {
      lowest = bound;
      prices.most = now.most;
      prices.least = now.least;
    } else {
      pace *= 0.97;
    }
    const Excess along = excess(taken, now);
    double length = 0;
    for (const double one : along.most) length += one * one;
    for (const double one : along.least) length += one * one;
    if (length == 0) return;
    const double stride = pace * std::max(bound - known, 1e-9) / length;
    go(now.most, along.most, stride);
    go(now.least, along.least, stride);
  }
}

// How far each limit's use can lie apart, so that steps of all limits are of one size: squared.
std::vector<double> Tightening::widths(const OpenLists& open) const {
  std::vector<double> result(choosing_.limits.size(), 1e-9);
  for (std::size_t j = 0; j < result.size(); ++j) {
    for (std::size_t i = 0; i < open.size(); ++i) {
      double low = HUGE_VAL, high = -HUGE_VAL;
      for (const std::size_t c : open[i]) {
        low = std::min(low, use_of(choosing_, i, c, j));
        high = std::max(high, use_of(choosing_, i, c, j));
      }
      result[j] += (high - low) * (high - low);
    }
  }
  return result;
}

// Against what days do not agree on and limits that are not kept; false when there is nothing of the kind.
bool Tightening::step(const OpenLists& open, const ByDay& taken, double over, TiePrices& prices) const {
  ByChoice mean = over_days(taken, days_);
  double length = 0;
  for (std::size_t i = 0; i < open.size(); ++i) {
    if (open[i].size() == 1) mean[i][open[i][0]] = 1;
    for (std::size_t d = 0; open[i].size() > 1 && d < taken.size(); ++d) {
      for (const std::size_t c : open[i])
        length += days_.cases()[d].chance * (taken[d][i][c] - mean[i][c]) * (taken[d][i][c] - mean[i][c]);
    }
  }
  Excess along = excess(mean, prices);
  const std::vector<double> width = widths(open);
  for (std::size_t j = 0; j < width.size(); ++j) {
    length += (along.most[j] * along.most[j] + along.least[j] * along.least[j]) / width[j];
    along.most[j] /= width[j];
    along.least[j] /= width[j];
  }
  constexpr double nothing = 1e-12;
  if (length < nothing) return false;
  const double stride = over / length;
  for (std::size_t i = 0; i < open.size(); ++i) {
    for (std::size_t d = 0; open[i].size() > 1 && d < taken.size(); ++d) {
      for (const std::size_t c : open[i]) prices.tie[d][i][c] -= stride * (taken[d][i][c] - mean[i][c]);
    }
  }
  go(prices.most, along.most, stride);
  go(prices.least, along.least, stride);
  return true;
}

std::vector<std::size_t> Tightening::least_decided_first(std::vector<std::size_t> order,
                                                         const ByDay& taken) const {
  const ByChoice mean = over_days(taken, days_);
  const auto decided = [&](std::size_t i) { return *std::max_element(mean[i].begin(), mean[i].end()); };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return decided(a) < decided(b); });
  return order;
}

// From the best prices so far along the mean of the last directions; shorter steps after one that failed.
Tightened Tightening::run(const TightenWish& wish) const {
  constexpr double newest = 0.1, longer = 1.2, shorter = 0.8;
  double pace = 0.5;
  Tightened best;
  best.most = HUGE_VAL;
  TiePrices now = *wish.from;
  ByDay mean;
  for (int round = 0;; ++round) {
    const Reach::Looked looked = reach_.look(wish.open, wish.order, added(now));
    const double back = paid_back(now), bound = looked.most + back;
    if (round == 0) mean = looked.taken;
    move_towards(mean, looked.taken, newest);
    pace *= bound < best.most ? longer : shorter;
    if (bound < best.most) {
      best = {bound, wish.order, looked.first, least_decided_first(wish.order, looked.taken),
              round == 0 ? wish.from : std::make_shared<TiePrices>(now)};
      for (double& one : best.first) one += back;
    }
    if (bound < wish.to_beat || round == wish.steps || !patience_.more(1)) return best;
    now = *best.prices;
    if (!step(wish.open, mean, pace * (best.most - wish.to_beat), now)) return best;
  }
}

}  // namespace landdrill
