// Lines -> text: the inverse of parse, tidied. Comments are kept.
//
//   print(parse({"a", "TEMPO   128 # fast\n"}).lines)    // "tempo    128  # fast\n"
//
// Laws: parse(print(lines)) has equal statements and comments; print of that is the same text again.
#pragma once

#include <string>

#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill {

// Two spaces of indentation a level, keywords lower case, keyword and argument columns aligned, numbers with
// a decimal point, quotation marks straight, at most one empty line in a row, "\n" endings.
std::string print(const ast::Lines& lines);

// One statement without indentation or comment: "element 2 hybrid \"Undertow\"".
std::string print(const ast::Statement& statement);

// A sheet as it is printed: the same statements, in columns, with the blanks and empty lines that belong between them.
//
//   tidy({"duet.sheet", "routine   \"Reeds\"\nevent open\n"}).text     // "routine \"Reeds\"\nevent    open\n"

struct Tidied {
  std::string text;  // empty when a line is in error
  Diagnostics messages;
};
Tidied tidy(const Source& sheet);

}  // namespace landdrill
