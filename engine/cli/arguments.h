// The words of a command line -> what was given for which option, or one sentence about what is wrong with
// them.
//
//   read_arguments(*find_command(line).command, {"duet.sheet", "--format", "json"})
//   // operands {"duet.sheet"}
#pragma once

#include <span>
#include <string>

#include "engine/cli/call.h"
#include "engine/cli/command_table.h"

namespace landdrill::cli {

struct Arguments {
  report::Asked given;
  bool wants_help = false;
  std::string mistake;  // "found --formt; ...", with its hint; empty when all is well
};

// `words`: what follows the command's own words.
Arguments read_arguments(const Command& command, std::span<const std::string> words);

// A command line that starts with no command: what is wrong and what is nearest.
std::string unknown_command(std::span<const std::string> line);

}  // namespace landdrill::cli
