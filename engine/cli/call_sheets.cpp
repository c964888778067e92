#include "engine/cli/call_sheets.h"

#include <fmt/format.h>

#include <filesystem>

#include "engine/files/sheet_reader.h"
#include "engine/report/page.h"
#include "tables/folder.h"

namespace landdrill::cli {
namespace {

bool is_path(const std::string& operand) {
  return operand.find('/') != operand.npos || operand == "." || operand == "..";
}

std::vector<std::filesystem::path> folders_told(const Call& call) {
  const std::vector<std::string>& told = call.given.values("--values");
  return {told.begin(), told.end()};
}

}  // namespace

Values::Values(const Call& call)
    : folders_(folders_told(call)), season_(std::string(call.given.value("--season"))) {}

ValueSets& Values::of_sheets() {
  if (in_season()) return season_;
  return folders_;
}

Result<const ReadSet*> Values::of_operand(const std::string& operand) {
  return is_path(operand) ? folders_.of_path(operand) : of_sheets().of_sheet(operand, "-");
}

report::ValuesPlace values_place(const ReadSet& set) {
  report::ValuesPlace place{set.files.name, {}, set.season};
  if (!set.folder.empty()) place.folder = whole_path(set.folder);
  for (const std::filesystem::path& hidden : set.hidden) place.hidden.push_back(whole_path(hidden));
  return place;
}

report::Page with_place(report::Page page, const ReadSet& set) {
  put_values_place(page, values_place(set));
  return page;
}

Exit refuse_set(Call& call, const ReadSet& set) {
  call.streams.say(to_string(set.loaded.diagnostics));
  call.streams.say(
      fmt::format("landdrill: the value set {} cannot be used until these are mended\n", set.files.name));
  return Exit::errors;
}

CallSheets::CallSheets(Call& call) : CallSheets(call, call.given.operands) {}

CallSheets::CallSheets(Call& call, std::vector<std::string> files)
    : values_(call),
      reader_(std::move(files), values_.of_sheets(),
              {[this, &call](const Trouble& trouble) { worst_ = worse(worst_, refuse(call, trouble)); },
               [this, &call](const ReadSet& set) { worst_ = worse(worst_, refuse_set(call, set)); }},
              std::string(call.given.value("--set"))) {}

bool all_readable(Call& call, const std::vector<std::string>& files) {
  const auto troubles = unreadable(files);
  for (const Trouble& trouble : troubles) refuse(call, trouble);
  return troubles.empty();
}

Exit with_sheets(Call& call, CallSheets& sheets, const std::function<Exit(SheetReader&, Messages&)>& tell) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  Messages messages(call.streams);
  Exit worst = Exit::ok;
  while (call.streams.out.failure() == 0 && sheets.reader().next())
    worst = worse(worst, tell(sheets.reader(), messages));
  messages.finish();
  return worse(worst, sheets.worst());
}

OneRoutine::OneRoutine(Call& call, const std::string& file)
    : sheets_(call, {file}), exit_(read(call, file)) {}

Exit OneRoutine::read(Call& call, const std::string& file) {
  if (!all_readable(call, {file})) return Exit::environment;
  if (!sheets_.reader().next()) return worse(Exit::errors, sheets_.worst());
  if (sheets_.reader().more()) return misused(call, shown(file) + " holds several routines; expected one");
  if (sheets_.reader().sheet().ok()) return Exit::ok;
  Messages(call.streams).add(messages());
  return worse(Exit::errors, sheets_.worst());
}

}  // namespace landdrill::cli
