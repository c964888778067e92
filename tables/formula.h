// The difficulty formula of a kind of element: a small exact language, read once, checked when the set is
// loaded.
//
//   "base + sum(parts) + 0.1 * max(0, families - 2)"
//
// Numbers, + - * /, brackets, min(a, b, ...), max(a, b, ...), round(a, places), sum(parts), sum(FAMILY),
// count(parts), count(FAMILY), families (how many different ones), base. `parts` means every part of the
// element. The places of round are a written number from 0 to 6; a third word, as in round(a, 2, half-even), says
// how: half-up (ties away from zero, and so without a word), half-even, down or up.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/decimal.h"

namespace landdrill {

enum class Operation : std::uint8_t {
  number,
  base,
  families,  // from here to count_family: what comes from the parts
  sum_parts,
  count_parts,
  sum_family,
  count_family,  // put a number on the stack
  add,
  subtract,
  multiply,
  divide,
  negate,
  min,
  max,
  round,  // take numbers, put one
};
// Operations in the order in which they are carried out, on a stack of numbers.
struct FormulaStep {
  Operation does;
  Decimal number;                         // for number
  std::string family;                     // for sum_family, count_family
  int takes = 0;                          // for min, max: how many numbers; for round: the decimal places
  Rounding rounding = Rounding::half_up;  // for round
  bool operator==(const FormulaStep&) const = default;
};

struct Formula {
  std::vector<FormulaStep> steps;
  bool operator==(const Formula&) const = default;
  // The families it names, in order, each once.
  std::vector<std::string> families_named() const;
};

struct FormulaRead {
  Formula formula;  // empty when there are errors
  Diagnostics diagnostics;
};

// Reads `text`, a view into `source.text` (a cell of kinds.csv). Nested at most 64 deep, at most 4,000
// bytes that are not blanks.
FormulaRead read_formula(const Source& source, std::string_view text);

// What an element puts into the formula.
struct FormulaInput {
  struct FamilySum {
    std::string_view family;
    Decimal sum;
    int count = 0;
  };
  Decimal base;
  Decimal sum;  // of all parts, times counted
  int count = 0;
  std::vector<FamilySum> families;  // of the families that occur
};

struct FormulaResult {
  std::optional<Exact> value;  // empty: division by zero, or a number too large
  std::string why_not;         // "divides by count(spins), which is 0"
};
// Never throws: what cannot be worked out says why not.
FormulaResult evaluate(const Formula& formula, const FormulaInput& input);

// The formula with the element's numbers put in: "0.5 + 3.4 + 0.1 * max(0, 3 - 2)".
std::string with_numbers(const Formula& formula, const FormulaInput& input);
// The formula in its normal form; reading it again gives the same steps.
std::string print(const Formula& formula);

// The number that a step puts on the stack which takes none from it.
Decimal number_of(const FormulaStep& step, const FormulaInput& input);

}  // namespace landdrill
