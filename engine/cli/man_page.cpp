#include "engine/cli/man_page.h"

#include <fmt/format.h>

#include "engine/cli/command_table.h"

namespace landdrill::cli {
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
  while (!story.empty()) {
    const std::size_t end = std::min(story.find("\n\n"), story.size());
    text += fmt::format(".PP\n{}\n", escaped(story.substr(0, end)));
    story.remove_prefix(std::min(end + 2, story.size()));
  }
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

}  // namespace landdrill::cli
