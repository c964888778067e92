// One choice from each of several lists, so that what they are worth together is the highest possible, within
// limits.
//
//   Choosing two{{{{30, {8}}, {20, {4}}}, {{25, {8}}, {5, {2}}}}, {{"seconds", {}, 12}}};
//   choose_best(two, {}).best[0].choices    // {1, 0}: 20 + 25 with 12 of 12
//
// Whole numbers only, so the answer is exact and proved: branch and bound with bounds from prices on the
// limits (Lagrange multipliers); when it has to stop early, the answer says how much better another could be.
// Knows nothing of routines; plan.h does.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace landdrill {

struct ChoiceLimit {
  std::string words;                        // for messages: "at most 5 elements of kind hybrid"
  std::optional<std::int64_t> least, most;  // of the sum of what the choices use
};
struct Choice {
  std::int64_t worth = 0;
  std::vector<std::int64_t> uses;  // one for each limit; may be negative
};
struct Choosing {
  std::vector<std::vector<Choice>> lists;  // one choice from each; a list without choices cannot be met
  std::vector<ChoiceLimit> limits;
};

struct Chosen {
  std::vector<std::size_t> choices;  // one for each list
  std::int64_t worth = 0;
};
struct BestChoices {
  std::vector<Chosen>
      best;            // at most as many as wished, highest worth first; equal worth: first choices first
  bool proved = true;  // nothing better than best[0], and none left out between them
  std::optional<std::int64_t> at_most;  // when not proved: no choice is worth more than this
  bool infeasible = false;              // proved that no choice meets all limits
  std::vector<std::size_t>
      conflict;  // then: limits that cannot be met together; without any one of them they could
  std::vector<std::size_t> empty_lists;  // lists without choices
  std::uint64_t nodes = 0;               // how many partial choices were looked at
};
struct ChooseWish {
  std::size_t how_many = 1;
  // Asked now and then with the nodes so far; false stops the search. Empty: never.
  std::function<bool(std::uint64_t nodes)> go_on;
};
BestChoices choose_best(const Choosing& choosing, const ChooseWish& wish);

}  // namespace landdrill
