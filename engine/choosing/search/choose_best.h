// One choice from each of several lists, so that what they are worth together is the highest possible, within
// limits.
//
//   Choosing two{{{{30, {8}}, {20, {4}}}, {{25, {8}}, {5, {2}}}}, {{"seconds", {}, 12}}, {}};
//   choose_best(two, {}).best[0].choices    // {1, 0}: 20 + 25 with 12 of 12
//
// Whole numbers only, so the answer is exact and proved: list after list, what leaves the same room is put
// together, and what cannot be among the best by prices on the limits is dropped. When it has to stop early,
// the answer says how much better another could be. Knows nothing of routines; plan.h does.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "engine/choosing/search/choosing.h"  // IWYU pragma: export

namespace landdrill {

// One side of a limit, or the chain (`limit` is then the number of limits).
struct LimitSide {
  std::size_t limit = 0;
  enum class Side { least, most, chain } side = Side::least;
  friend bool operator==(const LimitSide&, const LimitSide&) = default;
};
struct BestChoices {
  // At most as many as wished, highest worth first; equal worth: first choices first.
  std::vector<Chosen> best;
  bool proved = true;  // nothing is better than best[0], and nothing better than the last was left out
  // When not proved: no choice is worth more than this. It may be what best[0] is worth: then the first is
  // proved, and only what follows it is not.
  std::optional<std::int64_t> at_most;
  bool infeasible = false;  // proved that no choice meets all limits
  // Then: what cannot be met together; without any one of them the others can (or it could not be shown in
  // the nodes allowed that they cannot).
  std::vector<LimitSide> conflict;
  std::vector<std::size_t> empty_lists;  // lists without choices
  std::uint64_t nodes = 0;               // how many partial choices were looked at
};
struct ChooseWish {
  std::size_t how_many = 1;
  // Asked now and then with the nodes so far; false stops the search. Empty: never.
  std::function<bool(std::uint64_t nodes)> go_on;
  // After so many partial choices it hurries to an end; for the conflict, a tenth as many for each side of a
  // limit. Some ten million take a second.
  std::uint64_t most_nodes = 20'000'000;
};
// Whether one choice for each list keeps all limits.
bool meets(const Choosing& choosing, const std::vector<std::size_t>& choices);
// Throws Overflow when the sums of worths or uses leave 2^55.
BestChoices choose_best(const Choosing& choosing, const ChooseWish& wish);

}  // namespace landdrill
