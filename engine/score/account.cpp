#include "engine/score/account.h"

#include <algorithm>
#include <array>

#include "engine/routine/routine.h"
#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "engine/score/score.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

void collect_rows(const Step& step, std::vector<Provenance>& rows) {
  for (const Provenance& row : step.rows) {
    const auto same = [&](const Provenance& known) {
      return known.table == row.table && known.line == row.line;
    };
    if (std::find_if(rows.begin(), rows.end(), same) == rows.end()) rows.push_back(row);
  }
  for (const Step& input : step.inputs) collect_rows(input, rows);
}

}  // namespace

Unmarked unmarked(const Routine& routine, const Showing& showing) {
  Unmarked result;
  bool any = false;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (routine.elements[i].panel == nullptr) continue;
    any = any || showing.elements[i].marks;
    if (!showing.elements[i].marks) result.elements.push_back(routine.elements[i].number);
  }
  for (const ShownAspect& aspect : showing.aspects) {
    any = any || aspect.marks;
    if (!aspect.marks) result.aspects.push_back(aspect.rule->aspect);
  }
  result.nothing_is_marked = !any && !(result.elements.empty() && result.aspects.empty());
  return result;
}

Cautions cautions(const Routine& routine, const Timing& timing) {
  using When = CautionRule::When;
  const auto has = [&](Caution caution) {
    return std::any_of(routine.elements.begin(), routine.elements.end(),
                       [&](const Element& element) { return element.kind->caution == caution; });
  };
  const std::array<bool, 3> says = {has(Caution::lift), has(Caution::thrown), timing.under > 0};
  Cautions found;
  for (const CautionRule& rule : routine.set->cautions) {
    const bool any = std::find(says.begin(), says.end(), true) != says.end();
    if (rule.when == When::any ? any : says[static_cast<std::size_t>(rule.when)]) found.push_back(rule);
  }
  return found;
}

std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded) {
  std::vector<Provenance> rows;
  collect_rows(estimate, rows);
  if (recorded != nullptr) collect_rows(*recorded, rows);
  std::vector<StatusCount> counts;
  for (const Status status : {Status::invented, Status::memory, Status::practice, Status::published}) {
    StatusCount count{status, {}};
    for (const Provenance& row : rows) {
      if (row.status == status) count.rows.push_back(std::string(row.table) + " " + row.key);
    }
    if (!count.rows.empty()) counts.push_back(std::move(count));
  }
  return counts;
}

namespace {

std::optional<Points> difference(const std::optional<Points>& from, const std::optional<Points>& to) {
  if (!from || !to) return std::nullopt;
  return *to - *from;
}

Amounts amounts(const std::optional<Points>& estimate, const std::optional<Points>& recorded) {
  return {estimate, recorded, difference(estimate, recorded)};
}

RestsOn rests_on(const ExpectedMark& expected) {
  RestsOn result{expected.from, {}, expected.runs.size(), {}};
  if (expected.from == ExpectedMark::From::run) result.date = expected.runs.front().run->date;
  if (expected.base_run != nullptr) result.base = expected.base_run->date;
  for (const RunMark& one : expected.runs) {
    if (one.seen->mark) continue;
    result.best = one.best;
    result.best_from = one.best_from;
  }
  return result;
}

// Of something that is marked; the judges go with it, since nobody asks a showing for them afterwards.
LineResult line_result(const PanelRule& rule, auto& shown, std::optional<Points> points) {
  return {panel_mark(rule, *shown.marks), points, std::move(shown.judges), rule.places};
}

// What is weighted together has points under each of its rules.
std::optional<Points> together(const Score& score) {
  std::optional<Points> sum;
  for (const WeightedPoints& one : score.weighted) {
    if (one.points) sum = sum.value_or(Points()) + *one.points;
  }
  return sum;
}

// What was taken off, as it goes into the total; where nothing was said of it, there is nothing to take off.
template <class Uses>
Amounts taken_off(const Uses& expected, Points estimate, const Uses* seen, Points recorded) {
  const Points nothing;
  Amounts result;
  if (!expected.empty()) result.estimate = nothing - estimate;
  if (seen == nullptr) return result;
  if (!seen->empty()) result.recorded = nothing - recorded;
  if (result.estimate || result.recorded) result.difference = estimate - recorded;
  return result;
}

// What one sheet comes to, gathered step by step.
class Telling {
 public:
  Telling(const Routine& routine, const Wish& wish, const RecordedPanel* panel)
      : routine_(routine), wish_(wish), panel_(panel) {}

