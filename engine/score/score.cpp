#include "engine/score/score.h"

#include <algorithm>

#include "engine/routine/base_mark.h"
#include "engine/routine/routine.h"
#include "engine/score/sync_errors.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

ShownAspect expected_aspect(const Routine& routine, const PanelRule& rule, const RunWish& wish) {
  ShownAspect shown{&rule};
  shown.run = run_with_aspect(routine, rule, wish);
  const std::vector<AspectMark>& marks = shown.run != nullptr ? shown.run->aspects : routine.impressions;
  const auto seen =
      std::find_if(marks.begin(), marks.end(), [&](const AspectMark& one) { return one.rule == &rule; });
  if (seen != marks.end()) shown.marks = all_giving(rule, seen->mark);
  return shown;
}

// The one place where a panel's marks are judged for a score, its story and its table.
void show_judged(const PanelRule& rule, const JudgeMarks& marks, auto& shown) {
  Judged judged = judge(rule, marks);
  shown.marks = judged.kept;
  shown.judges = std::move(judged.judges);
}

// sum(marks x credited) / sum(credited) x weight over the elements marked under `rule`; divided once, rounded
// once.
std::optional<Points> points_together(const Routine& routine, const Showing& showing, const PanelRule& rule) {
  Exact merit;
  Difficulty difficulty;
  for (std::size_t i = 0; i < showing.elements.size(); ++i) {
    const ShownElement& shown = showing.elements[i];
    if (routine.elements[i].panel != &rule || !shown.marks) continue;
    merit = merit + combined(rule, *shown.marks) * Exact(shown.credited.value());
    difficulty += shown.credited;
  }
  if (Exact(difficulty.value()).is_zero()) return std::nullopt;
  return weighted_points(rule, merit, difficulty);
}

// Empty for an element that is weighted, not marked, or not scored.
std::optional<Points> points_alone(const PanelRule* rule, const ShownElement& shown) {
  if (rule == nullptr || !shown.marks || rule->use == Use::weighted) return std::nullopt;
  if (rule->use == Use::plain) return plain_points(*rule, *shown.marks);
  return element_points(*rule, *shown.marks, shown.credited);
}

void note_weighted(Score& score, const PanelRule* rule) {
  for (const WeightedPoints& known : score.weighted) {
    if (known.rule == rule) return;
  }
  score.weighted.push_back({rule, std::nullopt});
}

// The elements' part of the score. False when a mark is missing.
bool add_elements(const Routine& routine, const Showing& showing, Score& score) {
  bool complete = true;
  score.elements.reserve(showing.elements.size());
  for (std::size_t i = 0; i < showing.elements.size(); ++i) {
    const ShownElement& shown = showing.elements[i];
    const PanelRule* rule = routine.elements[i].panel;
    score.declared += shown.declared;
    score.credited += shown.credited;
    if (rule != nullptr && !shown.marks) complete = false;
    if (rule != nullptr && shown.marks && rule->use == Use::weighted) note_weighted(score, rule);
    const std::optional<Points> points = points_alone(rule, shown);
    if (points) score.so_far += *points;
    score.elements.push_back(points);
  }
  for (WeightedPoints& together : score.weighted) {
    together.points = points_together(routine, showing, *together.rule);
    if (together.points) score.so_far += *together.points;
    complete = complete && together.points;
  }
  return complete;
}

bool add_aspects(const Showing& showing, Score& score) {
  bool complete = true;
  score.aspects.reserve(showing.aspects.size());
  for (const ShownAspect& aspect : showing.aspects) {
    std::optional<Points> points;
    if (aspect.marks) points = plain_points(*aspect.rule, *aspect.marks);
    if (points) score.so_far += *points;
    complete = complete && points.has_value();
    score.aspects.push_back(points);
  }
  return complete;
}

}  // namespace

Showing expected(const Routine& routine, const Wish& wish) {
  Showing showing;
  showing.elements.reserve(routine.elements.size());
  showing.aspects.reserve(routine.aspects.size());
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    const Option& option = chosen(routine, i, wish);
    ShownElement& shown = showing.elements.emplace_back(ShownElement{credited_as_declared(option)});
    if (element.panel == nullptr) continue;
    shown.rests_on = expected_mark(routine, i, option, wish.runs);
    if (shown.rests_on.base) credit_base(shown, *element.kind);
    if (shown.rests_on.mark) shown.marks = all_giving(*element.panel, *shown.rests_on.mark);
  }
  for (const PanelRule* rule : routine.aspects) {
    showing.aspects.push_back(expected_aspect(routine, *rule, wish.runs));
  }
  if (const Run* run = run_with_sync(routine, wish.runs)) showing.sync = run->sync;
  if (const Run* run = run_with_penalties(routine, wish.runs)) showing.penalties = run->penalties;
  return showing;
}

Showing recorded(const Routine& routine, const RecordedPanel& panel, const Wish& wish) {
  Showing showing;
  showing.elements.reserve(routine.elements.size());
  showing.aspects.reserve(routine.aspects.size());
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    showing.elements.push_back({credited_as_declared(chosen(routine, i, wish))});
  }
  for (const RecordedElement& seen : panel.elements) {
    ShownElement& shown = showing.elements[seen.element];
    if (seen.base) credit_base(shown, *routine.elements[seen.element].kind);
    show_judged(*routine.elements[seen.element].panel, seen.marks, shown);
  }
  for (const PanelRule* rule : routine.aspects) {
    ShownAspect& aspect = showing.aspects.emplace_back(ShownAspect{rule});
    for (const RecordedAspect& seen : panel.aspects) {
      if (seen.rule == rule) show_judged(*rule, seen.marks, aspect);
    }
  }
  showing.sync = panel.sync;
  showing.penalties = panel.penalties;
  return showing;
}

int places_of(const Routine& routine) {
  int places = 0;
  const std::size_t event = routine.set->events.place(*routine.event);
  for (const PanelRule& rule : routine.set->panels) {
    if (rule.event_row == event) places = std::max(places, rule.places);
  }
  return places;
}

Points share_of(const Routine& routine, const Showing& showing, std::size_t index) {
  const PanelRule* rule = routine.elements[index].panel;
  const bool weighted = rule != nullptr && rule->use == Use::weighted;
  const std::optional<Points> points =
      weighted ? points_together(routine, showing, *rule) : points_alone(rule, showing.elements[index]);
  return points.value_or(Points());
}

Scored scored(const Routine& routine, Showing showing) {
  Score points = score(routine, showing);
  return {std::move(showing), std::move(points)};
}

Score score(const Routine& routine, const Showing& showing) {
  Score result;
  const bool elements_complete = add_elements(routine, showing, result);
  const bool aspects_complete = add_aspects(showing, result);
  result.sync = points_of(showing.sync);
  result.penalties = points_of(showing.penalties);
  result.so_far -= result.sync;
  result.so_far -= result.penalties;
  if (elements_complete && aspects_complete) result.total = result.so_far;
  return result;
}

}  // namespace landdrill
