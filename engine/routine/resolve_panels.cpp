// Runs and recorded panels: every line tied to its element, every mark in its scale.
#include <algorithm>
#include <array>

#include "engine/routine/lookup.h"
#include "engine/routine/problems.h"
#include "engine/routine/routine.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

namespace {

std::string element_numbers(const Routine& routine) {
  std::string numbers;
  for (const Element& element : routine.elements) {
    if (!numbers.empty()) numbers += ", ";
    if (numbers.size() > 60) return numbers + "...";
    numbers += std::to_string(element.number);
  }
  return numbers;
}

// The index of the element that `typed` names, or a complaint.
std::optional<std::size_t> element_at(Lookup& lookup, const ast::Number& typed, const Routine& routine) {
  const std::optional<int> number = Lookup::whole_number(typed, 0, 1000);
  for (std::size_t i = 0; number && i < routine.elements.size(); ++i) {
    if (routine.elements[i].number == *number) return i;
  }
  const auto is_it = [&](int left_out) { return left_out == number; };
  if (std::any_of(lookup.left_out.begin(), lookup.left_out.end(), is_it)) return std::nullopt;
  lookup.complain(typed.text,
                  {Problem::unknown_element, "element " + std::string(typed.text),
                   "an element of \"" + std::string(routine.title) + "\": " + element_numbers(routine)});
  return std::nullopt;
}

// The element and its rule, if it is marked by itself and has a base mark where one is said.
std::optional<std::size_t> marked_element(Lookup& lookup, const ast::Number& typed, bool base,
                                          const Routine& routine) {
  const std::optional<std::size_t> index = element_at(lookup, typed, routine);
  if (!index) return std::nullopt;
  const Element& element = routine.elements[*index];
  if (element.panel == nullptr) {
    lookup.complain(typed.text,
                    {Problem::no_element_panel, with_article(element.kind->code) + " marked by itself",
                     "none: no panel of " + routine.event->code + " marks such an element"});
    return std::nullopt;
  }
  if (base && !element.kind->base) {
    lookup.gap(typed.text, {"kinds", element.kind->code, "base"});
    return std::nullopt;
  }
  return index;
}

// One entry for each row, so that what a row allows "at most" is counted over the whole line.
template <class Use, class Row>
void add_use(std::vector<Use>& uses, const Row* Use::*row, const Use& more) {
  for (Use& use : uses) {
    if (use.*row != more.*row) continue;
    use.times += more.times;
    return;
  }
  uses.push_back(more);
}

struct RowWords {
  ProblemCode unknown;
  std::string_view what, table;
};
template <class Use, class Row>
std::vector<Use> counted_uses(Lookup& lookup, const std::optional<ast::CountedList>& line,
                              const Row* Use::*row, const Rows<Row>& rows, const RowWords& words) {
  std::vector<Use> uses;
  if (!line) return uses;
  for (const ast::Counted& one : *line) {
    const Row* found = lookup.row(one.code, rows, words.unknown, words.what);
    const std::optional<int> times = lookup.times(one.times);
    if (found == nullptr || !times) continue;
    if (!found->points) lookup.gap(one.code.text, {words.table, found->code, "points"});
    add_use(uses, row, {found, *times});
  }
  return uses;
}

// Of a run and of a panel: sync errors and penalties.
void read_deductions(Lookup& lookup, const auto& typed, auto& occasion) {
  occasion.sync = counted_uses(lookup, typed.sync, &SyncUse::sync, lookup.set.sync,
                               {Problem::unknown_sync, "class of sync error", "sync"});
  occasion.penalties = counted_uses(lookup, typed.penalty, &PenaltyUse::penalty, lookup.set.penalties,
                                    {Problem::unknown_penalty, "penalty", "penalties"});
}

std::optional<Size> size_from(std::string_view word) {
  for (Size size : {Size::small, Size::medium, Size::large}) {
    if (words::same(word_of(size), word)) return size;
  }
  return std::nullopt;
}

std::string sizes_of(const FaultRule& fault) {
  std::string sizes;
  for (Size size : {Size::small, Size::medium, Size::large}) {
    if (!of_size(fault, size)) continue;
    if (!sizes.empty()) sizes += ", ";
    sizes += word_of(size);
  }
  return sizes;
}

constexpr std::array<std::string_view, 3> size_words = {"small", "medium", "large"};

void read_lost(Lookup& lookup, const ast::Name& lost, const Element& element, RunElement& seen) {
  const PartUses& parts = element.options.front().parts;
  std::vector<std::string_view> known;
  for (const PartUse& use : parts) known.push_back(use.part->code);
  if (std::find(known.begin(), known.end(), lost.text) == known.end()) {
    lookup.complain(lost.text, {Problem::not_lost, quoted("a lost part", lost.text),
                                "a part of element " + std::to_string(element.number),
                                hint_of(lost.text, known, "element " + std::to_string(element.number))});
    return;
  }
  if (!element.kind->base) return lookup.gap(lost.text, {"kinds", element.kind->code, "base"});
  seen.base = true;
  seen.lost.push_back(lost.text);
}

void read_fault(Lookup& lookup, const ast::Fault& typed, RunElement& seen) {
  const FaultRule* fault = lookup.row(typed.fault, lookup.set.faults, Problem::unknown_fault, "fault");
  const std::optional<int> times = lookup.times(typed.times);
  if (fault == nullptr || !times) return;
  const std::optional<Size> size = size_from(typed.size.text);
  if (!size || !of_size(*fault, *size)) {
    lookup.complain(typed.size.text,
                    {Problem::unknown_size, quoted("the size", typed.size.text) + " of " + fault->code,
                     "a size that it has: " + sizes_of(*fault),
                     size ? "" : words::nearest_hint(typed.size.text, size_words)});
    return;
  }
  seen.faults.push_back({fault, *size, *times});
}

bool right_number_of_judges(Lookup& lookup, std::string_view piece, std::size_t marks,
                            const PanelRule& rule) {
  if (marks == static_cast<std::size_t>(rule.judges)) return true;
  lookup.complain(
      piece, {Problem::wrong_judges, std::to_string(marks) + (marks == 1 ? " mark" : " marks"),
              std::to_string(rule.judges) + ", one for each judge of " + rule.aspect,
              marks < static_cast<std::size_t>(rule.judges) ? "write - for a judge who is missing" : ""});
  return false;
}

bool enough_judges(Lookup& lookup, std::string_view piece, const JudgeMarks& marks, const PanelRule& rule) {
  const auto missing = std::count(marks.begin(), marks.end(), std::nullopt);
  if (missing == 0) return true;
  const auto given = static_cast<std::ptrdiff_t>(marks.size()) - missing;
  if (rule.missing == Missing::refuse) {
    lookup.complain(
        piece, {Problem::judge_missing, "a missing judge (-)", "a mark from every judge of " + rule.aspect,
                "panels.csv of " + lookup.set.name + " says `refuse` for a missing judge"});
    return false;
  }
  const std::ptrdiff_t needed = rule.missing == Missing::mean ? 1 : rule.drop_high + rule.drop_low + 1;
  if (given >= needed) return true;
  lookup.complain(piece,
                  {Problem::judge_missing,
                   "marks from " + std::to_string(given) + " of " + std::to_string(rule.judges) + " judges",
                   "at least " + std::to_string(needed) + ", so that a mark is kept"});
  return false;
}

struct MarksLine {
  std::string_view piece;  // what the line is about
  const ast::JudgeMarks& marks;
};

// The marks of one panel line; false when any of them is in error.
bool read_marks(Lookup& lookup, const MarksLine& typed, const PanelRule& rule, JudgeMarks& marks) {
  marks.reserve(typed.marks.size());
  bool good = right_number_of_judges(lookup, typed.piece, typed.marks.size(), rule);
  for (const ast::JudgeMark& one : typed.marks) {
    std::optional<Mark> mark;
    if (one) {
      mark = lookup.mark(*one, rule, true);
      good = good && mark;
    }
    marks.push_back(mark);
  }
  return good && enough_judges(lookup, typed.piece, marks, rule);
}

Run read_run(Lookup& lookup, const ast::Run& typed, const Routine& routine) {
  Run run;
  run.date = typed.head.date.text;
  if (typed.head.title) run.title = typed.head.title->text;
  run.elements.reserve(typed.elements.size() + typed.marks.size());
  run.aspects.reserve(typed.aspects.size());
  for (const ast::FaultsLine& line : typed.elements) {
    const auto index = marked_element(lookup, line.element, line.base, routine);
    RunElement seen;
    seen.base = line.base;
    for (const ast::Fault& fault : line.faults) {
      if (!fault.lost_part) read_fault(lookup, fault, seen);
      if (fault.lost_part && index) read_lost(lookup, *fault.lost_part, routine.elements[*index], seen);
    }
    if (!index) continue;
    seen.element = *index;
    seen.where = line.element.text;
    run.elements.push_back(std::move(seen));
  }
  for (const ast::ElementMarksLine& line : typed.marks) {
    const auto index = marked_element(lookup, line.element, line.base, routine);
    if (!index) continue;
    const std::optional<Mark> mark = lookup.mark(*line.marks.front(), *routine.elements[*index].panel, false);
    if (mark) run.elements.push_back({*index, line.element.text, line.base, {}, {}, mark});
  }
  for (const ast::AspectMarksLine& line : typed.aspects) {
    const PanelRule* rule = lookup.aspect_rule(line.aspect, routine);
    if (rule == nullptr) continue;
    if (line.marks.size() != 1 || !line.marks.front()) {
      lookup.complain(line.aspect.text, {Problem::wrong_judges,
                                         std::to_string(line.marks.size()) + " entries for " + rule->aspect,
                                         "one mark in a run, the coach's own"});
      continue;
    }
    const std::optional<Mark> mark = lookup.mark(*line.marks.front(), *rule, false);
    if (mark) run.aspects.push_back({rule, *mark});
  }
  run.has_sync = typed.sync.has_value();
  run.has_penalties = typed.penalty.has_value();
  read_deductions(lookup, typed, run);
  return run;
}

RecordedPanel read_panel(Lookup& lookup, const ast::Panel& typed, const Routine& routine) {
  RecordedPanel panel;
  panel.date = typed.head.date.text;
  if (typed.head.title) panel.title = typed.head.title->text;
  panel.elements.reserve(typed.elements.size());
  for (const ast::ElementMarksLine& line : typed.elements) {
    const auto index = marked_element(lookup, line.element, line.base, routine);
    if (!index) continue;
    RecordedElement& seen = panel.elements.emplace_back();
    seen.element = *index;
    seen.base = line.base;
    const PanelRule& rule = *routine.elements[*index].panel;
    if (!read_marks(lookup, {line.element.text, line.marks}, rule, seen.marks)) panel.elements.pop_back();
  }
  panel.aspects.reserve(typed.aspects.size());
  for (const ast::AspectMarksLine& line : typed.aspects) {
    RecordedAspect& seen = panel.aspects.emplace_back();
    seen.rule = lookup.aspect_rule(line.aspect, routine);
    if (seen.rule == nullptr || !read_marks(lookup, {line.aspect.text, line.marks}, *seen.rule, seen.marks))
      panel.aspects.pop_back();
  }
  read_deductions(lookup, typed, panel);
  if (typed.result) {
    const std::optional<Decimal> result = lookup.number(*typed.result, "the result");
    if (result) panel.result = Points(*result);
  }
  return panel;
}

}  // namespace

void resolve_runs(Lookup& lookup, const ast::Sheet& sheet, Routine& routine) {
  routine.runs.reserve(sheet.runs.size());
  for (const ast::Run& run : sheet.runs) routine.runs.push_back(read_run(lookup, run, routine));
}

void resolve_panels(Lookup& lookup, const ast::Sheet& sheet, Routine& routine) {
  routine.panels.reserve(sheet.panels.size());
  for (const ast::Panel& panel : sheet.panels) routine.panels.push_back(read_panel(lookup, panel, routine));
}

}  // namespace landdrill
