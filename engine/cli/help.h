// The command table as text: for the terminal, as the README's block, as manual page, as completions of a shell.
//
//   completion_script("bash")      // what bash reads to complete command lines of landdrill
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/cli/call.h"

namespace landdrill::cli {

// All commands, a line each.
std::string overview();
// The commands that start with one word, as `values` does.
std::string group_help(std::string_view word);
// One command: how it is used, what it does, operands, options, examples, exit codes.
std::string command_help(const Command& command);
// The block of the README.
std::string markdown();

// `text` in lines of at most `width` characters, each after `indent` blanks.
std::string wrapped(std::string_view text, std::size_t indent, std::size_t width = 80);

// The manual page: `landdrill man | man -l -`.
std::string man_page(std::string_view version);

// completions.cpp: the script for bash, zsh or fish; empty for a shell that is not known.
std::optional<std::string> completion_script(std::string_view shell);

}  // namespace landdrill::cli
