#include "engine/report/plan.h"

#include <fmt/format.h>

#include "engine/cli/choosing.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/plan_wish.h"
#include "engine/cli/progress.h"
#include "engine/report/chance.h"

namespace landdrill::cli {
namespace {

// The wish that a choice amounts to; what is left out stands as it is written.
Wish wish_of(const PlanChoice& choice, const Wish& wish) {
  Wish result = wish;
  result.options = choice.options;
  for (std::size_t& option : result.options)
    if (option == leave_out) option = 0;
  return result;
}

// By how much the aim of one choice is above that of another.
std::string lead(const PlanChoice& ahead, const PlanChoice& behind, const TypedPlan& typed, int places) {
  switch (typed.wish.aim) {
    case PlanWish::For::expected:
      return report::to_places((ahead.total - behind.total).value(), places);
    case PlanWish::For::quantile:
      return ahead.quantile && behind.quantile ? report::to_places(*ahead.quantile - *behind.quantile, places)
                                               : "";
    case PlanWish::For::target:
      return ahead.reaches && behind.reaches
                 ? report::to_places(100 * (ahead.reaches->chance - behind.reaches->chance), 2)
                 : "";
  }
  return "";
}

// What the report needs of the best programme beside the plan itself.
class Telling {
 public:
  Telling(const Routine& routine, const Wish& wish, const TypedPlan& typed)
      : routine_(routine), wish_(wish), typed_(typed), places_(places_of(routine)) {}

  report::ToldPlan tell(Plan plan, bool full) const {
    report::ToldPlan told;
    told.aim = typed_.wish.aim;
    if (told.aim == PlanWish::For::quantile) told.share = typed_.share.text();
    if (told.aim == PlanWish::For::target) told.target = typed_.target.text();
    told.as_written = wish_.options;
    told.plan = std::move(plan);
    if (told.plan.choices.empty()) return told;
    compare_choices(told);
    tell_elements(told, full);
    return told;
  }

 private:
  void compare_choices(report::ToldPlan& told) const {
    const PlanChoice& best = told.plan.choices.front();
    for (const PlanChoice& choice : told.plan.choices)
      told.behind.push_back(&choice == &best ? "" : lead(best, choice, typed_, places_));
    if (told.plan.as_written) told.ahead = lead(best, *told.plan.as_written, typed_, places_);
  }

  void tell_elements(report::ToldPlan& told, bool full) const {
    const PlanChoice& best = told.plan.choices.front();
    const Wish wish = wish_of(best, wish_);
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
  const double most = static_cast<double>(typed.seconds.units()) / Decimal::one;
  how.go_on = [&](std::uint64_t steps) {
    progress.show(fmt::format("{} beginnings of a programme looked at", steps));
    return progress.seconds() < most;
  };
  return landdrill::plan(routine, wish, how);
}

Account face_of_plan(const Routine& routine, const Wish& wish, const Plan& plan, const TypedPlan& typed) {
  std::vector<Wish> wishes{wish};
  for (const PlanChoice& choice : plan.choices) wishes.push_back(wish_of(choice, wish));
  const bool by_odds = typed.wish.aim != PlanWish::For::expected;
  return face_of(
      routine, wishes,
      by_odds ? rows_of(spreads(routine, wish, typed.wish.forecast.spreads)) : std::vector<Provenance>());
}

}  // namespace

Exit plan(Call& call) {
  const TypedPlan typed = typed_plan(call);
  if (!typed.mistake.empty()) return misused(call, typed.mistake);
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const std::string beyond = beyond_scale(one.routine(), typed.wish.forecast.spreads);
  if (!beyond.empty()) return misused(call, beyond);
  Routine routine = one.routine();
  Wish wish = one.wish();
  std::deque<std::string> texts;
  std::string mistake = apply_limits(call, routine, texts);
  if (mistake.empty()) mistake = apply_keeps(call, routine, wish);
  if (!mistake.empty()) return misused(call, mistake);
  Plan best = search(call, routine, wish, typed);
  if (!best.obstacles.empty()) return obstructed(call, routine, best.obstacles);
  const Account face = face_of_plan(routine, wish, best, typed);
  const bool found = !best.choices.empty();
  const report::ToldPlan told = Telling(routine, wish, typed).tell(std::move(best), call.given.has("--full"));
  call.streams.out.write(report::plan_report(routine, told, face, format_of(call), choosing_page(call)));
  return found ? Exit::ok : Exit::errors;
}

}  // namespace landdrill::cli
