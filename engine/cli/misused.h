// A command line that cannot be followed: says so on standard error.
#pragma once

#include <string>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"

namespace landdrill::cli {

// Prints a mistake of the command line; Exit::usage.
Exit misused(Call& call, const std::string& mistake);

}  // namespace landdrill::cli
