#include "engine/choosing/duel.h"

#include <algorithm>
#include <cassert>

#include "engine/choosing/part_worth.h"
#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

const Exact no_points;

// The harder option with another mark or another chance against the easier one as expected.
class BreakEven {
 public:
  BreakEven(const Worth& worth, const Rival& harder, const Rival& easier)
      : worth_(worth), harder_(harder), easier_(*worth.total(easier.way)) {}

  Exact gain(Mark mark, Decimal chance) const {
    const std::optional<Exact> total = worth_.total({harder_.way.declared, mark, chance});
    assert(total);
    return *total - easier_;
  }
  Exact at_mark(Mark mark) const { return gain(mark, harder_.way.chance); }
  Exact at_chance(Decimal chance) const { return gain(harder_.way.mark, chance); }

  std::optional<Mark> lowest_mark() const;
  std::optional<Exact> even_mark(std::optional<Mark> lowest) const;
  std::optional<Decimal> highest_chance() const;

 private:
  Mark step_of_scale(std::int64_t step) const {
    return worth_.rule().least + Mark(worth_.rule().step) * step;
  }

  const Worth& worth_;
  const Rival& harder_;
  Exact easier_;
};

// Points never fall when the mark rises, so the steps at which the harder one pays are the upper ones.
std::optional<Mark> BreakEven::lowest_mark() const {
  const PanelRule& rule = worth_.rule();
  std::int64_t pays = (rule.most - rule.least).value().units() / rule.step.units(), fails = -1;
  if (at_mark(step_of_scale(pays)) < no_points) return std::nullopt;
  while (pays - fails > 1) {
    const std::int64_t middle = (pays + fails) / 2;
    (at_mark(step_of_scale(middle)) < no_points ? fails : pays) = middle;
  }
  return step_of_scale(pays);
}

// Between two steps the points are a straight line but for their rounding.
std::optional<Exact> BreakEven::even_mark(std::optional<Mark> lowest) const {
  if (!lowest) return std::nullopt;
  const Exact above = at_mark(*lowest);
  if (*lowest == worth_.rule().least) {
    const bool everywhere = at_mark(worth_.rule().most) == no_points;
    return above == no_points && !everywhere ? std::optional(Exact(lowest->value())) : std::nullopt;
  }
  const Exact rise = above - at_mark(*lowest - Mark(worth_.rule().step));
  const Exact even = Exact(lowest->value()) - above / rise * Exact(worth_.rule().step);
  return Exact(round(even, Decimal::places, Rounding::half_up));
}

// The expected total is a straight line over the chance, without any rounding.
std::optional<Decimal> BreakEven::highest_chance() const {
  const Exact never = at_chance(Decimal());
  if (never < no_points) return std::nullopt;
  if (!worth_.kind().base || at_chance(hundred_percent) >= no_points) return hundred_percent;
  const Exact fall = never - at_chance(hundred_percent);
  return round(never / fall * Exact(hundred_percent), 2, Rounding::down);
}

// The mark expected and three steps each way, at least a quarter of a mark apart.
std::vector<Mark> marks_around(const PanelRule& rule, Mark expected) {
  const std::int64_t quarter = Decimal::one / 4, step = rule.step.units();
  const Mark apart = Mark(rule.step) * ((quarter + step - 1) / step);
  std::vector<Mark> marks;
  for (int i = 3; i >= -3; --i) {
    const Mark mark = expected + apart * i;
    if (mark >= rule.least && mark <= rule.most) marks.push_back(mark);
  }
  return marks;
}

std::vector<Decimal> chances_around(const Kind& kind, Decimal expected) {
  if (!kind.base) return {expected};
  std::vector<Decimal> chances{expected};
  for (int percent : {0, 5, 10, 15, 20, 30, 50}) chances.push_back(Decimal::whole(percent));
  std::sort(chances.begin(), chances.end());
  chances.erase(std::unique(chances.begin(), chances.end()), chances.end());
  return chances;
}

bool is_harder(const Rival& other, const Rival& first) {
  if (other.way.declared != first.way.declared) return other.way.declared > first.way.declared;
  return other.way.chance > first.way.chance;
}

}  // namespace

