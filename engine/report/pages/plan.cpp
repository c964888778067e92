#include "engine/report/pages/plan.h"

#include "engine/chances/risk.h"
#include "engine/report/figures.h"
#include "engine/score/account.h"
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
  told.share = told.aim == PlanWish::For::quantile ? typed.share.text() : "25";
  if (told.aim == PlanWish::For::target) told.target = typed.target.text();
  told.as_written = wish.options;
  told.plan = std::move(plan);
  if (!told.plan.choices.empty()) tell_elements(routine, wish, told);
  return told;
}

// With the values that all programmes rest on, and what the rules object to in the best of them.
Face face_of_plan(const Routine& routine, const Diagnostics& of_sheet, const Wish& wish, const Plan& plan,
                  const std::vector<Provenance>& also) {
  Step beside{.rows = also};
  for (const PlanChoice& choice : plan.choices)
    beside.inputs.push_back(*account(routine, wish_with(choice, wish), std::nullopt).estimate);
  Face face = face_of(routine, of_sheet, wish, std::move(beside));
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

namespace {

std::string_view aim_word(PlanWish::For aim) {
  constexpr std::string_view words[] = {"expected", "quantile", "target"};
  return words[static_cast<std::size_t>(aim)];
}

std::string aim_words(const ToldPlan& told) {
  switch (told.aim) {
    case PlanWish::For::expected:
      return "the highest expected total";
    case PlanWish::For::quantile:
      return "the highest total that is missed no more often than " + told.share + " % of the time";
    case PlanWish::For::target:
      return "the best chance to reach " + told.target + " points";
  }
  return "";
}

// By odds, and where what is written stays, by no more than anyone would notice.
std::string proved_words(const ToldPlan& told) {
  const auto is_ahead = [](const PlanChoice& one) { return one.behind && *one.behind < Decimal(); };
  const bool nearly = told.aim != PlanWish::For::expected ||
                      std::any_of(told.plan.choices.begin(), told.plan.choices.end(), is_ahead);
  const std::string by =
      nearly && told.plan.noticed > Decimal() ? " by as much as " + noticed_words(told) : "";
  return "Proved: no other choice within the limits does better" + by + ".";
}

std::string proof_sentence(const ToldPlan& told) {
  if (told.plan.proved) return proved_words(told);
  const std::string why = told.plan.tried == 0 ? "time ran out."
                                               : "there are too many choices to try them all; " +
                                                     std::to_string(told.plan.tried) + " were tried.";
  if (told.plan.gap == Decimal())
    return proved_words(told) + " Of the next best it is not proved that none is missing: " + why;
  const std::string longer = told.plan.tried > 0 ? "" : " --seconds gives it longer.";
  if (!told.plan.gap)
    return "Not proved: " + why + " How much better another could be is not known." + longer;
  return "Not proved: " + why + " Another could be better, by " + told.plan.gap->text() +
         std::string(unit_of(told)) + " at most." + longer;
}

void put_next_best(PageParts& page, const Routine& routine, const ToldPlan& told) {
  const std::vector<PlanChoice>& choices = told.plan.choices;
  if (choices.size() < 2) {
    page.apart();
    return page.say(told.plan.proved ? "There is no other choice within the limits."
                                     : "No other choice within the limits was found before it had to stop.");
  }
  using enum Align;
  std::vector<PageColumn> columns{{"", "", amount}, {"", "what differs", words, Wraps::yes}};
  const bool by_odds = told.aim != PlanWish::For::expected;
  if (by_odds) columns.push_back({"", "expected", amount});
  for (PageColumn& one : columns_of_odds(told)) columns.push_back(std::move(one));
  columns.push_back({"", "behind," + std::string(unit_of(told)), amount});
  PageTable table("", std::move(columns));
  const int places = places_of(routine);
  for (std::size_t i = 1; i < choices.size(); ++i) {
    std::vector<Entry> cells{std::to_string(i + 1), differences(routine, choices[i], choices.front())};
    if (by_odds) cells.emplace_back(to_places(choices[i].total.value(), places));
    for (Entry& one : odds_cells(choices[i], told, places)) cells.push_back(std::move(one));
    cells.emplace_back(behind_of(routine, told, choices[i]));
    table.add(std::move(cells));
  }
  page.heading("The next best");
  page.add(std::move(table));
}

void put_stories(PageParts& page, const Routine& routine, const ToldPlan& told) {
  page.heading("How this programme comes about", Seen::in_full);
  page.list("",
            {"Every choice of options, within the limits, is a programme. Groups of choices that cannot be "
             "better than the best one found are left out; the answer is the one that trying all would give.",
             "expected: what the element brings on average, as declared and on the base mark by their "
             "chances, at the mark expected. `landdrill compare --full` shows it for every option."},
            Seen::in_full);
  for (const Step& story : told.stories) {
    PageParts one;
    one.tree("build_up", story, routine.set->info.title);
    page.apart();
    page.section("build_ups", std::move(one), Seen::in_full);
  }
}

void put_found(PageParts& page, const Routine& routine, const ToldPlan& told) {
  page.heading("For " + aim_words(told));
  put_best(page, routine, told);
  page.say(proof_sentence(told));
  for (const std::string& note : told.plan.notes) page.say("Note: ", note + ".");
  put_limits(page, told.plan);
  put_next_best(page, routine, told);
  put_doubt(page, routine, told);
  put_stories(page, routine, told);
}

void put_nothing_found(PageParts& page, const Plan& plan) {
  put_limits(page, plan);
  if (!plan.conflict.empty()) return put_conflict(page, plan);
  page.heading("No programme was found in time");
  for (const std::string& note : plan.notes) page.say("Note: ", note + ".");
  page.say("Nor is it proved that there is none within the limits; --seconds gives it longer.");
}

void put_proof(PageParts& page, const Plan& plan) {
  page.fact("proved", plan.proved);
  page.fact("tried", plan.tried);
  page.fact("not_told_apart", plan.not_told_apart);
  page.fact("gap", text_of(plan.gap));
  page.fact("noticed", plan.noticed.text());
}

void put_last_rows(PageParts& page, const Plan& plan) {
  page.list("conflict", plan.conflict, Seen::by_programs);
  page.list("notes", plan.notes, Seen::by_programs);
  put_sentences_for_csv(page, "conflict", plan.conflict);
  put_sentences_for_csv(page, "note", plan.notes);
  if (plan.choices.empty()) return;
  PageTable proof("", {{"what", ""}, {"behind", ""}});
  proof.in_csv = true;
  proof.add({plan.proved ? "proved" : "not proved", text_of(plan.gap)});
  page.add(std::move(proof), Seen::by_programs);
}

}  // namespace

std::string differences(const Routine& routine, const PlanChoice& choice, const PlanChoice& best) {
  std::string words;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (choice.options.at(i) == best.options.at(i)) continue;
    const Element& element = routine.elements[i];
    words += (words.empty() ? "" : ", ") + std::to_string(element.number) + " " +
             choice_name(element, choice.options[i]);
  }
  return words;
}

