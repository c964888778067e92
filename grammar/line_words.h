// The words of a line as a message shows them.
//
//   word_at("parts a, b(2)", at the bracket)   // "("
//   rest_of_line("tempo 12 # fast", at "12")   // "12"
#pragma once

#include <algorithm>
#include <string_view>

#include "grammar/characters.h"
#include "grammar/failure.h"

namespace landdrill {

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
