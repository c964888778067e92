// Makes varied valid sheets of kingfisher-2026, the same ones every time.
//
//   SheetMaker maker(set);
//   MadeSheet sheet = maker.make(17);   // sheet.text, and what it says as plain numbers
//
// The plain numbers are what the texts were written from, so that other programs can add them up without reading
// the texts. Marks count quarters (29 is 7.25); codes are places in the set's tables.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tables/value_set.h"

namespace landdrill::bench {

struct MadeUse {
  std::size_t row = 0;  // of parts, sync or penalties
  int times = 1;
};
struct MadeElement {
  std::size_t kind = 0;
  int expect = 0;
  std::vector<MadeUse> parts;
};
struct MadeFault {
  std::size_t fault = 0;
  int size = 0;  // 0 small, 1 medium, 2 large
  int times = 1;
};
struct MadeRunElement {
  std::size_t element = 0;
  bool base = false;
  std::vector<MadeFault> faults;
};
struct MadeRun {
  bool says_sync = false, says_penalties = false;  // `none` is said too
  std::vector<MadeRunElement> elements;
  std::vector<int> aspects;  // marks, in the order of the event's panels; empty when none was noted
  std::vector<MadeUse> sync, penalties;
};
inline constexpr int no_mark = -1;
using MadeMarks = std::array<int, 5>;
struct MadePanelElement {
  bool base = false;
  MadeMarks marks{};
};
struct MadePanel {
  std::vector<MadePanelElement> elements;  // one for each element of the routine
  std::vector<MadeMarks> aspects;
  std::vector<MadeUse> sync, penalties;
};
struct MadeSheet {
  std::size_t event = 0;
  std::vector<MadeElement> elements;
  std::vector<int> impressions;
  std::vector<MadeRun> runs;  // in the order of their dates
  std::optional<MadePanel> panel;
  std::string text;
};

// The same numbers on every machine (the ones of <random> are not).
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next();
  int below(int bound) { return static_cast<int>(next() % static_cast<std::uint64_t>(bound)); }
  int from_to(int least, int most) { return least + below(most - least + 1); }
  bool percent(int chance) { return below(100) < chance; }

 private:
  std::uint64_t state_;
};

class SheetMaker {
 public:
  explicit SheetMaker(const ValueSet& set);  // kingfisher-2026, which outlives the maker
  MadeSheet make(std::uint64_t number) const;

 private:
  const ValueSet& set_;
};

}  // namespace landdrill::bench
