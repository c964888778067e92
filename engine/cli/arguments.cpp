#include <fmt/format.h>
#include <sys/stat.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cctype>

#include "engine/cli/call.h"
#include "engine/cli/command_table.h"
#include "engine/cli/output.h"
#include "engine/report/pages/asked.h"
#include "engine/report/sentences.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

bool is_file(const std::string& name) {
  struct stat seen {};
  return stat(name.c_str(), &seen) == 0;
}

// The command that has the option which this one lacks: `tidy` for --write.
std::string owner_of(std::string_view name) {
  for (const Command& command : commands())
    for (const OptionRow* option : command.options)
      if (option->name == name) return fmt::format("{} belongs to `landdrill {}`", name, command.words);
  return {};
}

std::string unknown_option(const Command& command, const std::string& word) {
  const std::string name = word.substr(0, word.find('='));
  std::vector<std::string_view> known = {"--help"};
  for (const OptionRow* option : command.options) known.push_back(option->name);
  std::string hint = words::nearest_hint(name, known);
  if (hint.empty()) hint = owner_of(name);
  if (hint.empty()) hint = fmt::format("`landdrill {} --help` lists the options", command.words);
  return report::with_hint(fmt::format("found {}; expected an option of `landdrill {}`", name, command.words),
                           hint);
}

// "text, json or csv"
std::string one_of(std::string_view choices) {
  return report::all_of(pieces(choices, " "), " or ");
}

bool is_choice(const OptionRow& option, std::string_view value) {
  return option.choices.empty() ||
         fmt::format(" {} ", option.choices).find(fmt::format(" {} ", value)) != std::string::npos;
}

std::string wrong_choice(const Command& command, const report::Asked& given) {
  for (const OptionRow* option : command.options)
    for (const std::string& value : given.values(option->name))
      if (!option->value.empty() && (value.empty() || !is_choice(*option, value)))
        return fmt::format("found {} \"{}\"; expected {}", option->name, value,
                           option->choices.empty() ? std::string(option->value) : one_of(option->choices));
  return {};
}

std::string wrong_number_of_operands(const Command& command, std::span<const std::string> operands) {
  std::size_t least = 0, most = 0;
  for (const OperandRow& row : command.operands) {
    if (operands.size() < least + row.least)
      return fmt::format("{} is missing: {}\n  expected: {}", row.name, row.help, synopsis(command));
    least += row.least;
    most += row.most;
  }
  if (operands.size() <= most) return {};
  return fmt::format("found \"{}\" after everything that was expected\n  expected: {}", operands[most],
                     synopsis(command));
}

// What CLI11 could not place: operands, and options that the command does not have.
std::string sort_out(const Command& command, const std::vector<std::string>& rest,
                     std::vector<std::string>& operands) {
  bool only_operands = false;
  for (const std::string& word : rest) {
    const bool negative = word.size() > 1 && std::isdigit(static_cast<unsigned char>(word[1]));
    if (!only_operands && word == "--")
      only_operands = true;
    else if (!only_operands && word.size() > 1 && word[0] == '-' && !negative)
      return unknown_option(command, word);
    else
      operands.push_back(word);
  }
  return {};
}

// One option of the table as CLI11 knows it.
std::string names_of(const OptionRow& option) {
  return option.also.empty() ? std::string(option.name) : fmt::format("{},{}", option.name, option.also);
}

void declare(CLI::App& app, const OptionRow& option, std::vector<std::string>& values) {
  if (option.value.empty())
    app.add_flag_callback(names_of(option), [&values] { values.assign(1, "yes"); });
  else
    app.add_option(names_of(option), values)
        ->expected(1)
        ->allow_extra_args(false)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

// "values shwo": the nearest by the second word alone, which the first would outweigh.
std::string unknown_in_group(std::span<const std::string> line) {
  const std::string wanted = line.size() > 1 ? line[0] + " " + line[1] : line[0];
  std::vector<std::string_view> seconds;
  for (const Command* command : group(line[0])) seconds.push_back(command->words.substr(line[0].size() + 1));
  std::string hint = line.size() > 1 ? words::nearest_hint(line[1], seconds).words : std::string();
  if (hint.empty()) hint = fmt::format("`landdrill help {}` lists them", line[0]);
  return report::with_hint(fmt::format("found \"{}\"; expected one of the {} commands", wanted, line[0]),
                           hint);
}

const OptionRow* option_called(const Command& command, std::string_view name) {
  for (const OptionRow* option : command.options)
    if (option->name == name || (!option->also.empty() && option->also == name)) return option;
  return nullptr;
}

// "--format" as the last word; anything else in the words of CLI11.
std::string unparsable(const Command& command, std::span<const std::string> words, const std::string& why) {
  const OptionRow* last = words.empty() ? nullptr : option_called(command, words.back());
  if (last != nullptr && !last->value.empty())
    return fmt::format("found {} without a value; expected {}", last->name, spelled(*last));
  return report::with_hint(why, fmt::format("`landdrill {} --help` shows how it is used", command.words));
}

std::string flag_with_value(const Command& command, std::span<const std::string> words) {
  for (const std::string& word : words) {
    if (word == "--") break;
    const std::size_t sign = word.find('=');
    const OptionRow* option = sign == word.npos ? nullptr : option_called(command, word.substr(0, sign));
    if (option != nullptr && option->value.empty())
      return fmt::format("found {}; {} takes no value", word, option->name);
  }
  return {};
}

}  // namespace

Arguments read_arguments(const Command& command, std::span<const std::string> words) {
  Arguments result{report::Asked(command.words), false, {}};
  CLI::App app;
  app.set_help_flag();
  app.allow_extras();
  app.add_flag("--help,-h", result.wants_help);
  std::vector<std::vector<std::string>> values(command.options.size());
  for (std::size_t i = 0; i < values.size(); ++i) declare(app, *command.options[i], values[i]);
  try {
    app.parse(std::vector<std::string>(words.rbegin(), words.rend()));
  } catch (const CLI::ParseError& error) {
    result.mistake = unparsable(command, words, error.what());
    return result;
  }
  for (std::size_t i = 0; i < values.size(); ++i)
    result.given.add(command.options[i]->name, std::move(values[i]));
  if (result.wants_help) return result;
  result.mistake = flag_with_value(command, words);
  if (result.mistake.empty()) result.mistake = sort_out(command, app.remaining(), result.given.operands);
  if (result.mistake.empty()) result.mistake = wrong_choice(command, result.given);
  if (result.mistake.empty()) result.mistake = wrong_number_of_operands(command, result.given.operands);
  return result;
}

std::string unknown_command(std::span<const std::string> line) {
  const std::string& word = line[0];
  if (!group(word).empty()) return unknown_in_group(line);
  if (word.starts_with('-'))
    return report::with_hint(fmt::format("found {}; expected a command", word),
                             "options go after the command");
  std::vector<std::string_view> known;
  for (const Command* command : shown_commands()) known.push_back(command->words);
  std::string hint = words::nearest_hint(word, known);
  if (is_file(word)) hint = fmt::format("`landdrill score {}` scores it", word);
  if (hint.empty()) hint = "`landdrill help` lists the commands";
  return report::with_hint(fmt::format("found \"{}\"; expected a command", word), hint);
}

}  // namespace landdrill::cli
