// One step of the story of a score, with the steps that it rests on.
//
//   step.at("element 2 difficulty")->value     // "3.85"
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tables/value_set.h"

namespace landdrill {

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
  std::string path;    // what `explain` is asked for: "element 2 difficulty"
  std::string label;   // for people: "Undertow", "thrust-high x2"
  std::string rule;    // how the value comes about, in words and numbers; may be empty
  std::string value;   // exact text; empty when there is none
  std::string remark;  // "base mark", "dropped: highest", "stated on the sheet", "from the run of 2026-04-14"
  std::vector<Provenance> rows;  // the table rows it rests on
  std::vector<Step> inputs;

  const Step* find(Role wanted) const;                 // the first input with this role
  const Step* at(std::string_view wanted_path) const;  // this step or one below it
};

}  // namespace landdrill
