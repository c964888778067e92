// Fuzzes the lists that a coach types: the rows of a CSV text as views, lists of panels, lists of practice,
// lists of values.
//
// The first byte says which; the rest is the text.
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "grammar/calendar.h"
#include "tables/csv.h"
#include "tables/fill.h"
#include "tables/marks_list.h"

namespace {

using namespace landdrill;

void require(bool law) {
  if (!law) std::abort();
}

bool is_within(std::string_view piece, std::string_view text) {
  return piece.data() >= text.data() && piece.data() + piece.size() <= text.data() + text.size();
}

// Where no quotation mark stands, the rows are those that the other reader finds.
void require_same_cells(std::string_view text) {
  const CsvRead whole = read_csv({"a.csv", text});
  if (text.find('"') != text.npos || !whole.diagnostics.ok()) return;
  CsvRows rows({"a.csv", text});
  std::vector<const CsvRow*> others = {&whole.table.header};
  for (const CsvRow& row : whole.table.rows) others.push_back(&row);
  for (const CsvRow* other : others) {
    bool blank = true;
    for (const CsvCell& cell : other->cells) blank = blank && trimmed(cell.text).empty();
    if (blank) continue;
    require(rows.next());
    require(rows.line() == other->line && rows.cells() == other->cells.size());
    for (std::size_t i = 0; i < rows.cells(); ++i) require(rows.cell(i) == trimmed(other->cells[i].text));
  }
  require(!rows.next());
}

void fuzz_rows(std::string_view text) {
  CsvRows rows({"a.csv", text});
  std::size_t line = 0;
  while (rows.next()) {
    require(rows.line() > line && rows.cells() > 0);
    line = rows.line();
    for (std::size_t i = 0; i <= rows.cells(); ++i) require(is_within(rows.piece(i), text));
    require(rows.cell(rows.cells()).empty());
    for (const auto& broken : rows.broken()) require(is_within(broken.piece, text));
  }
  require_same_cells(text);
}

std::string cell(std::string_view text) {
  return csv_cell(std::string(text), ',') + ",";
}

// A list that was understood, written by somebody else, is understood in the same way.
void fuzz_marks(std::string_view text) {
  Diagnostics diagnostics;
  const std::vector<ListedPanel> panels = read_marks_list({"marks.csv", text}, diagnostics);
  (void)to_string(diagnostics);
  if (!diagnostics.ok()) return;
  std::string written = "date,meet,routine,event,element,judge,mark,base\n";
  for (const ListedPanel& panel : panels) {
    require(is_written_day(panel.date) && !panel.routine.empty() && is_within(panel.routine_piece, text));
    for (const ListedPanel::Line& line : panel.lines) {
      require(line.judges.size() <= static_cast<std::size_t>(most_seats));
      for (std::size_t seat = 0; seat < line.judges.size(); ++seat) {
        const auto& given = line.judges[seat];
        if (!given) continue;
        written += cell(panel.date) + cell(panel.meet) + cell(panel.routine) + cell(panel.event) +
                   cell(line.name) + std::to_string(seat + 1) + "," +
                   (given->mark ? given->mark->text() : "-") + (line.base ? ",yes" : ",") + "\n";
      }
    }
  }
  if (written.size() < 64 || panels.empty()) return;
  Diagnostics again;
  const std::vector<ListedPanel> same = read_marks_list({"written.csv", written}, again);
  require(again.ok() && same.size() == panels.size());
  for (std::size_t i = 0; i < panels.size(); ++i) {
    require(same[i].date == panels[i].date && same[i].meet == panels[i].meet &&
            same[i].routine == panels[i].routine && same[i].event == panels[i].event);
    require(same[i].lines.size() == panels[i].lines.size());
    for (std::size_t line = 0; line < same[i].lines.size(); ++line) {
      require(same[i].lines[line].base == panels[i].lines[line].base);
      require(same[i].lines[line].judges.size() == panels[i].lines[line].judges.size());
      for (std::size_t seat = 0; seat < same[i].lines[line].judges.size(); ++seat) {
        const auto &one = same[i].lines[line].judges[seat], &other = panels[i].lines[line].judges[seat];
        require(one.has_value() == other.has_value() && (!one || one->mark == other->mark));
      }
    }
  }
}

void fuzz_practice(std::string_view text) {
  Diagnostics diagnostics;
  const std::vector<ListedPractice> rows = read_practice_list({"marks.csv", text}, "Robin", diagnostics);
  (void)to_string(diagnostics);
  if (!diagnostics.ok()) return;
  std::string written = "trainee,session,date,meet,routine,event,element,mark,late\n";
  for (const ListedPractice& row : rows) {
    require(is_written_day(row.date) && row.session.size() == 20 && !row.trainee.empty());
    require(is_within(row.mark_piece, text) && is_within(row.line_piece, text));
    written += cell(row.trainee) + cell(row.session) + cell(row.date) + cell(row.meet) + cell(row.routine) +
               cell(row.event) + cell(row.line) + (row.mark ? row.mark->text() : "") +
               (row.late ? ",yes" : ",") + "\n";
  }
  Diagnostics again;
  const std::vector<ListedPractice> same = read_practice_list({"written.csv", written}, "", again);
  require(again.ok() && same.size() == rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    require(same[i].trainee == rows[i].trainee && same[i].session == rows[i].session);
    require(same[i].meet == rows[i].meet && same[i].routine == rows[i].routine &&
            same[i].line == rows[i].line);
    require(same[i].mark == rows[i].mark && same[i].late == rows[i].late);
  }
}

TableFiles with_gaps() {
  return {"made-up",
          "made-up/",
          {{"families.csv", "code,title\nspins,Spins\nthrusts,Thrusts\n"},
           {"parts.csv",
            "code,family,title,value,source,status\nSP-360,spins,\"Spin, full\",,book,published\r\n"
            "SP-720,spins,Spin of two,,book,published\nTH-1,thrusts,Thrust,0.7,book,published\n"}}};
}

// A list that was understood changes nothing when it comes again; one that was not changes nothing at all.
// Where no heading says which column holds the codes that is guessed, and a code that is known by then may
// change the guess.
void fuzz_fill(std::string_view text, const FillWish& wish) {
  const TableFiles before = with_gaps();
  const Filled once = fill(before, {"list.csv", text}, wish);
  (void)to_string(once.diagnostics);
  require(once.files.files.size() == before.files.size());
  require(once.files.files[0].text == before.files[0].text);
  if (!once.diagnostics.ok()) {
    require(once.files.files[1].text == before.files[1].text && once.filled.empty() && once.added.empty());
    return;
  }
  require(wish.family.empty() ? once.added.empty() : once.added.size() <= text.size());
  CsvRows rows({"list.csv", text});
  const bool headed = rows.next() && rows.cell(0) == "code";
  if (!headed && !wish.family.empty()) return;
  const Filled again = fill(once.files, {"list.csv", text}, wish);
  require(again.diagnostics.ok() && again.filled.empty() && again.added.empty());
  require(again.unchanged.size() == once.filled.size() + once.added.size() + once.unchanged.size());
  require(again.files.files[1].text == once.files.files[1].text);
  require(once.still_missing == again.still_missing && once.still_missing.size() + once.filled.size() >= 2);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
  FillWish wish;
  switch (data[0] % 5) {
    case 0:
      fuzz_rows(text);
      break;
    case 1:
      fuzz_marks(text);
      break;
    case 2:
      fuzz_practice(text);
      break;
    case 3:
      wish.overwrite = true;
      fuzz_fill(text, wish);
      break;
    default:
      wish.family = "thrusts";
      fuzz_fill(text, wish);
      break;
  }
  return 0;
}