  Account tell() &&;

 private:
  void score_both();
  void tell_heading();
  void tell_elements();
  void tell_aspects();
  void tell_totals();
  void tell_panel();
  void tell_missing();
  void mark_worst();

  ElementLine element_line(std::size_t index);
  void add_recorded(ElementLine& line, std::size_t index);
  AspectLine aspect_line(std::size_t index);
  void add_recorded(AspectLine& line, std::size_t index);
  Points left_on(std::size_t index);
  Points lost_on(std::size_t index) const;

  const Routine& routine_;
  const Wish& wish_;
  const RecordedPanel* panel_;
  Account account_;
  Scored expected_, recorded_;
};

Account Telling::tell() && {
  score_both();
  account_.timing = timing(routine_, wish_);
  tell_heading();
  tell_elements();
  tell_aspects();
  tell_totals();
  if (panel_ != nullptr) tell_panel();
  tell_missing();
  mark_worst();
  account_.cautions = cautions(routine_, account_.timing);
  account_.statuses = statuses(*account_.estimate, account_.recorded ? &*account_.recorded : nullptr);
  return std::move(account_);
}

void Telling::score_both() {
  expected_ = scored(routine_, expected(routine_, wish_));
  account_.estimate = build_up(routine_, wish_, expected_.showing, expected_.score);
  if (panel_ == nullptr) return;
  recorded_ = scored(routine_, recorded(routine_, *panel_, wish_));
  account_.recorded = build_up(routine_, wish_, recorded_.showing, recorded_.score);
  if (expected_.score.total && recorded_.score.total)
    account_.bridge = bridge(routine_, expected_, recorded_);
}

void Telling::tell_heading() {
  account_.title = routine_.title;
  account_.event = routine_.event->title;
  account_.set = routine_.set->info.title;
  account_.edition = routine_.set->info.edition;
  account_.places = places_of(routine_);
  if (panel_ == nullptr) return;
  account_.panel_date = panel_->date;
  account_.panel = panel_->title;
}

// What the total would gain if the element got a full mark for what was declared.
Points Telling::left_on(std::size_t index) {
  const PanelRule& rule = *routine_.elements[index].panel;
  ShownElement& shown = expected_.showing.elements[index];
  const Points now = share_of(routine_, expected_.showing, index);
  ShownElement full{{shown.declared, shown.declared}, all_giving(rule, rule.most)};
  std::swap(shown, full);
  const Points at_best = share_of(routine_, expected_.showing, index);
  std::swap(shown, full);
  return at_best - now;
}

// What the element alone does to the total, from estimate to panel.
Points Telling::lost_on(std::size_t index) const {
  Points change;
  for (const BridgeStep& step : account_.bridge->steps) {
    if (step.element == index) change -= step.change;
  }
  return change;
}

ElementLine Telling::element_line(std::size_t index) {
  const Element& element = routine_.elements[index];
  ShownElement& shown = expected_.showing.elements[index];
  const Option& option = chosen(routine_, index, wish_);
  ElementLine line;
  line.number = element.number;
  line.title = element.title;
  line.kind = element.kind->title;
  line.option = option.title;
  line.declared = shown.declared;
  line.expected = {{}, shown.credited, shown.base};
  if (element.panel == nullptr) return line;
  line.rests_on = rests_on(shown.rests_on);
  if (line.rests_on->from == ExpectedMark::From::sheet)
    line.rests_on->silent = runs_shown(routine_, index, option, wish_.runs).all;
  if (!shown.marks) return line;
  line.left = left_on(index);
  static_cast<LineResult&>(line.expected) =
      line_result(*element.panel, shown, expected_.score.elements[index]);
  return line;
}

void Telling::add_recorded(ElementLine& line, std::size_t index) {
  ShownElement& shown = recorded_.showing.elements[index];
  if (!shown.marks) return;
  line.recorded =
      ElementResult{line_result(*routine_.elements[index].panel, shown, recorded_.score.elements[index]),
                    shown.credited, shown.base};
  line.difference = difference(line.expected.points, line.recorded->points);
}

void Telling::tell_elements() {
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    ElementLine& line = account_.elements.emplace_back(element_line(i));
    if (panel_ != nullptr) add_recorded(line, i);
  }
}

