// The one table of commands: help, the README block, the man page and the completions are all made from it, and a
// command line is read by it (arguments.cpp).
//
//   find_command({"values", "show", "kingfisher-2026"}).command->words     // "values show"
//   read_arguments(*find_command(line).command, {"duet.sheet", "--format", "json"}).given.operands  // {"duet.sheet"}
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/cli/call.h"
#include "engine/report/pages/asked.h"

namespace landdrill::cli {

const std::vector<Command>& commands();
// Those that help and completions name.
std::vector<const Command*> shown_commands();
// Exit codes as a table for help and man page: "0", "all is well".
std::span<const Example> exit_codes();

// "landdrill values show SET [TABLE [ROW...]]"
std::string synopsis(const Command& command);
// "FILE...", "[TABLE]"
std::string spelled(const OperandRow& operand);
// "--panel NAME|DATE|none"
std::string spelled(const OptionRow& option);

// The command that a command line starts with, and how many of its words name it.
struct FoundCommand {
  const Command* command = nullptr;
  std::size_t words = 0;
};
FoundCommand find_command(std::span<const std::string> line);
// The first word that several commands share: "values", "Value sets", "value sets: list, show, check,
// change".
struct Group {
  std::string_view word, heading, summary;
};
std::span<const Group> groups();
// The commands that start with `word`, as `values` does.
std::vector<const Command*> group(std::string_view word);

// What was given for which option, or one sentence about what is wrong with it.
struct Arguments {
  report::Asked given;
  bool wants_help = false;
  std::string mistake;  // "found --formt; ...", with its hint; empty when all is well
};

// `words`: what follows the command's own words.
Arguments read_arguments(const Command& command, std::span<const std::string> words);

// A command line that starts with no command: what is wrong and what is nearest.
std::string unknown_command(std::span<const std::string> line);

// The table as text (help.cpp): for the terminal, as the README's block, as manual page, as completions of a shell.

// All commands, a line each.
std::string overview();
std::string group_help(std::string_view word);
// One command: how it is used, what it does, operands, options, examples, exit codes.
std::string command_help(const Command& command);
// The block of the README.
std::string markdown();

// The manual page: `landdrill man | man -l -`.
std::string man_page(std::string_view version);

// completions.cpp: the script for bash, zsh or fish; empty for a shell that is not known.
std::optional<std::string> completion_script(std::string_view shell);

}  // namespace landdrill::cli
