#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "engine/judging/practice.h"
#include "engine/judging/statistics/dice.h"

namespace landdrill {
namespace {

// A task is weak by how far she was off, but nothing is left out for good.
constexpr double least_weight = 0.1;

bool is_of(const PracticeTask& task, const Weakness& weak) {
  if (!weak.kind.empty()) return weak.kind == task.kind;
  return (!weak.from || task.kept >= *weak.from) && (!weak.below || task.kept < *weak.below);
}

// How much the task is wanted: by the mean of what is known of its kind and its level.
double weight_of(const PracticeTask& task, std::span<const Weakness> known) {
  double sum = 0;
  int count = 0;
  for (const Weakness& weak : known) {
    if (!is_of(task, weak)) continue;
    sum += weak.difference;
    ++count;
  }
  return count == 0 ? 1 : least_weight + sum / count;
}

// What is drawn as one: a task, or all of a panel.
struct Lot {
  std::vector<std::size_t> tasks;
  double weight = 0;  // of a mean task
  bool again = false;
};

std::vector<Lot> lots_of(std::span<const PracticeTask> tasks, const DrawWish& wish) {
  std::vector<Lot> lots;
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    if (i == 0 || !wish.whole_routines || tasks[i].block != tasks[i - 1].block) lots.emplace_back();
    lots.back().tasks.push_back(i);
    lots.back().weight += weight_of(tasks[i], wish.known);
    lots.back().again = lots.back().again || tasks[i].again;
  }
  for (Lot& lot : lots) lot.weight /= static_cast<double>(lot.tasks.size());
  return lots;
}

}  // namespace

// Weighted sampling without replacement by keys u^(1/w) (Efraimidis & Spirakis 2006), then in the order of
// the tasks.
std::vector<std::size_t> draw_tasks(std::span<const PracticeTask> tasks, const DrawWish& wish) {
  Dice dice(wish.seed);
  const std::vector<Lot> lots = lots_of(tasks, wish);
  std::vector<double> keys;
  for (const Lot& lot : lots) keys.push_back(std::log(std::max(dice.roll(), 1e-300)) / lot.weight);
  std::vector<std::size_t> order(lots.size()), drawn;
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(lots[b].again, keys[a]) > std::pair(lots[a].again, keys[b]);
  });
  for (std::size_t i = 0; i < std::min(wish.how_many, order.size()); ++i)
    drawn.insert(drawn.end(), lots[order[i]].tasks.begin(), lots[order[i]].tasks.end());
  std::sort(drawn.begin(), drawn.end());
  return drawn;
}

}  // namespace landdrill