AspectLine Telling::aspect_line(std::size_t index) {
  ShownAspect& shown = expected_.showing.aspects[index];
  AspectLine line{shown.rule->title, *shown.rule->weight, {}, {}, {}, {}};
  if (!shown.marks) return line;
  line.expected = line_result(*shown.rule, shown, expected_.score.aspects[index]);
  line.rests_on.from = ExpectedMark::From::sheet;
  if (shown.run != nullptr) line.rests_on = {ExpectedMark::From::run, std::string(shown.run->date), 1, {}};
  return line;
}

void Telling::add_recorded(AspectLine& line, std::size_t index) {
  ShownAspect& shown = recorded_.showing.aspects[index];
  if (!shown.marks) return;
  line.recorded = line_result(*shown.rule, shown, recorded_.score.aspects[index]);
  line.difference = difference(line.expected.points, line.recorded.points);
}

void Telling::tell_aspects() {
  for (std::size_t i = 0; i < expected_.showing.aspects.size(); ++i) {
    AspectLine line = aspect_line(i);
    if (panel_ != nullptr) add_recorded(line, i);
    account_.aspects.push_back(std::move(line));
  }
}

void Telling::tell_totals() {
  const bool seen = panel_ != nullptr;
  account_.together = amounts(together(expected_.score), together(recorded_.score));
  account_.sync = taken_off(expected_.showing.sync, expected_.score.sync,
                            seen ? &recorded_.showing.sync : nullptr, recorded_.score.sync);
  account_.penalties = taken_off(expected_.showing.penalties, expected_.score.penalties,
                                 seen ? &recorded_.showing.penalties : nullptr, recorded_.score.penalties);
  account_.total = amounts(expected_.score.total, recorded_.score.total);
  account_.declared = expected_.score.declared;
  account_.credited = expected_.score.credited;
  account_.so_far = expected_.score.so_far;
}

void Telling::tell_panel() {
  account_.recorded_credited = recorded_.score.credited;
  account_.recorded_so_far = recorded_.score.so_far;
  account_.announced = panel_->result;
  account_.announced_difference = difference(panel_->result, recorded_.score.total);
}

// A panel alone asks for no estimate.
void Telling::tell_missing() {
  const auto note = [&](Unmarked marks, MissingMarks::Of of) {
    if (!marks.elements.empty() || !marks.aspects.empty()) account_.missing.push_back({std::move(marks), of});
  };
  Unmarked expected = unmarked(routine_, expected_.showing);
  if (!expected.nothing_is_marked || panel_ == nullptr) note(std::move(expected), MissingMarks::Of::estimate);
  if (panel_ != nullptr) note(unmarked(routine_, recorded_.showing), MissingMarks::Of::panel);
}

// The line that costs most: against the panel where there is one, else against a full mark.
void Telling::mark_worst() {
  ElementLine* worst = nullptr;
  Points most;
  for (std::size_t i = 0; i < account_.elements.size(); ++i) {
    ElementLine& line = account_.elements[i];
    if (!line.left) continue;
    const Points cost = account_.bridge ? lost_on(i) : *line.left;
    if (cost <= most) continue;
    most = cost;
    worst = &line;
  }
  if (worst != nullptr) worst->worst = true;
}

}  // namespace

Account account(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  return Telling(routine, wish, panel ? &routine.panels[*panel] : nullptr).tell();
}

}  // namespace landdrill
