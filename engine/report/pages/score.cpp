#include "engine/report/pages/score.h"

#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/choosing/worth.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/report/sentences.h"
#include "engine/routine/timing.h"
#include "engine/score/account.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

void add_of_estimate(const MissingMarks& missing, std::vector<std::string>& sentences) {
  const Obstacles obstacles =
      missing.nothing_is_marked ? Obstacles{{Obstacle::Of::nothing_expected}} : unmarked_lines(missing);
  for (const Obstacle& one : obstacles) sentences.push_back(words_of(one));
}

void add_of_panel(const MissingMarks& missing, const std::string& panel,
                  std::vector<std::string>& sentences) {
  const std::string no_marks = " no marks in the panel of " + panel;
  if (!missing.elements.empty()) sentences.push_back(elements_have(missing.elements) + no_marks);
  for (const std::string& aspect : missing.aspects) sentences.push_back(aspect + " has" + no_marks);
}

}  // namespace

std::string words_of(const RestsOn& rests_on) {
  switch (rests_on.from) {
    case ExpectedMark::From::nothing:
      return "no mark yet";
    case ExpectedMark::From::sheet:
      return "expected";
    case ExpectedMark::From::run:
      return "run of " + rests_on.date;
    case ExpectedMark::From::runs:
      return "mean of " + std::to_string(rests_on.runs) + " runs";
  }
  return "";
}

std::string named(const ElementLine& line) {
  return std::to_string(line.number) + " " + (line.title.empty() ? line.kind : line.title);
}

std::string text_of(const std::optional<PanelMark>& mark) {
  return mark ? mark->value.text(mark->places) : "";
}

namespace {

constexpr std::size_t most_missing = 8;

std::vector<std::string> missing_sentences(const Account& account) {
  std::vector<std::string> sentences;
  for (const MissingMarks& missing : account.missing) {
    if (missing.of == MissingMarks::Of::estimate)
      add_of_estimate(missing, sentences);
    else
      add_of_panel(missing, panel_name(account), sentences);
  }
  return sentences;
}

std::string what_is_lacking(const Account& account) {
  if (account.total.estimate) return "the panel has no total yet";
  return account.total.recorded ? "there is no estimate yet" : "there is no total yet";
}

void put_missing(PageParts& page, const Account& account) {
  if (!account.missing.empty()) page.heading("Missing, so " + what_is_lacking(account));
  page.short_list("missing", missing_sentences(account), most_missing);
}

// Why this total is another than the one above it.
void put_to_expect(PageParts& page, const Account& account, const std::optional<Points>& to_expect) {
  page.fact("total_expected", to_expect ? to_expect->text(account.places) : "");
  if (!to_expect || to_expect == account.total.estimate) return;
  page.say(
      "With the risks counted in, expect " + to_expect->text(account.places) +
      ": the average over how likely each base mark, sync error and penalty is. The estimate above takes "
      "each line as the latest run or the sheet has it; `compare`, `train` and `plan` go by the average.");
}

}  // namespace

Answer score(const Asked& asked, const Routine& routine, const Diagnostics& messages, std::string_view file) {
  const PriceWish priced = whole_price_wish(asked, routine);
  if (!priced.mistake.empty()) return tl::unexpected(priced.mistake);
  return score_page(routine, priced, messages, file);
}

Page score_page(const Routine& routine, const PriceWish& price, const Diagnostics& messages,
                std::string_view file) {
  const std::optional<Exact> to_expect = expected_total(routine, risked(routine, price.wish));
  return score_page(account(routine, price.wish, price.panel), messages, file,
                    to_expect ? std::optional(rounded(routine, *to_expect)) : std::nullopt);
}

Page score_page(Account account, const Diagnostics& objections, std::string_view file,
                const std::optional<Points>& to_expect) {
  Page page("score");
  page.csv = {"file",
              "routine",
              "panel",
              "line",
              "number",
              "title",
              "kind",
              "option",
              "weight",
              "declared",
              "credited",
              "base_mark",
              "mark",
              "points",
              "left",
              "rests_on",
              "recorded_credited",
              "recorded_base_mark",
              "recorded_mark",
              "recorded_points",
              "difference"};
  page.fact("file", file);
  put_title(page, account);
  put_amounts(page, account);
  put_judges(page, account);
  put_score_tables(page, account);
  put_score_notes(page, account);
  put_to_expect(page, account, to_expect);
  put_missing(page, account);
  put_bridge(page, account);
  put_objections(page, objections);
  put_time(page, account);
  put_cautions(page, account);
  put_doubtful_values(page, account);
  page.fact("estimate_build_up", {});
  page.fact("recorded_build_up", {});
  put_build_up(page, std::move(account));
  return page;
}

