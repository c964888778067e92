// A question as it is asked: which one, with which options and operands, each as it was typed. The command line, the
// browser and a library ask the same questions in the same words.
//
//   Asked asked("compare");
//   asked.add("--option", {"2=safer"});
//   asked.value("--runs", "latest")     // "latest": not asked for otherwise
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

class Asked {
 public:
  explicit Asked(std::string_view question) : question_(question) {}
  void add(std::string_view option, std::vector<std::string> values) {
    options_.emplace_back(option, std::move(values));
  }

  const std::string& question() const { return question_; }
  bool has(std::string_view option) const { return !values(option).empty(); }
  // The last value given, or `otherwise`.
  std::string_view value(std::string_view option, std::string_view otherwise = {}) const {
    const auto& all = values(option);
    return all.empty() ? otherwise : std::string_view(all.back());
  }
  const std::vector<std::string>& values(std::string_view option) const {
    static const std::vector<std::string> none;
    for (const auto& [name, given] : options_)
      if (name == option) return given;
    return none;
  }

  std::vector<std::string> operands;

 private:
  std::string question_;
  std::vector<std::pair<std::string, std::vector<std::string>>> options_;
};

// What was typed for an option; or the sentence that says what was expected instead.
template <class What>
using Typed = tl::expected<What, std::string>;
// A page; or the sentence that says what was asked and cannot be, and what can.
using Answer = tl::expected<Page, std::string>;
// "found --spred; expected an option": with `hint` on a line below it, if there is one.
inline std::string with_hint(std::string mistake, std::string_view hint) {
  if (!hint.empty()) mistake.append("\n  hint: ").append(hint);
  return mistake;
}

}  // namespace landdrill::report
