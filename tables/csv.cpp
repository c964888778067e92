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

// What some programs write before the first line.
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
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

// What stands between the cells of a text, by its first line. On a tie the rarer sign wins: "SP-360;0,9" has a
// decimal comma, not three cells.
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

// Without the blanks around it, and still in its place when there is nothing else.
std::string_view inside_blanks(std::string_view raw) {
  const std::string_view inner = trimmed(raw);
  return inner.empty() ? raw.substr(0, 0) : inner;
}

// Copies the rows of a table, and complains of them.
class TableReader {
 public:
  explicit TableReader(const Source& source) : source_(source), rows_(source, CsvRows::Of::table) {}

  CsvRead read() {
    if (auto complaint = no_csv_text(source_)) read_.diagnostics.add(std::move(*complaint));
    CsvTable& table = read_.table;
    if (source_.text.starts_with(byte_order_mark)) table.before = byte_order_mark;
    table.separator = rows_.separator();
    table.header.line = 1;
    if (rows_.next_line()) table.header = row();
    while (table.rows.size() < most_rows && rows_.next_line()) table.rows.push_back(row());
    if (!rows_.rest().empty()) table.rows.push_back(all_the_rest());
    return std::move(read_);
  }

 private:
  void complain(std::string_view piece, Complaint complaint) {
    read_.diagnostics.complain(source_, piece.substr(0, 1), std::move(complaint));
  }

  CsvCell cell(std::string_view text, std::string_view raw) const {
    return {std::string(text), std::string(raw), static_cast<std::size_t>(raw.data() - source_.text.data())};
  }

  CsvRow row() {
    CsvRow row;
    row.line = rows_.line();
    row.ending = rows_.ending();
    row.broken = !rows_.broken().empty();
    for (const CsvRows::Broken& broken : rows_.broken()) complain_of(broken);
    row.cells.reserve(read_.table.header.cells.size());
    for (const CsvRows::Cell& one : rows_.all_cells()) {
      row.cells.push_back(cell(one.text, one.raw));
      if (one.raw.size() <= most_bytes_in_a_cell) continue;
      complain(one.raw, {Problem::too_long, "a cell of " + std::to_string(one.raw.size()) + " bytes",
                         "at most " + std::to_string(most_bytes_in_a_cell)});
      row.broken = true;
    }
    return row;
  }

  void complain_of(const CsvRows::Broken& broken) {
    if (broken.never_closed)
      return complain(broken.piece, {Problem::unclosed_quote, "a quotation mark that is never closed",
                                     "a closing quotation mark in this line"});
    complain(broken.piece,
             {Problem::after_quote, "text after the closing quotation mark",
              "a separator or the end of the line", "write a quotation mark inside a cell twice: \"\""});
  }

  CsvRow all_the_rest() {
    complain(rows_.rest(),
             {Problem::too_long,
              "more than " + std::to_string(most_rows) + " rows or " + std::to_string(most_cells) + " cells",
              "a table of a value set"});
    CsvRow row{{cell(rows_.rest(), rows_.rest())}, {}, rows_.line() + 1};
    row.broken = true;
    return row;
  }

  const Source& source_;
  CsvRows rows_;
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
  return TableReader(source).read();
}

std::string write_csv(const CsvTable& table) {
  std::string text = table.before;
  write_row(table.header, table.separator, text);
  for (const CsvRow& row : table.rows) write_row(row, table.separator, text);
  return text;
}

std::string_view piece_of(const Source& source, const CsvCell& cell) {
  return inside_blanks(source.text.substr(cell.offset, cell.raw.size()));
}

