#include "engine/score/option_limits.h"

#include <algorithm>
#include <cstdint>

#include "engine/routine/lookup.h"
#include "engine/routine/routine.h"
#include "engine/score/problems.h"
#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

void look_at_codes(const Option& option, const Kind& kind, std::vector<Objection>& broken) {
  if (!kind.most_same) return;
  const PartUses& parts = option.parts;
  for (auto use = parts.begin(); use != parts.end(); ++use) {
    const auto is_it = [&](const PartUse& other) { return other.part == use->part; };
    if (std::any_of(parts.begin(), use, is_it)) continue;
    int count = 0;
    for (const PartUse& other : parts) count += is_it(other) ? other.times : 0;
    if (count <= *kind.most_same) continue;
    broken.push_back({Problem::over_code_limit,
                      use->part->code + " " + plural(count, "time") + " in one element",
                      range_of({}, kind.most_same), &kind.from});
  }
}

void look_at_families(const Option& option, const ValueSet& set, std::vector<Objection>& broken) {
  const std::vector<Family>& families = set.families.all();
  std::vector<std::int64_t> of_family(families.size());
  for (const PartUse& use : option.parts) {
    if (use.part->family_row != no_row) of_family[use.part->family_row] += use.times;
  }
  for (std::size_t row = 0; row < families.size(); ++row) {
    if (!is_outside(of_family[row], {}, families[row].most_in_element)) continue;
    broken.push_back({Problem::over_family_limit,
                      plural(of_family[row], "part") + " of " + families[row].code + " in one element",
                      range_of({}, families[row].most_in_element), &families[row].from});
  }
}

}  // namespace

std::vector<Objection> objections_to(const Option& option, const Kind& kind, const ValueSet& set) {
  std::vector<Objection> broken;
  if (option.parts.empty()) return broken;
  int parts = 0;
  for (const PartUse& use : option.parts) parts += use.times;
  if (is_outside(parts, kind.least_parts, kind.most_parts)) {
    broken.push_back({Problem::part_count, plural(parts, "part") + " in " + with_article(kind.code),
                      range_of(kind.least_parts, kind.most_parts), &kind.from});
  }
  look_at_families(option, set, broken);
  look_at_codes(option, kind, broken);
  return broken;
}

std::string row_of(const Provenance& from) {
  return std::string(from.table) + ".csv line " + std::to_string(from.line);
}

std::string Objection::words() const {
  return found + ", but " + expected + " (" + row_of(*row) + ")";
}

std::string plural(std::int64_t number, std::string_view word) {
  return std::to_string(number) + " " + std::string(word) + (number == 1 ? "" : "s");
}

std::string range_of(std::optional<int> least, std::optional<int> most) {
  if (least && most)
    return *least == *most ? "exactly " + std::to_string(*least)
                           : "from " + std::to_string(*least) + " to " + std::to_string(*most);
  return least ? "at least " + std::to_string(*least) : "at most " + std::to_string(*most);
}

bool is_outside(std::int64_t number, std::optional<int> least, std::optional<int> most) {
  return (least && number < *least) || (most && number > *most);
}

}  // namespace landdrill
