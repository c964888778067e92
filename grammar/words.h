// The one list of the sheet language's words, and the search for the nearest known word.
//
//   nearest("spin-730", {"spin-720", "spin-360", "join-foot"})   // {"spin-720", "spin-360"}
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"

namespace landdrill::words {

enum class Word {
#define KEYWORD(word, ...) word,
#include "grammar/word_list.inc"
#undef KEYWORD
};

// What stands behind a keyword: how it is read, kept, printed and complained of.
enum class Shape {
  title,            // "Harbour Lights"
  code,             // duet-free
  number,           // 128
  percent,          // 12%
  alone,            // nothing
  dated,            // 2026-04-14 "Tuesday"
  counted,          // split-hold, spin-720 x2
  counted_or_none,  // the same, or none
  counts,           // 8 under, 3 up
  numbers,          // choreography 7.50, performance 7.75
  percents,         // overtime 10%, bottom 2%
  element,          // 2 hybrid "Undertow"; in a run or a panel 2: ...
  limit             // hybrid least 2 most 5
};
// What a colon behind a keyword means.
enum class Colon {
  forgiven,      // nothing
  written,       // nothing, but it is how the keyword is mostly written
  unless_marks,  // nothing, but where marks follow, the line is of an aspect of this name
  aspect         // the line is of an aspect of this name, or a keyword by mistake (builder.cpp)
};

// Every keyword with one line of help: "beats a minute", "tempo 128".
struct Keyword {
  std::string_view word;
  Shape shape;
  Colon colon;
  const char* expected;  // "the beats a minute (like 128)"
  const char* second;    // of a pair; empty where there is none
  std::string_view help;
  std::string_view example;
};
// In the order of `Word`.
std::span<const Keyword> keywords();
const Keyword& keyword(Word word);
// The keyword that `text` spells in upper or lower case.
std::optional<Word> find(std::string_view text);

// The word of a `counts` list that means time under water.
inline constexpr std::string_view under = "under";
// The words that are no keywords and yet mean something where they stand.
inline constexpr std::string_view base = "base";
inline constexpr std::string_view clean = "clean";
inline constexpr std::string_view lost = "lost";
inline constexpr std::string_view none = "none";

// The bounds of a `limit`, and what it may limit besides the codes of a set.
inline constexpr std::string_view at_least = "least";
inline constexpr std::string_view at_most = "most";
inline constexpr std::array<std::string_view, 4> limited = {"elements", "seconds", "under", "breath"};

constexpr char lower(char c) {
  return 'A' <= c && c <= 'Z' ? static_cast<char>(c + 32) : c;
}

// The same for every letter of a text.
std::string lower(std::string_view text);
// Equal, but for upper and lower case of ASCII letters.
inline bool same(std::string_view one, std::string_view other) {
  if (one.size() != other.size()) return false;
  for (std::size_t i = 0; i < one.size(); ++i)
    if (lower(one[i]) != lower(other[i])) return false;
  return true;
}

// Keywords that begin the line of an aspect where a colon and marks follow: `day: 7.5 7.25`. A set may call
// an aspect so; sheets are older than these keywords.
bool may_be_an_aspect(Word word);

// The known words nearest to `word` (edit distance, swapped neighbours count once, case ignored), best first,
// at most `most`, none further than a third of the longer word. Bounded: words over 64 bytes find nothing.
std::vector<std::string_view> nearest(std::string_view word, std::span<const std::string_view> known,
                                      std::size_t most = 3);
// The keyword nearest to `word`.
std::optional<Word> nearest_keyword(std::string_view word);

// The value that a word stands for, among the words of an enum in its order.
//
//   words::value_of<Rounding>(rounding_words, "down")     // Rounding::down
template <class Enum>
std::optional<Enum> value_of(std::span<const std::string_view> words, std::string_view word) {
  const auto at = std::find(words.begin(), words.end(), word);
  return at == words.end() ? std::nullopt : std::optional(static_cast<Enum>(at - words.begin()));
}

// "a", "a or b", "a, b or c"
std::string alternatives(std::span<const std::string_view> words);

// "the nearest is spin-720" / "the nearest are a, b, c" / "" when there is none.
// A single one can go in the place of the word, if it needs no quotation marks.
Hint nearest_hint(std::string_view word, std::span<const std::string_view> known);

}  // namespace landdrill::words
