// What the rules of a set object to within one element: how many parts, how many of a family, how often one
// code.
//
//   OptionLimits limits(set);
//   limits.broken_by(option, kind)[0]
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

struct BrokenLimit {
  ProblemCode problem;
  std::string found, expected;
  const Provenance* row = nullptr;  // of the set
  // "3 parts of spins in one element, but at most 2 (families.csv line 2)"
  std::string words() const;
};
std::string row_of(const Provenance& from);  // "quotas.csv line 9"

class OptionLimits {
 public:
  explicit OptionLimits(const ValueSet& set) : set_(set), of_family_(set.families.size()) {}

  // Nothing for an option without parts: its difficulty is stated by hand.
  std::vector<BrokenLimit> broken_by(const Option& option, const Kind& kind);

 private:
  void look_at_families(const Option& option, std::vector<BrokenLimit>& broken);

  const ValueSet& set_;
  std::vector<std::int64_t> of_family_;  // parts of each family of the set
};

// "5 parts", "1 part"
std::string plural(std::int64_t number, std::string_view word);
// "at most 5", "at least 2", "from 2 to 5", "exactly 2"
std::string range_of(std::optional<int> least, std::optional<int> most);
bool is_outside(std::int64_t number, std::optional<int> least, std::optional<int> most);

}  // namespace landdrill