std::string_view unit_of(const ToldPlan& told) {
  return told.aim == PlanWish::For::target ? " per cent" : " points";
}

std::string choice_name(const Element& element, std::size_t option) {
  return option == leave_out ? "leave out" : option_name(element, option);
}

std::string behind_of(const Routine& routine, const ToldPlan& told, const PlanChoice& choice) {
  if (!choice.behind) return "";
  return to_places(*choice.behind, told.aim == PlanWish::For::target ? 2 : places_of(routine));
}

Page plan_page(const Routine& routine, const ToldPlan& told, const Face& face) {
  Page page("plan");
  page.csv = {"what",    "rank",   "number", "title", "option", "total", "quantile", "chance",
              "seconds", "behind", "by",     "least", "most",   "used",  "one_more", "one_less"};
  put_title(page, face);
  page.fact("aim", {"", Record{{"for", aim_word(told.aim)},
                               {"per_cent", told.aim == PlanWish::For::quantile ? told.share : ""},
                               {"target", told.target}}});
  put_programmes(page, routine, told);
  put_proof(page, told.plan);
  const bool found = !told.plan.choices.empty();
  if (found)
    put_found(page, routine, told);
  else
    put_nothing_found(page, told.plan);
  put_last_rows(page, told.plan);
  PageParts notes;
  put_notes(notes, face);
  // Without a programme there is nothing yet to take care of.
  page.section("", std::move(notes), found ? Seen::always : Seen::by_programs);
  return page;
}

}  // namespace landdrill::report
