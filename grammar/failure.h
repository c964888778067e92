// How far a line was understood, and what was expected there: parse.cpp fills it, explain.cpp puts it into
// words.
//
//   parts split-hold spin-720     // where: at "spin-720"
//                                 // expected: "a comma", "x2 ...", "the end of the line"
//
// X3's own `a > b` throws at the first surprise and knows only `b`; keeping the farthest place costs two
// comparisons and names everything that could have stood there.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "grammar/characters.h"
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
  std::array<std::string_view, 6> expected{};

  // Of the places where something was expected, the farthest counts; a mistake there outweighs the rest.
  void expect(const char* at, std::string_view what) {
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

// The words of a line as a message shows them.
//
//   word_at("parts a, b(2)", at the bracket)   // "("
//   rest_of_line("tempo 12 # fast", at "12")   // "12"

inline std::string_view view(const char* first, const char* last) {
  return {first, static_cast<std::size_t>(last - first)};
}
inline const char* end_of(std::string_view text) {
  return text.data() + text.size();
}

inline std::string_view without_trailing_blanks(std::string_view text) {
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

// Up to the comment, without trailing blanks; `from` is outside any quotation marks.
inline std::string_view rest_of_line(std::string_view line, const char* from) {
  std::string_view rest = view(from, end_of(line));
  bool quoted = false;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    quoted ^= rest[i] == '"';
    if (rest[i] == '#' && !quoted) rest = rest.substr(0, i);
  }
  return without_trailing_blanks(rest);
}

// The word at `at`: a text in quotation marks, a code, a number, or one character; empty at the end of the
// line.
inline std::string_view word_at(std::string_view line, const char* at) {
  const char* last = end_of(line);
  if (at == last || *at == '#') {
    while (at != line.data() && (at[-1] == ' ' || at[-1] == '\t')) --at;
    return view(at, at);
  }
  if (const characters::Quotes* pair = characters::quotes_at(at, last)) {
    const char* inner = at + pair->opening.size();
    const characters::Closing closing = characters::closing_of(*pair, view(inner, last));
    return view(at, closing.length == 0 ? inner : inner + closing.at + closing.length);
  }
  const char* end = std::max(characters::code_end(at, last), characters::number_end(at, last));
  return view(at, end != at ? end : at + characters::character_length(at, last));
}

inline bool expects(const Failure& failure, std::string_view what) {
  const auto* last = failure.expected.begin() + failure.count;
  return std::find(failure.expected.begin(), last, what) != last;
}

}  // namespace landdrill

// The English names of what the grammar expects, where a hint depends on one.
namespace landdrill::expected {

inline constexpr const char* title = "a title in quotation marks";
inline constexpr const char* element_number = "the number of the element (like 1)";
inline constexpr const char* kind = "the kind of element (like hybrid)";
inline constexpr const char* size = "the size of the fault (like small)";
inline constexpr const char* times = "how many times (like x2)";
inline constexpr const char* comma = "a comma";
inline constexpr const char* colon = "a colon";
inline constexpr const char* end = "the end of the line";
inline constexpr const char* percent = "a percent sign";
inline constexpr const char* mark = "a mark";
inline constexpr const char* clean = "clean";
inline constexpr const char* lost_code = "the part that was lost";
inline constexpr const char* date = "a date (like 2026-04-14)";
inline constexpr const char* bound = "a number (like 2)";
inline constexpr const char* least = "least";
inline constexpr const char* most = "most";

}  // namespace landdrill::expected
