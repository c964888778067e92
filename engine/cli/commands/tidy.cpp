#include "grammar/tidy.h"

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/files/read_sheets.h"
#include "engine/files/replace_file.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {
namespace {

Exit tidy_one(Call& call, const std::string& file) {
  const auto text = read_whole(file);
  if (!text) return refuse(call, text.error());
  const Tidied tidy = landdrill::tidy({shown(file), *text});
  if (!tidy.messages.ok()) {
    call.streams.say(to_string(tidy.messages));
    call.streams.say("landdrill: " + file + " is left as it is: mend it first\n");
    return Exit::errors;
  }
  if (call.given.has("--check")) {
    if (tidy.text == *text) return Exit::ok;
    call.streams.out.write(file + "\n");
    return Exit::errors;
  }
  if (!call.given.has("--write") || file == "-") {
    call.streams.out.write(tidy.text);
    return Exit::ok;
  }
  if (tidy.text == *text) return Exit::ok;
  if (const auto written = replace_file(file, tidy.text); !written) return refuse(call, written.error());
  call.streams.out.write(file + ": tidied\n");
  return Exit::ok;
}

}  // namespace

Exit tidy(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  Exit worst = Exit::ok;
  for (const std::string& file : call.given.operands) worst = worse(worst, tidy_one(call, file));
  return worst;
}

}  // namespace landdrill::cli
