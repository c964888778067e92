#include "engine/judging/lessons.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/judging/enough.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/book.h"
#include "engine/report/sentences.h"
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
  return {"biases",
          {for_programs("of"),
           {"code", "", Align::words, Wraps::yes},
           {"lessons", "elements", Align::amount},
           {"", "days", Align::amount},
           {"raw", "on average", Align::amount},
           {"", "95 % interval", Align::words, Wraps::yes},
           for_programs("raw_low"),
           for_programs("raw_high"),
           {"shrunk", "to go by", Align::amount},
           for_programs("shrunk_low"),
           for_programs("shrunk_high"),
           for_programs("weight"),
           for_programs("spread"),
           for_programs("days")}};
}

// A family or a fault that was seen once says nothing: the warnings name it.
Seen seen_of(const LearnedBias& one) {
  const bool says = one.lessons > 1 || one.of == LearnedBias::Of::all || one.of == LearnedBias::Of::kind;
  return says ? Seen::always : Seen::by_programs;
}

void add_bias(const LearnedBias& one, PageTable& table) {
  table.add({sort_of(one.of), Entry(one.code.empty() ? "all" : "  " + one.code, one.code), one.lessons,
             one.days, signed_entry(one.bias), signed_interval(one.low, one.high), figure_datum(one.low),
             figure_datum(one.high), signed_entry(one.shrunk), figure_datum(one.shrunk_low),
             figure_datum(one.shrunk_high), figure_datum(one.weight), figure_datum(one.spread), one.days},
            Look::usual, seen_of(one));
}

void add_sort(LearnedBias::Of of, PageTable& table) {
  std::vector<Entry> cells(table.columns.size());
  cells[1] = "by " + std::string(sort_of(of));
  table.add(std::move(cells), Look::total, Seen::by_people);
}

Entry mark_entry(const std::optional<Mark>& mark) {
  return {text_of(mark, 2), text_of(mark)};
}

PageTable elements_table(const CalibratedEstimate& both) {
  PageTable table("elements", {{"element", "element", Align::words, Wraps::yes},
                               {"kind", "kind", Align::words, Wraps::yes},
                               amount_column("mark", "mark", "expected"),
                               amount_column("points", "points", "expected"),
                               amount_column("calibrated_mark", "mark", "calibrated"),
                               amount_column("calibrated_points", "points", "calibrated")});
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
  PageTable table("", program_columns({"line", "points", "calibrated_points"}));
  table.in_csv = true;
  table.add({"total", text_of(both.raw_total, both.places), text_of(both.calibrated_total, both.places)});
  return table;
}

std::string total_sentence(const CalibratedEstimate& both) {
  if (!both.change) return "There is no total: a mark is missing.";
  const std::string before = both.raw_total->text(both.places),
                    after = both.calibrated_total->text(both.places);
  if (*both.change == Points()) return "Calibrated, the estimate stays " + before + ".";
  return fmt::format("Calibrated, the estimate is {} instead of {} ({}{}){}.", after, before,
                     *both.change > Points() ? "+" : "", both.change->text(both.places),
                     both.may_be_chance ? ", but what was added may be chance" : "");
}

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

// `in_csv`: they are the table of the spreadsheet.
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
    add_bias(one, table);
  }
  if (any) page.heading("What panels gave, less what you expected (marks)");
  page.add(std::move(table), any ? Seen::always : Seen::by_programs);
}

void put_estimate(const Routine& routine, const Learned& learned, Page& page) {
  const CalibratedEstimate both = calibrated_estimate(routine, {}, learned);
  page.csv = {"routine", "line", "element", "kind", "mark", "points", "calibrated_mark", "calibrated_points"};
  PageParts inside;
  inside.heading(std::string(routine.title) + ", as expected and calibrated");
  inside.fact("routine", routine.title);
  inside.add(elements_table(both));
  inside.add(calibrated_total(both), Seen::by_programs);
  inside.fact("total", text_of(both.raw_total, both.places));
  inside.fact("calibrated_total", text_of(both.calibrated_total, both.places));
  inside.fact("change", text_of(both.change, both.places));
  inside.fact("may_be_chance", both.may_be_chance);
  inside.say(total_sentence(both));
  inside.say(fmt::format(
      "Calibrated marks are rounded to {} decimal places, not to the panel's step: they stand for "
      "the mean of a panel. Marks of the whole routine stay as they are.",
      calibrated_places));
  page.single("estimate", std::move(inside));
}

PageTable claims_table(const Learned& learned) {
  PageTable table("claims", program_columns({"kind", "raw", "raw_low", "raw_high"}));
  for (const SeasonClaim& one : learned.claims)
    table.add({one.kind, figure_datum(one.bias), figure_datum(one.low), figure_datum(one.high)});
  return table;
}

std::string_view way_of(double bias) {
  return bias < 0 ? "less" : "more";
}

std::string size_of(double bias) {
  return figure(bias < 0 ? -bias : bias);
}

// "elements of kind lift "; empty for all.
std::string these(const std::string& kind) {
  return kind.empty() ? "" : "elements of kind " + kind + " ";
}

