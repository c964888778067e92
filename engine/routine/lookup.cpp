#include "engine/routine/lookup.h"

#include <algorithm>

#include "engine/routine/problems.h"
#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The multiples of `step` on both sides of `mark`: "7.25 or 7.50".
std::string neighbours(const PanelRule& rule, Decimal mark) {
  const Decimal below = round_to_step(Exact(mark), rule.step, Rounding::down);
  const int places = rule.step.places_used();
  return below.text(places) + " or " + (below + rule.step).text(places);
}

std::string scale_of(const PanelRule& rule) {
  return "a mark from " + rule.least.text() + " to " + rule.most.text();
}

// "it has a, b, c", as far as a coach would read on.
std::string what_it_has(const std::vector<std::string_view>& known, std::string_view of) {
  if (known.empty()) return std::string(of) + " has none";
  if (known.size() > 12) return "";
  std::string list = std::string(of) + " has ";
  for (const std::string_view& word : known) {
    if (&word != &known.front()) list += ", ";
    list += word;
  }
  return list;
}

// A number that is none is too long on one side of its point.
std::string bound_of(std::string_view typed) {
  const std::size_t point = std::min(typed.find_first_of(".,"), typed.size());
  return typed.size() - point > Decimal::places + 1 ? "at most six decimal places"
                                                    : "a number up to 9000000000000";
}

// What a coach calls the column.
std::string_view column_word(std::string_view column) {
  return column == "base" ? "base mark" : column;
}

}  // namespace

Hint hint_of(std::string_view word, const std::vector<std::string_view>& known, std::string_view of) {
  const Hint nearest = words::nearest_hint(word, known);
  return nearest.empty() ? Hint(what_it_has(known, of)) : nearest;
}

std::string quoted(std::string_view what, std::string_view text) {
  return std::string(what) + " \"" + std::string(text) + "\"";
}

std::string with_article(std::string_view word) {
  const bool vowel =
      !word.empty() && std::string_view("aeiouAEIOU").find(word.front()) != std::string_view::npos;
  return (vowel ? "an " : "a ") + std::string(word);
}

void Lookup::complain(std::string_view piece, Complaint complaint) {
  if (!out_.diagnostics.wants_more()) return out_.diagnostics.count_only(severity_of(complaint.problem));
  out_.diagnostics.add(diagnostic_at(sources_, piece, std::move(complaint)));
}

void Lookup::gap(std::string_view piece, Gap gap) {
  const auto same = [&](const Gap& known) {
    return known.table == gap.table && known.key == gap.key && known.column == gap.column;
  };
  if (std::find_if(out_.gaps.begin(), out_.gaps.end(), same) == out_.gaps.end()) out_.gaps.push_back(gap);
  complain(piece, {Problem::value_missing,
                   "no " + std::string(column_word(gap.column)) + " for " + std::string(gap.key) + " in " +
                       std::string(gap.table) + ".csv of " + set.name,
                   "it to be filled in",
                   "put in what your catalogue says; `values missing` lists every gap of a sheet"});
}

std::optional<Decimal> Lookup::number(const ast::Number& typed, std::string_view what) {
  const std::optional<Decimal> value = Decimal::parse(typed.text);
  if (!value) no_number(typed, what);
  return value;
}

std::optional<Decimal> Lookup::number_between(const ast::Number& typed, std::string_view what,
                                              const Bounds& bounds) {
  const std::optional<Decimal> value = number(typed, what);
  if (!value || (*value >= bounds.least && *value <= bounds.most)) return value;
  complain(typed.text,
           {Problem::out_of_range, std::string(what) + " " + value->text(), std::string(bounds.expected)});
  return std::nullopt;
}

void Lookup::no_number(const ast::Number& typed, std::string_view what) {
  complain(typed.text, {Problem::bad_number, quoted(what, typed.text), bound_of(typed.text)});
}

// "128", and "128.0" as well.
std::optional<int> Lookup::whole_number(const ast::Number& typed, int least, int most) {
  const std::optional<Decimal> value = Decimal::parse(typed.text);
  if (!value || value->places_used() != 0) return std::nullopt;
  if (*value < Decimal::whole(least) || *value > Decimal::whole(most)) return std::nullopt;
  return static_cast<int>(value->units() / Decimal::one);
}

std::optional<int> Lookup::whole(const ast::Number& typed, std::string_view what, int least, int most) {
  if (const std::optional<int> number = whole_number(typed, least, most)) return number;
  complain(typed.text, {Problem::bad_number, quoted(what, typed.text),
                        "a whole number from " + std::to_string(least) + " to " + std::to_string(most)});
  return std::nullopt;
}

std::optional<Mark> Lookup::mark(const ast::Number& typed, const PanelRule& rule, bool on_step) {
  const std::optional<Decimal> value = number(typed, "the mark");
  if (!value) return std::nullopt;
  const Mark mark(*value);
  const bool in_range = mark >= rule.least && mark <= rule.most;
  if (in_range && (!on_step || value->is_multiple_of(rule.step))) return mark;
  if (in_range)
    off_step(typed, rule, mark);
  else
    out_of_range(typed, rule, mark);
  return std::nullopt;
}

void Lookup::out_of_range(const ast::Number& typed, const PanelRule& rule, Mark mark) {
  complain(typed.text,
           {Problem::out_of_range, "the mark " + mark.text(), scale_of(rule) + " for " + rule.aspect});
}

void Lookup::off_step(const ast::Number& typed, const PanelRule& rule, Mark mark) {
  complain(typed.text, {Problem::off_step, "the mark " + mark.text(),
                        "a mark in steps of " + rule.step.text() + " for " + rule.aspect,
                        "it lies between two steps: write " + neighbours(rule, mark.value())});
}

std::optional<Decimal> Lookup::chance(const ast::Number& typed) {
  const std::optional<Decimal> chance = number(typed, "the chance");
  if (!chance || (*chance >= Decimal() && *chance <= Decimal::whole(100))) return chance;
  complain(typed.text,
           {Problem::out_of_range, "a chance of " + chance->text() + " %", "a chance from 0 % to 100 %"});
  return std::nullopt;
}

std::optional<int> Lookup::times(const std::optional<ast::Number>& typed) {
  if (!typed) return 1;
  if (const std::optional<int> number = whole_number(*typed, 1, 1000)) return number;
  complain(typed->text,
           {Problem::bad_number, "x" + std::string(typed->text), "how many times, from x1 to x1000"});
  return std::nullopt;
}

const PanelRule* Lookup::aspect_rule(const ast::Name& typed, const Routine& routine) {
  std::vector<std::string_view> known;
  for (const PanelRule* rule : routine.aspects) {
    if (rule->aspect == typed.text) return rule;
    known.push_back(rule->aspect);
  }
  unknown(typed.text, known, Problem::unknown_aspect, "mark for the whole routine", routine.event->code);
  return nullptr;
}

void Lookup::unknown(std::string_view piece, const std::vector<std::string_view>& known, ProblemCode problem,
                     std::string_view what, std::string of) {
  if (of.empty()) of = set.name;
  if (!out_.diagnostics.wants_more()) return out_.diagnostics.count_only(severity_of(problem));
  complain(piece, {problem, quoted("the " + std::string(what), piece), with_article(what) + " of " + of,
                   hint_of(piece, known, of)});
}

}  // namespace landdrill
