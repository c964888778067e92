#include "engine/routine/difficulty.h"

#include "tables/decimal.h"
#include "tables/formula.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

FormulaInput::FamilySum& family_sum(FormulaInput& input, std::string_view family) {
  for (FormulaInput::FamilySum& known : input.families) {
    if (known.family == family) return known;
  }
  return input.families.emplace_back(FormulaInput::FamilySum{family, Decimal(), 0});
}

}  // namespace

FormulaInput formula_input(const Option& option, const Kind& kind) {
  FormulaInput input;
  if (kind.base) input.base = kind.base->value();
  for (const PartUse& use : option.parts) {
    if (!use.part->value) continue;
    const Decimal worth = use.part->value->value() * use.times;
    input.sum += worth;
    input.count += use.times;
    FormulaInput::FamilySum& family = family_sum(input, use.part->family);
    family.sum += worth;
    family.count += use.times;
  }
  return input;
}

Declared declared(const Option& option, const Kind& kind) {
  if (option.stated) return {option.stated, {}};
  if (!kind.formula) return {std::nullopt, "the kind " + kind.code + " has no formula in the value set"};
  const FormulaResult result = evaluate(*kind.formula, formula_input(option, kind));
  if (!result.value) return {std::nullopt, result.why_not};
  return {Difficulty(round(*result.value, kind.places, kind.rounding)), {}};
}

}  // namespace landdrill
