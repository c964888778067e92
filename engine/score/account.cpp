#include "engine/score/account.h"

#include <algorithm>

#include "engine/score/account_notes.h"

namespace landdrill {
namespace {

std::string signed_text(Points points, int places) {
  const std::string text = points.text(places);
  return points > Points() ? "+" + text : text;
}

std::string value_of(const Step* step) {
  return step == nullptr ? std::string() : step->value;
}

const Option* priced_option(const Routine& routine, std::size_t index, const Wish& wish) {
  return &chosen(routine, index, wish);
}

std::string rests_on(const ExpectedMark& expected) {
  switch (expected.from) {
    case ExpectedMark::From::nothing:
      return "no mark yet";
    case ExpectedMark::From::sheet:
      return "expected";
    case ExpectedMark::From::run:
      return "run of " + std::string(expected.runs.front().run->date);
    case ExpectedMark::From::runs:
      return "mean of " + std::to_string(expected.runs.size()) + " runs";
  }
  return "";
}

// The step of the aspect at `index` of those marked once per routine; they stand together in their order. Not
// asked for by its path: an aspect may be called "total".
const Step& aspect_step(const Step& total, std::size_t index) {
  const auto first = std::find_if(total.inputs.begin(), total.inputs.end(),
                                  [](const Step& step) { return step.role == Role::aspect; });
  return total.inputs.at(static_cast<std::size_t>(first - total.inputs.begin()) + index);
}

// What one sheet comes to, gathered step by step.
class Telling {
 public:
  Telling(const Routine& routine, const Wish& wish, const RecordedPanel* panel)
      : routine_(routine), wish_(wish), panel_(panel), places_(places_of(routine)) {}

  Account tell() &&;

 private:
  void tell_heading();
  void tell_elements();
  void tell_aspects();
  void tell_deductions();
  void tell_totals();
  void tell_missing();
  void mark_worst();

  ElementLine element_line(std::size_t index) const;
  void add_recorded(ElementLine& line, std::size_t index) const;
  Points left_on(std::size_t index) const;
  Points lost_on(std::size_t index) const;
  std::string difference(Points from, Points to) const { return signed_text(to - from, places_); }

