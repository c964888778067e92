// To which neighbour a number is rounded, and above all what happens to one that lies right between two: a tie.
//
//   rounds_away(Rounding::half_up, {false, Between::Side::middle})      // 2.5 -> 3: true
//   rounds_away(Rounding::half_even, {false, Between::Side::middle})    // 2.5 -> 2: false
//
// Equal marks of judges are dropped by seat (engine/score/dropped_marks.h).
#pragma once

#include <cstddef>
#include <string_view>

namespace landdrill {

enum class Rounding { half_up, half_even, down, up };  // half_up: ties away from zero; down: towards zero
inline constexpr std::string_view rounding_words[] = {"half-up", "half-even", "down",
                                                      "up"};  // in their order
inline std::string_view word_of(Rounding rounding) {
  return rounding_words[static_cast<std::size_t>(rounding)];
}

// Where a number lies, its sign apart, between a whole number and the next.
struct Between {
  enum class Side { at_it, nearer, middle, farther };
  bool odd = false;  // the whole number towards zero
  Side side = Side::at_it;
};

// Whether it becomes the neighbour that is farther from zero.
inline bool rounds_away(Rounding rounding, Between number) {
  const bool tie = number.side == Between::Side::middle, farther = number.side == Between::Side::farther;
  switch (rounding) {
    case Rounding::half_up:
      return farther || tie;
    case Rounding::half_even:
      return farther || (tie && number.odd);
    case Rounding::down:
      return false;
    case Rounding::up:
      return number.side != Between::Side::at_it;
  }
  return false;
}

}  // namespace landdrill
