#include "tables/csv_rows.h"

#include <algorithm>

#include "grammar/span.h"
#include "tables/csv.h"

namespace landdrill {
namespace {

std::string_view first_line_of(std::string_view text) {
  return text.substr(0, std::min(text.find_first_of("\r\n"), text.size()));
}

}  // namespace

CsvRows::CsvRows(const Source& source) : text_(source.text), line_(source.first_line - 1) {
  if (text_.starts_with(byte_order_mark)) text_.remove_prefix(byte_order_mark.size());
  separator_ = separator_of(first_line_of(text_));
  newline_ = std::min(text_.find('\n'), text_.size());
  return_ = std::min(text_.find('\r'), text_.size());
}

bool CsvRows::next() {
  while (at_ < text_.size()) {
    const std::size_t end = line_end();
    const std::string_view line = text_.substr(at_, end - at_);
    at_ = end + (text_.substr(end).starts_with("\r\n") ? 2 : 1);
    ++line_;
    split(line);
    const bool blank =
        std::all_of(cells_.begin(), cells_.end(), [](const Cell& one) { return one.text.empty(); });
    if (!blank || !broken_.empty()) return true;
  }
  return false;
}

// Each of the two is looked for once through the text, not letter by letter.
std::size_t CsvRows::line_end() {
  if (newline_ < at_) newline_ = std::min(text_.find('\n', at_), text_.size());
  if (return_ < at_) return_ = std::min(text_.find('\r', at_), text_.size());
  return std::min(newline_, return_);
}

std::string_view CsvRows::cell(std::size_t place) const {
  return place < cells_.size() ? cells_[place].text : std::string_view();
}

std::string_view CsvRows::piece(std::size_t place) const {
  const Cell& one = cells_[std::min(place, cells_.size() - 1)];
  const std::string_view inner = trimmed(one.raw);
  return inner.empty() ? one.raw.substr(0, 0) : inner;
}

void CsvRows::split(std::string_view line) {
  cells_.clear();
  if (!unescaped_.empty()) unescaped_.clear();
  broken_ = {};
  std::size_t at = 0;
  while (true) {
    std::size_t blank_end = at;
    while (blank_end < line.size() && (line[blank_end] == ' ' || line[blank_end] == '\t')) ++blank_end;
    if (separator_ != '\t' && blank_end < line.size() && line[blank_end] == '"') {
      cells_.push_back(quoted_cell(line, at));
    } else if (at < line.size() && line[at] == '"') {
      cells_.push_back(quoted_cell(line, at));
    } else {
      const std::size_t end = std::min(line.find(separator_, at), line.size());
      const std::string_view raw = line.substr(at, end - at);
      cells_.push_back({raw, trimmed(raw)});
      at = end;
    }
    if (at >= line.size()) return;
    ++at;  // the separator
  }
}

// Leaves `at` behind the cell. What follows the closing quotation mark is part of the cell, and a mistake.
CsvRows::Cell CsvRows::quoted_cell(std::string_view line, std::size_t& at) {
  const std::size_t start = at, open = line.find('"', at);
  bool doubled = false;
  std::size_t close = line.find('"', open + 1);
  while (close != std::string_view::npos && close + 1 < line.size() && line[close + 1] == '"') {
    doubled = true;
    close = line.find('"', close + 2);
  }
  if (close == std::string_view::npos) {
    broken_ = line.substr(open, 1);
    at = line.size();
    return {line.substr(start), line.substr(open + 1)};
  }
  const std::size_t end = std::min(line.find(separator_, close + 1), line.size());
  const std::string_view behind = trimmed(line.substr(close + 1, end - close - 1));
  if (!behind.empty()) broken_ = behind;
  at = end;
  std::string_view inside = line.substr(open + 1, close - open - 1);
  if (doubled) inside = unescaped_.emplace_back(without_doubled_quotes(inside));
  return {line.substr(start, end - start), trimmed(inside)};
}

}  // namespace landdrill
