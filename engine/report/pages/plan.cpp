#include "engine/report/pages/plan.h"

#include "engine/chances/risk.h"
#include "engine/report/face.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/plan_wish.h"
#include "engine/report/pages/price_wish.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

// The wish that a choice amounts to; what is left out stands as it is written.
Wish wish_with(const PlanChoice& choice, const Wish& wish) {
  Wish result = wish;
  result.options = choice.options;
  for (std::size_t& option : result.options)
    if (option == leave_out) option = 0;
  return result;
}

// What the page needs of the best programme beside the plan itself.
void tell_elements(const Routine& routine, const Wish& as_written, ToldPlan& told) {
  const PlanChoice& best = told.plan.choices.front();
  const Wish wish = wish_with(best, as_written);
  const Risked risk = risked(routine, wish);
  const Account whole = account(routine, wish, std::nullopt);
  const int places = places_of(routine);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const bool out = best.options[i] == leave_out;
    const auto points = out ? std::nullopt : risked_points(routine, risk, i);
    told.points.push_back(points ? round(points->expected, places, Rounding::half_up).text(places) : "");
    if (!out) told.stories.push_back(whole.estimate->inputs.at(i));
  }
}

ToldPlan told_plan_of(const Routine& routine, const Wish& wish, const TypedPlan& typed, Plan plan) {
  ToldPlan told;
  told.aim = typed.wish.aim;
  if (told.aim == PlanWish::For::quantile) told.share = typed.share.text();
  if (told.aim == PlanWish::For::target) told.target = typed.target.text();
  told.as_written = wish.options;
  told.plan = std::move(plan);
  if (!told.plan.choices.empty()) tell_elements(routine, wish, told);
  return told;
}

// With the values that all programmes rest on, and what the rules object to in the best of them.
Face face_of_plan(const Routine& routine, const Diagnostics& of_sheet, const Wish& wish, const Plan& plan,
                  const std::vector<Provenance>& also) {
  std::vector<Wish> wishes{wish};
  for (const PlanChoice& choice : plan.choices) wishes.push_back(wish_with(choice, wish));
  Face face = face_of(routine, of_sheet, wishes, also);
  if (!plan.choices.empty()) face.objections = objections_with(routine, wish, plan.choices.front(), of_sheet);
  return face;
}

}  // namespace

tl::expected<Planned, Refused> plan(const Asked& asked, const Routine& as_written,
                                    const Diagnostics& messages,
                                    std::function<bool(std::uint64_t steps)> go_on) {
  PriceWish price = whole_price_wish(asked, as_written);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  Routine routine = as_written;
  Typed<TypedPlan> typed = typed_plan(asked, routine, price.wish);
  if (!typed) return mistaken(typed.error());
  typed->wish.go_on = std::move(go_on);
  Plan best = landdrill::plan(routine, price.wish, typed->wish);
  if (!best.obstacles.empty()) return missing_in(routine, best.obstacles);
  std::vector<Provenance> rows;
  if (typed->wish.aim != PlanWish::For::expected)
    rows = rows_of(spreads(routine, price.wish, typed->wish.forecast.spreads));
  const Face face = face_of_plan(routine, messages, price.wish, best, rows);
  const bool found = !best.choices.empty();
  return Planned{plan_page(routine, told_plan_of(routine, price.wish, *typed, std::move(best)), face), found};
}

}  // namespace landdrill::report
