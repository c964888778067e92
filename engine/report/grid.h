// Rows of cells as aligned text: words to the left, amounts with their decimal points in one line.
//
//   Grid grid({{"", "element"}, {"", "points", Align::amount}});
//   grid.add({"Undertow", "38.0625"});
//   grid.add({"Lantern", "9.5"});
//   grid.text(80)     // element    points
//                     // Undertow  38.0625
//                     // Lantern    9.5
//
// One column may stretch: what is too long there is wrapped within the column, so that no line is wider than
// asked.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

class Grid {
 public:
  explicit Grid(std::vector<PageColumn> columns) : columns_(std::move(columns)) {}
  void add(std::vector<std::string> cells, Look look = Look::usual);  // one for each column, made plain
  void add_rule();                                                    // a line across
  // Whether the rows fit into `width` with every wrapping column at least `least` wide.
  bool fits(int width, int least) const;
  // Ends in a newline; without rows, empty.
  std::string text(int width, bool colour = false) const;

 private:
  struct Row {
    std::vector<std::string> cells;
    Look look = Look::usual;
    bool rule = false;
  };
  struct Width {
    int whole = 0, behind = 0;  // of an amount: up to the point, and from the point on
    int all = 0;
  };
  int gap_before(std::size_t column) const { return column == 0 ? 0 : columns_[column].gap; }
  std::vector<Width> widths() const;
  std::vector<Width> widths_within(int width) const;
  std::string headings(const std::vector<Width>& widths) const;
  void add_line(const std::vector<std::string_view>& cells, const std::vector<Width>& widths,
                std::string& page) const;
  void add_lines(const Row& row, const std::vector<Width>& widths, std::string& page) const;

  std::vector<PageColumn> columns_;  // those that are shown
  std::vector<Row> rows_;
};

// `text` in bold or in the one accent colour, line by line; unchanged for Look::usual.
std::string coloured(const std::string& text, Look look);

}  // namespace landdrill::report
