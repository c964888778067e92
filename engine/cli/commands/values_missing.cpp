#include "engine/report/pages/values_missing.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/files/own_folder.h"
#include "engine/files/read_ahead.h"
#include "engine/files/read_set.h"
#include "engine/files/sheet_reader.h"
#include "engine/report/page.h"
#include "engine/routine/problems.h"
#include "engine/routine/resolve.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"

namespace landdrill::cli {
namespace {

// What to do about the gaps: a list for parts, one edit for anything else; in a copy when the set is not the
// coach's.
std::string advice(const std::vector<Gap>& gaps, const ReadSet& set) {
  const bool shipped = !set.folder.empty() && no_own_folder(set).has_value();
  const std::string name = shipped ? "my-set" : set.files.name;
  std::string text = "To fill them in:\n";
  if (shipped)
    text += fmt::format(
        "  landdrill values copy {} {}\n      a set of your own; name it in the sheet: values {}\n",
        set.files.name, name, name);
  const auto is_part = [](const Gap& gap) { return gap.table == "parts"; };
  if (std::any_of(gaps.begin(), gaps.end(), is_part))
    text += fmt::format(
        "  landdrill values fill {} LIST.csv --write\n      with a code and a value on each line of "
        "LIST.csv\n",
        name);
  const auto other = std::find_if_not(gaps.begin(), gaps.end(), is_part);
  if (other != gaps.end())
    text += fmt::format("  landdrill values edit {} {} \"{}\" {} VALUE\n", name, other->table, other->key,
                        other->column);
  return text;
}

Diagnostics without_gaps(const Diagnostics& all) {
  Diagnostics rest;
  for (const Diagnostic& one : all.list())
    if (one.problem != Problem::value_missing && severity_of(one.problem) == Severity::error) rest.add(one);
  return rest;
}

}  // namespace

Exit values_missing(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  CallSheets sheets(call);
  SheetReader& reader = sheets.reader();
  Messages messages(call.streams);
  Exit worst = Exit::ok;
  while (reader.next()) {
    const StreamSheet& sheet = reader.sheet();
    messages.add(without_gaps(sheet.messages()));
    if (!sheet.ok()) worst = Exit::errors;
    if (sheet.set == nullptr || sheet.without_set) continue;
    const std::vector<Gap>& gaps = sheet.gaps();
    report::Page page =
        report::values_missing_page({sheet.file(), std::string(sheet.title()), sheet.set->files.name, gaps});
    page.apart();
    if (!gaps.empty()) page.verbatim("", advice(gaps, *sheet.set));
    print_page(call, page);
  }
  messages.finish();
  return worse(worst, sheets.worst());
}

}  // namespace landdrill::cli
