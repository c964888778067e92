#include "engine/report/pages/train.h"

#include "engine/cli/call.h"
#include "engine/cli/choosing.h"
#include "engine/cli/exit.h"
#include "engine/cli/one_routine.h"

namespace landdrill::cli {

Exit train(Call& call) {
  const OneRoutine one(call, call.given.operands.front());
  return one ? answered(call, one, report::train(call.given, one.routine(), one.messages())) : one.exit();
}

}  // namespace landdrill::cli
