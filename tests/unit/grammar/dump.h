// A tree as one line of text, written independently of the printer, so that parser tests are two columns.
//
//   dump of "parts a, b x2  # two"   // parts(a, b*2) #"# two"
#pragma once

#include <string>
#include <string_view>

#include "grammar/blocks.h"
#include "grammar/parse.h"

namespace landdrill::test {

std::string dump(const ast::Statement& statement);
std::string dump(const ast::Line& line);
// All lines of a text, " | " between them; "error" for a line in error.
std::string dump_text(std::string_view text);

// All messages of a text, after parse and assemble.
std::string messages(std::string_view text, std::string_view name = "a.sheet");

std::string read_file(const std::string& path);

}  // namespace landdrill::test
