#include "engine/judging/leanings.h"

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/steps.h"
#include "tables/binary.h"
#include "tables/claims.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// Lines that judges are compared on: all of them, or those of a kind.
struct Compared {
  std::string kind;
  std::vector<const MarkedLine*> lines;
};

std::vector<Compared> looked_at(const MarkSheet& sheet) {
  std::vector<Compared> all(1);
  for (const MarkedLine& line : sheet.lines) all.front().lines.push_back(&line);
  for (const std::string& kind : kinds_of(sheet)) {
    Compared of{kind, {}};
    for (const MarkedLine& line : sheet.lines)
      if (line.kind == kind) of.lines.push_back(&line);
    if (static_cast<double>(of.lines.size()) >= binary(claim("judge-constant"))) all.push_back(std::move(of));
  }
  return all;
}

std::size_t seated(const MarkSheet& sheet) {
  std::size_t count = 0;
  for (std::size_t judge = 0; judge < sheet.lines.front().marks.size(); ++judge)
    count += std::any_of(sheet.lines.begin(), sheet.lines.end(),
                         [&](const MarkedLine& line) { return line.marks[judge].has_value(); });
  return count;
}

// One after the other they are named.
class Naming {
 public:
  Naming(const Compared& compared, Decimal step, double confidence)
      : compared_(compared), step_(step), confidence_(confidence) {
    const std::size_t judges = compared.lines.front()->marks.size();
    named_.resize(judges);
    levels_.resize(judges);
    while (name_one()) {
    }
  }
  std::vector<Leaning> found;
  std::vector<Statistic> levels() const { return levels_; }

 private:
  Statistic level_of(std::size_t judge) const {
    std::vector<double> differences;
    for (const MarkedLine* line : compared_.lines) {
      const Others others = others_of(*line, judge, named_);
      if (line->marks[judge] && others.count > 0) differences.push_back(others.below(*line->marks[judge]));
    }
    return differences.empty() ? no_number("no other judge marked what she marked")
                               : mean_with_interval(differences, confidence_);
  }
  // No scatter, so no interval: the clearest of all, where it is no accident of few lines or part of a step.
  bool always(const Statistic& level) const {
    return level.value && !level.low && static_cast<double>(level.rows) >= binary(claim("judge-constant")) &&
           std::abs(*level.value) >= binary(step_);
  }
  bool stands_out(const Statistic& level) const {
    if (always(level)) return true;
    return level.low && level.rows >= least_marks && *level.low * *level.high > 0 &&
           !steps_in_words(*level.value, step_).empty();
  }

  // Those who have marks beside others' marks, and were not named.
  std::vector<std::size_t> compare_who_is_left() {
    std::vector<std::size_t> left;
    for (std::size_t judge = 0; judge < named_.size(); ++judge) {
      if (named_[judge]) continue;
      levels_[judge] = level_of(judge);
      if (levels_[judge].value) left.push_back(judge);
    }
    return left;
  }
  std::optional<std::size_t> furthest_off(const std::vector<std::size_t>& left) const {
    std::optional<std::size_t> most;
    for (const std::size_t judge : left) {
      if (!stands_out(levels_[judge])) continue;
      if (!most || std::abs(*levels_[judge].value) > std::abs(*levels_[*most].value)) most = judge;
    }
    return most;
  }
  // Of the last two it could not be said which one stands out, but where there never were more.
  bool name_one() {
    const std::vector<std::size_t> left = compare_who_is_left();
    const bool only_two = left.size() == 2 && found.empty();
    const std::optional<std::size_t> most = furthest_off(left);
    if (!most || (left.size() < 3 && !only_two)) return false;
    named_[*most] = true;
    found.push_back({*most, {}, compared_.kind, levels_[*most], always(levels_[*most])});
    if (only_two) found.back().than = left.front() == *most ? left.back() : left.front();
    return !only_two;
  }

  const Compared& compared_;
  Decimal step_;
  double confidence_;
  std::vector<bool> named_;
  std::vector<Statistic> levels_;
};

// What holds for all lines is not said again for a kind of them.
bool says_the_same(const Leaning& one, const Leaning& all, Decimal step) {
  return one.judge == all.judge && *one.above.value * *all.above.value > 0 &&
         steps_in_words(*one.above.value, step) == steps_in_words(*all.above.value, step);
}

}  // namespace

Leanings leanings_in(const MarkSheet& sheet) {
  const Decimal step = sheet.lines.front().rule->step;
  const std::vector<Compared> all = looked_at(sheet);
  const std::size_t judges = seated(sheet);
  // Of two judges, one is as far above as the other is below.
  const double looks = static_cast<double>(all.size() * (judges == 2 ? 1 : std::max<std::size_t>(judges, 1)));
  Leanings leanings;
  for (const Compared& compared : all) {
    Naming naming(compared, step, 1 - binary(claim("judge-level")) / looks);
    if (leanings.levels.empty()) leanings.levels = naming.levels();
    for (Leaning& one : naming.found) {
      const bool told = std::any_of(leanings.found.begin(), leanings.found.end(), [&](const Leaning& of) {
        return of.kind.empty() && says_the_same(one, of, step);
      });
      if (!told) leanings.found.push_back(std::move(one));
    }
  }
  std::stable_sort(leanings.found.begin(), leanings.found.end(), [](const Leaning& a, const Leaning& b) {
    return a.always != b.always ? a.always : std::abs(*a.above.value) > std::abs(*b.above.value);
  });
  return leanings;
}

}  // namespace landdrill
