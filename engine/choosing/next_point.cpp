#include "engine/choosing/next_point.h"

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/choosing/worth.h"
#include "engine/routine/wish.h"
#include "engine/score/panel.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

const Mark tenth = Mark(Decimal::from_units(Decimal::one / 10));

// Makes one change after another, each to the routine as it is.
class Changes {
 public:
  Changes(const Routine& routine, const Wish& wish)
      : routine_(routine), wish_(wish), now_(risked(routine, wish)) {}

  NextPoints all() &&;

 private:
  void execution(std::size_t element);
  void base_chance(std::size_t element);
  void impression(std::size_t aspect);
  template <class Expected>
  void one_less(Gain gain, std::vector<Expected> Risked::*several);
  void note(Gain gain, const Risked& then);

  const Routine& routine_;
  const Wish& wish_;
  const Risked now_;
  NextPoints result_;
};

NextPoints Changes::all() && {
  result_.obstacles = missing_marks(routine_, wish_);
  if (!result_.obstacles.empty()) return std::move(result_);
  const std::optional<Exact> total = expected_total(routine_, now_);
  if (!total) return {{no_total(routine_, now_)}, {}, {}};
  result_.total = rounded(routine_, *total);
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) execution(i);
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) base_chance(i);
  for (std::size_t i = 0; i < now_.showing.aspects.size(); ++i) impression(i);
  for (std::size_t i = 0; i < now_.errors.size(); ++i)
    one_less({Gain::What::sync, i, now_.errors[i].sync->code, {}, {}, {}}, &Risked::errors);
  for (std::size_t i = 0; i < now_.penalties.size(); ++i)
    one_less({Gain::What::penalty, i, now_.penalties[i].penalty->code, {}, {}, {}}, &Risked::penalties);
  std::stable_sort(result_.gains.begin(), result_.gains.end(),
                   [](const Gain& a, const Gain& b) { return a.change > b.change; });
  return std::move(result_);
}

// What judges who all give one mark gave.
Mark mark_of(const KeptMarks& kept) {
  const Exact mean = Exact(kept.sum.value()) / Exact(Decimal::whole(kept.count));
  return Mark(round(mean, Decimal::places, Rounding::half_up));
}

std::optional<Gain> a_tenth_more(Gain gain, const PanelRule& rule, std::optional<KeptMarks>& marks) {
  const Mark before = mark_of(*marks), after = std::min(before + tenth, rule.most);
  if (after <= before) return std::nullopt;
  gain.before = before.text(rule.step.places_used());
  gain.after = after.text(rule.step.places_used());
  marks = all_giving(rule, after);
  return gain;
}

void Changes::execution(std::size_t element) {
  const PanelRule* rule = routine_.elements[element].panel;
  if (rule == nullptr) return;
  Risked then = now_;
  const auto gain =
      a_tenth_more({Gain::What::execution, element, name_of(routine_.elements[element]), {}, {}, {}}, *rule,
                   then.showing.elements[element].marks);
  if (gain) note(*gain, then);
}

void Changes::impression(std::size_t aspect) {
  Risked then = now_;
  ShownAspect& shown = then.showing.aspects[aspect];
  const auto gain =
      a_tenth_more({Gain::What::impression, aspect, shown.rule->title, {}, {}, {}}, *shown.rule, shown.marks);
  if (gain) note(*gain, then);
}

void Changes::base_chance(std::size_t element) {
  const Decimal before = now_.chances[element].percent;
  if (before == Decimal()) return;
  Risked then = now_;
  Decimal& after = then.chances[element].percent;
  after = round(Exact(before) / Exact(Decimal::whole(2)), Decimal::places, Rounding::half_up);
  note({Gain::What::base_chance,
        element,
        name_of(routine_.elements[element]),
        before.text(),
        after.text(),
        {},
        now_.chances[element].runs},
       then);
}

template <class Expected>
void Changes::one_less(Gain gain, std::vector<Expected> Risked::*several) {
  Risked then = now_;
  Decimal& number = (then.*several)[gain.index].number;
  if (number == Decimal()) return;
  gain.before = number.text();
  number -= std::min(number, Decimal::whole(1));
  gain.after = number.text();
  note(std::move(gain), then);
}

void Changes::note(Gain gain, const Risked& then) {
  const std::optional<Exact> total = expected_total(routine_, then);
  if (!total) return;  // a halved chance can make a 17th element uncertain
  gain.change = rounded(routine_, *total) - result_.total;
  result_.gains.push_back(std::move(gain));
}

}  // namespace

NextPoints next_points(const Routine& routine, const Wish& wish) {
  return Changes(routine, wish).all();
}

}  // namespace landdrill
