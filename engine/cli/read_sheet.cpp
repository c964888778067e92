#include "engine/cli/read_sheet.h"

#include "engine/routine/problems.h"
#include "engine/score/objections.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "tables/marks_list.h"
#include "tables/problems.h"

namespace landdrill::cli {
namespace {

// False for what may only follow from a line that was not understood, and so is not in the tree.
bool stands_by_itself(const Diagnostic& one) {
  return severity_of(one.problem) == Severity::error && one.problem != Problem::missing_line &&
         one.problem != Problem::no_difficulty && one.problem != Problem::unknown_element;
}

}  // namespace

std::string_view ReadSheet::title() const {
  return assembled.sheets.empty() ? std::string_view() : assembled.sheets.front().routine.head.title.text;
}

void put_together(ReadSheet& sheet) {
  for (const Source& piece : sheet.pieces) assemble(piece, sheet.assembled);
  sheet.diagnostics.append(std::move(sheet.assembled.diagnostics));
  if (sheet.assembled.sheets.empty() && !sheet.diagnostics.ok() && looks_like_a_list(sheet.pieces.front())) {
    sheet.diagnostics = {};
    sheet.diagnostics.add(diagnostic_about(
        sheet.file(), {Problem::not_a_sheet, "a list of marks", "a sheet",
                       "`landdrill book add BOOK FILE.csv` keeps such a list; its name has to end in .csv"}));
    return;
  }
  if (sheet.assembled.sheets.empty() && sheet.diagnostics.ok())
    sheet.diagnostics.add(diagnostic_about(sheet.file(), {Problem::missing_line, "no routine in it",
                                                          "a line such as `routine \"Harbour Lights\"`"}));
}

void resolve_from(const ReadSet& set, ReadSheet& sheet) {
  sheet.set = &set;
  sheet.resolved = understood(sheet.assembled.sheets.front(), *set.loaded.set);
  if (sheet.diagnostics.ok()) return sheet.diagnostics.append(std::move(sheet.resolved.diagnostics));
  sheet.resolved.routine.reset();
  for (const Diagnostic& one : sheet.resolved.diagnostics.list())
    if (stands_by_itself(one)) sheet.diagnostics.add(one);
}

}  // namespace landdrill::cli