std::string claim_sentence(const SeasonClaim& claim) {
  const double least = claim.bias < 0 ? -claim.high : claim.low,
               most = claim.bias < 0 ? -claim.low : claim.high;
  return fmt::format(
      "On average panels give {}{} than you expect: {} so far, {} where chance is allowed for.",
      these(claim.kind), way_of(claim.bias), size_of(claim.bias), interval(least, most));
}

// What was given so far is a fact; that it is given, a claim.
std::string fact_sentence(const Learned& learned) {
  const LearnedBias& all = learned.biases.front();
  const std::string size = size_of(all.bias);
  const std::string sentence =
      size == "0.00" ? fmt::format("On average panels gave {}what you expected", these(learned.only_kind))
                     : fmt::format("On average panels gave {}{} {} than you expected",
                                   these(learned.only_kind), size, way_of(all.bias));
  if (!learned.tells) {
    return fmt::format("{}, on {} on {}: too little to tell whether they will again.", sentence,
                       counted(all.lessons, "element"), counted(all.days, "day"));
  }
  return sentence + (size == "0.00" ? "." : ", but so small a difference may be chance.");
}

std::vector<std::string> bias_sentences(const Learned& learned) {
  if (learned.biases.front().lessons == 0) return {"There is nothing to learn from yet."};
  if (learned.claims.empty()) return {fact_sentence(learned)};
  std::vector<std::string> sentences;
  for (const SeasonClaim& claim : learned.claims) sentences.push_back(claim_sentence(claim));
  const auto kinds = std::count_if(learned.biases.begin(), learned.biases.end(),
                                   [](const LearnedBias& one) { return one.of == LearnedBias::Of::kind; });
  const bool of_kinds = !learned.claims.front().kind.empty();
  if (of_kinds && learned.claims.size() < static_cast<std::size_t>(kinds))
    sentences.push_back("Of other kinds of elements that cannot be told.");
  return sentences;
}

std::string errors_of(const BackTest& tested) {
  return fmt::format("mean distance from the panel {} before, {} after, on {} on {}",
                     figure(tested.error_before), figure(tested.error_after),
                     counted(tested.tested, "element"), counted(tested.days, "day"));
}

std::string verdict_sentence(const BackTest& tested) {
  switch (tested.verdict) {
    case BackTest::Verdict::untested:
      return fmt::format(
          "Whether calibrating would have helped cannot be tested yet: no day has {} marked "
          "elements before it.",
          least_lessons);
    case BackTest::Verdict::helped:
      return fmt::format("Calibrating would have helped this season: {}.", errors_of(tested));
    case BackTest::Verdict::harmed:
      return fmt::format(
          "Calibrating would have made it worse this season: {}. Leave your marks as they are.",
          errors_of(tested));
    case BackTest::Verdict::open:
      return fmt::format("Whether calibrating would have helped is open: {}; that may be chance.",
                         errors_of(tested));
  }
  return "";
}

void put_warnings(const Learned& learned, const BackTest& tested, PageParts& page) {
  std::vector<std::string> warnings = learned.warnings;
  if (tested.verdict != BackTest::Verdict::untested)
    warnings.insert(warnings.end(), tested.warnings.begin(), tested.warnings.end());
  for (std::string& warning : warnings)
    warning = capitalised(warning.ends_with('.') ? warning : warning + ".");
  if (!warnings.empty()) page.heading("With care");
  page.list("warnings", warnings);
}

void put_lessons_legend(PageParts& page) {
  page.heading("How to read it");
  page.list("",
            {"on average: what panels gave less what you expected before their day; below 0 they gave less. "
             "An element counts once for its kind, for each family of its parts and for each fault of the "
             "run it rests on.",
             fmt::format("95 % interval: one in twenty of them misses the true difference. Marks of one day "
                         "go up and down together, so days count, not elements (Bell and McCaffrey 2002): of "
                         "fewer than {} days, or of days that are all alike, there is none. What is said of "
                         "single kinds takes "
                         "wider ones, as several kinds are looked at.",
                         least_days),
             "to go by: the average drawn towards that of all kinds (families, faults), the more so the "
             "fewer its elements are: a few marks tell little (empirical Bayes, Efron and Morris 1975).",
             "A calibrated mark is your expected mark with what is to go by for its kind added."});
}

}  // namespace

Page lessons_page(const Learned& learned, const BackTest& tested, const Routine* routine) {
  const LearnedBias& all = learned.biases.front();
  Page page("book lessons");
  page.heading(fmt::format("What panels gave beside what you expected: {} on {}",
                           counted(all.lessons, "element"), counted(learned.days, "day")));
  page.apart();
  std::vector<std::string> sentences = bias_sentences(learned);
  sentences.push_back(verdict_sentence(tested));
  page.list("sentences", sentences);
  page.fact("days", learned.days);
  page.add(claims_table(learned), Seen::by_programs);
  page.fact("back_test", back_test_datum(tested));
  put_warnings(learned, tested, page);
  if (routine != nullptr) put_estimate(*routine, learned, page);
  put_biases(learned, routine == nullptr, page);
  if (all.lessons > 0) put_lessons_legend(page);
  return page;
}

}  // namespace landdrill::report
