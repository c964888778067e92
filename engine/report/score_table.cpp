#include <algorithm>
#include <array>

#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

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
  std::string words = title_and_kind(line);
  if (!line.option.empty()) words += ", option " + line.option;
  const bool expected = line.base && halves != Halves::panel;
  const bool given = line.recorded_base && halves != Halves::estimate;
  if (expected && given) return words + ", base mark*";
  if (expected) words += ", base mark* expected";
  if (given) words += ", base mark* given";
  return words;
}

ScoreRow element_row(const ElementLine& line, bool marked, Halves halves) {
  ScoreRow row{
      (line.worst ? "> " : "") + std::to_string(line.number), element_words(line, halves), {}, {}, {}, {}};
  row.expected = {line.credited + (line.base ? "*" : ""), line.mark, line.points};
  row.recorded = {line.recorded_credited + (line.recorded_base ? "*" : ""), line.recorded_mark,
                  line.recorded_points};
  if (marked && line.mark.empty()) row.expected[1] = "-";
  if (marked && line.recorded_mark.empty()) row.recorded[1] = "-";
  row.difference = with_sign(line.difference);
  row.left = line.left;
  if (line.worst) row.look = Look::worst;
  return row;
}

ScoreRow aspect_row(const AspectLine& line) {
  const std::string weight = line.weight.empty() ? "" : "x " + line.weight;
  return {"",
          line.title,
          {weight, or_dash(line.mark), line.points},
          {weight, or_dash(line.recorded_mark), line.recorded_points},
          with_sign(line.difference),
          ""};
}

ScoreRow points_row(std::string words, std::string expected, std::string recorded,
                    std::string_view difference) {
  return {"",
          std::move(words),
          {"", "", std::move(expected)},
          {"", "", std::move(recorded)},
          with_sign(difference),
          ""};
}

// "Total", unless marks are missing on the side or sides that are shown.
std::string total_words(const Account& account, Halves halves) {
  const bool expected = !account.total.empty() || halves == Halves::panel;
  const bool recorded = !account.recorded_total.empty() || halves == Halves::estimate;
  if (expected && recorded) return "Total";
  if (halves != Halves::both || (!expected && !recorded)) return "So far";
  return expected ? "Total, panel so far" : "Total, estimate so far";
}

ScoreRow total_row(const Account& account, Halves halves) {
  ScoreRow row = points_row(
      total_words(account, halves), account.total.empty() ? account.so_far : account.total,
      account.recorded_total.empty() ? account.recorded_so_far : account.recorded_total, account.difference);
  if (!account.elements.empty()) row.expected[0] = account.credited;
  if (!account.elements.empty()) row.recorded[0] = account.recorded_credited;
  row.look = Look::total;
  return row;
}

template <class Line>
bool any_with(const std::vector<Line>& lines, std::string Line::*text) {
  return std::any_of(lines.begin(), lines.end(), [&](const Line& line) { return !(line.*text).empty(); });
}

bool any_mark(const Account& account) {
  return any_with(account.elements, &ElementLine::mark) ||
         any_with(account.elements, &ElementLine::recorded_mark);
}

// A panel that was recorded without anything to hold against it.
bool panel_alone(const Account& account) {
  return account.recorded && !any_with(account.elements, &ElementLine::mark) &&
         !any_with(account.aspects, &AspectLine::mark);
}

std::vector<ScoreRow> score_rows(const Account& account, Halves halves) {
  std::vector<ScoreRow> rows;
  const bool marked = any_mark(account) || account.aspects.empty();
  for (const ElementLine& line : account.elements) rows.push_back(element_row(line, marked, halves));
  if (!account.weighted.empty() || !account.recorded_weighted.empty()) {
    rows.push_back(points_row("Elements, weighted by difficulty", account.weighted, account.recorded_weighted,
                              account.weighted_difference));
  }
  for (const AspectLine& line : account.aspects) rows.push_back(aspect_row(line));
  if (!account.sync.empty() || !account.recorded_sync.empty()) {
    rows.push_back(points_row("Sync errors", account.sync, account.recorded_sync, account.sync_difference));
  }
  if (!account.penalties.empty() || !account.recorded_penalties.empty()) {
    rows.push_back(
        points_row("Penalties", account.penalties, account.recorded_penalties, account.penalties_difference));
  }
  return rows;
}

// The columns that not every report has.
struct Extra {
  bool change = false, left = false;
};
Extra extra_for(const Account& account, Halves halves) {
  const bool left =
      halves == Halves::estimate && !account.recorded && any_with(account.elements, &ElementLine::left);
  return {halves != Halves::estimate && !panel_alone(account), left};
}

std::vector<GridColumn> columns_for(Halves halves, Extra extra) {
  using enum Align;
  std::vector<GridColumn> columns{{"no.", amount},
                                  {"element", words, true, "", halves == Halves::both ? 1 : 2}};
  const auto half = [&](const char* group, bool roomy) {
    const int gap = roomy ? 2 : 1;
    columns.push_back({roomy ? "difficulty" : "DD", amount, false, group, 2});
    columns.push_back({"mark", amount, false, group, gap});
    columns.push_back({"points", amount, false, group, gap});
  };
  if (halves != Halves::panel) half(halves == Halves::both ? "estimate" : "", halves != Halves::both);
  if (halves != Halves::estimate) half(halves == Halves::both ? "panel" : "", halves != Halves::both);
  if (extra.change) columns.push_back({"change", amount, false, "", halves == Halves::both ? 1 : 2});
  if (extra.left) columns.push_back({"left", amount});
  return columns;
}

void add(Grid& grid, const ScoreRow& row, Halves halves, Extra extra) {
  std::vector<std::string> cells{row.number, row.words};
  if (halves != Halves::panel) cells.insert(cells.end(), row.expected.begin(), row.expected.end());
  if (halves != Halves::estimate) cells.insert(cells.end(), row.recorded.begin(), row.recorded.end());
  if (extra.change) cells.push_back(row.difference);
  if (extra.left) cells.push_back(row.left);
  grid.add(std::move(cells), row.look);
}

Grid score_grid(const Account& account, Halves halves) {
  const Extra extra = extra_for(account, halves);
  Grid grid(columns_for(halves, extra));
  for (const ScoreRow& row : score_rows(account, halves)) add(grid, row, halves, extra);
  grid.add_rule();
  add(grid, total_row(account, halves), halves, extra);
  return grid;
}

}  // namespace

bool shows_left(const Account& account) {
  return extra_for(account, Halves::estimate).left;
}

std::string score_tables(const Account& account, const TextWish& wish) {
  if (!account.recorded) return "\n" + score_grid(account, Halves::estimate).text(wish.width, wish.colour);
  if (panel_alone(account)) return "\n" + score_grid(account, Halves::panel).text(wish.width, wish.colour);
  constexpr int readable = 15;  // a title of fewer columns is wrapped too often
  const Grid both = score_grid(account, Halves::both);
  if (both.fits(wish.width, readable)) return "\n" + both.text(wish.width, wish.colour);
  return heading("Estimate", wish) + score_grid(account, Halves::estimate).text(wish.width, wish.colour) +
         heading("Panel", wish) + score_grid(account, Halves::panel).text(wish.width, wish.colour);
}

}  // namespace landdrill::report
