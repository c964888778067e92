#include "engine/report/pages/explain.h"

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"

namespace landdrill::cli {

Exit explain(Call& call) {
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const report::Answer answer = report::explain(call.given, one.routine());
  if (!answer) return misused(call, answer.error());
  print_page(call, *answer);
  return Exit::ok;
}

}  // namespace landdrill::cli
