// What the rules of a set object to within one element: how many parts, how many of a family, how often one
// code.
//
//   objections_to(option, kind, set)[0]
//   // "5 parts of thrusts in one element", "at most 4", families.csv line 2
#pragma once

#include <string>
#include <vector>

#include "engine/routine/resolve.h"
#include "engine/routine/routine.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/value_set.h"

namespace landdrill {

struct Objection {
  ProblemCode problem;
  std::string found, expected;
  const Provenance* row = nullptr;  // of the set; of what the rules object to within an element
  enum class About { element, title, event, tempo, swimmers } about = About::element;
  // "3 parts of spins in one element, but at most 2 (families.csv line 2)"
  std::string words() const;
};
std::string row_of(const Provenance& from);  // "quotas.csv line 9"

// Nothing for an option without parts: its difficulty is stated by hand.
std::vector<Objection> objections_to(const Option& option, const Kind& kind, const ValueSet& set);

// "5 parts", "1 part"
std::string plural(std::int64_t number, std::string_view word);
// "at most 5", "at least 2", "from 2 to 5", "exactly 2"
std::string range_of(std::optional<int> least, std::optional<int> most);
bool is_outside(std::int64_t number, std::optional<int> least, std::optional<int> most);

}  // namespace landdrill