std::string_view text_at(const CsvRow& row, std::size_t place) {
  return place < row.cells.size() ? trimmed(row.cells[place].text) : std::string_view();
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view no_break = "\xC2\xA0";
  const auto is_blank = [](char c) { return c == ' ' || c == '\t' || ends_line(c); };
  const auto is_letter = [](char c) { return c > ' ' && c < '\x7f'; };
  while (!text.empty() && !(is_letter(text.front()) && is_letter(text.back()))) {
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

// `a ""b""` -> `a "b"`
std::string without_doubled_quotes(std::string_view inside) {
  std::string text;
  text.reserve(inside.size());
  for (std::size_t i = 0; i < inside.size(); ++i) {
    text += inside[i];
    if (inside[i] == '"') ++i;
  }
  return text;
}

}  // namespace

CsvRows::CsvRows(const Source& source, Of what)
    : text_(source.text),
      over_lines_(what == Of::table),
      room_(what == Of::table ? most_cells : std::string_view::npos),
      next_line_(source.first_line) {
  if (text_.starts_with(byte_order_mark)) text_.remove_prefix(byte_order_mark.size());
  separator_ = separator_of(text_);
}

bool CsvRows::next() {
  while (next_line()) {
    const bool blank =
        std::all_of(cells_.begin(), cells_.end(), [](const Cell& one) { return trimmed(one.text).empty(); });
    if (!blank || !broken_.empty()) return true;
  }
  return false;
}

bool CsvRows::next_line() {
  if (at_ >= text_.size() || room_ == 0) return false;
  cells_.clear();
  unescaped_.clear();
  broken_.clear();
  line_ = next_line_;
  if (!ends_line(text_[at_])) split();
  const std::string_view rest = this->rest();
  ending_ = rest.substr(0, rest.starts_with("\r\n") ? 2 : !rest.empty() && ends_line(rest[0]) ? 1 : 0);
  at_ += ending_.size();
  next_line_ += !ending_.empty();
  return true;
}

void CsvRows::split() {
  while (true) {
    cells_.push_back(next_cell());
    --room_;
    if (at_ >= text_.size() || text_[at_] != separator_ || room_ == 0) return;
    ++at_;
  }
}

std::size_t CsvRows::cell_end(std::size_t at) const {
  while (at < text_.size() && text_[at] != separator_ && !ends_line(text_[at])) ++at;
  return at;
}

CsvRows::Cell CsvRows::next_cell() {
  const std::size_t start = at_;
  std::size_t open = start;
  while (open < text_.size() && text_[open] != separator_ && (text_[open] == ' ' || text_[open] == '\t'))
    ++open;
  if (open < text_.size() && text_[open] == '"') return quoted_cell(open);
  at_ = cell_end(open);
  const std::string_view raw = text_.substr(start, at_ - start);
  return {raw, raw};
}

CsvRows::Cell CsvRows::quoted_cell(std::size_t open) {
  const std::size_t start = at_;
  std::size_t close = text_.find('"', open + 1);
  while (close != std::string_view::npos && close + 1 < text_.size() && text_[close + 1] == '"')
    close = text_.find('"', close + 2);
  if (close == std::string_view::npos) return unclosed_cell(open);
  const std::string_view inside = text_.substr(open + 1, close - open - 1);
  const std::size_t end = cell_end(close + 1);
  const std::string_view behind = trimmed(text_.substr(close + 1, end - close - 1));
  if (const std::size_t lines = count_line_ends(inside); lines > 0) {
    // A quote that closes lines below and in the middle of a word was meant to open there.
    if (!over_lines_ || !behind.empty()) return unclosed_cell(open);
    next_line_ += lines;
  }
  if (!behind.empty()) broken_.push_back({behind, false});
  at_ = end;
  const bool doubled = inside.find('"') != std::string_view::npos;
  return {text_.substr(start, end - start),
          doubled ? unescaped_.emplace_back(without_doubled_quotes(inside)) : inside};
}

// The cell is taken to end with its line, so that the rows below are still read.
CsvRows::Cell CsvRows::unclosed_cell(std::size_t open) {
  broken_.push_back({text_.substr(open, 1), true});
  const std::size_t start = at_;
  at_ = std::min(text_.find_first_of("\r\n", open), text_.size());
  return {text_.substr(start, at_ - start), text_.substr(open + 1, at_ - open - 1)};
}

std::string_view CsvRows::cell(std::size_t place) const {
  return place < cells_.size() ? trimmed(cells_[place].text) : std::string_view();
}

std::string_view CsvRows::piece(std::size_t place) const {
  return inside_blanks(cells_[std::min(place, cells_.size() - 1)].raw);
}

}  // namespace landdrill
