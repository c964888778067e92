// A list of recorded marks as clubs keep them in a spreadsheet, one row a mark, gathered into panels.
//
//   date;meet;routine;element;judge;mark
//   2026-05-09;Tarn Open;Harbour Lights;2;1;7,25
//
//   read_marks_list(list, diagnostics)[0].lines[0].judges[0]->mark     // 7.25
//
// Columns are found by their names, in any order, forgivingly and in several languages: date, meet, routine,
// event (may be missing), element (its number, or an aspect of the whole routine; `Element 2` is 2), judge
// (1 is the first; or `J1`), mark (`-` or empty: the judge is missing), base (may be missing: yes where the
// base mark was given). Comma, semicolon or tab between cells, decimal point or comma. Other columns are not
// read, which is said, and those that would change the score, such as penalties, are refused. Knows nothing
// of routines and scales: the engine checks those.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/decimal.h"

namespace landdrill {

struct ListedPanel {
  struct Given {
    std::optional<Decimal> mark;  // empty: the judge is missing
    std::string_view piece;       // where it stands in the list
  };
  struct Line {
    std::string name;  // "2", or an aspect
    bool base = false;
    std::vector<std::optional<Given>> judges;  // by seat; a seat without a row is empty
    std::string_view piece;                    // the name's first place
  };
  std::string date, meet, routine, event;
  std::vector<Line> lines;                                              // in the order of the list
  std::string_view date_piece, meet_piece, routine_piece, event_piece;  // the date's where there is no meet
  bool says_base = false;                                               // the list has a column for it
};

constexpr int most_seats = 99;

// In the order in which panels first occur. Linear in the list. With errors the list is not to be used.
std::vector<ListedPanel> read_marks_list(const Source& list, Diagnostics& diagnostics);

// Whether the first line of a text is the heading of such a list, or of a trainee's.
bool looks_like_a_list(const Source& text);

// A list of a trainee's marks as she keeps them in a spreadsheet, one row a mark: what she gave for a line of
// a recorded panel.
//
//   trainee;session;date;meet;routine;element;mark
//   Robin;2026-05-10;2026-05-09;Tarn Open;Harbour Lights;2;7,25
//
//   read_practice_list(list, "", diagnostics)[0].mark      // 7.25
//
// Columns are found by their names, as in marks_list.h: trainee (may be missing when the caller says who),
// session (the day or the moment when she marked; may be missing: the day of the panel), date, meet, routine
// and event of the panel, element (its number, or an aspect), mark (`-` or empty: none), late (may be missing: yes
// where her time was up). Knows nothing of routines and scales.

struct ListedPractice {
  std::string trainee, session;                  // session: UTC, "2026-05-10T00:00:00Z"
  std::string date, meet, routine, event, line;  // of the panel
  std::optional<Decimal> mark;
  bool late = false;
  // Where it stands in the list; a column that is not there: where the routine stands, or the date.
  std::string_view date_piece, meet_piece, routine_piece, line_piece, mark_piece, session_piece;
};

// In the order of the list. `trainee`: of rows that do not say whose mark it is. With errors the list is not
// to be used.
std::vector<ListedPractice> read_practice_list(const Source& list, std::string_view trainee,
                                               Diagnostics& diagnostics);

// The name of an official in training, as it is typed, kept and compared.
//
//   *trainee_name("  Robin   Reed ")         // "Robin Reed"
//   trainee_name("Ro\x1bbin").error()        // found a control character, expected a name on one line
//   same_trainee("robin", "Robin")           // true

constexpr std::size_t longest_trainee_name = 80;  // characters

// Blanks at the ends are gone, those inside are one each.
tl::expected<std::string, Complaint> trainee_name(std::string_view typed);
// Whether two names differ in nothing but case, of any alphabet.
bool same_trainee(std::string_view one, std::string_view other);

}  // namespace landdrill
