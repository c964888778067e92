#include <algorithm>

#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/score.h"
#include "engine/score/account.h"
#include "engine/score/execution.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr int readable_title = 15;  // a title of fewer columns is wrapped too often

// Which halves of the table stand beside each other.
enum class Halves { estimate, panel, both };

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

// "Total", unless marks are missing on the side or sides that are shown.
std::string total_words(const Account& account, Halves halves) {
  const bool expected = account.total.estimate || halves == Halves::panel;
  const bool recorded = account.total.recorded || halves == Halves::estimate;
  if (expected && recorded) return "Total";
  if (halves != Halves::both || (!expected && !recorded)) return "So far";
  return expected ? "Total, panel so far" : "Total, estimate so far";
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

void add_half(std::vector<PageColumn>& columns, const std::string& group, bool roomy) {
  const auto tight = [&](std::string heading) {
    return PageColumn{"", std::move(heading), Align::amount, Wraps::no, Seen::always, group, roomy ? 2 : 1};
  };
  columns.push_back(amount_column("", roomy ? "difficulty" : "DD", group));
  columns.push_back(tight("mark"));
  columns.push_back(tight("points"));
}

std::vector<PageColumn> columns_for(Halves halves, Extra extra) {
  const bool both = halves == Halves::both;
  const int gap = both ? 1 : 2;
  std::vector<PageColumn> columns{amount_column("", "no."),
                                  {"", "element", Align::words, Wraps::yes, Seen::always, "", gap}};
  if (halves != Halves::panel) add_half(columns, both ? "estimate" : "", !both);
  if (halves != Halves::estimate) add_half(columns, both ? "panel" : "", !both);
  if (extra.change) columns.push_back({"", "change", Align::amount, Wraps::no, Seen::always, "", gap});
  if (extra.left) columns.push_back(amount_column("", "left"));
  return columns;
}

// Writes each row straight into the cells of the columns that are shown. For people alone: programs get a table for each
// kind of line instead.
class ScoreTable {
 public:
  ScoreTable(const Account& account, Halves halves)
      : account_(account),
        halves_(halves),
        extra_(extra_for(account, halves)),
        marked_(any_mark(account) || account.aspects.empty()),
        table_("", columns_for(halves, extra_)) {}

  PageTable made() &&;

 private:
  using Cells = std::vector<Entry>;
  void add_element(const ElementLine& line);
  void add_aspect(const AspectLine& line);
  void add_amounts(std::string words, const Amounts& amounts);
  void add_total();

  void put_element(Cells& cells, const ElementResult& seen) const;
  bool shows_estimate() const { return halves_ != Halves::panel; }
  bool shows_panel() const { return halves_ != Halves::estimate; }
  void put_change(Cells& cells, const std::optional<Points>& difference) const {
    if (extra_.change) cells.push_back(signed_text(difference, account_.places));
  }
  void add(Cells cells, Look look = Look::usual, const std::optional<Points>& left = {}) {
    if (extra_.left) cells.push_back(text_of(left, account_.places));
    table_.add(std::move(cells), look);
  }

  const Account& account_;
  const Halves halves_;
  const Extra extra_;
  const bool marked_;
  PageTable table_;
};

void put_half(std::vector<Entry>& cells, std::string difficulty, std::string mark, std::string points) {
  cells.push_back(std::move(difficulty));
  cells.push_back(std::move(mark));
  cells.push_back(std::move(points));
}

void ScoreTable::put_element(Cells& cells, const ElementResult& seen) const {
  const std::string mark = text_of(seen.mark);
  put_half(cells, seen.credited.text(2) + (seen.base ? "*" : ""), marked_ ? or_dash(mark) : mark,
           text_of(seen.points, seen.places));
}

void ScoreTable::add_element(const ElementLine& line) {
  Cells cells{(line.worst ? "> " : "") + std::to_string(line.number), element_words(line, halves_)};
  if (shows_estimate()) put_element(cells, line.expected);
  if (shows_panel() && line.recorded) put_element(cells, *line.recorded);
  if (shows_panel() && !line.recorded) put_half(cells, "", marked_ ? "-" : "", "");
  put_change(cells, line.difference);
  add(std::move(cells), line.worst ? Look::worst : Look::usual, line.left);
}

void ScoreTable::add_aspect(const AspectLine& line) {
  Cells cells{"", line.title};
  const auto put_line = [&](const LineResult& seen) {
    put_half(cells, "x " + line.weight.text(), or_dash(text_of(seen.mark)),
             text_of(seen.points, seen.places));
  };
  if (shows_estimate()) put_line(line.expected);
  if (shows_panel()) put_line(line.recorded);
  put_change(cells, line.difference);
  add(std::move(cells));
}

void ScoreTable::add_amounts(std::string words, const Amounts& amounts) {
  if (!amounts.estimate && !amounts.recorded) return;
  Cells cells{"", std::move(words)};
  if (shows_estimate()) put_half(cells, "", "", text_of(amounts.estimate, account_.places));
  if (shows_panel()) put_half(cells, "", "", text_of(amounts.recorded, account_.places));
  put_change(cells, amounts.difference);
  add(std::move(cells));
}

void ScoreTable::add_total() {
  const Amounts& total = account_.total;
  const bool any = !account_.elements.empty();
  Cells cells{"", total_words(account_, halves_)};
  if (shows_estimate())
    put_half(cells, any ? account_.credited.text(2) : "", "",
             total.estimate.value_or(account_.so_far).text(account_.places));
  if (shows_panel())
    put_half(cells, any ? text_of(account_.recorded_credited, 2) : "", "",
             text_of(total.recorded ? total.recorded : account_.recorded_so_far, account_.places));
  put_change(cells, total.difference);
  add(std::move(cells), Look::total);
}

PageTable ScoreTable::made() && {
  for (const ElementLine& line : account_.elements) add_element(line);
  add_amounts("Elements, weighted by difficulty", account_.together);
  for (const AspectLine& line : account_.aspects) add_aspect(line);
  add_amounts("Sync errors", account_.sync);
  add_amounts("Penalties", account_.penalties);
  table_.add_rule();
  add_total();
  return std::move(table_);
}

PageTable score_table(const Account& account, Halves halves) {
  return ScoreTable(account, halves).made();
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

// A fact of that day; the chance that it comes again is told where risks are counted.
std::string shown_with_base(const ElementLine& line) {
  if (!line.rests_on || line.rests_on->base.empty()) return "most of the runs were credited with";
  return "the run of " + line.rests_on->base + " showed";
}

void put_base_notes(PageParts& page, const Account& account) {
  for (const ElementLine& line : account.elements) {
    if (line.expected.base) page.say("* ", base_sentence(line, line.expected, shown_with_base(line)));
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

MarkSource& note(std::vector<MarkSource>& sources, const std::string& words, const std::string& line) {
  const auto at =
      std::find_if(sources.begin(), sources.end(), [&](const MarkSource& one) { return one.words == words; });
  if (at == sources.end()) return sources.emplace_back(MarkSource{words, false, line});
  at->lines += ", " + line;
  return *at;
}

void note_source(std::vector<MarkSource>& sources, const RestsOn& from, const std::string& line) {
  const bool of_runs = from.from == ExpectedMark::From::run || from.from == ExpectedMark::From::runs;
  note(sources, words_of(from), line).worth_telling = of_runs;
}

std::string best_words(const RestsOn& from) {
  switch (from.best_from) {
    case RunMark::Best::sheet:
      return "`best` " + from.best->text();
    case RunMark::Best::set:
      return from.best->text() + ", the best mark in panels.csv";
    case RunMark::Best::nobody:
      break;
  }
  return from.best->text() + ", the highest mark: nobody wrote `best`";
}

// "Deductions are taken from `best` 8.50 in 1, 3."
void put_best_marks(PageParts& page, const Account& account) {
  std::vector<MarkSource> sources;
  for (const ElementLine& line : account.elements) {
    if (!line.rests_on || !line.rests_on->best) continue;
    const RestsOn& from = *line.rests_on;
    note(sources, best_words(from), std::to_string(line.number));
  }
  for (const MarkSource& one : sources)
    page.say("Deductions are taken from " + one.words +
             (sources.size() == 1 ? "." : " (" + one.lines + ")."));
}

// "... says nothing of the mark: `expect` stands (1, 2)."
void put_silent_runs(PageParts& page, const Account& account) {
  std::string lines;
  for (const ElementLine& line : account.elements) {
    if (line.rests_on && line.rests_on->silent > 0)
      lines += (lines.empty() ? "" : ", ") + std::to_string(line.number);
  }
  if (!lines.empty())
    page.say(
        "A run without a fault where nobody wrote `best`, or with no more than a part lost, says nothing of "
        "the "
        "mark: `expect` stands (" +
        lines + ").");
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
  put_best_marks(notes, account);
  put_silent_runs(notes, account);
  if (shows_left_points(account))
    notes.say("left: the points that a full mark for what was declared would add.");
  page.apart();
  page.section("", std::move(notes), Seen::by_people);
}

}  // namespace landdrill::report
