#include "tables/csv.h"

#include <algorithm>
#include <array>

#include "grammar/characters.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "tables/problems.h"

namespace landdrill {
namespace {

// No table of any sport is near these; they keep a hostile file from filling the memory.
constexpr std::size_t most_cells = 2'000'000;
constexpr std::size_t most_rows = 500'000;
constexpr std::size_t most_bytes_in_a_cell = 65'536;

constexpr const char* save_as = "in the spreadsheet, save the sheet as \"CSV UTF-8\"";

bool ends_line(char c) {
  return c == '\n' || c == '\r';
}

std::size_t count_line_ends(std::string_view text) {
  std::size_t lines = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    lines += text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n'));
  }
  return lines;
}

class Reader {
 public:
  explicit Reader(const Source& source) : source_(source), text_(source.text) {
    read_.table.file = source.name;
  }

  CsvRead read() {
    if (auto complaint = no_csv_text(source_)) read_.diagnostics.add(std::move(*complaint));
    if (text_.starts_with(byte_order_mark)) {
      read_.table.before = byte_order_mark;
      at_ = byte_order_mark.size();
    }
    read_.table.separator = separator_of(text_.substr(at_));
    read_.table.header = next_row();
    while (at_ < text_.size()) read_.table.rows.push_back(next_row());
    return std::move(read_);
  }

 private:
  void complain(std::size_t offset, std::size_t size, Complaint complaint) {
    if (!read_.diagnostics.wants_more()) return read_.diagnostics.count_only(severity_of(complaint.problem));
    read_.diagnostics.add(diagnostic_at(source_, text_.substr(offset, size), std::move(complaint)));
  }

  bool at_cell_end(std::size_t at) const {
    return at >= text_.size() || text_[at] == read_.table.separator || ends_line(text_[at]);
  }
  std::size_t cell_end(std::size_t at) const {
    while (!at_cell_end(at)) ++at;
    return at;
  }
  std::size_t line_end(std::size_t at) const {
    return std::min(text_.find_first_of("\r\n", at), text_.size());
  }

  CsvRow next_row() {
    CsvRow row;
    row.line = line_;
    if (cells_ >= most_cells || read_.table.rows.size() >= most_rows) return all_the_rest(std::move(row));
    if (at_ < text_.size() && !ends_line(text_[at_])) next_cells(row);
    row.ending = line_ending();
    return row;
  }

  void next_cells(CsvRow& row) {
    while (true) {
      row.cells.push_back(next_cell(row));
      ++cells_;
      if (at_ >= text_.size() || text_[at_] != read_.table.separator || cells_ >= most_cells) return;
      ++at_;
    }
  }

  CsvRow all_the_rest(CsvRow row) {
    complain(at_, 1,
             {Problem::too_long,
              "more than " + std::to_string(most_rows) + " rows or " + std::to_string(most_cells) + " cells",
              "a table of a value set"});
    row.cells.push_back(cell_to(text_.size()));
    row.broken = true;
    return row;
  }

  // The plain cell from here to `end`, and goes there.
  CsvCell cell_to(std::size_t end) {
    CsvCell cell;
    cell.offset = at_;
    cell.raw = text_.substr(at_, end - at_);
    cell.text = cell.raw;
    at_ = end;
    return cell;
  }

  CsvCell next_cell(CsvRow& row) {
    const std::size_t start = at_;
    CsvCell cell = start < text_.size() && text_[start] == '"' ? quoted_cell(row) : cell_to(cell_end(start));
    if (cell.raw.size() > most_bytes_in_a_cell) {
      complain(start, 1,
               {Problem::too_long, "a cell of " + std::to_string(cell.raw.size()) + " bytes",
                "at most " + std::to_string(most_bytes_in_a_cell)});
      row.broken = true;
    }
    return cell;
  }

  // The quotation mark that closes the one at `open`.
  std::size_t closing_quote(std::size_t open) const {
    std::size_t at = text_.find('"', open + 1);
    while (at != std::string_view::npos && at + 1 < text_.size() && text_[at + 1] == '"')
      at = text_.find('"', at + 2);
    return at;
  }

  CsvCell quoted_cell(CsvRow& row) {
    const std::size_t open = at_;
    const std::size_t close = closing_quote(open);
    if (close == std::string_view::npos) return unclosed_cell(row);
    std::size_t after = close + 1;
    while (after < text_.size() && text_[after] == ' ') ++after;
    if (!at_cell_end(after)) {
      // A quote that closes lines below and in the middle of a word was meant to open there.
      if (text_.substr(open, close - open).find_first_of("\r\n") != std::string_view::npos)
        return unclosed_cell(row);
      complain(after, 1,
               {Problem::after_quote, "text after the closing quotation mark",
                "a separator or the end of the line", "write a quotation mark inside a cell twice: \"\""});
      row.broken = true;
    }
    CsvCell cell = cell_to(cell_end(after));
    cell.text = without_doubled_quotes(text_.substr(open + 1, close - open - 1));
    line_ += count_line_ends(cell.raw);
    return cell;
  }

