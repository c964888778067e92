// A kind of mistake: the code at the end of a message, how grave it is, and what it means.
//
//   Problem::bad_step     // [bad-step], an error: "the step of the marks does not lead from the least to the most mark"
//
// Each room lists its own in its *problems.inc, and its problems.h makes constants in the namespace Problem of them: a
// new one rebuilds that room and those above. Codes are equal when they are one constant.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace landdrill {

// A doubt is about something that may be meant as it stands: nobody objects to it.
enum class Severity { error, warning, doubt };
constexpr std::string_view severity_words[] = {"error", "warning", "doubt"};

// A line of such a list.
struct ProblemEntry {
  consteval ProblemEntry(std::string_view name, Severity how_grave, std::string_view what_it_means)
      : length(name.size()), severity(how_grave), meaning(what_it_means) {
    for (std::size_t i = 0; i < length; ++i) code[i] = name[i] == '_' ? '-' : name[i];
  }

  std::array<char, 24> code{};
  std::size_t length;
  Severity severity;
  std::string_view meaning;  // for who reads the list
};

class ProblemCode {
 public:
  constexpr ProblemCode(const ProblemEntry& constant) : entry_(&constant) {}
  ProblemCode(ProblemEntry&&) = delete;

  friend constexpr bool operator==(ProblemCode, ProblemCode) = default;
  constexpr const ProblemEntry& entry() const { return *entry_; }

 private:
  const ProblemEntry* entry_;
};

// "unknown-part": the word in brackets at the end of a message.
constexpr std::string_view code_of(ProblemCode problem) {
  return {problem.entry().code.data(), problem.entry().length};
}
constexpr Severity severity_of(ProblemCode problem) {
  return problem.entry().severity;
}
constexpr std::string_view severity_word(ProblemCode problem) {
  return severity_words[static_cast<std::size_t>(severity_of(problem))];
}

}  // namespace landdrill
