#include "engine/cli/help.h"

#include <fmt/format.h>

#include "engine/cli/arguments.h"
#include "engine/cli/call.h"
#include "engine/cli/command_table.h"
#include "engine/cli/completions.h"
#include "engine/cli/exit.h"

namespace landdrill::cli {

Exit help(Call& call) {
  const std::vector<std::string>& words = call.given.operands;
  if (call.given.has("--markdown")) {
    call.streams.out.write(markdown());
  } else if (words.empty()) {
    call.streams.out.write(overview());
  } else if (const FoundCommand found = find_command(words);
             found.command != nullptr && found.words == words.size()) {
    call.streams.out.write(command_help(*found.command));
  } else if (words.size() == 1 && !group(words[0]).empty()) {
    call.streams.out.write(group_help(words[0]));
  } else {
    call.streams.say("landdrill help: " + unknown_command(words) + "\n");
    return Exit::usage;
  }
  return Exit::ok;
}

Exit man(Call& call) {
  call.streams.out.write(man_page(LANDDRILL_VERSION));
  return Exit::ok;
}

Exit completions(Call& call) {
  const auto script = completion_script(call.given.operands[0]);
  if (!script)
    return misused(call, fmt::format("found \"{}\"; expected bash, zsh or fish", call.given.operands[0]));
  call.streams.out.write(*script);
  return Exit::ok;
}

}  // namespace landdrill::cli
