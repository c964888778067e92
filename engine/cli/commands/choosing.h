// What the commands of choosing share: printing what they found out, or saying why they could not.
//
//   return answered(call, one, report::train(call.given, one.routine(), one.messages()));
#pragma once

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/report/pages/choosing.h"

namespace landdrill::cli {

// Exit::ok with the page; Exit::usage for a mistake; Exit::errors where something is missing.
Exit answered(Call& call, const OneRoutine& one, const report::ChoosingAnswer& answer);
// The latter two.
Exit refused(Call& call, const report::Refused& why);

}  // namespace landdrill::cli
