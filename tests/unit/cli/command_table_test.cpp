// Help, manual page, README block and completions are made from the one command table, and leave nothing of
// it out.
#include "engine/cli/command_table.h"

#include <gtest/gtest.h>

#include <set>

namespace landdrill::cli {
namespace {

bool has(std::string_view text, std::string_view piece) {
  return text.find(piece) != text.npos;
}

std::string as_troff(std::string_view text) {
  std::string result;
  for (char c : text) result += c == '-' ? std::string("\\-") : std::string(1, c);
  return result;
}

TEST(CommandTable, NamesEveryCommandAndEveryOptionOfACommandOnce) {
  std::set<std::string_view> words;
  for (const Command& command : commands()) {
    EXPECT_TRUE(words.insert(command.words).second) << command.words;
    std::set<std::string_view> options;
    for (const OptionRow* option : command.options)
      EXPECT_TRUE(options.insert(option->name).second) << command.words << " " << option->name;
  }
}

TEST(CommandTable, GivesEveryCommandASummaryThatFitsALineAndAnExampleOfItself) {
  for (const Command& command : commands()) {
    EXPECT_FALSE(command.summary.empty()) << command.words;
    EXPECT_LE(command.summary.size(), 60u) << command.words;
    ASSERT_FALSE(command.examples.empty()) << command.words;
    for (const Example& example : command.examples)
      EXPECT_TRUE(has(example.command, "landdrill " + std::string(command.words))) << example.command;
  }
}

TEST(CommandTable, ShowsOnlyOptionsInExamplesThatTheCommandHas) {
  for (const Command& command : commands())
    for (const Example& example : command.examples)
      for (std::size_t at = example.command.find(" --"); at != example.command.npos;
           at = example.command.find(" --", at + 1)) {
        const std::string_view name =
            example.command.substr(at + 1, example.command.find_first_of(" =", at + 1) - at - 1);
        const bool known = std::any_of(command.options.begin(), command.options.end(),
                                       [&](auto* row) { return row->name == name; });
        EXPECT_TRUE(known) << example.command;
      }
}

TEST(CommandTable, FindsTheLongestWordsThatNameACommand) {
  const std::vector<std::string> two = {"values", "show", "x"}, one = {"score", "show"}, none = {"values"};
  EXPECT_EQ(find_command(two).command->words, "values show");
  EXPECT_EQ(find_command(two).words, 2u);
  EXPECT_EQ(find_command(one).command->words, "score");
  EXPECT_EQ(find_command(none).command, nullptr);
}

TEST(CommandTable, SpellsOutHowACommandIsUsed) {
  const std::vector<std::string> show = {"values", "show"};
  EXPECT_EQ(synopsis(*find_command(show).command), "landdrill values show SET [TABLE] [ROW...] [OPTION...]");
}

TEST(Help, NamesEveryCommandAndKeepsWithinEightyColumns) {
  const std::string text = overview();
  for (const Command& command : commands())
    EXPECT_EQ(has(text, "  " + std::string(command.words) + " "), !command.hidden);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    EXPECT_LE(end - at, 80u) << text.substr(at, end - at);
    at = end + 1;
  }
}

TEST(Help, NamesEveryOptionOfACommand) {
  for (const Command& command : commands())
    for (const OptionRow* option : command.options)
      EXPECT_TRUE(has(command_help(command), "  " + spelled(*option)))
          << command.words << " " << option->name;
}

TEST(ManPage, NamesEveryCommandAndEveryOption) {
  const std::string page = man_page("1.2.3");
  EXPECT_TRUE(has(page, "landdrill 1.2.3"));
  for (const Command& command : commands()) {
    if (command.hidden) continue;
    EXPECT_TRUE(has(page, ".SS \"" + as_troff(synopsis(command)))) << command.words;
    for (const OptionRow* option : command.options)
      EXPECT_TRUE(has(page, "\\fB" + as_troff(option->name))) << option->name;
  }
}

TEST(Completions, KnowEveryCommandAndEveryOptionInEveryShell) {
  for (const char* shell : {"bash", "zsh", "fish"}) {
    const std::string script = *completion_script(shell);
    for (const Command& command : commands()) {
      if (command.hidden) continue;
      EXPECT_TRUE(has(script, command.words.substr(command.words.find(' ') + 1)))
          << shell << " " << command.words;
      for (const OptionRow* option : command.options)
        EXPECT_TRUE(has(script, option->name.substr(2))) << shell << " " << option->name;
    }
  }
  EXPECT_FALSE(completion_script("tcsh").has_value());
}

TEST(Markdown, ListsEveryCommandOnceInATable) {
  std::size_t lines = 0, shown = 0;
  for (char c : markdown()) lines += c == '\n';
  for (const Command& command : commands()) shown += !command.hidden;
  EXPECT_EQ(lines, shown + 2);
}

}  // namespace
}  // namespace landdrill::cli
