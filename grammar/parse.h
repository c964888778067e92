// Text -> lines of the sheet language (language.md), with every mistake of the text in one run.
//
//   Parsed parsed = parse({"a.sheet", "tempo 128\ntempi 3\n"});
//   parsed.lines.size()                 // 1
//   to_string(parsed.diagnostics)
//   // a.sheet:2:1: error: found "tempi"; expected a keyword ... [unknown-keyword]
//
// Never throws for any input, never recurses on input, takes time and memory linear in the text.
#pragma once

#include <functional>

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

// The same without keeping the lines: each is handed over as soon as it is read, every empty one too. It may be changed:
// it is gone when the next one is read.
void parse(const Source& source, const std::function<void(ast::Line&)>& take, Diagnostics& diagnostics);

}  // namespace landdrill
