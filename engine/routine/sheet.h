// One sheet, understood as far as it can be: its text, its tree, its routine and all that is wrong with it.
//
//   Sheet sheet = read_sheet({{"duet.sheet", text}});
//   understand(sheet, set);       // score/objections.h
//   sheet.routine()->title        // "Harbour Lights"
//
// It owns what its tree and its routine point into, wherever it is moved to; of the value set, which outlives it, it
// only has the rows. What the rules object to is a second step (score/objections.h).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/routine/resolve.h"
#include "engine/routine/routine.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/value_set.h"

namespace landdrill {

// A text, or a piece of one, and what messages call it.
struct NamedText {
  std::string name, text;
  std::size_t first_line = 1;  // of the text in the file that it is a piece of
};

class Sheet {
 public:
  Sheet() = default;
  Sheet(Sheet&&) = default;
  Sheet& operator=(Sheet&&) = default;

  // Whether nothing is in error so far.
  bool ok() const { return messages_.ok(); }
  const Diagnostics& messages() const { return messages_; }
  // What the first of its texts is called.
  const std::string& file() const { return sources_.front().name; }
  std::string_view title() const;
  const std::vector<Source>& sources() const { return sources_; }
  // nullptr without a `routine` line that is understood.
  const ast::Sheet* tree() const;
  // Once it is resolved; empty when anything is in error.
  const std::optional<Routine>& routine() const { return resolved_.routine; }
  const std::vector<Gap>& gaps() const { return resolved_.gaps; }

  void add(Diagnostic message) { messages_.add(std::move(message)); }
  void add(Diagnostics messages) { messages_.append(std::move(messages)); }
  void sort_messages() { messages_.sort(); }
  // What resolving its tree gave. Of a sheet with mistakes no routine is taken, and only complaints that do not
  // follow from those.
  void take(Resolved resolved);
  // The tree and the routine are gone, the texts and the messages stay: for many sheets in little memory.
  void forget_routine();

 private:
  friend Sheet read_sheet(std::vector<NamedText> texts);
  void put_together();

  // What points into these stays right when they are moved: their elements stay where they are.
  std::vector<std::string> texts_;
  std::vector<Source> sources_;
  Assembled assembled_;
  Resolved resolved_;
  Diagnostics messages_;
};

// Parsed and put in blocks; the texts are read one after the other. A sheet has one routine.
Sheet read_sheet(std::vector<NamedText> texts);

}  // namespace landdrill
