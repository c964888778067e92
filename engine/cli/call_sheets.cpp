#include "engine/cli/call_sheets.h"

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/messages.h"
#include "engine/files/read_sheets.h"
#include "engine/files/value_sets.h"
#include "tables/folder.h"

namespace landdrill::cli {
namespace {

std::string forced_set(const Call& call) {
  return has_option(call.command, "--set") ? std::string(call.given.value("--set")) : std::string();
}

}  // namespace

CallSheets::CallSheets(Call& call) : CallSheets(call, call.given.operands) {}

CallSheets::CallSheets(Call& call, std::vector<std::string> files)
    : values_(call),
      reader_(std::move(files), values_.of_sheets(),
              {[this, &call](const Trouble& trouble) { worst_ = worse(worst_, refuse(call, trouble)); },
               [this, &call](const ReadSet& set) { worst_ = worse(worst_, refuse_set(call, set)); }},
              forced_set(call)) {}

bool all_readable(Call& call, const std::vector<std::string>& files) {
  const auto troubles = unreadable(files);
  for (const Trouble& trouble : troubles) refuse(call, trouble);
  return troubles.empty();
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
