#include "engine/cli/one_routine.h"

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/messages.h"
#include "engine/cli/misused.h"

namespace landdrill::cli {

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
