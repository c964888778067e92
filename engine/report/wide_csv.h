// Rows of different things in one CSV: each fills the columns it has, the others stay empty.
//
//   WideCsv csv({"what", "points", "chance"});
//   csv.add({{"what", "target"}, {"chance", "0.4"}});
//   csv.text()      // "what,points,chance\ntarget,,0.4\n"
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace landdrill::report {

class WideCsv {
 public:
  using Cells = std::vector<std::pair<std::string_view, std::string>>;

  explicit WideCsv(std::vector<std::string_view> columns);
  void add(const Cells& cells);  // of columns that there are (assert)
  std::string text() const { return text_; }

 private:
  std::vector<std::string_view> columns_;
  std::string text_;
};

}  // namespace landdrill::report
