// How far a line was understood, and what was expected there: parse.cpp fills it, explain.cpp puts it into
// words.
//
//   parts split-hold spin-720     // where: at "spin-720"
//                                 // expected: "a comma", "x2 ...", "the end of the line"
//
// X3's own `a > b` throws at the first surprise and knows only `b`; keeping the farthest place costs two
// comparisons and names everything that could have stood there.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "grammar/words.h"

namespace landdrill {

// What is wrong with a word by itself, whatever was expected.
enum class Mistake {
  none,
  unclosed_quote,
  empty_quote,
  control_character,
  ambiguous_number,
  long_number,
  bare_point,
  no_blank_after_comma,
  wrong_date,
  long_list
};

// A line in error: all of it, its first word, and the keyword that word is (none for `choreography: ...`).
struct FailedLine {
  std::string_view text;
  std::string_view first_word;
  std::optional<words::Word> keyword;
};

struct Failure {
  const char* where = nullptr;
  const char* to = nullptr;  // the end of a mistaken word
  Mistake mistake = Mistake::none;
  std::size_t count = 0;
  std::array<const char*, 6> expected{};

  // Of the places where something was expected, the farthest counts; a mistake there outweighs the rest.
  void expect(const char* at, const char* what) {
    if (where != nullptr && at < where) return;
    if (at != where) start_again(at);
    if (mistake != Mistake::none || count == expected.size()) return;
    for (std::size_t i = 0; i < count; ++i)
      if (expected[i] == what) return;
    expected[count++] = what;
  }
  // What was expected elsewhere is only no longer counted: this happens several times in every line.
  void start_again(const char* at) {
    where = at;
    to = nullptr;
    mistake = Mistake::none;
    count = 0;
  }
  void mistaken(const char* at, const char* end, Mistake what) {
    if (where == nullptr || at >= where) *this = Failure{at, end, what};
  }
};

}  // namespace landdrill
