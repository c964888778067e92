// The program, from its command line to its exit code. No exception leaves it.
#include <csignal>
#include <new>

#include "engine/cli/call.h"
#include "engine/cli/command_table.h"
#include "tables/decimal.h"

namespace landdrill::cli {
namespace {

constexpr std::string_view version_line = "landdrill " LANDDRILL_VERSION "\n";

Exit usage(Streams& streams, const std::string& mistake) {
  streams.say("landdrill: " + mistake + "\n");
  return Exit::usage;
}

Exit answer(Streams& streams, std::string_view text) {
  streams.out.write(text);
  return Exit::ok;
}

bool asks_for_help(std::string_view word) {
  return word == "--help" || word == "-h";
}

// A command line that names no command.
Exit without_command(Streams& streams, const std::vector<std::string>& line) {
  if (line.empty()) {
    streams.say(overview());
    return Exit::usage;
  }
  if (asks_for_help(line[0])) return answer(streams, overview());
  if (line[0] == "--version") return answer(streams, version_line);
  if (line.size() > 1 && !group(line[0]).empty() && asks_for_help(line[1]))
    return answer(streams, group_help(line[0]));
  if (line.size() == 1 && !group(line[0]).empty()) {
    streams.say(group_help(line[0]));
    return Exit::usage;
  }
  return usage(streams, unknown_command(line));
}

Exit run_line(Streams& streams, const std::vector<std::string>& line) {
  const FoundCommand found = find_command(line);
  if (found.command == nullptr) return without_command(streams, line);
  Arguments arguments = read_arguments(*found.command, std::span(line).subspan(found.words));
  if (arguments.wants_help) return answer(streams, command_help(*found.command));
  if (!arguments.mistake.empty()) {
    streams.say(std::string("landdrill ") + std::string(found.command->words) + ": " + arguments.mistake +
                "\n");
    return Exit::usage;
  }
  Call call{*found.command, std::move(arguments.given), streams};
  return found.command->run(call);
}

Exit guarded(Streams& streams, const std::vector<std::string>& line) {
  try {
    return run_line(streams, line);
  } catch (const std::bad_alloc&) {
    streams.say("landdrill: there is not enough memory for this\n");
  } catch (const Overflow& overflow) {
    streams.say(std::string("landdrill: ") + overflow.what() + " to stay exact\n" +
                "  hint: look at the difficulties of the sheet and the values and weights of the set\n");
    return Exit::errors;
  } catch (const std::exception& error) {
    streams.say(std::string("landdrill: a mistake of the program: ") + error.what() + "\n");
  }
  return Exit::environment;
}

}  // namespace
}  // namespace landdrill::cli

int main(int count, char** words) {
  using namespace landdrill::cli;
  // A reader that goes away is seen by write, not as a death.
  std::signal(SIGPIPE, SIG_IGN);
  Streams streams;
  const std::vector<std::string> line(words + (count > 0 ? 1 : 0), words + count);
  return static_cast<int>(streams.finish(guarded(streams, line)));
}
