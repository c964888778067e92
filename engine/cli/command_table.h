// The one table of commands: help, the README block, the man page and the completions are all made from it.
//
//   find_command({"values", "show", "kingfisher-2026"}).command->words     // "values show"
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/cli/exit.h"

namespace landdrill::cli {

struct Call;  // call.h

// What a shell can offer for a word of the command line.
enum class Offers { nothing, files, folders, sets, tables, commands };

// `--panel NAME|DATE|none`, or a flag when `value` is empty.
struct OptionRow {
  std::string_view name;
  std::string_view value;
  std::string_view help;
  std::string_view choices = {};  // blanks between them; empty: anything
  Offers offers = Offers::nothing;
  bool repeatable = false;
  std::string_view also = {};  // another spelling
};

inline constexpr std::size_t any_number = 1'000'000'000;

// An operand: least and most are how many of it there may be.
struct OperandRow {
  std::string_view name;
  std::string_view help;
  std::size_t least = 1;
  std::size_t most = 1;
  Offers offers = Offers::nothing;
};

struct Example {
  std::string_view command;
  std::string_view says;
};

struct Command {
  std::string_view words;    // "values show"
  std::string_view summary;  // one line, no full stop
  std::string_view story;    // a paragraph or more for help and man page
  std::vector<OperandRow> operands;
  std::vector<const OptionRow*> options;
  std::vector<Example> examples;
  Exit (*run)(Call&);
  bool hidden = false;
};

const std::vector<Command>& commands();
// Those that help and completions name.
std::vector<const Command*> shown_commands();
// Exit codes as a table for help and man page: "0", "all is well".
std::span<const Example> exit_codes();

// Whether the command has the option that is spelled `--so`.
bool has_option(const Command& command, std::string_view name);

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

}  // namespace landdrill::cli
