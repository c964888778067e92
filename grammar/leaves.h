// The words of a line, one function each: takes the word at `first` (blanks are already skipped), sets its
// value and moves `first` behind it; or returns false, with what is wrong with the word itself in `failure`.
//
//   take_number   "7,25 7.50"     // 7,25
//   take_times    "x2"            // 2
//
// Free of X3, so that the grammar in parse.cpp stays a page.
#pragma once

#include <algorithm>

#include "grammar/ast.h"
#include "grammar/calendar.h"
#include "grammar/characters.h"
#include "grammar/failure.h"
#include "grammar/words.h"

namespace landdrill {

// One statement of the sheet language, once its first word is known (read_lines.cpp finds it, parse.cpp reads
// the rest).
//
//   LineRest line{after "tempo", end of line};
//   read_keyword(Word::tempo, line, statement)   // true: statement is a NumberLine, line.at is behind "128"

// A line while it is read: what is left of it, and how far it was understood.
struct LineRest {
  const char* at;
  const char* last;
  Failure failure{};
};

// The rest of a line behind its keyword, up to a comment. When false, `statement` is half filled: drop it.
bool read_keyword(words::Word word, LineRest& line, ast::Statement& statement);
// `choreography: 7.50 7.75`, from the aspect on.
bool read_aspect(LineRest& line, ast::Statement& statement);

}  // namespace landdrill

