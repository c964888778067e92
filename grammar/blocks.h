// Text -> blocks: routines with their elements, options and passages; runs; panels. Each line goes into
// its block as soon as it is read.
//
// Every `routine` line starts a new sheet; runs and panels belong to the routine above them, also across
// files read one after the other. A line in the wrong place is reported and left out.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "grammar/ast.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill::ast {

// One way to swim an element: as written first, then each `option`.
struct Variant {
  std::optional<Name> title;  // none for the element as written
  std::optional<PartsLine> parts;
  std::optional<CountsLine> counts;
  std::optional<DifficultyLine> difficulty;
  std::optional<ExpectLine> expect;
  std::optional<SlipLine> slip;
  std::optional<SpreadLine> spread;
  bool incomplete = false;  // a line of it was in error: do not complain of what is missing
};

struct Element {
  ElementLine head;
  std::vector<Variant> variants;     // never empty
  std::string_view optional, stays;  // the word as typed; empty when it is not said
};

struct Passage {
  PassageLine head;
  std::optional<CountsLine> counts;
};

using Item = std::variant<Element, Passage>;

struct Routine {
  RoutineLine head;
  std::optional<EventLine> event;
  std::optional<ValuesLine> values;
  std::optional<TempoLine> tempo;
  std::optional<SwimmersLine> swimmers;
  std::optional<SpreadLine> spread;
  std::optional<DayLine> day;
  std::vector<LimitLine> limits;
  std::vector<Item> items;
  std::vector<ExpectedAspect> impressions;
  std::vector<ExpectedErrors> errors;
  std::vector<ExpectedPenalty> risks;
  bool incomplete = false;  // a line of it was in error, perhaps a whole element
};

struct Run {
  RunLine head;
  std::vector<FaultsLine> elements;
  std::vector<AspectMarksLine> aspects;
  std::optional<SyncLine> sync;
  std::optional<PenaltyLine> penalty;
  bool incomplete = false;  // a line of it was in error
};

struct Panel {
  PanelLine head;
  std::vector<ElementMarksLine> elements;
  std::vector<AspectMarksLine> aspects;
  std::optional<SyncLine> sync;
  std::optional<PenaltyLine> penalty;
  std::optional<ResultLine> result;
  bool incomplete = false;  // a line of it was in error
};

struct Sheet {
  Sources sources;  // of the routine first, then of its runs and panels
  Routine routine;
  std::vector<Run> runs;
  std::vector<Panel> panels;
};

}  // namespace landdrill::ast

namespace landdrill {

struct Assembled {
  std::vector<ast::Sheet> sheets;
  Diagnostics diagnostics;
  bool routine_lost =
      false;  // the last `routine` line was in error: its runs and panels belong to no sheet here
};

// The blocks of one source after another; `source` must outlive the result. Runs and panels before any
// `routine` line of a source continue the last sheet of `so_far`; with none there, they are reported as
// misplaced. Checks: order and place of lines, things said twice (also element numbers), dates that exist.
// The mistakes of its lines (parse.h) stand with those of the blocks.
void assemble(const Source& source, Assembled& so_far);

}  // namespace landdrill
