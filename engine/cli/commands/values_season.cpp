#include <fmt/format.h>

#include <functional>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/report/pages/values.h"
#include "engine/season/season_sets.h"
#include "tables/edit_cell.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

namespace landdrill::cli {
namespace {

std::string_view season_file(const Call& call) {
  return call.given.value("--season");
}

Exit season_missing(Call& call) {
  return misused(
      call, fmt::format("--season FILE is missing\n  expected: {}", call.command.examples.front().command));
}

// Every command here works on a season file that has to be named.
Exit with_season(Call& call, Season::Mode mode, const std::function<Exit(Season&)>& work) {
  if (season_file(call).empty()) return season_missing(call);
  Values values(call);
  const auto season = values.season(mode);
  return season ? work(**season) : refuse(call, season.error());
}

std::string_view edit_word(EditRecord::Did did) {
  switch (did) {
    case EditRecord::Did::import:
      return "imported";
    case EditRecord::Did::replace:
      return "replaced";
    case EditRecord::Did::edit:
      return "edit";
    case EditRecord::Did::undo:
      return "undo";
    case EditRecord::Did::redo:
      return "redo";
  }
  return "";
}

report::HistoryLine history_line(const EditRecord& record, const std::vector<EditRecord>& all) {
  std::string why = record.why;
  if (record.did == EditRecord::Did::undo || record.did == EditRecord::Did::redo)
    why = fmt::format("{} of {}{}{}", edit_word(record.did), record.target, why.empty() ? "" : ": ", why);
  std::string table = record.table.empty() ? std::string(edit_word(record.did)) : record.table;
  return {record.number, record.at,    std::move(table), record.key,    record.column,
          record.before, record.after, std::move(why),   record.undone, is_companion(record, all)};
}

using HistoryStep = Result<RowChange> (*)(Season&, const std::string&);

Exit step(Call& call, HistoryStep take) {
  return with_season(call, Season::Mode::write, [&](Season& season) {
    const std::string& set = call.given.operands[0];
    const auto change = take(season, set);
    if (!change) return refuse(call, change.error());
    print_page(call, report::values_change_page(std::string(call.command.words), set, *change));
    return Exit::ok;
  });
}

// From a folder even though --season is given: the season file is where it goes.
Exit import_one(Call& call, Season& season, const std::string& operand) {
  Values values(call);
  const auto set = values.folders().of_sheet(operand, "-");
  if (!set) return refuse(call, set.error());
  const TableFiles& files = (*set)->files;
  if (!(*set)->loaded.set) {
    call.streams.say(to_string((*set)->loaded.diagnostics));
    call.streams.say(fmt::format("landdrill: {} is not imported: mend it first\n", files.name));
    return Exit::errors;
  }
  const auto done = season.import_set(files, call.given.value("--why"), call.given.has("--replace"));
  if (!done) return refuse(call, done.error());
  print_page(call,
             report::values_import_page(
                 {files.name, std::string(season_file(call)), done->rows, done->already_there}),
             call.given.operands.size() > 1);
  return Exit::ok;
}

}  // namespace

Exit values_import(Call& call) {
  return with_season(call, Season::Mode::create, [&](Season& season) {
    Exit worst = Exit::ok;
    for (const std::string& operand : call.given.operands)
      worst = worse(worst, import_one(call, season, operand));
    return worst;
  });
}

Exit values_export(Call& call) {
  return season_file(call).empty() ? season_missing(call) : values_copy(call);
}

Exit values_undo(Call& call) {
  return step(call, undo_change);
}
Exit values_redo(Call& call) {
  return step(call, redo_change);
}

Exit values_history(Call& call) {
  return with_season(call, Season::Mode::read, [&](Season& season) {
    const auto all = season.history(call.given.operands[0]);
    if (!all) return refuse(call, all.error());
    std::vector<report::HistoryLine> lines;
    for (const EditRecord& record : *all) lines.push_back(history_line(record, *all));
    print_page(call, report::values_history_page(call.given.operands[0], lines));
    return Exit::ok;
  });
}

Exit values_remove(Call& call) {
  return with_season(call, Season::Mode::write, [&](Season& season) {
    const std::string& set = call.given.operands[0];
    if (const auto done = season.remove_set(set); !done) return refuse(call, done.error());
    print_page(call, report::values_remove_page(set, season_file(call)));
    return Exit::ok;
  });
}

}  // namespace landdrill::cli
