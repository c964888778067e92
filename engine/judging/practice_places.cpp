#include "engine/judging/practice_places.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "engine/judging/statistics/shuffled.h"

namespace landdrill {
namespace {

using Place = PracticeReport::Where;
using MarkedTasks = std::vector<MarkedTask>;

// Those tasks of which the same is said, by their number.
struct PlaceGroup {
  Place place;
  std::vector<std::size_t> rows;
};
using PlaceGroups = std::vector<PlaceGroup>;

std::vector<double> offs(const MarkedTasks& marked) {
  std::vector<double> numbers;
  for (const MarkedTask& one : marked) numbers.push_back(one.off());
  return numbers;
}

std::vector<double> distances(const MarkedTasks& marked) {
  std::vector<double> numbers;
  for (const MarkedTask& one : marked) numbers.push_back(std::abs(one.off()));
  return numbers;
}

std::vector<double> chosen_of(const std::vector<double>& numbers, const std::vector<std::size_t>& rows) {
  std::vector<double> some;
  for (std::size_t row : rows) some.push_back(numbers[row]);
  return some;
}

double mean_of_the_rest(const std::vector<double>& numbers, const std::vector<std::size_t>& rows) {
  const double all = mean_of(numbers) * static_cast<double>(numbers.size());
  const double inside = mean_of(chosen_of(numbers, rows)) * static_cast<double>(rows.size());
  return (all - inside) / static_cast<double>(numbers.size() - rows.size());
}

void add_group(Place place, std::vector<std::size_t> rows, const MarkedTasks& marked, PlaceGroups& groups) {
  place.tasks = rows.size();
  place.bias = mean_with_interval(chosen_of(offs(marked), rows));
  place.difference = mean_of(chosen_of(distances(marked), rows));
  groups.push_back({std::move(place), std::move(rows)});
}

void add_kinds(const MarkedTasks& marked, PlaceGroups& groups) {
  std::map<std::string, std::vector<std::size_t>> kinds;
  for (std::size_t row = 0; row < marked.size(); ++row) kinds[marked[row].task->kind].push_back(row);
  for (auto& [kind, rows] : kinds) add_group({Place::By::kind, kind}, std::move(rows), marked, groups);
}

std::vector<std::size_t> piece_of(const std::vector<std::size_t>& rows, std::size_t from, std::size_t to) {
  return {rows.begin() + static_cast<std::ptrdiff_t>(from), rows.begin() + static_cast<std::ptrdiff_t>(to)};
}

std::vector<std::size_t> all_rows(const MarkedTasks& marked) {
  std::vector<std::size_t> rows(marked.size());
  std::iota(rows.begin(), rows.end(), std::size_t{0});
  return rows;
}

// Thirds of the tasks by the panel's mark.
void add_levels(const MarkedTasks& marked, PlaceGroups& groups) {
  std::vector<std::size_t> rows = all_rows(marked);
  std::stable_sort(rows.begin(), rows.end(),
                   [&](std::size_t a, std::size_t b) { return marked[a].task->kept < marked[b].task->kept; });
  const std::size_t third = rows.size() / 3, last = rows.size() - third;
  const double low = marked[rows[third]].task->kept, high = marked[rows[last]].task->kept;
  const auto add = [&](std::string name, std::size_t from, std::size_t to, std::optional<double> least,
                       std::optional<double> below) {
    Place place{Place::By::level, std::move(name)};
    place.from = least;
    place.below = below;
    add_group(std::move(place), piece_of(rows, from, to), marked, groups);
  };
  add(figure(low) + " to " + figure(high), third, last, low, high);
  add(figure(high) + " and above", last, rows.size(), high, {});
  add("below " + figure(low), 0, third, {}, low);
}

void add_times(const MarkedTasks& marked, PlaceGroups& groups) {
  const std::vector<std::size_t> rows = all_rows(marked);
  const std::size_t third = rows.size() / 3, last = rows.size() - third;
  add_group({Place::By::time, "first third"}, piece_of(rows, 0, third), marked, groups);
  add_group({Place::By::time, "last third"}, piece_of(rows, last, rows.size()), marked, groups);
  add_group({Place::By::time, "middle"}, piece_of(rows, third, last), marked, groups);
}

PlaceGroups groups_of(const MarkedTasks& marked) {
  PlaceGroups groups;
  add_kinds(marked, groups);
  if (marked.size() < 3 * least_in_a_group) return groups;
  add_levels(marked, groups);
  add_times(marked, groups);
  return groups;
}

// Marks of one meet move together.
std::vector<std::size_t> meets_of(const MarkedTasks& marked) {
  std::map<std::string, std::size_t> numbers;
  std::vector<std::size_t> meets;
  for (const MarkedTask& one : marked)
    meets.push_back(numbers.try_emplace(one.task->panel, numbers.size()).first->second);
  return meets;
}

// What is asked of the groups, and the group that each question is about.
struct Questions {
  std::vector<Look> looks;
  std::vector<std::size_t> groups;
};

// Where the panel marks high, its own scatter alone makes her look low: no bias is claimed of a level.
Questions questions_of(const MarkedTasks& marked, const PlaceGroups& groups) {
  Questions all;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const std::size_t size = groups[i].rows.size();
    if (size < least_in_a_group || marked.size() - size < least_in_a_group) continue;
    all.looks.push_back({distances(marked), groups[i].rows, Look::For::above});
    all.groups.push_back(i);
    if (groups[i].place.by == Place::By::level) continue;
    all.looks.push_back({offs(marked), groups[i].rows, Look::For::either});
    all.groups.push_back(i);
  }
  return all;
}

PlacesApart apart_by_more_than_chance(const MarkedTasks& marked, PlaceGroups& groups) {
  const Questions asked = questions_of(marked, groups);
  const std::vector<double> chances = chances_by_shuffling(asked.looks, meets_of(marked));
  PlacesApart apart;
  double least[2] = {1, 1};
  for (std::size_t i = 0; i < chances.size(); ++i) {
    if (chances[i] > told_by_chance_of_each) continue;
    const Look& look = asked.looks[i];
    Place& place = groups[asked.groups[i]].place;
    place.told = true;
    const bool further = look.what == Look::For::above;
    std::optional<PlaceApart>& most = further ? apart.further_off : apart.otherwise;
    const PlaceApart here{place.by, place.name, mean_of(chosen_of(look.numbers, look.rows)),
                          mean_of_the_rest(look.numbers, look.rows)};
    // Of two halves, the one that lies off is meant.
    if (most &&
        std::pair(chances[i], -std::abs(here.here)) >= std::pair(least[further], -std::abs(most->here)))
      continue;
    least[further] = chances[i];
    most = here;
  }
  return apart;
}

}  // namespace

PlacesApart find_places(const std::vector<MarkedTask>& marked, PracticeReport& report) {
  PlaceGroups groups = groups_of(marked);
  const PlacesApart apart = apart_by_more_than_chance(marked, groups);
  std::stable_sort(groups.begin(), groups.end(), [](const PlaceGroup& a, const PlaceGroup& b) {
    return std::pair(a.place.by, -a.place.difference) < std::pair(b.place.by, -b.place.difference);
  });
  for (PlaceGroup& group : groups) report.where.push_back(std::move(group.place));
  return apart;
}

}  // namespace landdrill
