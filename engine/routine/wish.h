// What a caller asks of a routine: which option of each element is swum, and which run-throughs count.
//
//   chosen(routine, 1, Wish{{0, 1}, {}})     // the first option of element 2 that is not the one as written
#pragma once

#include <cassert>
#include <string_view>
#include <vector>

#include "engine/routine/routine.h"

namespace landdrill {

// Which run-throughs count: the latest that saw the element, all of them averaged, none (then `expect`), or
// one day's.
struct RunWish {
  enum class Which { latest, mean, none, dated } which = Which::latest;
  std::string_view date;         // for dated
  std::string_view before = {};  // those of this day and later ones do not count; empty: all do
};

// What to score: which option of each element (missing: the one as written) and which run-throughs.
struct Wish {
  std::vector<std::size_t> options;
  RunWish runs;
};
inline const Option& chosen(const Routine& routine, std::size_t element, const Wish& wish) {
  const std::vector<Option>& options = routine.elements[element].options;
  const std::size_t option = element < wish.options.size() ? wish.options[element] : 0;
  assert(option < options.size());
  return options[option];
}

}  // namespace landdrill
