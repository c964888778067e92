// The best programme: what to swim, what each limit costs, what comes next, how sure it is.
//
//   render_text(plan(asked, routine, messages, {})->page, {})
//   //   no.  element            swim it        difficulty   expected
//   //     1  Lantern, Lift      as written           2.30    17.2500
//   //   > 2  Undertow, Hybrid   safer                2.70    20.4135
#pragma once

#include <deque>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/choosing/plan.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/routine/wish.h"
#include "engine/score/build_up.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"

namespace landdrill::report {

struct Planned {
  Page page;
  bool found = false;  // a programme
};
// `messages`: about its sheet; `go_on`: PlanWish::go_on, which holds to plan_seconds.
tl::expected<Planned, Refused> plan(const Asked& asked, const Routine& routine, const Diagnostics& messages,
                                    std::function<bool(std::uint64_t steps)> go_on);

struct ToldPlan {
  Plan plan;  // without obstacles
  PlanWish::For aim = PlanWish::For::expected;
  std::string share, target;  // "25", in per cent; "190", for target
  std::vector<std::string>
      points;  // for each element, expected in the best programme; empty for one left out
  std::vector<std::size_t> as_written;  // the option of each element as the sheet says now
  std::vector<Step> stories;            // how the elements of the best programme come about
  bool has_quantiles() const { return plan.choices.front().quantile.has_value(); }
};
// `face`: the account of the routine as it is.
Page plan_page(const Routine& routine, const ToldPlan& told, const Face& face);

// The parts of it: plan.cpp, plan_best.cpp.
void put_programmes(PageParts& page, const Routine& routine, const ToldPlan& told);
void put_best(PageParts& page, const Routine& routine, const ToldPlan& told);
void put_limits(PageParts& page, const Plan& plan);
void put_conflict(PageParts& page, const Plan& plan);
// How far a choice is behind the best; empty for the best.
std::string behind_of(const Routine& routine, const ToldPlan& told, const PlanChoice& choice);
// The columns beside the expected total, of what a choice is by odds.
std::vector<PageColumn> columns_of_odds(const ToldPlan& told);
std::vector<Entry> odds_cells(const PlanChoice& choice, const ToldPlan& told, int places);
// "0.5 per cent", "0.11 points": less is no reason for a change.
std::string noticed_words(const ToldPlan& told);
void put_doubt(PageParts& page, const Routine& routine, const ToldPlan& told);
// " points"; for a target " per cent".
std::string_view unit_of(const ToldPlan& told);
// "2 as written, 5 leave out": where a choice differs from the best.
std::string differences(const Routine& routine, const PlanChoice& choice, const PlanChoice& best);
// "safer", "as written", "leave out".
std::string choice_name(const Element& element, std::size_t option);
// A sentence a row, in CSV alone.
void put_sentences_for_csv(PageParts& page, std::string what, const std::vector<std::string>& sentences);

// What the options of a plan wish: for what, within which limits, what has to stay.
//
//   Routine own = routine;                                          // that elements are kept in, or may go
//   const Typed<TypedPlan> typed = typed_plan(asked, own, wish);    // --limit "throw most 2" --keep 2=safer

struct TypedPlan {
  PlanWish wish;
  Decimal share, target;          // as typed: share in per cent
  std::deque<std::string> texts;  // what the names of the wish's limits point into
};
// Elements to keep and elements that may be left out go into the routine and the wish.
Typed<TypedPlan> typed_plan(const Asked& asked, Routine& routine, Wish& wish);
// --seconds, how long it may look; the usual ones when it is not given.
Typed<Decimal> plan_seconds(const Asked& asked);

}  // namespace landdrill::report