  const Routine& routine_;
  const Wish& wish_;
  const RecordedPanel* panel_;
  int places_;
  Account account_;
  Showing expected_, recorded_;
  Score expected_score_, recorded_score_;
};

Account Telling::tell() && {
  expected_ = expected(routine_, wish_);
  expected_score_ = score(routine_, expected_);
  account_.estimate = build_up(routine_, wish_, expected_, expected_score_);
  if (panel_ != nullptr) {
    recorded_ = recorded(routine_, *panel_, wish_);
    recorded_score_ = score(routine_, recorded_);
    account_.recorded = build_up(routine_, wish_, *panel_, recorded_, recorded_score_);
    if (expected_score_.total && recorded_score_.total)
      account_.bridge = bridge(routine_, expected_, recorded_);
  }
  account_.timing = timing(routine_, wish_);
  tell_heading();
  tell_elements();
  tell_aspects();
  tell_deductions();
  tell_totals();
  tell_missing();
  mark_worst();
  account_.cautions = cautions(routine_, account_.timing);
  account_.statuses = statuses(*account_.estimate, account_.recorded ? &*account_.recorded : nullptr);
  return std::move(account_);
}

void Telling::tell_heading() {
  account_.title = routine_.title;
  account_.event = routine_.event->title;
  account_.set = routine_.set->info.title;
  account_.edition = routine_.set->info.edition;
  if (panel_ == nullptr) return;
  account_.panel = std::string(panel_->date);
  if (!panel_->title.empty()) account_.panel += " " + std::string(panel_->title);
}

// What the total would gain if the element got a full mark for what was declared.
Points Telling::left_on(std::size_t index) const {
  Showing full = expected_;
  ShownElement& element = full.elements[index];
  const PanelRule& rule = *routine_.elements[index].panel;
  element.credited = element.declared;
  element.marks = all_giving(rule, rule.most);
  return score(routine_, full).so_far - expected_score_.so_far;
}

// What the element alone does to the total, from estimate to panel.
Points Telling::lost_on(std::size_t index) const {
  Points change;
  for (const BridgeStep& step : account_.bridge->steps) {
    if (step.element == index) change += step.change;
  }
  return change;
}

ElementLine Telling::element_line(std::size_t index) const {
  const Element& element = routine_.elements[index];
  const ShownElement& shown = expected_.elements[index];
  const Step& story = account_.estimate->inputs[index];
  ElementLine line;
  line.number = element.number;
  line.title = element.title;
  line.kind = element.kind->title;
  line.option = priced_option(routine_, index, wish_)->title;
  line.declared = shown.declared.text(2);
  line.credited = shown.credited.text(2);
  line.base = shown.base;
  line.mark = value_of(story.find(Role::mark));
  line.points = story.value;
  if (element.panel == nullptr) return line;
  line.rests_on =
      rests_on(expected_mark(routine_, index, *priced_option(routine_, index, wish_), wish_.runs));
  if (shown.marks) line.left = left_on(index).text(places_);
  return line;
}

void Telling::add_recorded(ElementLine& line, std::size_t index) const {
  const ShownElement& shown = recorded_.elements[index];
  const Step& story = account_.recorded->inputs[index];
  if (!shown.marks) return;
  line.recorded_credited = shown.credited.text(2);
  line.recorded_base = shown.base;
  line.recorded_mark = value_of(story.find(Role::mark));
  line.recorded_points = story.value;
  const auto& before = expected_score_.elements[index];
  const auto& after = recorded_score_.elements[index];
  if (before && after) line.difference = difference(*before, *after);
}

void Telling::tell_elements() {
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    ElementLine line = element_line(i);
    if (panel_ != nullptr) add_recorded(line, i);
    account_.elements.push_back(std::move(line));
  }
  const auto together = [&](const Score& score) {
    std::optional<Points> sum;
    for (const WeightedPoints& one : score.weighted) {
      if (one.points) sum = sum.value_or(Points()) + *one.points;
    }
    return sum;
  };
  const auto before = together(expected_score_), after = together(recorded_score_);
  if (before) account_.weighted = before->text(places_);
  if (after) account_.recorded_weighted = after->text(places_);
  if (before && after) account_.weighted_difference = difference(*before, *after);
}

void Telling::tell_aspects() {
  for (std::size_t i = 0; i < expected_.aspects.size(); ++i) {
    const PanelRule& rule = *expected_.aspects[i].rule;
    const Step& story = aspect_step(*account_.estimate, i);
    AspectLine line{rule.title, rule.weight->text(), value_of(story.find(Role::mark)), story.value, {}, {},
                    {},         "no mark yet"};
    if (expected_.aspects[i].marks) {
      const Run* run = run_with_aspect(routine_, rule, wish_.runs);
      line.rests_on = run == nullptr ? "expected" : "run of " + std::string(run->date);
    }
    if (panel_ != nullptr) {
      const Step& seen = aspect_step(*account_.recorded, i);
      line.recorded_mark = value_of(seen.find(Role::mark));
      line.recorded_points = seen.value;
      const auto& before = expected_score_.aspects[i];
      const auto& after = recorded_score_.aspects[i];
      if (before && after) line.difference = difference(*before, *after);
    }
    account_.aspects.push_back(std::move(line));
  }
}

void Telling::tell_deductions() {
  if (!expected_.sync.empty()) account_.sync = minus_text(expected_score_.sync, places_);
  if (!recorded_.sync.empty()) account_.recorded_sync = minus_text(recorded_score_.sync, places_);
  if (!expected_.penalties.empty()) account_.penalties = minus_text(expected_score_.penalties, places_);
  if (!recorded_.penalties.empty())
    account_.recorded_penalties = minus_text(recorded_score_.penalties, places_);
  if (panel_ == nullptr) return;
  if (!expected_.sync.empty() || !recorded_.sync.empty()) {
    account_.sync_difference = difference(recorded_score_.sync, expected_score_.sync);
  }
  if (!expected_.penalties.empty() || !recorded_.penalties.empty()) {
    account_.penalties_difference = difference(recorded_score_.penalties, expected_score_.penalties);
  }
}

void Telling::tell_totals() {
  account_.declared = expected_score_.declared.text(2);
  account_.credited = expected_score_.credited.text(2);
  account_.so_far = expected_score_.so_far.text(places_);
  if (expected_score_.total) account_.total = expected_score_.total->text(places_);
  if (panel_ == nullptr) return;
  account_.recorded_credited = recorded_score_.credited.text(2);
  account_.recorded_so_far = recorded_score_.so_far.text(places_);
  if (recorded_score_.total) account_.recorded_total = recorded_score_.total->text(places_);
  if (expected_score_.total && recorded_score_.total) {
    account_.difference = difference(*expected_score_.total, *recorded_score_.total);
  }
  if (!panel_->result) return;
  account_.announced = panel_->result->text(places_);
  if (recorded_score_.total)
    account_.announced_difference = signed_text(*recorded_score_.total - *panel_->result, places_);
}

void Telling::tell_missing() {
  const Unmarked expected = unmarked(routine_, expected_);
  if (expected.nothing_is_marked && panel_ == nullptr) {
    account_.missing = {
        "nothing is expected yet: add `expect` to the elements and a line `impression`, or a run"};
  } else if (!expected.nothing_is_marked) {
    if (!expected.elements.empty())
      account_.missing.push_back(expected.elements + " no expected mark: add `expect`, or a run");
    for (const std::string& aspect : expected.aspects) {
      account_.missing.push_back(aspect + " has no expected mark: add it to a line `impression`");
    }
  }
  if (panel_ == nullptr) return;
  const Unmarked seen = unmarked(routine_, recorded_);
  const std::string no_marks = " no marks in the panel of " + account_.panel;
  if (!seen.elements.empty()) account_.missing.push_back(seen.elements + no_marks);
  for (const std::string& aspect : seen.aspects) account_.missing.push_back(aspect + " has" + no_marks);
}

// The line that costs most: against the panel where there is one, else against a full mark.
void Telling::mark_worst() {
  std::optional<std::size_t> worst;
  Points most;
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    if (routine_.elements[i].panel == nullptr || !expected_.elements[i].marks) continue;
    const Points cost = account_.bridge ? Points() - lost_on(i) : left_on(i);
    if (cost <= most) continue;
    most = cost;
    worst = i;
  }
  if (worst) account_.elements[*worst].worst = true;
}

}  // namespace

Account account(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  return Telling(routine, wish, panel ? &routine.panels[*panel] : nullptr).tell();
}

}  // namespace landdrill
