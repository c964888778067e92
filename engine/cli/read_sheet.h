// One sheet of a stream, understood as far as it can be.
//
//   ReadSheet sheet{pieces};   put_together(sheet);   resolve_from(set, sheet);
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/cli/find_values.h"
#include "engine/routine/resolve.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill::cli {

struct ReadSheet {
  std::vector<Source> pieces;  // of the text
  Assembled assembled;
  const ReadSet* set = nullptr;
  Resolved resolved;
  Diagnostics diagnostics;   // everything that is wrong with it
  bool without_set = false;  // its value set cannot be used; said already
  // Its line of a batch, where that was worked out ahead of its turn; then its tree and its routine are gone.
  struct Ahead {
    std::string line, not_here;
  };
  std::optional<Ahead> ahead;

  bool ok() const { return diagnostics.ok() && !without_set; }

  const std::string& file() const { return pieces.front().name; }
  std::string_view title() const;
  // Empty when anything is in error.
  const std::optional<Routine>& routine() const { return resolved.routine; }
};

// The pieces, parsed and in blocks.
void put_together(ReadSheet& sheet);
// The sheet, which has a routine, tied to the words of a set that can be used.
void resolve_from(const ReadSet& set, ReadSheet& sheet);

}  // namespace landdrill::cli
