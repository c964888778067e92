// One statement of the sheet language, once its first word is known (read_lines.cpp finds it, parse.cpp reads
// the rest).
//
//   LineRest line{after "tempo", end of line};
//   read_keyword(Word::tempo, line, statement)   // true: statement is a NumberLine, line.at is behind "128"
#pragma once

#include "grammar/ast.h"
#include "grammar/failure.h"
#include "grammar/words.h"

namespace landdrill {

// A line while it is read: what is left of it, and how far it was understood.
struct LineRest {
  const char* at;
  const char* last;
  Failure failure{};
};

// The rest of a line behind its keyword, up to a comment. When false, `statement` is half filled: drop it.
bool read_keyword(words::Word word, LineRest& line, ast::Statement& statement);
// `choreography: 7.50 7.75`, from the aspect on.
bool read_aspect(LineRest& line, ast::Statement& statement);

}  // namespace landdrill
