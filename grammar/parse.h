// Text -> lines of the sheet language (language.md), with every mistake of the text in one run.
//
//   Parsed parsed = parse({"a.sheet", "tempo 128\ntempi 3\n"});
//   parsed.lines.size()                 // 1
//   to_string(parsed.diagnostics)
//   // a.sheet:2:1: error: found "tempi"; expected a keyword ... [unknown-keyword]
//
// Never throws for any input, never recurses on input, takes time and memory linear in the text.
#pragma once

#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill {

struct Parsed {
  ast::Lines lines;
  Diagnostics diagnostics;
};

// Given any bytes; a leading BOM, CRLF and CR line endings, tabs and `,` as decimal sign are understood.
// The lines point into `source.text`.
Parsed parse(const Source& source);

// Takes the lines of a text one by one, every empty one too.
class LineTaker {
 public:
  // The line may be changed: it is gone when the next one is read.
  virtual void take(ast::Line& line) = 0;

 protected:
  ~LineTaker() = default;
};

// The same without keeping the lines: each is handed over as soon as it is read.
void parse(const Source& source, LineTaker& lines, Diagnostics& diagnostics);

}  // namespace landdrill
