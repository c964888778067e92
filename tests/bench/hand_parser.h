// The sheet language read by hand: a plain scanner that makes the very tree of parse(), to measure it against.
//
//   hand_parse("tempo 128\ntempi 3\n")   // two lines, the second a BadLine; errors 1
//
// Only counts mistakes: it neither remembers what was expected nor words a message. Lines point into `text`.
#pragma once

#include <cstddef>
#include <string_view>

#include "grammar/ast.h"

namespace landdrill::bench {

struct HandParsed {
  ast::Lines lines;
  std::size_t errors = 0;
};

HandParsed hand_parse(std::string_view text);

}  // namespace landdrill::bench
