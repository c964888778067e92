// A routine that is understood: every word of the sheet tied to its row of the value set, every number exact.
//
// Made by resolve.h; nothing here is looked up again later. Rows and texts belong to the value set and to the
// sheet's source: both outlive the routine. An element's place in `elements` is its index; its `number` is
// the coach's own.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// A part and how often it is swum.
struct PartUse {
  const Part* part = nullptr;
  int times = 1;
};
using PartUses = std::vector<PartUse>;

// Counts of choreography in one place: one count is one beat of the music.
struct CountUse {
  int counts = 0;
  std::string_view where;
  bool under = false;  // time under water
};
using CountUses = std::vector<CountUse>;
int counts_in(const CountUses& uses, bool only_under = false);

// One way to swim an element: the first of an element is the one as written, with an empty title.
struct Option {
  std::string_view title;
  PartUses parts;
  std::optional<Difficulty> stated;  // `difficulty 2.35`: by hand, instead of the formula
  CountUses counts;
  std::optional<Mark> expect;
  std::optional<Mark> best;            // of a faultless showing by these swimmers, said here or above
  std::optional<Decimal> slip;         // per cent: the coach's chance of the base mark
  std::optional<Difficulty> declared;  // by hand or by the formula, as resolve.h worked it out
  std::optional<Decimal> spread;  // of the judges' marks around their mean (standard deviation), in marks
};
// Whether one of its parts is of the family in this row of the set's table.
bool holds_family(const Option& option, std::size_t family_row);

struct Element {
  int number = 0;
  std::string_view title;  // may be empty
  const Kind* kind = nullptr;
  const PanelRule* panel = nullptr;  // nullptr: the event marks no single elements
  std::vector<Option> options;       // never empty
  bool optional = false;             // a plan may leave it out
  bool stays = false;                // a plan keeps it, as written
};
std::string label_of(const Element& element);  // "2 Undertow", or "2" without a title
std::string name_of(const Element& element);   // "2 Undertow"; the title of the kind without its own

struct Passage {
  std::string_view title;
  CountUses counts;
};

// The order of the routine: an element by its index, or a passage by its index.
struct Item {
  bool is_element = true;
  std::size_t index = 0;
};

enum class Size { small, medium, large };
std::string_view word_of(Size size);
// What a fault of this size takes; nothing where its row has no such size.
std::optional<Mark> of_size(const FaultRule& fault, Size size);

struct FaultUse {
  const FaultRule* fault = nullptr;
  Size size = Size::small;
  int times = 1;
};
struct SyncUse {
  const SyncClass* sync = nullptr;
  int times = 1;
};
struct PenaltyUse {
  const Penalty* penalty = nullptr;
  int times = 1;
};

struct RunElement {
  std::size_t element = 0;  // index
  std::string_view where;   // its number in the sheet
  bool base = false;        // said so, or a part was lost
  std::vector<std::string_view> lost;
  std::vector<FaultUse> faults;
  std::optional<Mark> mark = {};  // given outright, instead of faults
};
struct AspectMark {
  const PanelRule* rule = nullptr;
  Mark mark;
};

// What the coach expects of sync errors and penalties: how many of a class, how likely one is.
struct ExpectedErrors {
  const SyncClass* sync = nullptr;
  Decimal number;  // on average, 0 or more
};
struct PenaltyRisk {
  const Penalty* penalty = nullptr;
  Decimal chance;  // per cent
};

// A limit that the coach sets herself, for plans: what there may be least and most of.
struct OwnLimit {
  // elements of a kind; elements holding a part of a family; uses of a part; elements; seconds of the
  // routine; seconds under water; seconds under water in one go.
  enum class Of { kind, family, part, elements, seconds, under, breath } of = Of::elements;
  std::string_view name;  // the code, or the word as typed
  std::optional<Decimal> least, most;
};

// A run-through as the coach saw it.
struct Run {
  std::string_view date, title;
  std::vector<RunElement> elements;
  std::vector<AspectMark> aspects;
  bool has_sync = false, has_penalties = false;  // said, even if `none`
  std::vector<SyncUse> sync;
  std::vector<PenaltyUse> penalties;
};

// The marks of a panel, judge by judge; empty for a judge who is missing.
using JudgeMarks = std::vector<std::optional<Mark>>;

struct RecordedElement {
  std::size_t element = 0;  // index
  bool base = false;
  JudgeMarks marks;
};
struct RecordedAspect {
  const PanelRule* rule = nullptr;
  JudgeMarks marks;
};
struct RecordedPanel {
  std::string_view date, title;
  std::vector<RecordedElement> elements;
  std::vector<RecordedAspect> aspects;
  std::vector<SyncUse> sync;
  std::vector<PenaltyUse> penalties;
  std::optional<Points> result;  // as announced
};

struct Routine {
  std::string_view title;
  const ValueSet* set = nullptr;
  const Event* event = nullptr;
  std::vector<const PanelRule*> aspects;  // the rules of the event that are marked once per routine
  std::optional<Decimal> tempo;           // beats a minute
  std::optional<int> swimmers;
  std::vector<Element> elements;
  std::vector<Passage> passages;
  std::vector<Item> order;
  std::vector<AspectMark> impressions;
  std::optional<Decimal> spread;       // of the judges' marks, where no element says otherwise, in marks
  std::optional<Decimal> day;          // of the good or bad day that all marks share, in marks
  std::vector<ExpectedErrors> errors;  // each class once
  std::vector<PenaltyRisk> risks;      // each penalty once
  std::vector<OwnLimit> limits;
  std::vector<Run> runs;  // in the order of the sheet
  std::vector<RecordedPanel> panels;
};

// How far apart two marks of the event can lie, in any of its panels; empty when it has none.
std::optional<Decimal> width_of_scale(const ValueSet& set, const Event& event);

// What comes of a sheet under a value set: a routine, or what is wrong and which values are missing.
//
//   resolved.gaps[0]     // {"parts", "2rb", "value"}

// A value the sheet needs and the set does not have yet.
struct Gap {
  std::string_view table, key, column;  // "parts", "2rb", "value"
};

struct Resolved {
  std::optional<Routine> routine;
  Diagnostics diagnostics;
  std::vector<Gap> gaps;  // each once, in the order of the sheet
};

}  // namespace landdrill
