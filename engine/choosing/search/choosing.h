// Lists to choose one from each, and the limits that all choices together have to keep.
//
//   Choosing two{{{{30, {8}}, {20, {4}}}, {{25, {8}}, {5, {2}}}}, {{"seconds", {}, 12}}, {}};
//   // 30 and 25 would be best, but use 16 of 12
#pragma once

#include <cstdint>
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

// A limit on neighbours: from list to list, every choice leads from one state to the next.
constexpr std::uint32_t broken = static_cast<std::uint32_t>(-1);
struct ChoiceChain {
  std::string words;
  std::uint32_t states = 1, start = 0;
  std::vector<std::vector<std::vector<std::uint32_t>>> next;  // [list][choice][state]: a state, or broken
  std::vector<bool> may_end;                                  // for each state
};

struct Choosing {
  std::vector<std::vector<Choice>> lists;  // one choice from each; a list without choices cannot be met
  std::vector<ChoiceLimit> limits;
  std::optional<ChoiceChain> chain;
};

struct Chosen {
  std::vector<std::size_t> choices;  // one for each list
  std::int64_t worth = 0;
  friend bool operator==(const Chosen&, const Chosen&) = default;
};

}  // namespace landdrill
