// Completions for bash, zsh and fish, made from the command table.
#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/call.h"
#include "engine/cli/command_table.h"
#include "tables/columns.h"

namespace landdrill::cli {
namespace {

// The names of the value sets, asked of the program itself.
constexpr std::string_view ask_for_sets =
    "landdrill values list --format csv 2>/dev/null | tail -n +2 | cut -d, -f1";

std::string first_word(std::string_view words) {
  return std::string(words.substr(0, words.find(' ')));
}
std::string second_word(std::string_view words) {
  return words.find(' ') == words.npos ? "" : std::string(words.substr(words.find(' ') + 1));
}

std::string summary_of(std::string_view word, const Command& command) {
  for (const Group& one : groups())
    if (one.word == word) return std::string(one.summary);
  return std::string(command.summary);
}

// What stands for itself after the program's name: commands of one word, and each group once.
std::vector<std::pair<std::string, std::string>> first_words() {
  std::vector<std::pair<std::string, std::string>> found;
  for (const Command* command : shown_commands()) {
    const std::string word = first_word(command->words);
    const bool known =
        std::any_of(found.begin(), found.end(), [&](const auto& one) { return one.first == word; });
    if (!known) found.emplace_back(word, summary_of(word, *command));
  }
  return found;
}

std::string table_names() {
  std::string names;
  for (const Table& table : value_tables())
    names += std::string(names.empty() ? "" : " ") + std::string(table.name);
  return names;
}

// ---- bash ----

std::string bash_offer(Offers offers, std::string_view choices = {}) {
  if (!choices.empty()) return fmt::format("COMPREPLY=($(compgen -W \"{}\" -- \"$word\"))", choices);
  switch (offers) {
    case Offers::folders:
      return "COMPREPLY=($(compgen -d -- \"$word\"))";
    case Offers::sets:
      return fmt::format("COMPREPLY=($(compgen -W \"$({})\" -- \"$word\") $(compgen -d -- \"$word\"))",
                         ask_for_sets);
    case Offers::tables:
      return fmt::format("COMPREPLY=($(compgen -W \"{}\" -- \"$word\"))", table_names());
    default:
      return ":";
  }
}

std::string bash_command(const Command& command) {
  std::string options = "--help", taking_value, operands, values;
  for (const OptionRow* option : command.options) {
    options += fmt::format(" {}", option->name);
    if (option->value.empty()) continue;
    taking_value += fmt::format(" {} ", option->name);
    values +=
        fmt::format("        {}) {}; return ;;\n", option->name, bash_offer(option->offers, option->choices));
  }
  std::size_t place = 0;
  for (const OperandRow& row : command.operands)
    operands += fmt::format("        {}) {} ;;\n", row.most > 1 ? "*" : std::to_string(place++),
                            bash_offer(row.offers));
  return fmt::format(
      "    \"{}\")\n      case $before in\n{}      esac\n      if [[ $word == -* ]]; then "
      "COMPREPLY=($(compgen -W \"{}\" -- "
      "\"$word\")); return; fi\n      _landdrill_place \"{}\" $from\n      case $place in\n{}      esac ;;\n",
      command.words, values, options, taking_value, operands);
}

std::string bash_script() {
  std::string script =
      "# bash completion for landdrill\n"
      "_landdrill_place() {  # how many operands stand before the word that is typed\n"
      "  local i skip=0\n  place=0\n"
      "  for ((i = $2; i < COMP_CWORD; i++)); do\n"
      "    if ((skip)); then skip=0; continue; fi\n"
      "    case ${COMP_WORDS[i]} in\n"
      "      -?*) [[ $1 == *\" ${COMP_WORDS[i]} \"* ]] && skip=1 ;;\n"
      "      *) place=$((place + 1)) ;;\n"
      "    esac\n  done\n}\n"
      "_landdrill() {\n"
      "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]} "
      "from=2 place\n"
      "  COMPREPLY=()\n";
  std::string firsts;
  for (const auto& [word, summary] : first_words()) firsts += word + " ";
  script += fmt::format(
      "  if ((COMP_CWORD == 1)); then COMPREPLY=($(compgen -W \"{}\" -- \"$word\")); return; fi\n", firsts);
  for (const Group& of : groups()) {
    std::string seconds;
    for (const Command* command : group(of.word)) seconds += second_word(command->words) + " ";
    script += fmt::format(
        "  if [[ $command == {0} ]]; then\n    if ((COMP_CWORD == 2)); then COMPREPLY=($(compgen -W \"{1}\" "
        "-- "
        "\"$word\")); return; fi\n    command=\"{0} ${{COMP_WORDS[2]}}\" from=3\n  fi\n",
        of.word, seconds);
  }
  script += "  case $command in\n";
  for (const Command* command : shown_commands()) script += bash_command(*command);
  return script + "  esac\n}\ncomplete -o default -F _landdrill landdrill\n";
}

// ---- zsh ----

std::string zsh_quoted(std::string_view text, std::string_view special) {
  std::string result;
  for (char c : text) {
    if (special.find(c) != special.npos) result += '\\';
    result += c == '\'' ? std::string("'\\''") : std::string(1, c);
  }
  return result;
}

std::string zsh_action(Offers offers, std::string_view choices = {}) {
  if (!choices.empty()) return fmt::format("({})", choices);
  switch (offers) {
    case Offers::files:
      return "_files";
    case Offers::folders:
      return "_files -/";
    case Offers::sets:
      return "_landdrill_sets";
    case Offers::tables:
      return fmt::format("({})", table_names());
    default:
      return " ";
  }
}

std::string zsh_command(const Command& command) {
  std::string text = fmt::format("    '{}') _arguments '--help[this text]'", command.words);
  for (const OptionRow* option : command.options) {
    text += fmt::format(" \\\n      '{}{}[{}]", option->repeatable ? "*" : "", option->name,
                        zsh_quoted(option->help, "[]:"));
    if (!option->value.empty())
      text += fmt::format(":{}:{}", option->value, zsh_action(option->offers, option->choices));
    text += "'";
  }
  for (const OperandRow& row : command.operands)
    text += fmt::format(" \\\n      '{}:{}:{}'",
                        row.most > 1     ? "*"
                        : row.least == 0 ? ":"
                                         : "",
                        zsh_quoted(row.name, ":"), zsh_action(row.offers));
  return text + " ;;\n";
}

std::string zsh_group(const Group& of) {
  std::string seconds;
  for (const Command* command : group(of.word))
    seconds += fmt::format(" '{}:{}'", second_word(command->words), zsh_quoted(command->summary, ":"));
  return fmt::format(
      "  if [[ $command == {0} ]]; then\n"
      "    if (( CURRENT == 3 )); then choices=({1})\n      _describe command choices; return; fi\n"
      "    command=\"{0} $words[3]\"; shift words; (( CURRENT-- ))\n  fi\n",
      of.word, seconds);
}

std::string zsh_script() {
  std::string firsts, seconds, cases;
  for (const auto& [word, summary] : first_words())
    firsts += fmt::format(" '{}:{}'", word, zsh_quoted(summary, ":"));
  for (const Group& of : groups()) seconds += zsh_group(of);
  for (const Command* command : shown_commands()) cases += zsh_command(*command);
  return fmt::format(
      "#compdef landdrill\n"
      "_landdrill_sets() {{\n  local -a sets\n  sets=(${{(f)\"$({})\"}})\n  compadd -a sets\n  _files "
      "-/\n}}\n"
      "_landdrill() {{\n  local -a choices\n  local command=$words[2]\n"
      "  if (( CURRENT == 2 )); then choices=({})\n    _describe command choices; return; fi\n"
      "{}"
      "  shift words; (( CURRENT-- ))\n  case $command in\n{}  esac\n}}\n_landdrill \"$@\"\n",
      ask_for_sets, firsts, seconds, cases);
}

// ---- fish ----

std::string fish_quoted(std::string_view text) {
  std::string result = "'";
  for (char c : text) result += c == '\'' || c == '\\' ? std::string("\\") + c : std::string(1, c);
  return result + "'";
}

std::string fish_condition(const Command& command) {
  const std::string first = first_word(command.words), second = second_word(command.words);
  if (!second.empty())
    return fmt::format("'__fish_seen_subcommand_from {}; and __fish_seen_subcommand_from {}'", first, second);
  std::string of_groups;
  for (const Group& of : groups()) of_groups += fmt::format(" {}", of.word);
  return fmt::format("'__fish_seen_subcommand_from {}; and not __fish_seen_subcommand_from{}'", first,
                     of_groups);
}

std::string fish_command(const Command& command) {
  const std::string when = fish_condition(command);
  std::string text;
  for (const OptionRow* option : command.options) {
    text += fmt::format("complete -c landdrill -n {} -l {} -d {}", when, option->name.substr(2),
                        fish_quoted(option->help));
    if (!option->value.empty()) text += option->offers == Offers::nothing ? " -x" : " -r";
    if (!option->choices.empty()) text += fmt::format(" -a {}", fish_quoted(option->choices));
    if (option->offers == Offers::sets)
      text += fmt::format(" -a {}", fish_quoted(fmt::format("({})", ask_for_sets)));
    text += "\n";
  }
  for (const OperandRow& row : command.operands) {
    if (row.offers == Offers::sets)
      text += fmt::format("complete -c landdrill -n {} -a {}\n", when,
                          fish_quoted(fmt::format("({})", ask_for_sets)));
    if (row.offers == Offers::tables)
      text += fmt::format("complete -c landdrill -n {} -a {}\n", when, fish_quoted(table_names()));
  }
  return text;
}

std::string fish_group(const Group& of) {
  std::string text, seconds;
  for (const Command* command : group(of.word)) seconds += " " + second_word(command->words);
  for (const Command* command : group(of.word))
    text += fmt::format(
        "complete -c landdrill -f -n '__fish_seen_subcommand_from {}; and not "
        "__fish_seen_subcommand_from{}' -a {} -d {}\n",
        of.word, seconds, second_word(command->words), fish_quoted(command->summary));
  return text;
}

std::string fish_script() {
  std::string text = "# fish completion for landdrill\n";
  for (const auto& [word, summary] : first_words())
    text += fmt::format("complete -c landdrill -f -n __fish_use_subcommand -a {} -d {}\n", word,
                        fish_quoted(summary));
  for (const Group& of : groups()) text += fish_group(of);
  for (const Command* command : shown_commands()) text += fish_command(*command);
  return text;
}

}  // namespace

std::optional<std::string> completion_script(std::string_view shell) {
  if (shell == "bash") return bash_script();
  if (shell == "zsh") return zsh_script();
  if (shell == "fish") return fish_script();
  return std::nullopt;
}

}  // namespace landdrill::cli