namespace landdrill::leaves {

using Iterator = const char*;
inline constexpr std::ptrdiff_t most_digits = 18;

// ---- numbers ----

inline bool goes_on(Iterator end, Iterator last) {
  return last - end >= 2 && (*end == '.' || *end == ',') && characters::is_digit(end[1]);
}

inline Mistake mistake_in_number(Iterator first, Iterator end, Iterator last) {
  if (end - first > most_digits && std::count_if(first, end, characters::is_digit) > most_digits)
    return Mistake::long_number;
  if (goes_on(end, last)) return Mistake::ambiguous_number;
  if (end != last && *end == '.') return Mistake::bare_point;
  return Mistake::none;
}

inline Iterator end_of_figures(Iterator at, Iterator last) {
  while (at != last && (characters::is_digit(*at) || *at == '.' || *at == ',')) ++at;
  while (at[-1] == ',') --at;
  return at;
}

// "7.25", "7,25", "128": a slice, not a value.
inline bool take_number(Iterator& first, Iterator last, Failure& failure, ast::Number& number) {
  const Iterator end = characters::number_end(first, last);
  if (end == first) return false;
  const Mistake mistake = mistake_in_number(first, end, last);
  if (mistake != Mistake::none) {
    failure.mistaken(first, end_of_figures(end, last), mistake);
    return false;
  }
  number.text = view(first, end);
  first = end;
  return true;
}

// Digits only, and nothing that goes on like a code: the number of an element.
inline bool take_whole(Iterator& first, Iterator last, Failure& failure, ast::Number& number) {
  Iterator end = first;
  while (end != last && characters::is_digit(*end)) ++end;
  if (end == first || goes_on(end, last) || characters::code_end(end, last) != end) return false;
  if (end - first > most_digits) {
    failure.mistaken(first, end, Mistake::long_number);
    return false;
  }
  number.text = view(first, end);
  first = end;
  return true;
}

// "x2", "x 2", "×2"
inline bool take_times(Iterator& first, Iterator last, Failure& failure, ast::Number& number) {
  const Iterator sign = characters::times_sign_end(first, last);
  if (sign == first) return false;
  Iterator digits = characters::skip_blanks(sign, last);
  if (!take_whole(digits, last, failure, number)) return false;
  first = digits;
  return true;
}

// `-` for a missing judge, or a mark.
inline bool take_mark(Iterator& first, Iterator last, Failure& failure, ast::JudgeMark& mark) {
  const Iterator end = characters::missing_end(first, last);
  if (end == first) return take_number(first, last, failure, mark.emplace());
  mark.reset();
  first = end;
  return true;
}

inline bool starts_marks(Iterator at, Iterator last) {
  return characters::number_end(at, last) != at || characters::missing_end(at, last) != at;
}

// ---- words of the language ----

inline bool take_word(std::string_view word, Iterator& first, Iterator last) {
  const Iterator end = characters::code_end(first, last);
  if (!words::same(view(first, end), word)) return false;
  first = end;
  return true;
}

// A word that is part of the language, such as `lost`, in upper or lower case.
template <const std::string_view& word>
bool take_the(Iterator& first, Iterator last, Failure&) {
  return take_word(word, first, last);
}

// ---- codes and titles ----

inline Mistake mistake_in_quotes(std::string_view text) {
  const auto is_control = [](char c) { return c != '\t' && characters::is_control({&c, 1}); };
  const Iterator last = text.data() + text.size();
  if (characters::skip_blanks(text.data(), last) == last) return Mistake::empty_quote;
  return std::any_of(text.begin(), text.end(), is_control) ? Mistake::control_character : Mistake::none;
}

// A text in quotation marks.
inline bool take_quoted(Iterator& first, Iterator last, Failure& failure, ast::Name& name) {
  const characters::Quotes* pair = characters::quotes_at(first, last);
  if (pair == nullptr) return false;
  const Iterator inner = first + pair->opening.size();
  const characters::Closing closing = characters::closing_of(*pair, view(inner, last));
  if (closing.length == 0) {
    failure.mistaken(first, inner, Mistake::unclosed_quote);
    return false;
  }
  const std::string_view text = view(inner, inner + closing.at);
  const Iterator end = inner + closing.at + closing.length;
  if (const Mistake mistake = mistake_in_quotes(text); mistake != Mistake::none) {
    failure.mistaken(first, end, mistake);
    return false;
  }
  name = {pair->trimmed ? characters::without_blanks(text) : text, true};
  first = end;
  return true;
}

inline bool refuse_nothing(std::string_view) {
  return false;
}
inline bool is_none(std::string_view text) {
  return words::same(text, words::none);
}
inline bool is_no_fault(std::string_view text) {
  return characters::looks_like_number(text) || words::same(text, words::lost) ||
         words::same(text, words::clean);
}

// A code, bare or in quotation marks; a bare one that means something else in its place is refused.
template <bool (*refused)(std::string_view)>
bool take_code(Iterator& first, Iterator last, Failure& failure, ast::Name& name) {
  const Iterator end = characters::code_end(first, last);
  if (end == first) return take_quoted(first, last, failure, name);
  if (refused(view(first, end))) return false;
  name = {view(first, end), false};
  first = end;
  return true;
}

// ---- dates ----

inline bool take_date(Iterator& first, Iterator last, Failure& failure, ast::Date& date) {
  const Iterator end = characters::code_end(first, last);
  if (end == first || !characters::is_digit(*first)) return false;
  if (!has_shape(view(first, end), "0000-00-00")) {
    failure.mistaken(first, end, Mistake::wrong_date);
    return false;
  }
  date.text = view(first, end);
  first = end;
  return true;
}

// ---- limits ----

inline bool is_bound(std::string_view text) {
  return words::same(text, words::at_least) || words::same(text, words::at_most);
}

// `least 2`; `word` is words::at_least or words::at_most.
template <const std::string_view& word>
bool take_bound(Iterator& first, Iterator last, Failure& failure, ast::Number& number) {
  Iterator at = first;
  if (!take_word(word, at, last)) return false;
  at = characters::skip_blanks(at, last);
  if (!take_number(at, last, failure, number)) {
    failure.expect(at, expected::bound);
    return false;
  }
  first = at;
  return true;
}

// ---- what has no value ----

inline bool take_end(Iterator& first, Iterator last, Failure&) {
  return first == last || *first == '#';
}

inline bool take_optional_colon(Iterator& first, Iterator last, Failure&) {
  const Iterator at = characters::skip_blanks(first, last);
  if (at != last && *at == ':') first = at + 1;
  return true;
}

// `base` after an element's number, or not.
inline bool take_base(Iterator& first, Iterator last, Failure&, bool& base) {
  Iterator at = characters::skip_blanks(first, last);
  base = take_word(words::base, at, last);
  if (base) first = at;
  return true;
}

// Between two marks: blanks, or a comma or semicolon; a comma that a mark follows at once could be its
// decimal sign.
inline bool take_between_marks(Iterator& first, Iterator last, Failure& failure) {
  const Iterator at = characters::skip_blanks(first, last);
  if (at == last || (*at != ',' && *at != ';')) {
    const bool blanks = at != first;
    first = at;
    return blanks;
  }
  const Iterator after = at + 1;
  const bool blank_follows = after == last || *after == '#' || characters::skip_blanks(after, last) != after;
  if (*at == ',' && !blank_follows) {
    failure.mistaken(at, after, Mistake::no_blank_after_comma);
    return false;
  }
  first = after;
  return true;
}

}  // namespace landdrill::leaves
