// The story of a total: the tree of steps that leads to it, each with its label, inputs, rule and value.
//
//   total 187.3425
//     element 2  "Undertow"  23.1000        = 7.5 x 3.85 x 0.8
//       difficulty 3.85                     = base + sum(parts): 0.5 + 3.35
//         part thrust-high 0.9              parts.csv line 12, "invented for ..."
//
// Every number that a report prints is the value of a step, or of the timing or the bridge beside it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "engine/score/score.h"
#include "tables/value_set.h"

namespace landdrill {

// One step of the story of a score, with the steps that it rests on.
//
//   step.at("element 2 difficulty")->value     // "3.85"

enum class Role {
  total,
  element,
  difficulty,
  credited,
  part,
  base,
  mark,
  judge,
  deduction,
  run,
  weight,
  combined,
  weighted,
  aspect,
  sync,
  sync_error,
  penalty,
  penalty_line,
  note,
};
std::string_view word_of(Role role);

struct Step {
  Role role = Role::note;
  std::string path = {};   // what `explain` is asked for: "element 2 difficulty"
  std::string label = {};  // for people: "Undertow", "thrust-high x2"
  std::string rule = {};   // how the value comes about, in words and numbers; may be empty
  std::string value = {};  // exact text; empty when there is none
  std::string remark =
      {};  // "base mark", "dropped: highest", "stated on the sheet", "from the run of 2026-04-14"
  std::vector<Provenance> rows = {};  // the table rows it rests on
  std::vector<Step> inputs = {};

  const Step* at(std::string_view wanted_path) const;  // this step or one below it
};

// Of an estimate or of a panel, then with each judge's mark. `score` is score(routine, showing).
Step build_up(const Routine& routine, const Wish& wish, const Showing& showing, const Score& score);

// The story of one mark (mark_story.cpp), judge by judge, or from the deductions of a run-through.
//
//   mark_step(rule, kept, judges, "element 2")
//   // "mark" 6.8333, "mean of 3 kept marks: 20.5 / 3", five judges

// "split-hold x2"
std::string times_text(std::string_view code, int times);
// "rounded half-up to 4 places"
std::string rounded_text(const PanelRule& rule);
// ", rounded down" where run-throughs have a rounding of their own, else nothing: it is that of the points.
std::string run_rounding_text(const PanelRule& rule);
// "(22 / 3)": what goes into the product, before any rounding.
std::string fraction_text(const PanelRule& rule, const KeptMarks& kept);

// `judges`: what became of each mark of a panel; none for an expected mark.
Step mark_step(const PanelRule& rule, const KeptMarks& kept, const std::vector<JudgeMark>& judges,
               const std::string& path);
Step run_step(const RunMark& mark, const PanelRule& rule, const std::string& path);

}  // namespace landdrill
