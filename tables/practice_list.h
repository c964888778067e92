// A list of a trainee's marks as she keeps them in a spreadsheet, one row a mark: what she gave for a line of
// a recorded panel.
//
//   trainee;session;date;meet;routine;element;mark
//   Robin;2026-05-10;2026-05-09;Tarn Open;Harbour Lights;2;7,25
//
//   read_practice_list(list, "", diagnostics)[0].mark      // 7.25
//
// Columns are found by their names, as in marks_list.h: trainee (see trainee_name.h; may be missing when the caller
// says who), session (the day or the moment when she marked; may be missing: the day of the panel), date, meet, routine
// and event of the panel, element (its number, or an aspect), mark (`-` or empty: none), late (may be missing: yes
// where her time was up). Knows nothing of routines and scales.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/decimal.h"

namespace landdrill {

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

}  // namespace landdrill
