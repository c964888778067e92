// What resolving a sheet shares: the set, the complaints, and the reading of one number or one word.
//
//   lookup.number(ast_number, "the tempo")     // a Decimal, or a diagnostic and nothing
//
// Only resolve*.cpp includes this.
#pragma once

#include <optional>
#include <string>

#include "engine/routine/routine.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

class Lookup {
 public:
  // `sources`: of the sheet that is resolved.
  Lookup(const ValueSet& values, const Sources& sources, Resolved& out)
      : set(values), sources_(sources), out_(out) {}

  const ValueSet& set;
  // The numbers of elements that are left out because their line is in error: what runs and panels say of
  // them is no further mistake.
  std::vector<int> left_out;

  void complain(std::string_view piece, Complaint complaint);
  // The set has no value where the sheet needs one: an error, and an entry in the list of gaps.
  void gap(std::string_view piece, Gap gap);

  std::optional<Decimal> number(const ast::Number& typed, std::string_view what);
  struct Bounds {
    Decimal least, most;
    std::string_view expected;  // in words
  };
  std::optional<Decimal> number_between(const ast::Number& typed, std::string_view what,
                                        const Bounds& bounds);
  std::optional<int> whole(const ast::Number& typed, std::string_view what, int least, int most);
  // The same without a complaint.
  static std::optional<int> whole_number(const ast::Number& typed, int least, int most);
  // In the rule's range; on its step when `on_step`.
  std::optional<Mark> mark(const ast::Number& typed, const PanelRule& rule, bool on_step);
  // Per cent, from 0 to 100.
  std::optional<Decimal> chance(const ast::Number& typed);
  // `x2` after a code; 1 without it.
  std::optional<int> times(const std::optional<ast::Number>& typed);

  // The row called `typed`, or a complaint with the nearest codes. `what`: "part", "event" ...
  template <class Row>
  const Row* row(const ast::Name& typed, const Rows<Row>& rows, ProblemCode problem, std::string_view what) {
    const Row* found = rows.find(typed.text);
    if (found == nullptr) unknown(typed.text, rows.codes(), problem, what);
    return found;
  }
  // The rule of the event for a mark of the whole routine.
  const PanelRule* aspect_rule(const ast::Name& typed, const Routine& routine);
  // `of`: where the word should have been; the value set when empty.
  void unknown(std::string_view piece, const std::vector<std::string_view>& known, ProblemCode problem,
               std::string_view what, std::string of = {});

 private:
  void no_number(const ast::Number& typed, std::string_view what);
  void out_of_range(const ast::Number& typed, const PanelRule& rule, Mark mark);
  void off_step(const ast::Number& typed, const PanelRule& rule, Mark mark);

  const Sources& sources_;
  Resolved& out_;
};

// "the nearest is spin-720"; with none near, "kingfisher-2026 has small, clear, major" when they are few.
Hint hint_of(std::string_view word, const std::vector<std::string_view>& known, std::string_view of);
// "the part \"spin-730\""
std::string quoted(std::string_view what, std::string_view text);
// "a hybrid", "an acrobatic-a"
std::string with_article(std::string_view word);

// resolve_choosing.cpp: what a sheet says for choosing, of the routine, of an element and of an option.
void resolve_choosing(Lookup& lookup, const ast::Sheet& sheet, Routine& routine);
void read_choosing(Lookup& lookup, const ast::Element& typed, Element& element);
void read_choosing(Lookup& lookup, const ast::Variant& typed, const Event* event, Option& option);
// resolve_panels.cpp: the runs and panels of a sheet whose routine is understood as far as it goes.
void resolve_runs(Lookup& lookup, const ast::Sheet& sheet, Routine& routine);
void resolve_panels(Lookup& lookup, const ast::Sheet& sheet, Routine& routine);

}  // namespace landdrill
