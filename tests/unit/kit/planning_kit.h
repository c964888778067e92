// Made-up sheets of the pond for plans, and a slow plan that reads and scores every programme as a sheet of
// its own.
//
//   MadeSheet made = made_up_sheet(dice);
//   made.text()                  // with all options
//   made.text({1, leave_out})    // only one option of each, as written
#pragma once

#include "engine/choosing/plan.h"
#include "tests/unit/kit/choosing_kit.h"
#include "tests/unit/kit/kit.h"

namespace landdrill::kit {

struct MadeSheet {
  struct Way {
    std::string lines;  // parts, counts, mark ...
  };
  struct Swum {
    std::string kind;
    std::vector<Way> ways;
    bool optional = false, stays = false;
  };
  std::string head, passage, tail;
  std::vector<std::string> limits;
  std::vector<Swum> elements;

  std::string text() const;
  std::string text(const std::vector<std::size_t>& options) const;
};
MadeSheet made_up_sheet(Dice& dice, std::string_view event = "open");
// Three to five elements under a rule that weights by difficulty, most with uncertain base marks: all of them
// in the event "session", beside others in "mixed".
MadeSheet made_up_weighted(Dice& dice, std::string_view event);

// Whether the sheet of one programme keeps every limit: the event's by what resolving complains of, her own
// counted here.
bool keeps_limits(const ReadSheet& programme, const Routine& whole);

struct Tried {
  std::vector<std::size_t> options;
  Exact total;
};
// All programmes that keep the limits, best expected total first, equal ones in the order of the options.
std::vector<Tried> all_programmes(const MadeSheet& made, const ValueSet& set, bool only_allowed = true);

}  // namespace landdrill::kit
