#include "engine/report/pages/values_check.h"

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/page.h"
#include "engine/files/read_set.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {

Exit values_check(Call& call) {
  Values values(call);
  Exit worst = Exit::ok;
  for (const std::string& operand : call.given.operands) {
    const auto set = values.of_operand(operand);
    if (!set) {
      worst = worse(worst, refuse(call, set.error()));
      continue;
    }
    call.streams.say(to_string((*set)->loaded.diagnostics));
    print_page(call, report::values_check_page((*set)->files.name, (*set)->loaded));
    if (!(*set)->loaded.diagnostics.ok()) worst = worse(worst, Exit::errors);
  }
  return worst;
}

}  // namespace landdrill::cli
