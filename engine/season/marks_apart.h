// How the marks of a panel differ from what they were.
//
//   marks_apart("panel 2026-05-09\n  element 2: 7.25 7.50\n", "panel 2026-05-09\n  element 2: 7.25\n").gone      // 1
#pragma once

#include <cstddef>
#include <string_view>

#include "grammar/ast.h"

namespace landdrill {

// How many marks there were, how many of these are another now or are
// gone, how many are new; and of how many elements that it had the base mark is given now, or no longer.
struct MarksApart {
  std::size_t there = 0, changed = 0, gone = 0, added = 0, based = 0, unbased = 0;

  bool any() const { return changed + gone + added + based + unbased > 0; }
};
MarksApart marks_apart(const ast::Lines& before, const ast::Lines& now);
MarksApart marks_apart(std::string_view before, std::string_view now);

}  // namespace landdrill