Page refused_page(std::string_view file, const Diagnostics& messages) {
  Page page("score");
  page.fact("file", file);
  put_messages(page, messages);
  return page;
}

namespace {

std::string_view what_became_of(const JudgeMark& judge) {
  constexpr std::string_view words[] = {"kept", "dropped as highest", "dropped as lowest", "missing"};
  return words[static_cast<std::size_t>(judge.state)];
}

void add_judges(PageTable& table, const std::string& line, const LineResult& recorded) {
  for (std::size_t i = 0; i < recorded.judges.size(); ++i) {
    const JudgeMark& judge = recorded.judges[i];
    const bool given = judge.state != JudgeMark::State::absent;
    table.add({line,
               {"", i + 1},
               given ? judge.mark.text(recorded.mark->places) : "",
               what_became_of(judge),
               judge.filled});
  }
}

}  // namespace

void put_judges(PageParts& page, const Account& account) {
  PageTable table("panel_marks", program_columns({"line", "judge", "mark", "state", "filled"}));
  for (const ElementLine& line : account.elements)
    if (line.recorded) add_judges(table, named(line), *line.recorded);
  for (const AspectLine& line : account.aspects) add_judges(table, line.title, line.recorded);
  page.add(std::move(table), Seen::by_programs);
}

namespace {

// "96 counts, 45.0 s", or the counts alone without a tempo.
std::string length_words(int counts, const std::optional<Decimal>& seconds) {
  const std::string words = counted(static_cast<std::size_t>(counts), "count");
  return seconds ? seconds->text(1) + " s (" + words + ")" : words;
}

std::string where_longest_starts(const Account& account) {
  const std::vector<ItemTime>& items = account.timing.items;
  for (std::size_t i = account.timing.longest_starts; i < items.size(); ++i) {
    if (!items[i].item.is_element) continue;
    const std::string name = named(account.elements.at(items[i].item.index));
    return i == account.timing.longest_starts ? ", from " + name : ", from the passage before " + name;
  }
  return account.timing.longest_starts < items.size() ? ", from the last passage" : "";
}

std::string time_words(const Account& account) {
  const Timing& timing = account.timing;
  std::string words = length_words(timing.counts, timing.seconds) + "; under water " +
                      length_words(timing.under, timing.under_seconds);
  if (timing.under_share) words += ", " + timing.under_share->text() + " %";
  if (timing.longest_under > 0) {
    words += "; longest in one go " + length_words(timing.longest_under, timing.longest_under_seconds) +
             where_longest_starts(account);
  }
  if (!timing.seconds) words += ". No seconds without a tempo";
  return words + ".";
}

PageTable items_table(const Account& account) {
  PageTable table("items",
                  program_columns({"element", "counts", "under_counts", "seconds", "under_seconds"}));
  for (const ItemTime& one : account.timing.items) {
    const Datum number = one.item.is_element ? Datum(account.elements.at(one.item.index).number) : Datum();
    table.add({{"", number}, one.counts, one.under, text_of(one.seconds), text_of(one.under_seconds)});
  }
  return table;
}

}  // namespace

void put_time(PageParts& page, const Account& account) {
  const Timing& timing = account.timing;
  PageParts time;
  time.fact("counts", timing.counts);
  time.fact("under_counts", timing.under);
  time.fact("longest_under_counts", timing.longest_under);
  time.fact("seconds", text_of(timing.seconds));
  time.fact("under_seconds", text_of(timing.under_seconds));
  time.fact("longest_under_seconds", text_of(timing.longest_under_seconds));
  time.fact("under_per_cent", text_of(timing.under_share));
  time.fact("longest_starts_at", timing.items.empty() ? Datum() : Datum(timing.longest_starts));
  time.add(items_table(account), Seen::by_programs);
  page.single("time", std::move(time), Seen::by_programs);
  if (timing.counts == 0) return;
  page.apart();
  page.say("Time: ", time_words(account));
}

}  // namespace landdrill::report
