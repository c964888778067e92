#include <algorithm>
#include <array>

#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/score.h"
#include "engine/report/pages/score_parts.h"
#include "engine/score/account.h"
#include "engine/score/execution.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr int readable_title = 15;  // a title of fewer columns is wrapped too often

// Which halves of the table stand beside each other.
enum class Halves { estimate, panel, both };

// One row, before it is known which of its cells are shown.
struct ScoreRow {
  std::string number, words;
  std::array<std::string, 3> expected, recorded;  // difficulty, mark, points
  std::string difference, left;
  Look look = Look::usual;
};

std::string or_dash(const std::string& text) {
  return text.empty() ? "-" : text;
}

std::string element_words(const ElementLine& line, Halves halves) {
  std::string words = line.title.empty() ? line.kind : line.title + ", " + line.kind;
  if (!line.option.empty()) words += ", option " + line.option;
  const bool expected = line.expected.base && halves != Halves::panel;
  const bool given = line.recorded && line.recorded->base && halves != Halves::estimate;
  if (expected && given) return words + ", base mark*";
  if (expected) words += ", base mark* expected";
  if (given) words += ", base mark* given";
  return words;
}

std::array<std::string, 3> element_cells(const ElementResult& seen, bool marked) {
  const std::string mark = text_of(seen.mark);
  return {seen.credited.text(2) + (seen.base ? "*" : ""), marked ? or_dash(mark) : mark,
          text_of(seen.points, seen.places)};
}

ScoreRow element_row(const Account& account, const ElementLine& line, bool marked, Halves halves) {
  ScoreRow row;
  row.number = (line.worst ? "> " : "") + std::to_string(line.number);
  row.words = element_words(line, halves);
  row.expected = element_cells(line.expected, marked);
  if (line.recorded) row.recorded = element_cells(*line.recorded, marked);
  if (!line.recorded && marked) row.recorded[1] = "-";
  row.difference = signed_text(line.difference, account.places);
  row.left = text_of(line.left, account.places);
  if (line.worst) row.look = Look::worst;
  return row;
}

ScoreRow aspect_row(const Account& account, const AspectLine& line) {
  const std::string weight = "x " + line.weight.text();
  const auto cells = [&](const LineResult& seen) {
    return std::array{weight, or_dash(text_of(seen.mark)), text_of(seen.points, seen.places)};
  };
  return {"",
          line.title,
          cells(line.expected),
          cells(line.recorded),
          signed_text(line.difference, account.places),
          ""};
}

ScoreRow points_row(std::string words, const Amounts& amounts, int places) {
  return {"",
          std::move(words),
          {"", "", text_of(amounts.estimate, places)},
          {"", "", text_of(amounts.recorded, places)},
          signed_text(amounts.difference, places),
          ""};
}

// "Total", unless marks are missing on the side or sides that are shown.
std::string total_words(const Account& account, Halves halves) {
  const bool expected = account.total.estimate || halves == Halves::panel;
  const bool recorded = account.total.recorded || halves == Halves::estimate;
  if (expected && recorded) return "Total";
  if (halves != Halves::both || (!expected && !recorded)) return "So far";
  return expected ? "Total, panel so far" : "Total, estimate so far";
}

ScoreRow totals_row(const Account& account, Halves halves) {
  const Amounts shown{account.total.estimate.value_or(account.so_far),
                      account.total.recorded ? account.total.recorded : account.recorded_so_far,
                      account.total.difference};
  ScoreRow row = points_row(total_words(account, halves), shown, account.places);
  if (!account.elements.empty()) row.expected[0] = account.credited.text(2);
  if (!account.elements.empty()) row.recorded[0] = text_of(account.recorded_credited, 2);
  row.look = Look::total;
  return row;
}

bool any_mark(const Account& account) {
  return std::any_of(account.elements.begin(), account.elements.end(),
                     [](const ElementLine& line) { return line.expected.mark || line.recorded; });
}

// A panel that was recorded without anything to hold against it.
bool panel_alone(const Account& account) {
  const auto expected = [](const auto& line) { return line.expected.mark.has_value(); };
  return account.recorded && std::none_of(account.elements.begin(), account.elements.end(), expected) &&
         std::none_of(account.aspects.begin(), account.aspects.end(), expected);
}

