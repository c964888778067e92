// Text -> blocks: routines with their elements, options and passages; runs; panels. Each line goes into
// its block as soon as it is read.
//
// Every `routine` line starts a new sheet; runs and panels belong to the routine above them, also across
// files read one after the other. A line in the wrong place is reported and left out.
#pragma once

#include "grammar/span.h"
#include "grammar/tree.h"  // IWYU pragma: export

namespace landdrill {

// The blocks of one source after another; `source` must outlive the result. Runs and panels before any
// `routine` line of a source continue the last sheet of `so_far`; with none there, they are reported as
// misplaced. Checks: order and place of lines, things said twice (also element numbers), dates that exist.
// The mistakes of its lines (parse.h) stand with those of the blocks.
void assemble(const Source& source, Assembled& so_far);

}  // namespace landdrill
