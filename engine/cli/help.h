// The command table as text: for the terminal, and as the README's block.
#pragma once

#include <string>

#include "engine/cli/command_table.h"

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

// The manual page, made from the command table: `landdrill man | man -l -`.

std::string man_page(std::string_view version);

}  // namespace landdrill::cli
