#include <cassert>

#include "engine/choosing/compare.h"
#include "engine/choosing/duel.h"
#include "engine/choosing/part_worth.h"
#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "tables/quantity.h"

namespace landdrill {
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
