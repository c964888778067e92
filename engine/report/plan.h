// The best programme as text, JSON or CSV: what to swim, what each limit costs, what comes next, how sure it
// is.
//
//   no.  element            swim it        difficulty   expected
//     1  Lantern, Lift      as written           2.30    17.2500
//   > 2  Undertow, Hybrid   safer                2.70    20.4135
//
// Computes nothing. `face`: the account of the routine as it is, for title, values and cautions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/choosing/plan.h"
#include "engine/report/face.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct ToldPlan {
  Plan plan;  // without obstacles
  PlanWish::For aim = PlanWish::For::expected;
  std::string share, target;  // "25", in per cent, for quantile; "190", for target
  std::vector<std::string>
      points;  // for each element, expected in the best programme; empty for one left out
  std::vector<std::size_t> as_written;  // the option of each element as the sheet says now
  std::vector<Step> stories;            // how the elements of the best programme come about; for --full
};

std::string plan_report(const Routine& routine, const ToldPlan& told, const Face& face, Format format,
                        const TextWish& wish);

// The parts of it: plan.cpp, plan_sections.cpp, plan_rows.cpp.
std::string notes_section(const Plan& plan, const TextWish& wish);
std::string limits_section(const Plan& plan, const TextWish& wish);
std::string next_best_section(const Routine& routine, const ToldPlan& told, const TextWish& wish);
std::string conflict_section(const Plan& plan, const TextWish& wish);
std::string plan_csv(const Routine& routine, const ToldPlan& told);
std::string plan_json(const Routine& routine, const ToldPlan& told, const Face& face);
// How far a choice is behind the best; empty for the best.
std::string behind_of(const Routine& routine, const ToldPlan& told, const PlanChoice& choice);
// "safer", "as written", "leave out".
std::string choice_name(const Element& element, std::size_t option);

}  // namespace landdrill::report
