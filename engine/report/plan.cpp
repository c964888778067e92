#include "engine/report/plan.h"

#include <algorithm>

#include "engine/report/chance.h"
#include "engine/report/compare.h"
#include "engine/report/explain.h"
#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

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

std::string_view unit_of(const ToldPlan& told) {
  return told.aim == PlanWish::For::target ? " per cent" : " points";
}

std::string proof_sentence(const ToldPlan& told) {
  const std::string alike = told.plan.not_told_apart == 0
                                ? ""
                                : " " + std::to_string(told.plan.not_told_apart) +
                                      (told.plan.not_told_apart == 1 ? " more is" : " more are") +
                                      " as good as far as the odds can be told apart.";
  if (told.plan.proved) return "Proved: no other choice within the limits does better." + alike;
  if (told.plan.gap == Decimal())
    return "Proved: no other choice within the limits does better. Of the next best it is not proved that "
           "none is "
           "missing: time ran out." +
           alike;
  const std::string gap =
      told.plan.gap ? told.plan.gap->text() + std::string(unit_of(told)) : "an unknown amount";
  if (told.plan.tried > 0)
    return "Not proved: there are too many choices to try them all; the " + std::to_string(told.plan.tried) +
           " most promising were tried. Another could be better, by " + gap + " at most.";
  return "Not proved: time ran out. Another choice could be better, by " + gap +
         " at most; --seconds gives it longer.";
}

// Not where the event weights elements together.
bool told_by_element(const ToldPlan& told) {
  return std::any_of(told.points.begin(), told.points.end(),
                     [](const auto& points) { return !points.empty(); });
}

std::string programme_table(const Routine& routine, const ToldPlan& told, const Face& face,
                            const TextWish& wish) {
  using enum Align;
  Grid grid({{"no.", amount},
             {"element", words, true},
             {"swim it", words, true},
             {"difficulty", amount},
             {told_by_element(told) ? "expected" : "", amount}});
  const PlanChoice& best = told.plan.choices.front();
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const std::size_t option = best.options.at(i);
    const bool changed = option != told.as_written.at(i), out = option == leave_out;
    const Element& element = routine.elements[i];
    const auto declared = out ? std::nullopt : element.options.at(option).declared;
    std::string way = choice_name(element, option);
    if (element.stays) way += " (stays)";
    if (changed && !out) way += " (not " + choice_name(element, told.as_written[i]) + ")";
    grid.add({(changed ? "> " : "") + std::to_string(element.number), title_and_kind(face.elements.at(i)),
              std::move(way), declared ? declared->text(2) : "", told.points.at(i)},
             changed ? Look::worst : Look::usual);
  }
  return grid.text(wish.width, wish.colour);
}

std::vector<std::string> total_cells(std::string name, const PlanChoice& choice, const ToldPlan& told,
                                     int places) {
  std::vector<std::string> cells{std::move(name), to_places(choice.total.value(), places)};
  if (told.aim == PlanWish::For::quantile)
    cells.push_back(choice.quantile ? to_places(*choice.quantile, places) : "");
  if (told.aim == PlanWish::For::target)
    cells.push_back(choice.reaches ? per_cent(choice.reaches->chance) : "");
  cells.push_back(choice.seconds ? to_places(*choice.seconds, 1) + " s" : "");
  return cells;
}

std::string totals_table(const ToldPlan& told, int places, const TextWish& wish) {
  using enum Align;
  std::vector<GridColumn> columns{{"", words, true}, {"expected total", amount}};
  if (told.aim == PlanWish::For::quantile) columns.push_back({told.share + " % are lower", amount});
  if (told.aim == PlanWish::For::target) columns.push_back({"chance of " + told.target, amount});
  columns.push_back({"time", amount});
  Grid grid(std::move(columns));
  grid.add(total_cells("this programme", told.plan.choices.front(), told, places), Look::total);
  if (told.plan.as_written) {
    const std::string name = told.plan.as_written_allowed ? "without these changes"
                                                          : "without these changes, which breaks a limit";
    grid.add(total_cells(name, *told.plan.as_written, told, places));
  }
  return grid.text(wish.width, wish.colour);
}

bool is_as_written(const ToldPlan& told) {
  return told.plan.choices.front().options == told.as_written;
}

std::string changes_note(const Routine& routine, const ToldPlan& told, const TextWish& wish) {
  if (is_as_written(told)) return paragraph("", "No change makes it better than it is.", wish.width);
  const std::string ahead = told.plan.as_written ? behind_of(routine, told, *told.plan.as_written) : "";
  if (ahead.empty()) return "";
  const std::string why = told.plan.as_written_allowed ? "Together the changes bring "
                                                       : "Without the changes a limit is broken; they bring ";
  return paragraph("", "> changed. " + why + with_sign(ahead) + std::string(unit_of(told)) + ".", wish.width);
}

std::string stories_section(const Routine& routine, const ToldPlan& told, const TextWish& wish) {
  if (!wish.full) return "";
  std::string result = heading("How this programme comes about", wish);
  result +=
      bullets({"Every choice of options, within the limits, is a programme. Groups of choices that cannot be "
               "better than the best one found are left out; the answer is the one that trying all would "
               "give.",
               "expected: what the element brings on average, as declared and on the base mark by their "
               "chances, at the mark expected. `landdrill compare --full` shows it for every option."},
              wish);
  for (const Step& story : told.stories) result += "\n" + explain(story, routine.set->info.title, wish);
  return result;
}

std::string nothing_found(const ToldPlan& told, const TextWish& wish) {
  if (!told.plan.conflict.empty()) return conflict_section(told.plan, wish);
  return heading("No programme was found in time", wish) + notes_section(told.plan, wish) +
         paragraph("", "Nor is it proved that there is none within the limits; --seconds gives it longer.",
                   wish.width);
}

std::string plan_text(const Routine& routine, const ToldPlan& told, const Face& face, const TextWish& wish) {
  std::string result = title_section(face, wish);
  if (told.plan.choices.empty()) return result + nothing_found(told, wish);
  result += heading("For " + aim_words(told), wish) + programme_table(routine, told, face, wish) + "\n" +
            totals_table(told, places_of(routine), wish) + "\n" + changes_note(routine, told, wish) +
            paragraph("", proof_sentence(told), wish.width);
  result += notes_section(told.plan, wish);
  return result + limits_section(told.plan, wish) + next_best_section(routine, told, wish) +
         stories_section(routine, told, wish) + objection_section(face.objections, wish) +
         caution_section(face, wish) + values_section(face, wish);
}

}  // namespace

std::string choice_name(const Element& element, std::size_t option) {
  return option == leave_out ? "leave out" : option_name(element, option);
}

std::string behind_of(const Routine& routine, const ToldPlan& told, const PlanChoice& choice) {
  if (!choice.behind) return "";
  return to_places(*choice.behind, told.aim == PlanWish::For::target ? 2 : places_of(routine));
}

std::string notes_section(const Plan& plan, const TextWish& wish) {
  std::string result;
  for (const std::string& note : plan.notes) result += paragraph("Note: ", plain(note) + ".", wish.width);
  return result;
}

std::string plan_report(const Routine& routine, const ToldPlan& told, const Face& face, Format format,
                        const TextWish& asked) {
  if (format == Format::csv) return plan_csv(routine, told);
  if (format == Format::json) return plan_json(routine, told, face);
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  return plan_text(routine, told, face, wish);
}

}  // namespace landdrill::report
