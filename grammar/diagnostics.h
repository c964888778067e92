// What is wrong with a text the user wrote: what was found, what was expected, where, and what to do.
//
//   harbour.sheet:9:25: error: found the part "spin-730"; expected a part of kingfisher-2026 [unknown-part]
//       parts  thrust-high, spin-730
//                           ^~~~~~~~
//     hint: the nearest are spin-720, spin-360
//
// A Diagnostic owns its strings: it outlives the source. Diagnostics stand beside a value, never instead of
// it.
#pragma once

#include <array>
#include <cstddef>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "grammar/problem_code.h"
#include "grammar/span.h"

namespace landdrill {

// What to do about a mistake, in words; and the one word that can go in the place of what is underlined, where there is
// no choice.
//
//   Hint("the nearest is spin-720", "spin-720")
//   Hint("the nearest are spin-720, spin-360")      // the coach's to choose

struct Hint {
  std::string words;    // may be empty
  std::string instead;  // empty: none

  Hint() = default;
  Hint(const char* what) : words(what) {}
  Hint(std::string what, std::string word = {}) : words(std::move(what)), instead(std::move(word)) {}

  bool empty() const { return words.empty(); }
  operator const std::string&() const { return words; }
};

struct Diagnostic {
  ProblemCode problem;
  std::string file;
  Position at;             // line 0: about the file as a whole
  std::string line;        // the line as typed, tabs kept; at most some 160 bytes of it
  std::size_t cut = 0;     // characters of the line left out before `line`
  std::size_t length = 1;  // characters to underline, at least 1
  std::string found;       // "the part \"spin-730\""
  std::string expected;    // "a part of kingfisher-2026"
  std::string hint;        // may be empty
  std::string fix = {};    // what can go in the place of what is underlined; empty: none
};

// What a message says; the place is added by the maker.
struct Complaint {
  ProblemCode problem;
  std::string found;
  std::string expected;
  Hint hint = {};
};

// A diagnostic about `piece`, a view into `source.text`.
Diagnostic diagnostic_at(const Source& source, std::string_view piece, Complaint complaint);
// The same about a view into one of `sources`.
Diagnostic diagnostic_at(const Sources& sources, std::string_view piece, Complaint complaint);
// A diagnostic about the whole of `file`.
Diagnostic diagnostic_about(std::string_view file, Complaint complaint);

// The message as in the example above, ending in a newline. Control bytes and bad UTF-8 are shown as `\xNN`.
std::string to_string(const Diagnostic& diagnostic);

// An ordered list that holds at most `most` diagnostics and counts the rest.
class Diagnostics {
 public:
  static constexpr std::size_t most = 100;
  void add(Diagnostic diagnostic);
  // A diagnostic about `piece` of `from`, a Source or Sources; once the list is full it is only counted.
  template <class From>
  void complain(const From& from, std::string_view piece, Complaint complaint) {
    if (!wants_more()) return count_only(severity_of(complaint.problem));
    add(diagnostic_at(from, piece, std::move(complaint)));
  }
  // For makers whose complaint costs time: false once the list is full, and then the caller only calls
  // count_only.
  bool wants_more() const { return list_.size() < most; }
  void count_only(Severity severity);
  void append(Diagnostics other);

  const std::vector<Diagnostic>& list() const& { return list_; }
  void list() const&& = delete;  // they would be gone before a loop over them begins
  std::size_t errors() const { return count(Severity::error); }
  std::size_t warnings() const { return count(Severity::warning); }
  std::size_t doubts() const { return count(Severity::doubt); }
  // All of them, also those that are not in the list.
  std::size_t all() const { return errors() + warnings() + doubts(); }
  bool ok() const { return errors() == 0; }
  // Stable: by file in order of appearance, then line, then column.
  void sort();

 private:
  std::size_t count(Severity severity) const { return counts_[static_cast<std::size_t>(severity)]; }

  std::vector<Diagnostic> list_;
  std::array<std::size_t, std::size(severity_words)> counts_ = {};
};

// All messages, then a line that says how many more there were when the list was full.
std::string to_string(const Diagnostics& diagnostics);

}  // namespace landdrill
