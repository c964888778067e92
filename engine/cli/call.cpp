#include "engine/cli/call.h"

#include <fmt/format.h>

#include "engine/cli/exit.h"

namespace landdrill::cli {

Exit misused(Call& call, const std::string& mistake) {
  call.streams.say(fmt::format("landdrill {}: {}\n", call.command.words, mistake));
  return Exit::usage;
}

}  // namespace landdrill::cli
