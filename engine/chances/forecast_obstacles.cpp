#include "engine/chances/forecast_obstacles.h"

#include <algorithm>

#include "engine/chances/line_odds.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "engine/score/account_notes.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr std::int64_t most_scales = 100;  // a spread of so many whole scales says nothing any more
constexpr Chance most_work = 5e8;          // multiplications for the kept marks of one panel
const char* const ways_to_say_it =
    ": write `spread 0.4` into the sheet, give --spread, or add a row to the set's table spreads";

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " and " : ", ";
    text += names[i];
  }
  return text;
}

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
    if (missing.nothing_is_marked) {
      found_.push_back(
          "nothing is expected yet: add `expect` to the elements and a line `impression`, or a run");
      return;
    }
    if (!missing.elements.empty()) {
      found_.push_back(elements_have(missing.elements) + " no expected mark: add `expect`, or a run");
    }
    for (const std::string& aspect : missing.aspects) {
      found_.push_back(aspect + " has no expected mark: add it to a line `impression`");
    }
  }

  void look_for_spreads() {
    std::vector<std::string> without;
    std::size_t lines = 0;
    const auto look = [&](const Spread& spread, std::string name) {
      ++lines;
      if (spread.from == SpreadFrom::nothing) without.push_back(std::move(name));
    };
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      if (routine_.elements[i].panel == nullptr) continue;
      look(spreads_.elements[i], "element " + std::to_string(routine_.elements[i].number));
    }
    for (std::size_t i = 0; i < spreads_.aspects.size(); ++i) {
      look(spreads_.aspects[i], risked_.showing.aspects[i].rule->aspect);
    }
    if (without.empty()) return;
    const std::string of_what = without.size() == lines ? "" : " for " + listed(without);
    found_.push_back("nothing says how far judges' marks scatter" + of_what + ways_to_say_it);
  }

  void look_at_bases() {
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      const Element& element = routine_.elements[i];
      if (element.panel == nullptr || element.panel->use == Use::plain || element.kind->base) continue;
      if (risked_.chances[i].percent.units() == 0) continue;
      found_.push_back("element " + std::to_string(element.number) +
                       " has a chance of the base mark, but the kind " + element.kind->code +
                       " has none in the set: add it to kinds.csv, or take the chance away");
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
      if (!all) continue;
      found_.push_back(rule->title +
                       ": every element can be credited with a difficulty of 0, and then nothing can be "
                       "divided by it: give at least one of them no chance of that");
    }
  }

  void look_at_spread(const Spread& spread, const PanelRule& rule) {
    const std::int64_t scale = (rule.most.value() - rule.least.value()).units();
    if (spread.marks.units() / most_scales > scale) too_wide(spread);
    const auto steps = static_cast<Chance>(scale / rule.step.units()),
               judges = static_cast<Chance>(rule.judges);
    if (steps * steps * judges * judges * judges / 2 <= most_work) return;
    add_once(rule.title + ": marks in steps of " + rule.step.text() + " by " + std::to_string(rule.judges) +
             " judges are too many to be reckoned with: use a wider step in panels.csv");
  }

  void too_wide(const Spread& spread) {
    add_once("a spread of " + spread.marks.text() + " marks (" + spread.says + ") is more than " +
             std::to_string(most_scales) + " whole scales: write it in marks, as 0.4");
  }

  void add_once(std::string sentence) {
    if (std::find(found_.begin(), found_.end(), sentence) == found_.end()) {
      found_.push_back(std::move(sentence));
    }
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
      found_.push_back("errors " + one.sync->code + " " + one.number.text() + ": at most " +
                       std::to_string(most_expected_errors) + " on average can be reckoned with");
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

std::string too_many_states(const PanelRule& rule) {
  return rule.title +
         ": base marks can fall in too many ways to be reckoned with all together: give fewer elements a "
         "slip, or write their difficulties with fewer places";
}

std::size_t runs_with_sync(const Routine& routine, const RunWish& wish) {
  if (run_with_sync(routine, wish) == nullptr) return 0;
  if (wish.which != RunWish::Which::mean) return 1;
  return static_cast<std::size_t>(
      std::count_if(routine.runs.begin(), routine.runs.end(), [](const Run& run) { return run.has_sync; }));
}

}  // namespace landdrill
