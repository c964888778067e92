#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/decimal.h"
#include "tables/formula.h"
#include "tables/problems.h"
#include "tables/read_table.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

bool comes_from_parts(const FormulaStep& step) {
  return step.does >= Operation::families && step.does <= Operation::count_family;
}

bool is_fixed(const FormulaStep& step) {
  return !comes_from_parts(step) && step.does != Operation::base;
}

int takes(const FormulaStep& step) {
  switch (step.does) {
    case Operation::add:
    case Operation::subtract:
    case Operation::multiply:
    case Operation::divide:
      return 2;
    case Operation::negate:
    case Operation::round:
      return 1;
    case Operation::min:
    case Operation::max:
      return step.takes;
    default:
      return 0;
  }
}

// The first of the steps that work out the number on top of the stack after step `last`.
std::size_t first_step_of(const Formula& formula, std::size_t last) {
  int wanted = 1;
  std::size_t at = last + 1;
  while (wanted > 0) wanted += takes(formula.steps[--at]) - 1;
  return at;
}

// A divisor that is 0 whatever the element, as it stands in the formula; empty when there is none.
std::string zero_divisor(const Formula& formula) {
  for (std::size_t i = 1; i < formula.steps.size(); ++i) {
    if (formula.steps[i].does != Operation::divide) continue;
    const std::size_t first = first_step_of(formula, i - 1);
    const auto divisor = std::span(formula.steps).subspan(first, i - first);
    if (!std::all_of(divisor.begin(), divisor.end(), is_fixed)) continue;
    const Formula alone{{divisor.begin(), divisor.end()}};
    const FormulaResult result = evaluate(alone, {});
    if (result.value && result.value->is_zero()) return print(alone);
  }
  return {};
}

class FormulaCheck {
 public:
  FormulaCheck(const ValueSet& set, Complaints& complaints) : set_(set), complaints_(complaints) {}

  void check(const Kind& kind) {
    for (const std::string& name : kind.formula->families_named()) check_family(kind, name);
    if (const std::string divisor = zero_divisor(*kind.formula); !divisor.empty()) {
      complaints_.at(kind.from, "formula",
                     {Problem::zero_divisor, "a formula that divides by " + divisor + ", which is 0",
                      "a divisor that can be something else"});
    }
    const auto& steps = kind.formula->steps;
    if (std::any_of(steps.begin(), steps.end(), comes_from_parts)) return;
    complaints_.at(
        kind.from, "formula",
        {Problem::parts_unused, "a formula without the parts of the element", "sum(parts) or the like",
         "every " + kind.code + " is worth the same, whatever is in it"});
  }

 private:
  void check_family(const Kind& kind, const std::string& name) {
    const Family* family = set_.families.find(name);
    if (!family && complaints_.is_incomplete("families")) return;
    if (!family) return complain_of_unknown(kind, name);
    const auto& kinds = family->kinds;
    if (kinds.empty() || std::find(kinds.begin(), kinds.end(), kind.code) != kinds.end()) return;
    const auto is_unknown = [&](const std::string& code) { return !set_.kinds.find(code); };
    if (std::any_of(kinds.begin(), kinds.end(), is_unknown)) return;
    complaints_.at_part(kind.from, "formula", name,
                        {Problem::never_counts,
                         "the family " + in_quotes(name) + " in the formula of " + in_quotes(kind.code),
                         "a family that may stand in this kind",
                         fmt::format("families.csv allows {} only in {}", name, fmt::join(kinds, ", "))});
  }

  void complain_of_unknown(const Kind& kind, const std::string& name) {
    const auto codes = set_.families.codes();
    std::string hint = words::nearest_hint(name, codes);
    if (name.find_first_of("+*") != std::string::npos) hint = "add sums, not families: sum(one) + sum(other)";
    if (name == "families" || name == "base") hint = "write " + name + " by itself, without sum or count";
    if (hint.empty() && !complaints_.table("families")) hint = "there is no families.csv";
    complaints_.at_part(kind.from, "formula", name,
                        {Problem::unknown_name, "the family " + in_quotes(name) + " in the formula",
                         "parts, or a code of families.csv", hint});
  }

  const ValueSet& set_;
  Complaints& complaints_;
};

}  // namespace

void check_formulas(const ValueSet& set, Complaints& complaints) {
  for (const Kind& kind : set.kinds) {
    if (kind.formula) FormulaCheck(set, complaints).check(kind);
  }
}

namespace {

bool is_about(const PanelRule& panel, const SpreadRule& rule) {
  if (!rule.aspect.empty() && panel.aspect != rule.aspect) return false;
  if (rule.kind.empty()) return true;
  return panel.per_element && (panel.kind.empty() || panel.kind == rule.kind);
}

void complain_of_no_panel(const ValueSet& set, const SpreadRule& rule, Complaints& complaints) {
  const bool aspect_known = std::any_of(set.panels.begin(), set.panels.end(),
                                        [&](const PanelRule& panel) { return panel.aspect == rule.aspect; });
  if (!rule.aspect.empty() && !aspect_known)
    return complaints.at(rule.from, "aspect",
                         {Problem::never_counts, "the aspect " + in_quotes(rule.aspect),
                          "an aspect that a row of panels.csv marks"});
  complaints.at(rule.from, "kind",
                {Problem::never_counts, "a spread for the kind " + in_quotes(rule.kind),
                 "a kind that a panel marks for each element" +
                     (rule.aspect.empty() ? "" : " with the aspect " + in_quotes(rule.aspect))});
}

void check_width(const SpreadRule& rule, Decimal width, Complaints& complaints) {
  const bool scale_is_wrong = width <= Decimal();  // said at the panel
  if (rule.spread <= width || scale_is_wrong) return;
  complaints.at(rule.from, "spread",
                {Problem::contradiction, "the spread " + rule.spread.text(),
                 "at most " + width.text() + ", the width of the scale of marks"});
}

void check_spread(const ValueSet& set, const SpreadRule& rule, Complaints& complaints) {
  std::optional<Decimal> width;
  for (const PanelRule& panel : set.panels) {
    if (!is_about(panel, rule)) continue;
    const Decimal of_panel = panel.most.value() - panel.least.value();
    width = std::max(width.value_or(of_panel), of_panel);
  }
  if (width) return check_width(rule, *width, complaints);
  if (!complaints.is_incomplete("panels") && !set.panels.empty()) complain_of_no_panel(set, rule, complaints);
}

// The day is shared by all marks.
void check_day(const SpreadRule& rule, Complaints& complaints) {
  for (const auto& [column, cell] : {std::pair("aspect", &rule.aspect), std::pair("kind", &rule.kind)}) {
    if (!cell->empty())
      complaints.at(rule.from, column,
                    {Problem::contradiction, in_quotes(*cell) + " in a row for the day",
                     "an empty cell, since all marks share the day, or judges"});
  }
}

}  // namespace

void check_spreads(const ValueSet& set, Complaints& complaints) {
  for (const SpreadRule& rule : set.spreads) {
    const bool is_day = rule.what == SpreadRule::What::day;
    if (is_day && !(rule.aspect.empty() && rule.kind.empty()))
      check_day(rule, complaints);
    else
      check_spread(set, rule, complaints);
  }
}

}  // namespace landdrill
