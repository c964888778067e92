#include "engine/report/pages/lessons_tables.h"

#include <fmt/format.h>

#include "engine/judging/calibrated_estimate.h"
#include "engine/judging/lessons.h"
#include "engine/report/amount_text.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string_view sort_of(LearnedBias::Of of) {
  constexpr std::string_view words[] = {"all", "kind", "family", "fault"};
  return words[static_cast<std::size_t>(of)];
}

std::string_view verdict_of(BackTest::Verdict verdict) {
  constexpr std::string_view words[] = {"untested", "open", "helped", "harmed"};
  return words[static_cast<std::size_t>(verdict)];
}

PageTable no_biases() {
  const auto for_programs = [](const char* key) {
    return PageColumn{key, "", Align::amount, Wraps::no, Seen::by_programs};
  };
  return {"biases",
          {for_programs("of"),
           {"code", "", Align::words, Wraps::yes},
           {"lessons", "lessons", Align::amount},
           {"raw", "raw", Align::amount},
           {"", "95 % interval", Align::words, Wraps::yes},
           for_programs("raw_low"),
           for_programs("raw_high"),
           {"shrunk", "shrunk", Align::amount},
           {"", "95 % interval", Align::words, Wraps::yes},
           for_programs("shrunk_low"),
           for_programs("shrunk_high"),
           for_programs("weight"),
           {"spread", "spread", Align::amount}}};
}

std::vector<Entry> bias_row(const LearnedBias& one) {
  const auto datum = [](std::optional<double> value) { return Entry("", figure_datum(value)); };
  return {sort_of(one.of),
          Entry(one.code.empty() ? "all" : "  " + one.code, one.code),
          Entry(std::to_string(one.lessons), one.lessons),
          signed_entry(one.bias),
          signed_interval(one.low, one.high),
          datum(one.low),
          datum(one.high),
          signed_entry(one.shrunk),
          signed_interval(one.shrunk_low, one.shrunk_high),
          datum(one.shrunk_low),
          datum(one.shrunk_high),
          datum(one.weight),
          figure_entry(one.spread)};
}

// A family or a fault that was seen once says nothing: the warnings name it.
Seen seen_of(const LearnedBias& one) {
  const bool says = one.lessons > 1 || one.of == LearnedBias::Of::all || one.of == LearnedBias::Of::kind;
  return says ? Seen::always : Seen::by_programs;
}

void add_sort(LearnedBias::Of of, PageTable& table) {
  std::vector<Entry> cells(table.columns.size());
  cells[1] = "by " + std::string(sort_of(of));
  table.add(std::move(cells), Look::total, Seen::by_people);
}

PageTable no_elements() {
  return {"elements",
          {{"element", "element", Align::words, Wraps::yes},
           {"kind", "kind", Align::words, Wraps::yes},
           {"mark", "mark", Align::amount, Wraps::no, Seen::always, "expected"},
           {"points", "points", Align::amount, Wraps::no, Seen::always, "expected"},
           {"calibrated_mark", "mark", Align::amount, Wraps::no, Seen::always, "calibrated"},
           {"calibrated_points", "points", Align::amount, Wraps::no, Seen::always, "calibrated"}}};
}

Entry mark_entry(const std::optional<Mark>& mark) {
  return {text_of(mark, 2), text_of(mark)};
}

PageTable elements_table(const CalibratedEstimate& both) {
  PageTable table = no_elements();
  table.in_csv = true;
  table.given = {{"line", "element"}};
  for (const CalibratedElement& one : both.elements)
    table.add({one.label, one.kind, mark_entry(one.raw), text_of(one.raw_points, both.places),
               mark_entry(one.calibrated), text_of(one.calibrated_points, both.places)});
  if (!both.raw_total) return table;
  table.add_rule();
  table.add({"Total", "", "", text_of(both.raw_total, both.places), "",
             text_of(both.calibrated_total, both.places)},
            Look::total, Seen::by_people);
  return table;
}

// The row of a spreadsheet below the elements.
PageTable calibrated_total(const CalibratedEstimate& both) {
  PageTable table("", {{"line", ""}, {"points", ""}, {"calibrated_points", ""}});
  table.in_csv = true;
  table.add({"total", text_of(both.raw_total, both.places), text_of(both.calibrated_total, both.places)});
  return table;
}

std::string total_sentence(const CalibratedEstimate& both) {
  if (!both.change) return "There is no total: a mark is missing.";
  const std::string before = both.raw_total->text(both.places),
                    after = both.calibrated_total->text(both.places);
  if (*both.change == Points()) return "Calibrated, the estimate stays " + before + ".";
  return fmt::format("Calibrated, the estimate is {} instead of {} ({}{}).", after, before,
                     *both.change > Points() ? "+" : "", both.change->text(both.places));
}

}  // namespace

Datum back_test_datum(const BackTest& tested) {
  const auto if_any = [&](double value) { return tested.tested > 0 ? figure_datum(value) : Datum(); };
  return Record{{"verdict", verdict_of(tested.verdict)},
                {"tested", tested.tested},
                {"days", tested.days},
                {"error_before", if_any(tested.error_before)},
                {"error_after", if_any(tested.error_after)},
                {"better", if_any(tested.better)},
                {"better_low", figure_datum(tested.better_low)},
                {"better_high", figure_datum(tested.better_high)}};
}

void put_biases(const Learned& learned, bool in_csv, PageParts& page) {
  const bool any = learned.biases.front().lessons > 0;
  PageTable table = no_biases();
  table.in_csv = in_csv;
  auto before = LearnedBias::Of::all;
  for (const LearnedBias& one : learned.biases) {
    if (one.of != before && seen_of(one) == Seen::always) {
      add_sort(one.of, table);
      before = one.of;
    }
    table.add(bias_row(one), Look::usual, seen_of(one));
  }
  if (any) page.heading("What panels gave, less what you expected (marks)");
  page.add(std::move(table), any ? Seen::always : Seen::by_programs);
}

void put_estimate(const LessonsTold& told, Page& page) {
  const CalibratedEstimate& both = *told.estimate;
  page.csv = {"routine", "line", "element", "kind", "mark", "points", "calibrated_mark", "calibrated_points"};
  PageParts inside;
  inside.heading(told.routine + ", as expected and calibrated");
  inside.fact("routine", told.routine);
  inside.add(elements_table(both));
  inside.add(calibrated_total(both), Seen::by_programs);
  inside.fact("total", text_of(both.raw_total, both.places));
  inside.fact("calibrated_total", text_of(both.calibrated_total, both.places));
  inside.fact("change", text_of(both.change, both.places));
  inside.say(total_sentence(both));
  inside.say(fmt::format(
      "Calibrated marks are rounded to {} decimal places, not to the panel's step: they stand for "
      "the mean of a panel. Marks of the whole routine stay as they are.",
      calibrated_places));
  page.single("estimate", std::move(inside));
}

}  // namespace landdrill::report