std::vector<ScoreRow> score_rows(const Account& account, Halves halves) {
  std::vector<ScoreRow> rows;
  const bool marked = any_mark(account) || account.aspects.empty();
  for (const ElementLine& line : account.elements) rows.push_back(element_row(account, line, marked, halves));
  const auto add = [&](std::string words, const Amounts& amounts) {
    if (amounts.estimate || amounts.recorded)
      rows.push_back(points_row(std::move(words), amounts, account.places));
  };
  add("Elements, weighted by difficulty", account.together);
  for (const AspectLine& line : account.aspects) rows.push_back(aspect_row(account, line));
  add("Sync errors", account.sync);
  add("Penalties", account.penalties);
  return rows;
}

// The columns that not every report has.
struct Extra {
  bool change = false, left = false;
};
Extra extra_for(const Account& account, Halves halves) {
  const bool left = halves == Halves::estimate && !account.recorded &&
                    std::any_of(account.elements.begin(), account.elements.end(),
                                [](const ElementLine& line) { return line.left.has_value(); });
  return {halves != Halves::estimate && !panel_alone(account), left};
}

void add_half(std::vector<PageColumn>& columns, const std::string& before, const std::string& group,
              bool roomy) {
  const int gap = roomy ? 2 : 1;
  columns.push_back(
      {before + "difficulty", roomy ? "difficulty" : "DD", Align::amount, Wraps::no, Seen::always, group});
  columns.push_back({before + "mark", "mark", Align::amount, Wraps::no, Seen::always, group, gap});
  columns.push_back({before + "points", "points", Align::amount, Wraps::no, Seen::always, group, gap});
}

std::vector<PageColumn> columns_for(Halves halves, Extra extra) {
  const bool both = halves == Halves::both;
  std::vector<PageColumn> columns{
      {"number", "no.", Align::amount},
      {"line", "element", Align::words, Wraps::yes, Seen::always, "", both ? 1 : 2}};
  if (halves != Halves::panel) add_half(columns, "", both ? "estimate" : "", !both);
  if (halves != Halves::estimate) add_half(columns, "recorded_", both ? "panel" : "", !both);
  if (extra.change)
    columns.push_back({"difference", "change", Align::amount, Wraps::no, Seen::always, "", both ? 1 : 2});
  if (extra.left) columns.push_back({"left", "left", Align::amount});
  return columns;
}

Picture picture_of(Halves halves, Extra extra) {
  Picture bars{Picture::As::bars, "What each line is worth", "points", "line", {}};
  if (halves != Halves::panel) bars.amounts.push_back("points");
  if (halves != Halves::estimate) bars.amounts.push_back("recorded_points");
  if (extra.left) bars.amounts.push_back("left");
  return bars;
}

void add(PageTable& table, const ScoreRow& row, Halves halves, Extra extra) {
  std::vector<Entry> cells{row.number, row.words};
  if (halves != Halves::panel) cells.insert(cells.end(), row.expected.begin(), row.expected.end());
  if (halves != Halves::estimate) cells.insert(cells.end(), row.recorded.begin(), row.recorded.end());
  if (extra.change) cells.push_back(row.difference);
  if (extra.left) cells.push_back(row.left);
  table.add(std::move(cells), row.look);
}

// Without a key: programs get a table for each kind of line instead.
PageTable score_table(const Account& account, Halves halves) {
  const Extra extra = extra_for(account, halves);
  PageTable table("", columns_for(halves, extra));
  for (const ScoreRow& row : score_rows(account, halves)) add(table, row, halves, extra);
  table.add_rule();
  add(table, totals_row(account, halves), halves, extra);
  table.picture = picture_of(halves, extra);
  return table;
}

}  // namespace

bool shows_left_points(const Account& account) {
  return extra_for(account, Halves::estimate).left;
}

