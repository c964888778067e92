#include "engine/cli/command_table.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/command_rows.h"

namespace landdrill::cli {
namespace {

constexpr OptionRow markdown_option = {"--markdown", "", "the list of commands as the README shows it"};

constexpr Example exit_rows[] = {
    {"0", "all is well"},
    {"1", "a sheet or a table has errors (for check: or breaks a limit; for tidy --check: is not tidy)"},
    {"2", "the command line cannot be understood"},
    {"3", "a file, a folder, a season file or the output refused"},
};

constexpr Group grouped[] = {
    {"book", "Season book", "the season book: add, list, score, learn from it"},
    {"practice", "Practice for officials", "practice for officials: mark what a panel marked"},
    {"values", "Value sets", "value sets: list, show, check, change"},
};

const std::vector<Command> other_commands = {
    {"help",
     "this list, or everything about one command",
     "The same as --help after a command.",
     {{"COMMAND", "the command's words", 0, any_number, Offers::commands}},
     {&markdown_option},
     {{"landdrill help", "all commands"}, {"landdrill help values edit", "one command"}},
     help},
    {"man",
     "the manual page, for man",
     "",
     {},
     {},
     {{"landdrill man > landdrill.1", "as cmake --install does"}},
     man,
     true},
    {"completions",
     "what a shell needs to complete command lines",
     "",
     {{"SHELL", "bash, zsh or fish"}},
     {},
     {{"landdrill completions bash > landdrill", "as cmake --install does"}},
     completions,
     true},
};

}  // namespace

const std::vector<Command>& commands() {
  static const std::vector<Command> all = [] {
    std::vector<Command> rows;
    for (const auto* part : {&sheet_commands, &set_commands, &book_commands, &other_commands})
      rows.insert(rows.end(), part->begin(), part->end());
    return rows;
  }();
  return all;
}

std::vector<const Command*> shown_commands() {
  std::vector<const Command*> shown;
  for (const Command& command : commands())
    if (!command.hidden) shown.push_back(&command);
  return shown;
}

std::span<const Group> groups() {
  return grouped;
}

std::span<const Example> exit_codes() {
  return exit_rows;
}

std::string spelled(const OperandRow& operand) {
  std::string name(operand.name);
  if (operand.most > 1) name += "...";
  return operand.least == 0 ? "[" + name + "]" : name;
}

std::string spelled(const OptionRow& option) {
  return option.value.empty() ? std::string(option.name) : fmt::format("{} {}", option.name, option.value);
}

std::string synopsis(const Command& command) {
  std::string line = fmt::format("landdrill {}", command.words);
  for (const OperandRow& operand : command.operands) line += " " + spelled(operand);
  if (!command.options.empty()) line += " [OPTION...]";
  return line;
}

FoundCommand find_command(std::span<const std::string> line) {
  for (std::size_t words = std::min<std::size_t>(2, line.size()); words > 0; --words) {
    const std::string wanted = words == 2 ? line[0] + " " + line[1] : line[0];
    for (const Command& command : commands())
      if (command.words == wanted) return {&command, words};
  }
  return {};
}

std::vector<const Command*> group(std::string_view word) {
  std::vector<const Command*> found;
  for (const Command& command : commands())
    if (command.words.starts_with(word) && command.words.size() > word.size() &&
        command.words[word.size()] == ' ')
      found.push_back(&command);
  return found;
}

}  // namespace landdrill::cli
