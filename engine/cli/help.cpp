// The command table as text.
#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/command_table.h"
#include "engine/report/width.h"

namespace landdrill::cli {
namespace {

constexpr int help_width = 80;

// Two columns: what is typed, and what it means, wrapped under itself.
std::string row(std::string_view typed, std::string_view means, std::size_t column) {
  if (typed.size() + 4 > column)
    return fmt::format("  {}\n{}", typed, report::paragraph(std::string(column, ' '), means, help_width));
  return report::paragraph(fmt::format("  {:<{}}", typed, column - 2), means, help_width);
}

std::string wrapped(std::string_view text) {
  std::string result;
  for (const std::string& line : pieces(text, "\n")) result += report::paragraph("", line, help_width);
  return result;
}

std::string command_rows(const std::vector<const Command*>& rows) {
  std::string text;
  for (const Command* command : rows) text += row(command->words, command->summary, 20);
  return text;
}

std::vector<const Command*> in_no_group() {
  std::vector<const Command*> found;
  for (const Command* command : shown_commands())
    if (command->words.find(' ') == std::string_view::npos) found.push_back(command);
  return found;
}

std::string rows_of_groups() {
  std::string text;
  for (const Group& one : groups())
    text += fmt::format("\n{}\n", one.heading) + command_rows(group(one.word));
  return text;
}

std::string operands_and_options(const Command& command) {
  std::string text;
  for (const OperandRow& operand : command.operands) text += row(spelled(operand), operand.help, 24);
  if (!text.empty()) text += "\n";
  for (const OptionRow* option : command.options) text += row(spelled(*option), option->help, 24);
  return text + row("--help", "this text", 24);
}

std::string examples(const Command& command) {
  std::string text = "\nExamples\n";
  for (const Example& example : command.examples)
    text += fmt::format("  {}\n      {}\n", example.command, example.says);
  return text;
}

std::string exit_section() {
  std::string text = "\nEnds with\n";
  for (const Example& code : exit_codes()) text += row(code.command, code.says, 6);
  return text;
}

}  // namespace

std::string overview() {
  return "landdrill works a routine's score out on dry land.\n\nSheets\n" + command_rows(in_no_group()) +
         rows_of_groups() + "\nStart with\n  landdrill score FILE\n  landdrill help COMMAND\n" +
         exit_section() +
         "\nA score is an estimate: only the competition's officials give marks. That a\nroutine is priced "
         "does not say "
         "that anyone can safely swim it.\n";
}

std::string group_help(std::string_view word) {
  return fmt::format("landdrill {} ...\n\n", word) + command_rows(group(word)) +
         fmt::format("\n`landdrill help {} COMMAND` says more about one of them.\n", word);
}

std::string command_help(const Command& command) {
  std::string text = wrapped(synopsis(command)) + fmt::format("\n  {}\n", command.summary);
  if (!command.story.empty()) text += "\n" + wrapped(command.story);
  return text + "\n" + operands_and_options(command) + examples(command) + exit_section();
}

std::string markdown() {
  std::string text = "| Command | What it does |\n|---|---|\n";
  for (const Command* command : shown_commands()) {
    std::string line = fmt::format("landdrill {}", command->words);
    for (const OperandRow& operand : command->operands) line += " " + spelled(operand);
    text += fmt::format("| `{}` | {} |\n", line, command->summary);
  }
  return text;
}

namespace {

// What troff would take for its own is spelled out; lines that start with a point or a quotation mark get a
// `\&`.
std::string escaped(std::string_view text) {
  std::string result;
  bool at_start = true;
  for (char c : text) {
    if (at_start && (c == '.' || c == '\'')) result += "\\&";
    if (c == '\\')
      result += "\\e";
    else if (c == '-')
      result += "\\-";
    else if (c == '`')
      result += "\\(ga";
    else if (c == '\'')
      result += "\\(aq";
    else
      result += c;
    at_start = c == '\n';
  }
  return result;
}

std::string paragraphs(std::string_view story) {
  std::string text;
  for (const std::string& one : pieces(story, "\n\n")) text += fmt::format(".PP\n{}\n", escaped(one));
  return text;
}

std::string tagged(std::string_view tag, std::string_view meaning) {
  return fmt::format(".TP\n\\fB{}\\fR\n{}\n", escaped(tag), escaped(meaning));
}

std::string one_command(const Command& command) {
  std::string text = fmt::format(".SS \"{}\"\n{}\n", escaped(synopsis(command)), escaped(command.summary));
  text += paragraphs(command.story);
  for (const OperandRow& operand : command.operands) text += tagged(spelled(operand), operand.help);
  for (const OptionRow* option : command.options) text += tagged(spelled(*option), option->help);
  for (const Example& example : command.examples)
    text += fmt::format(".PP\n{}:\n.PP\n.RS 4\n.nf\n{}\n.fi\n.RE\n", escaped(example.says),
                        escaped(example.command));
  return text;
}

}  // namespace

std::string man_page(std::string_view version) {
  std::string text = fmt::format(".TH LANDDRILL 1 \"\" \"landdrill {}\" \"User Commands\"\n", version);
  text += ".SH NAME\nlanddrill \\- works a routine's score out on dry land\n.SH SYNOPSIS\n";
  for (const Command* command : shown_commands())
    text += fmt::format(".br\n{}\n", escaped(synopsis(*command)));
  text += ".SH COMMANDS\n";
  for (const Command* command : shown_commands()) text += one_command(*command);
  text += ".SH EXIT STATUS\n";
  for (const Example& code : exit_codes()) text += tagged(code.command, code.says);
  text += ".SH ENVIRONMENT\n";
  text += tagged("LANDDRILL_VALUES", "A folder to look for value sets in.");
  text += tagged("NO_COLOR", "When set and not empty, no colour unless --colour always asks for it.");
  text +=
      ".SH NOTES\nA score is an estimate: only the competition's officials give marks. That a routine is "
      "priced does "
      "not say that anyone can safely swim it.\n";
  return text;
}

// The commands that print these.

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
