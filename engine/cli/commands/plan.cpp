#include "engine/report/plan.h"

#include <fmt/format.h>

#include "engine/cli/choosing.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/plan_wish.h"
#include "engine/cli/progress.h"
#include "tables/binary.h"

namespace landdrill::cli {
namespace {

// The wish that a choice amounts to; what is left out stands as it is written.
Wish wish_with(const PlanChoice& choice, const Wish& wish) {
  Wish result = wish;
  result.options = choice.options;
  for (std::size_t& option : result.options)
    if (option == leave_out) option = 0;
  return result;
}

// What the report needs of the best programme beside the plan itself.
class BestProgramme {
 public:
  BestProgramme(const Routine& routine, const Wish& wish, const TypedPlan& typed)
      : routine_(routine), wish_(wish), typed_(typed), places_(places_of(routine)) {}

  report::ToldPlan tell(Plan plan, bool full) const {
    report::ToldPlan told;
    told.aim = typed_.wish.aim;
    if (told.aim == PlanWish::For::quantile) told.share = typed_.share.text();
    if (told.aim == PlanWish::For::target) told.target = typed_.target.text();
    told.as_written = wish_.options;
    told.plan = std::move(plan);
    if (!told.plan.choices.empty()) tell_elements(told, full);
    return told;
  }

 private:
  void tell_elements(report::ToldPlan& told, bool full) const {
    const PlanChoice& best = told.plan.choices.front();
    const Wish wish = wish_with(best, wish_);
    const Risked risk = risked(routine_, wish);
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      const bool out = best.options[i] == leave_out;
      const auto points = out ? std::nullopt : risked_points(routine_, risk, i);
      told.points.push_back(points ? round(points->expected, places_, Rounding::half_up).text(places_) : "");
    }
    if (!full) return;
    const Account account = landdrill::account(routine_, wish, std::nullopt);
    for (std::size_t i = 0; i < routine_.elements.size(); ++i)
      if (best.options[i] != leave_out) told.stories.push_back(account.estimate->inputs.at(i));
  }

  const Routine& routine_;
  const Wish& wish_;
  const TypedPlan& typed_;
  int places_;
};

Plan search(Call& call, const Routine& routine, const Wish& wish, const TypedPlan& typed) {
  Progress progress(call.streams, "plan for " + std::string(routine.title));
  PlanWish how = typed.wish;
  const double most = binary(typed.seconds);
  how.go_on = [&](std::uint64_t steps) {
    progress.show(fmt::format("{} beginnings of a programme looked at", steps));
    return progress.seconds() < most;
  };
  return landdrill::plan(routine, wish, how);
}

// With the values that all programmes rest on, and what the rules object to in the best of them.
report::Face face_of_plan(const OneRoutine& one, const Wish& wish, const Plan& plan, const TypedPlan& typed) {
  const Routine& routine = one.routine();
  std::vector<Wish> wishes{wish};
  for (const PlanChoice& choice : plan.choices) wishes.push_back(wish_with(choice, wish));
  const bool by_odds = typed.wish.aim != PlanWish::For::expected;
  report::Face face = face_of(
      one, wishes,
      by_odds ? rows_of(spreads(routine, wish, typed.wish.forecast.spreads)) : std::vector<Provenance>());
  if (!plan.choices.empty())
    face.objections = objections_with(routine, wish, plan.choices.front(), one.sheet().diagnostics);
  return face;
}

}  // namespace

Exit plan(Call& call) {
  TypedPlan typed = typed_plan(call);
  if (!typed.mistake.empty()) return misused(call, typed.mistake);
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const std::string beyond = beyond_scale(one.routine(), typed.wish.forecast.spreads);
  if (!beyond.empty()) return misused(call, beyond);
  Routine routine = one.routine();
  Wish wish = one.wish();
  std::string mistake = read_limits(call, routine, typed);
  if (mistake.empty()) mistake = apply_keeps(call, routine, wish);
  if (!mistake.empty()) return misused(call, mistake);
  Plan best = search(call, routine, wish, typed);
  if (!best.obstacles.empty()) return obstructed(call, routine, best.obstacles);
  const report::Face face = face_of_plan(one, wish, best, typed);
  const bool found = !best.choices.empty();
  const report::ToldPlan told =
      BestProgramme(routine, wish, typed).tell(std::move(best), call.given.has("--full"));
  call.streams.out.write(report::plan_report(routine, told, face, format_of(call), choosing_page(call)));
  return found ? Exit::ok : Exit::errors;
}

}  // namespace landdrill::cli
