#include "engine/report/grid.h"

#include <algorithm>
#include <cassert>

#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::size_t point_in(std::string_view amount) {
  return std::min(amount.find('.'), amount.size());
}

// "x 4", "gap": stands at the right edge instead of in front of the point.
bool is_word(std::string_view cell) {
  return cell.find('.') == std::string_view::npos && cell.find_first_of("0123456789+->") != 0;
}

void trim_right(std::string& line) {
  line.erase(line.find_last_not_of(' ') + 1);
}

}  // namespace

void Grid::add(std::vector<std::string> cells, Look look) {
  assert(cells.size() == columns_.size());
  for (std::string& cell : cells) cell = plain(cell);
  rows_.push_back({std::move(cells), look, false});
}

void Grid::add_rule() {
  rows_.push_back({{}, Look::usual, true});
}

std::vector<Grid::Width> Grid::widths() const {
  std::vector<Width> result;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    Width width;
    int words = width_of(plain(columns_[i].heading));
    for (const Row& row : rows_) {
      if (row.rule) continue;
      const std::string& cell = row.cells[i];
      if (columns_[i].align == Align::words || is_word(cell)) {
        words = std::max(words, width_of(cell));
      } else {
        const std::size_t point = point_in(cell);
        width.whole = std::max(width.whole, width_of(std::string_view(cell).substr(0, point)));
        width.behind = std::max(width.behind, width_of(std::string_view(cell).substr(point)));
      }
    }
    width.all = std::max(words, width.whole + width.behind);
    result.push_back(width);
  }
  return result;
}

std::vector<Grid::Width> Grid::widths_within(int width) const {
  std::vector<Width> result = widths();
  int over = -width;
  for (std::size_t i = 0; i < result.size(); ++i) over += gap_before(i) + result[i].all;
  // The widest gives way first, one column at a time: so several that wrap end about equally wide.
  while (over > 0) {
    std::size_t widest = columns_.size();
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      const bool wider = widest == columns_.size() || result[i].all > result[widest].all;
      if (columns_[i].wraps == Wraps::yes && result[i].all > 1 && wider) widest = i;
    }
    if (widest == columns_.size()) break;
    --result[widest].all;
    --over;
  }
  return result;
}

bool Grid::fits(int width, int least) const {
  int all = 0;
  const std::vector<Width> natural = widths();
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    all +=
        gap_before(i) + (columns_[i].wraps == Wraps::yes ? std::min(natural[i].all, least) : natural[i].all);
  }
  return all <= width;
}

// `cells`: what stands on this line of the row, one for each column.
void Grid::add_line(const std::vector<std::string_view>& cells, const std::vector<Width>& widths,
                    std::string& page) const {
  const std::size_t start = page.size();
  int blank = 0;  // since the last word: none at the end of a line
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const std::string_view cell = cells[i];
    blank += gap_before(i);
    if (cell.empty()) {
      blank += widths[i].all;
      continue;
    }
    const int width = width_of(cell);
    int before = 0;
    if (columns_[i].align == Align::amount) {
      before = is_word(cell) ? widths[i].all - width
                             : widths[i].all - widths[i].behind - width_of(cell.substr(0, point_in(cell)));
    }
    before = std::max(0, before);
    page.append(static_cast<std::size_t>(blank + before), ' ');
    page += cell;
    blank = std::max(0, widths[i].all - before - width);
  }
  while (page.size() > start && page.back() == ' ') page.pop_back();
  page += '\n';
}

void Grid::add_lines(const Row& row, const std::vector<Width>& widths, std::string& page) const {
  std::vector<std::string_view> cells(row.cells.begin(), row.cells.end());
  std::vector<std::vector<std::string>> wrapped;  // of each column, when one has to be
  std::size_t height = 1;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (columns_[i].align != Align::words || width_of(cells[i]) <= widths[i].all) continue;
    wrapped.resize(columns_.size());
    wrapped[i] = wrap(cells[i], widths[i].all);
    cells[i] = wrapped[i].front();
    height = std::max(height, wrapped[i].size());
  }
  add_line(cells, widths, page);
  for (std::size_t line = 1; line < height; ++line) {
    for (std::size_t i = 0; i < columns_.size(); ++i)
      cells[i] = line < wrapped[i].size() ? std::string_view(wrapped[i][line]) : std::string_view();
    add_line(cells, widths, page);
  }
}

std::string Grid::headings(const std::vector<Width>& widths) const {
  std::string groups, names;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const PageColumn& column = columns_[i];
    const bool first = i == 0 || columns_[i - 1].group != column.group;
    names += pad("", gap_before(i));
    if (first && !column.group.empty())
      groups = pad(groups + pad("", gap_before(i)), width_of(names)) + column.group;
    const std::string heading = cut(plain(column.heading), widths[i].all);
    const int before = column.align == Align::amount ? widths[i].all - width_of(heading) : 0;
    names += pad(pad("", before) + heading, widths[i].all);
  }
  trim_right(groups);
  trim_right(names);
  return (groups.empty() ? "" : groups + "\n") + (names.empty() ? "" : names + "\n");
}

std::string Grid::text(int width, bool colour) const {
  if (rows_.empty()) return "";
  const std::vector<Width> all = widths_within(width);
  int across = 0;
  for (std::size_t i = 0; i < all.size(); ++i) across += gap_before(i) + all[i].all;
  std::string result = headings(all);
  for (const Row& row : rows_) {
    if (row.rule) {
      result += std::string(static_cast<std::size_t>(std::max(1, across)), '-') + "\n";
    } else {
      const std::size_t start = result.size();
      add_lines(row, all, result);
      if (colour && row.look != Look::usual)
        result.replace(start, result.npos, coloured(result.substr(start), row.look));
    }
  }
  return result;
}

std::string coloured(const std::string& text, Look look) {
  if (look == Look::usual) return text;
  const std::string_view start = look == Look::total ? "\x1b[1m" : "\x1b[35m";
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    result.append(start).append(text, at, end - at).append("\x1b[0m");
    if (end < text.size()) result += '\n';
    at = end + 1;
  }
  return result;
}

}  // namespace landdrill::report