Duel duel(const Worth& worth, const Rival& first, const Rival& other) {
  const Rival& harder = is_harder(other, first) ? other : first;
  const Rival& easier = &harder == &first ? other : first;
  const BreakEven even(worth, harder, easier);
  Duel result;
  result.harder = harder.option;
  result.easier = easier.option;
  result.gain = *worth.points(harder.way) - *worth.points(easier.way);
  result.steps = worth_steps(worth, easier, harder);
  result.lowest_mark = even.lowest_mark();
  result.even_mark = even.even_mark(result.lowest_mark);
  result.highest_chance = even.highest_chance();
  result.marks = marks_around(worth.rule(), harder.way.mark);
  result.chances = chances_around(worth.kind(), harder.way.chance);
  for (Mark mark : result.marks) {
    for (Decimal chance : result.chances) {
      const Points total = *worth.points({harder.way.declared, mark, chance});
      result.table.push_back(total - *worth.points(easier.way));
    }
  }
  return result;
}

namespace {

class Steps {
 public:
  Steps(const Worth& worth, const Rival& easier, const Rival& harder)
      : worth_(worth),
        easier_(easier),
        harder_(harder),
        now_(easier.way),
        reached_(*worth.points(easier.way)) {}

  std::vector<WorthStep> all() && {
    if (easier_.is->stated || harder_.is->stated) {
      difficulty();
    } else {
      parts();
    }
    execution();
    risk();
    return std::move(steps_);
  }

 private:
  void difficulty() {
    if (now_.declared == harder_.way.declared) return;
    const std::string label = "difficulty " + now_.declared.text(2) + " -> " + harder_.way.declared.text(2);
    now_.declared = harder_.way.declared;
    note(WorthStep::Cause::difficulty, label);
  }

  // First what goes, then what comes.
  void parts() {
    Option option = *easier_.is;
    const std::vector<PartUse> gone = surplus(*easier_.is, *harder_.is);
    const std::vector<PartUse> come = surplus(*harder_.is, *easier_.is);
    for (const PartUse& use : gone) exchange(option, use, -use.times, "without ");
    for (const PartUse& use : come) exchange(option, use, use.times, "with ");
    // What the formula could not be asked for on the way is told by the last step.
    now_.declared = harder_.way.declared;
    if (!waiting_.empty()) note(WorthStep::Cause::part, waiting_);
  }

  // What `one` has more of than `other`, each part once.
  static std::vector<PartUse> surplus(const Option& one, const Option& other) {
    std::vector<PartUse> result;
    for (const PartUse& use : one.parts) {
      const int more = times_of(one, *use.part) - times_of(other, *use.part);
      bool known = false;
      for (const PartUse& before : result) known = known || before.part == use.part;
      if (more > 0 && !known) result.push_back({use.part, more});
    }
    return result;
  }

  void exchange(Option& option, const PartUse& use, int more, const std::string& word) {
    option = with_more(std::move(option), *use.part, more);
    waiting_ += (waiting_.empty() ? "" : ", ") + word + use.part->code;
    if (use.times > 1) waiting_ += " x" + std::to_string(use.times);
    const std::optional<Difficulty> declared = workable(option, worth_.kind());
    if (!declared) return;
    Way then = now_;
    then.declared = *declared;
    if (!worth_.points(then)) return;
    now_ = then;
    note(WorthStep::Cause::part, waiting_);
    waiting_.clear();
  }

  void execution() {
    if (now_.mark == harder_.way.mark) return;
    const int places = worth_.rule().step.places_used();
    const std::string label = "mark " + now_.mark.text(places) + " -> " + harder_.way.mark.text(places);
    now_.mark = harder_.way.mark;
    note(WorthStep::Cause::execution, label);
  }

  void risk() {
    if (now_.chance == harder_.way.chance) return;
    const std::string label =
        "base chance " + now_.chance.text() + " % -> " + harder_.way.chance.text() + " %";
    now_.chance = harder_.way.chance;
    note(WorthStep::Cause::risk, label);
  }

  void note(WorthStep::Cause cause, const std::string& label) {
    const std::optional<Points> total = worth_.points(now_);
    assert(total);
    steps_.push_back({cause, label, *total - reached_});
    reached_ = *total;
  }

  const Worth& worth_;
  const Rival &easier_, &harder_;
  Way now_;
  Points reached_;
  std::string waiting_;
  std::vector<WorthStep> steps_;
};

}  // namespace

std::vector<WorthStep> worth_steps(const Worth& worth, const Rival& easier, const Rival& harder) {
  return Steps(worth, easier, harder).all();
}

}  // namespace landdrill