void put_score_tables(PageParts& page, const Account& account) {
  page.apart();
  if (!account.recorded) return page.add(score_table(account, Halves::estimate), Seen::by_people);
  if (panel_alone(account)) return page.add(score_table(account, Halves::panel), Seen::by_people);
  PageParts narrow;
  narrow.heading("Estimate");
  narrow.add(score_table(account, Halves::estimate), Seen::by_people);
  narrow.heading("Panel");
  narrow.add(score_table(account, Halves::panel), Seen::by_people);
  page.either(score_table(account, Halves::both), readable_title, std::move(narrow));
}

namespace {

std::string base_sentence(const ElementLine& line, const ElementResult& seen, const std::string& who) {
  return "Base mark: " + named(line) + " was declared at " + line.declared.text(2) + " and " + who + " " +
         seen.credited.text(2) + ".";
}

void put_base_notes(PageParts& page, const Account& account) {
  for (const ElementLine& line : account.elements) {
    if (line.expected.base)
      page.say("* ", base_sentence(line, line.expected, "is expected to be credited with"));
    if (line.recorded && line.recorded->base)
      page.say("* ", base_sentence(line, *line.recorded, "the panel credited"));
  }
}

// The worst line is the one the bridge loses most on; without a bridge, the one furthest from a full mark.
std::string worst_words(const Account& account, const ElementLine& line) {
  if (!account.bridge) return ", " + text_of(line.left, account.places) + " points short of a full mark.";
  if (!line.difference) return ", as the way from estimate to result shows below.";
  return ", " + signed_text(line.difference, account.places) + " points against the estimate.";
}

void put_worst_note(PageParts& page, const Account& account) {
  for (const ElementLine& line : account.elements)
    if (line.worst) page.say("> ", "Worst line: " + named(line) + worst_words(account, line));
}

std::string check_words(const Account& account) {
  if (!account.announced_difference) return "; not enough marks are there to check it.";
  if (*account.announced_difference == Points()) return ", the same as these marks give.";
  return ". These marks give " + text_of(account.total.recorded, account.places) + ", off by " +
         signed_text(account.announced_difference, account.places) +
         ": check the marks and penalties that were typed in.";
}

void put_announced_note(PageParts& page, const Account& account) {
  if (account.announced)
    page.say("Announced: " + text_of(account.announced, account.places) + check_words(account));
}

// Where marks come from, each source once, with its lines.
struct MarkSource {
  std::string words;
  bool worth_telling = false;  // all but the line `expect` of the sheet itself
  std::string lines;
};

void note_source(std::vector<MarkSource>& sources, const RestsOn& from, const std::string& line) {
  const std::string words = words_of(from);
  const auto at =
      std::find_if(sources.begin(), sources.end(), [&](const MarkSource& one) { return one.words == words; });
  if (at != sources.end()) {
    at->lines += ", " + line;
    return;
  }
  const bool of_runs = from.from == ExpectedMark::From::run || from.from == ExpectedMark::From::runs;
  sources.push_back({words, of_runs, line});
}

// "Estimate from the run of 2026-04-14: 1, 2, 4, Performance."
void put_mark_sources(PageParts& page, const Account& account) {
  std::vector<MarkSource> sources;
  bool all_marked = true;
  for (const ElementLine& line : account.elements) {
    all_marked = all_marked && line.rests_on;
    if (line.rests_on) note_source(sources, *line.rests_on, std::to_string(line.number));
  }
  for (const AspectLine& line : account.aspects) note_source(sources, line.rests_on, line.title);
  for (const MarkSource& one : sources) {
    if (!one.worth_telling) continue;
    const std::string which = sources.size() == 1 && all_marked ? "every mark" : one.lines;
    page.say("Estimate from the " + one.words + ": " + which + ".");
  }
}

}  // namespace

void put_score_notes(PageParts& page, const Account& account) {
  PageParts notes;
  put_worst_note(notes, account);
  put_base_notes(notes, account);
  put_announced_note(notes, account);
  put_mark_sources(notes, account);
  if (shows_left_points(account))
    notes.say("left: the points that a full mark for what was declared would add.");
  page.apart();
  page.section("", std::move(notes), Seen::by_people);
}

}  // namespace landdrill::report
