#include "engine/cli/one_routine.h"

#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/report/pages/price_wish.h"

namespace landdrill::cli {

OneRoutine::OneRoutine(Call& call, const std::string& file) : reader_(call, {file}), exit_(read(call, file)) {
  ready_ = exit_ == Exit::ok;
}

Exit OneRoutine::read(Call& call, const std::string& file) {
  if (!all_readable(call, {file})) return Exit::environment;
  if (!reader_.next()) return worse(Exit::errors, reader_.worst());
  if (reader_.more()) return misused(call, shown(file) + " holds several routines; expected one");
  if (!sheet().ok()) {
    Messages(call.streams).add(sheet().diagnostics);
    return worse(Exit::errors, reader_.worst());
  }
  price_ = report::whole_price_wish(call.given, routine());
  return price_.mistake.empty() ? Exit::ok : misused(call, price_.mistake);
}

}  // namespace landdrill::cli
