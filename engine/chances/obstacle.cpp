#include "engine/chances/obstacle.h"

#include <algorithm>

#include "engine/chances/mark_odds.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr std::int64_t most_scales = 100;  // a spread of so many whole scales says nothing any more
constexpr Chance most_work = 5e8;          // multiplications for the kept marks of one panel
class Looking {
 public:
  Looking(const Routine& routine, const Risked& risked, const Spreads& spreads)
      : routine_(routine), risked_(risked), spreads_(spreads) {}

  Obstacles run() {
    look_for_marks();
    look_for_spreads();
    look_at_bases();
    look_at_weighted();
    look_at_numbers();
    return std::move(found_);
  }

 private:
  void look_for_marks() {
    const Unmarked missing = unmarked(routine_, risked_.showing);
    if (missing.nothing_is_marked) return found_.push_back({Obstacle::Of::nothing_expected});
    found_ = unmarked_lines(missing);
  }

  void look_for_spreads() {
    ObstacleFacts without;
    bool any = false;
    const auto has_one = [&](const Spread& spread) {
      const bool has = spread.from != SpreadFrom::nothing;
      any |= has;
      return has;
    };
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      const Element& element = routine_.elements[i];
      if (element.panel != nullptr && !has_one(spreads_.elements[i]))
        without.elements.push_back(element.number);
    }
    for (std::size_t i = 0; i < spreads_.aspects.size(); ++i) {
      if (!has_one(spreads_.aspects[i])) without.names.push_back(risked_.showing.aspects[i].rule->aspect);
    }
    if (without.elements.empty() && without.names.empty()) return;
    found_.push_back({Obstacle::Of::no_spread, any ? without : ObstacleFacts{}});
  }

  void look_at_bases() {
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      const Element& element = routine_.elements[i];
      if (element.panel == nullptr || element.panel->use == Use::plain || element.kind->base) continue;
      if (risked_.chances[i].percent.units() == 0) continue;
      found_.push_back(
          {Obstacle::Of::no_base, {.elements = {element.number}, .names = {element.kind->code}}});
    }
  }

  bool can_be_credited_nothing(std::size_t element) const {
    const Decimal percent = risked_.chances[element].percent;
    const std::optional<Difficulty>& base = routine_.elements[element].kind->base;
    const bool base_is_nothing = !base || *base == Difficulty();
    if (percent > Decimal() && base_is_nothing) return true;
    return percent < hundred_percent && risked_.showing.elements[element].declared == Difficulty();
  }

  void look_at_weighted() {
    for (const PanelRule* rule : weighting_rules(routine_)) {
      bool all = true;
      for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
        if (routine_.elements[i].panel == rule) all = all && can_be_credited_nothing(i);
      }
      if (all) found_.push_back({Obstacle::Of::all_credited_zero, {.names = {rule->title}}});
    }
  }

  void look_at_spread(const Spread& spread, const PanelRule& rule) {
    const std::int64_t scale = (rule.most.value() - rule.least.value()).units();
    if (spread.marks.units() / most_scales > scale) {
      add_once({Obstacle::Of::spread_too_wide,
                {.names = {spread.says}, .amount = spread.marks, .most = most_scales}});
    }
    const auto steps = static_cast<Chance>(scale / rule.step.units()),
               judges = static_cast<Chance>(rule.judges);
    if (steps * steps * judges * judges * judges / 2 <= most_work) return;
    add_once(
        {Obstacle::Of::steps_too_many, {.names = {rule.title}, .amount = rule.step, .most = rule.judges}});
  }

  void add_once(Obstacle obstacle) {
    if (std::find(found_.begin(), found_.end(), obstacle) == found_.end())
      found_.push_back(std::move(obstacle));
  }

  void look_at_numbers() {
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      if (routine_.elements[i].panel == nullptr) continue;
      look_at_spread(spreads_.elements[i], *routine_.elements[i].panel);
      look_at_spread(spreads_.day, *routine_.elements[i].panel);
    }
    for (std::size_t i = 0; i < spreads_.aspects.size(); ++i) {
      look_at_spread(spreads_.aspects[i], *risked_.showing.aspects[i].rule);
    }
    for (const ExpectedErrors& one : risked_.errors) {
      if (one.number <= Decimal::whole(most_expected_errors)) continue;
      found_.push_back({Obstacle::Of::errors_too_many,
                        {.names = {one.sync->code}, .amount = one.number, .most = most_expected_errors}});
    }
  }

  const Routine& routine_;
  const Risked& risked_;
  const Spreads& spreads_;
  Obstacles found_;
};

}  // namespace

Obstacles obstacles_before(const Routine& routine, const Risked& risked, const Spreads& spreads) {
  return Looking(routine, risked, spreads).run();
}

Obstacles unmarked_lines(const Unmarked& missing) {
  Obstacles lines;
  if (!missing.elements.empty())
    lines.push_back({Obstacle::Of::elements_unmarked, {.elements = missing.elements}});
  for (const std::string& aspect : missing.aspects)
    lines.push_back({Obstacle::Of::aspect_unmarked, {.names = {aspect}}});
  return lines;
}

std::size_t runs_with_sync(const Routine& routine, const RunWish& wish) {
  if (run_with_sync(routine, wish) == nullptr) return 0;
  if (wish.which != RunWish::Which::mean) return 1;
  return static_cast<std::size_t>(
      std::count_if(routine.runs.begin(), routine.runs.end(), [](const Run& run) { return run.has_sync; }));
}

}  // namespace landdrill
