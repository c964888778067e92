#include "engine/cli/choosing.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/report/width.h"

namespace landdrill::cli {

Exit answered(Call& call, const OneRoutine& one, const report::ChoosingAnswer& answer) {
  if (!answer) return refused(call, answer.error());
  print_page(call, with_place(*answer, one.values()));
  return Exit::ok;
}

Exit refused(Call& call, const report::Refused& why) {
  if (!why.mistake.empty()) return misused(call, why.mistake);
  std::string text =
      fmt::format("landdrill {}: something is missing in \"{}\":\n", call.command.words, why.title);
  for (const std::string& obstacle : why.missing)
    text += report::paragraph("  - ", report::plain(obstacle), 80);
  call.streams.say(text);
  return Exit::errors;
}

}  // namespace landdrill::cli
