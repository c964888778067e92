// What to do about a mistake, in words; and the one word that can go in the place of what is underlined, where there is
// no choice.
//
//   Hint("the nearest is spin-720", "spin-720")
//   Hint("the nearest are spin-720, spin-360")      // the coach's to choose
#pragma once

#include <string>
#include <utility>

namespace landdrill {

struct Hint {
  std::string words;    // may be empty
  std::string instead;  // empty: none

  Hint() = default;
  Hint(const char* what) : words(what) {}
  Hint(std::string what, std::string word = {}) : words(std::move(what)), instead(std::move(word)) {}

  bool empty() const { return words.empty(); }
  operator const std::string&() const { return words; }
};

}  // namespace landdrill