  // The cell is taken to end with its line, so that the rows below are still read.
  CsvCell unclosed_cell(CsvRow& row) {
    complain(at_, 1,
             {Problem::unclosed_quote, "a quotation mark that is never closed",
              "a closing quotation mark in this line"});
    row.broken = true;
    CsvCell cell = cell_to(line_end(at_));
    cell.text.erase(0, 1);
    return cell;
  }

  std::string line_ending() {
    if (at_ >= text_.size() || !ends_line(text_[at_])) return "";
    const std::size_t size = text_.substr(at_).starts_with("\r\n") ? 2 : 1;
    at_ += size;
    ++line_;
    return std::string(text_.substr(at_ - size, size));
  }

  const Source& source_;
  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  std::size_t cells_ = 0;
  CsvRead read_;
};

void write_row(const CsvRow& row, char separator, std::string& text) {
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    if (i > 0) text += separator;
    text += row.cells[i].raw;
  }
  text += row.ending;
}

}  // namespace

// On a tie the rarer sign wins: "SP-360;0,9" has a decimal comma, not three cells.
char separator_of(std::string_view text) {
  std::size_t tabs = 0, semicolons = 0, commas = 0;
  bool quoted = false;
  for (char c : text) {
    if (ends_line(c)) break;
    if (c == '"') quoted = !quoted;
    if (quoted) continue;
    tabs += c == '\t';
    semicolons += c == ';';
    commas += c == ',';
  }
  if (tabs > 0 && tabs >= semicolons && tabs >= commas) return '\t';
  return semicolons > 0 && semicolons >= commas ? ';' : ',';
}

std::string without_doubled_quotes(std::string_view inside) {
  std::string text;
  text.reserve(inside.size());
  for (std::size_t i = 0; i < inside.size(); ++i) {
    text += inside[i];
    if (inside[i] == '"') ++i;
  }
  return text;
}

std::optional<Diagnostic> no_csv_text(const Source& source) {
  const std::string_view text = source.text;
  if (text.starts_with("PK\x03\x04") || text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
    return diagnostic_about(
        source.name, {Problem::not_csv, text.starts_with("PK") ? "a spreadsheet workbook" : "UTF-16 text",
                      "CSV text in UTF-8", save_as});
  }
  const char* last = text.data() + text.size();
  const char* bad = characters::first_bad_byte(text.data(), last);
  if (bad == last) return std::nullopt;
  const std::string_view piece = text.substr(static_cast<std::size_t>(bad - text.data()), 1);
  if (*bad == '\0')
    return diagnostic_at(source, piece, {Problem::nul_byte, "a NUL byte", "CSV text", save_as});
  return diagnostic_at(source, piece,
                       {Problem::not_utf8, "a byte that is not UTF-8", "CSV text in UTF-8", save_as});
}

CsvRead read_csv(const Source& source) {
  return Reader(source).read();
}

std::string write_csv(const CsvTable& table) {
  std::string text = table.before;
  write_row(table.header, table.separator, text);
  for (const CsvRow& row : table.rows) write_row(row, table.separator, text);
  return text;
}

std::string_view text_at(const CsvRow& row, std::size_t place) {
  return place < row.cells.size() ? trimmed(row.cells[place].text) : std::string_view();
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view no_break = "\xC2\xA0";
  const auto is_blank = [](char c) { return c == ' ' || c == '\t' || ends_line(c); };
  while (!text.empty()) {
    if (is_blank(text.front()))
      text.remove_prefix(1);
    else if (is_blank(text.back()))
      text.remove_suffix(1);
    else if (text.starts_with(no_break))
      text.remove_prefix(no_break.size());
    else if (text.ends_with(no_break))
      text.remove_suffix(no_break.size());
    else
      break;
  }
  return text;
}

std::string csv_cell(std::string_view text, char separator) {
  const std::array<char, 5> special = {separator, '"', '\n', '\r', '\0'};
  if (text.find_first_of(std::string_view(special.data(), 4)) == std::string_view::npos)
    return std::string(text);
  std::string raw = "\"";
  for (char c : text) {
    if (c == '"') raw += '"';
    raw += c;
  }
  return raw + '"';
}

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
