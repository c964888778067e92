#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "engine/report/pages/score.h"
#include "engine/report/render.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string text(const Account& account, const TextWish& wish, const Diagnostics& objections = {}) {
  return render_text(score_page(account, objections), wish);
}

// The first line that starts with `start`, or "".
std::string line_starting(std::string_view text, std::string_view start) {
  for (const std::string& line : lines_of(text)) {
    if (line.starts_with(start)) return line;
  }
  return "";
}

// ---- every number of the text is one of the account ----

void add_numbers(std::set<std::string>& known, std::string_view text) {
  for (const std::string& number : numbers_in(text)) known.insert(number);
}
void add_numbers(std::set<std::string>& known, const std::optional<Decimal>& number) {
  if (number) known.insert(number->text(1));
  if (number) known.insert(number->text());
}
void add_step(std::set<std::string>& known, const Step& step) {
  for (const std::string& text : {step.path, step.label, step.rule, step.value, step.remark})
    add_numbers(known, text);
  for (const Provenance& row : step.rows) {
    known.insert(std::to_string(row.line));
    add_numbers(known, row.key);
    add_numbers(known, row.source);
  }
  for (const Step& input : step.inputs) add_step(known, input);
}
void add_points(std::set<std::string>& known, Points points) {
  known.insert(points.text(4));
  known.insert("+" + points.text(4));
}

void add_points(std::set<std::string>& known, const std::optional<Points>& points) {
  if (points) add_points(known, *points);
}
void add_result(std::set<std::string>& known, const LineResult& result) {
  if (result.mark) known.insert(result.mark->value.text(result.mark->places));
  add_points(known, result.points);
}

std::set<std::string> numbers_of(const Account& account) {
  std::set<std::string> known;
  for (const std::string& text :
       {account.title, account.event, account.set, account.edition, account.panel_date, account.panel,
        account.declared.text(2), account.credited.text(2)})
    add_numbers(known, text);
  if (account.recorded_credited) known.insert(account.recorded_credited->text(2));
  for (const Amounts& amounts : {account.together, account.sync, account.penalties, account.total})
    for (const auto& points : {amounts.estimate, amounts.recorded, amounts.difference})
      add_points(known, points);
  for (const auto& points : {std::optional(account.so_far), account.recorded_so_far, account.announced,
                             account.announced_difference})
    add_points(known, points);
  for (const ElementLine& line : account.elements) {
    known.insert(std::to_string(line.number));
    add_numbers(known, line.title);
    if (line.rests_on) add_numbers(known, line.rests_on->date);
    for (const Difficulty value : {line.declared, line.expected.credited}) known.insert(value.text(2));
    if (line.recorded) known.insert(line.recorded->credited.text(2));
    add_result(known, line.expected);
    if (line.recorded) add_result(known, *line.recorded);
    add_points(known, line.left);
    add_points(known, line.difference);
  }
  for (const AspectLine& line : account.aspects) {
    known.insert(line.weight.text());
    add_numbers(known, line.rests_on.date);
    add_result(known, line.expected);
    add_result(known, line.recorded);
    add_points(known, line.difference);
  }
  if (account.estimate) add_step(known, *account.estimate);
  if (account.recorded) add_step(known, *account.recorded);
  if (account.bridge) {
    add_points(known, account.bridge->from);
    add_points(known, account.bridge->to);
    for (const BridgeStep& step : account.bridge->steps) {
      known.insert(step.before.text(step.places));
      known.insert(step.after.text(step.places));
      add_points(known, step.change);
      add_points(known, step.reached);
    }
    for (const Cause cause :
         {Cause::difficulty, Cause::execution, Cause::impression, Cause::sync, Cause::penalty}) {
      add_points(known, account.bridge->by_cause(cause));
    }
  }
  for (const int count : {account.timing.counts, account.timing.under, account.timing.longest_under})
    known.insert(std::to_string(count));
  for (const auto& number : {account.timing.seconds, account.timing.under_seconds,
                             account.timing.longest_under_seconds, account.timing.under_share}) {
    add_numbers(known, number);
  }
  std::size_t rows = 0;
  for (const StatusCount& count : account.statuses) {
    rows += count.rows.size();
    known.insert(std::to_string(count.rows.size()));
    for (const std::string& row : count.rows) add_numbers(known, row);
  }
  known.insert(std::to_string(rows));
  for (const MissingMarks& missing : account.missing)
    for (const int number : missing.elements) known.insert(std::to_string(number));
  return known;
}

// The lines with a number that is none of `account`; "[1]" of the list of sources is one of ours.
std::vector<std::string> strangers(std::string_view text, const Account& account) {
  std::set<std::string> known = numbers_of(account);
  std::vector<std::string> found;
  for (const std::string& line : lines_of(text)) {
    for (const std::string& number : numbers_in(line)) {
      const bool ours = holds(line, "[" + number + "]");
      if (!ours && !known.contains(number)) found.push_back(number + " in: " + line);
    }
  }
  return found;
}

TEST(TextReport, PrintsNoNumberThatTheAccountDoesNotHave) {
  for (const bool full : {false, true}) {
    for (const Account& account : {with_panel(), estimate_only(), unfinished()}) {
      EXPECT_EQ(strangers(text(account, {false, 80, full}), account), std::vector<std::string>());
    }
  }
}

TEST(TextReport, WouldBeCaughtWithANumberOfItsOwn) {
  std::string report = text(with_panel(), {});
  const std::size_t at = report.find("73.6834");
  ASSERT_NE(at, std::string::npos);
  report.replace(at, 7, "73.6835");
  EXPECT_EQ(strangers(report, with_panel()).size(), 1u);
}

TEST(TextReport, PutsTheNumbersOfAnElementInItsLineInTheOrderOfTheHeadings) {
  const std::string report = text(with_panel(), {});
  const std::vector<std::string> undertow = {"2",    "4.00",   "9.50",   "38.0000",
                                             "0.50", "6.8333", "3.4167", "-34.5833"};
  EXPECT_EQ(numbers_in(line_starting(report, "> 2")), undertow);
  const std::vector<std::string> beacon = {"10",   "3.10", "7.25",    "22.4750",
                                           "3.10", "8.00", "24.8000", "+2.3250"};
  EXPECT_EQ(numbers_in(line_starting(report, " 10")), beacon);
  const std::vector<std::string> total = {"9.40", "107.5250", "5.90", "73.6834", "-33.8416"};
  EXPECT_EQ(numbers_in(line_starting(report, "    Total")), total);
}

TEST(TextReport, PutsTheTotalOfTheEstimateAloneUnderItsPoints) {
  const std::string report = text(estimate_only(), {});
  EXPECT_EQ(numbers_in(line_starting(report, "     Total")), (std::vector<std::string>{"9.40", "107.5250"}));
  EXPECT_FALSE(holds(report, "panel"));
}

TEST(TextReport, KeepsWithinThePageAtEveryWidth) {
  Account awkward = with_panel();
  awkward.title =
      "水の精 and the very long way down the river, by night, with lanterns, and back again before dawn";
  awkward.elements[0].title = "Élan vital of the Königsseerundfahrtgesellschaft";
  awkward.elements[1].title = "水の精水の精水の精水の精水の精水の精";
  awkward.elements[2].title = "bell\a and \x1b[2Jescape";
  awkward.set = "\xFF\xFE not UTF-8";
  for (int width = 60; width <= 130; ++width) {
    for (const bool full : {false, true}) {
      EXPECT_EQ(layout_fault(text(awkward, {false, width, full}, one_objection()), width), "");
      EXPECT_EQ(layout_fault(text(estimate_only(), {false, width, full}), width), "");
      EXPECT_EQ(layout_fault(text(unfinished(), {false, width, full}), width), "");
    }
  }
}

TEST(TextReport, TakesANarrowPageForSixtyColumns) {
  EXPECT_EQ(text(with_panel(), {false, 7, false}), text(with_panel(), {false, 60, false}));
}

TEST(TextReport, PutsEstimateAndPanelSideBySideInEightyColumns) {
  const std::string report = text(with_panel(), {false, 80, false});
  EXPECT_EQ(lines_of(report)[7],
            "no. element                      DD mark   points     DD   mark  points   change");
}

TEST(TextReport, SaysTheSameWithColourAndWithout) {
  const std::string coloured = text(with_panel(), {true, 80, true}),
                    bare = text(with_panel(), {false, 80, true});
  std::string stripped;
  for (std::size_t i = 0; i < coloured.size(); ++i) {
    if (coloured[i] == '\x1b') {
      i = coloured.find('m', i);
    } else {
      stripped += coloured[i];
    }
  }
  EXPECT_NE(coloured, bare);
  EXPECT_EQ(stripped, bare);
}

TEST(TextReport, NamesTheWorstLineInWords) {
  EXPECT_TRUE(
      holds(text(with_panel(), {}), "> Worst line: 2 Undertow, -34.5833 points against the estimate."));
  EXPECT_TRUE(
      holds(text(estimate_only(), {}), "> Worst line: 2 Undertow, 2.0000 points short of a full mark."));
  Account together = with_panel();
  together.elements[1].difference.reset();  // as under a rule that weights all elements together
  EXPECT_TRUE(
      holds(text(together, {}), "> Worst line: 2 Undertow, as the way from estimate to result shows below."));
  EXPECT_FALSE(holds(text(unfinished(), {}), "Worst"));
}

TEST(TextReport, TellsABaseMarkByWordAndSign) {
  const std::string report = text(with_panel(), {false, 100, false});
  EXPECT_TRUE(holds(report, "Undertow, Hybrid, base mark* given"));
  EXPECT_TRUE(holds(report, "0.50*"));
  EXPECT_TRUE(holds(report, "* Base mark: 2 Undertow was declared at 4.00 and the panel credited 0.50."));
}

TEST(TextReport, TellsWhoseBaseMarkItIs) {
  Account account = with_panel();
  account.elements[1].expected.base = true;
  EXPECT_TRUE(holds(text(account, {false, 100, false}), "Undertow, Hybrid, base mark*\n") ||
              holds(text(account, {false, 100, false}), "Undertow, Hybrid, base mark* "));
  account.elements[1].recorded->base = false;
  EXPECT_TRUE(holds(text(account, {false, 100, false}), "Undertow, Hybrid, base mark* expected"));
}

TEST(TextReport, NamesTheOptionThatWasPriced) {
  EXPECT_TRUE(holds(text(with_panel(), {false, 100, false}), "Beacon, Hybrid, option dimmed"));
}

TEST(TextReport, SaysWhereMarksComeFromUnlessTheSheetSaysThem) {
  EXPECT_TRUE(
      holds(text(with_panel(), {}), "Estimate from the run of 2026-05-07: 2, Choreography and music.\n"));
  Account account = with_panel();
  const RestsOn mean{ExpectedMark::From::runs, {}, 2};
  for (ElementLine& line : account.elements) line.rests_on = mean;
  account.aspects[0].rests_on = mean;
  EXPECT_TRUE(holds(text(account, {}), "Estimate from the mean of 2 runs: every mark.\n"));
}

TEST(TextReport, ComparesTheResultWithTheOneAnnounced) {
  Account account = with_panel();
  EXPECT_TRUE(holds(text(account, {}), "Announced: 73.6834, the same as these marks give.\n"));
  account.announced = points("74.6834");
  account.announced_difference = points("-1");
  EXPECT_TRUE(
      holds(text(account, {}), "Announced: 74.6834. These marks give 73.6834, off by -1.0000: check"));
  account.announced_difference.reset();
  EXPECT_TRUE(holds(text(account, {}), "Announced: 74.6834; not enough marks are there to check it.\n"));
}

TEST(TextReport, RunsTheBridgeFromTheEstimateToTheResult) {
  const std::string report = text(with_panel(), {});
  const std::string bridge = report.substr(report.find("From estimate to result"));
  const std::vector<std::string> lines = lines_of(bridge.substr(0, bridge.find("\n\n")));
  ASSERT_EQ(lines.size(), 10u);
  EXPECT_EQ(numbers_in(lines[2]), (std::vector<std::string>{"107.5250"}));
  EXPECT_EQ(lines[4], "2 Undertow   base mark given, 4.00 to 0.50    -33.2500   73.8917");
  EXPECT_EQ(lines[6], "10 Beacon    execution mark 7.2500 to 8.0000   +2.3250   74.8834");
  EXPECT_EQ(numbers_in(lines[9]), (std::vector<std::string>{"73.6834"}));
}

TEST(TextReport, SumsTheBridgeByCause) {
  const std::string report = text(with_panel(), {});
  EXPECT_EQ(numbers_in(line_starting(report, "difficulty credited  ")),
            (std::vector<std::string>{"-33.2500"}));
  EXPECT_EQ(numbers_in(line_starting(report, "execution mark  ")), (std::vector<std::string>{"+0.6084"}));
  EXPECT_EQ(numbers_in(line_starting(report, "together")), (std::vector<std::string>{"-33.8416"}));
  EXPECT_EQ(line_starting(report, "impression"), "");
}

TEST(TextReport, TellsTheTimeAndWhereTheLongestTimeUnderWaterStarts) {
  EXPECT_TRUE(
      holds(text(with_panel(), {false, 200, false}),
            "Time: 45.0 s (96 counts); under water 30.9 s (66 counts), 68.8 %; longest in one go 13.1 s (28 "
            "counts), from the passage before 2 Undertow.\n"));
  Account account = with_panel();
  account.timing.longest_starts = 2;
  EXPECT_TRUE(holds(text(account, {false, 200, false}), "(28 counts), from 2 Undertow.\n"));
}

TEST(TextReport, TellsCountsWithoutATempo) {
  Account account = with_panel();
  account.timing.seconds = account.timing.under_seconds = account.timing.longest_under_seconds = std::nullopt;
  EXPECT_TRUE(holds(text(account, {false, 200, false}),
                    "Time: 96 counts; under water 66 counts, 68.8 %; longest in one go 28 counts, "
                    "from the passage before 2 Undertow. No seconds without a tempo.\n"));
  account.timing = {};
  EXPECT_FALSE(holds(text(account, {}), "Time:"));
}

TEST(TextReport, ListsWhatTheRulesWouldObjectTo) {
  EXPECT_TRUE(holds(text(with_panel(), {}, one_objection()),
                    "What the rules would object to\n  - line 7: found 3 elements; expected 6 to 7 elements "
                    "(add three)\n"));
  EXPECT_FALSE(holds(text(with_panel(), {}), "object"));
}

TEST(TextReport, HasNoTotalWhileAMarkIsMissing) {
  const std::string report = text(unfinished(), {});
  EXPECT_FALSE(holds(report, "Total"));
  EXPECT_EQ(numbers_in(line_starting(report, "     So far")), (std::vector<std::string>{"9.40", "69.5250"}));
  EXPECT_TRUE(holds(report, "Missing, so there is no total yet\n  - element 2 has no expected mark"));
  EXPECT_TRUE(line_starting(report, "  2").ends_with("4.00  -")) << line_starting(report, "  2");
}

TEST(TextReport, SaysWhichSideHasNoTotalYet) {
  Account account = with_panel();
  account.total.recorded = account.total.difference = std::nullopt;
  account.missing = {{{{10}, {}, false}, MissingMarks::Of::panel}};
  EXPECT_TRUE(holds(text(account, {false, 100, false}), "    Total, panel so far "));
  EXPECT_TRUE(holds(text(account, {}), "Missing, so the panel has no total yet\n"));
  account.total.estimate.reset();
  EXPECT_TRUE(holds(text(account, {false, 100, false}), "    So far "));
  account.total.recorded = points("73.6834");
  EXPECT_TRUE(holds(text(account, {false, 100, false}), "    Total, estimate so far "));
  EXPECT_TRUE(holds(text(account, {}), "Missing, so there is no estimate yet\n"));
}

TEST(TextReport, SaysInSentencesWhatIsMissing) {
  Account account = with_panel();
  account.missing = {{{{1, 2, 10}, {"performance"}, false}, MissingMarks::Of::estimate},
                     {{{2}, {"performance"}, false}, MissingMarks::Of::panel}};
  const std::string report = text(account, {});
  EXPECT_TRUE(holds(report, "  - elements 1, 2 and 10 have no expected mark: add `expect`, or a run\n"));
  EXPECT_TRUE(holds(report, "  - performance has no expected mark: add it to a line `impression`\n"));
  EXPECT_TRUE(holds(report, "  - element 2 has no marks in the panel of 2026-05-09 Tarn Open\n"));
  EXPECT_TRUE(holds(report, "  - performance has no marks in the panel of 2026-05-09 Tarn Open\n"));
  account.missing = {{{{1, 2}, {}, true}, MissingMarks::Of::estimate}};
  EXPECT_TRUE(holds(text(account, {}), "  - nothing is expected yet: add `expect` to the elements"));
}

TEST(TextReport, BoundsTheListOfWhatIsMissingUnlessAllIsWanted) {
  Account account = unfinished();
  std::vector<std::string>& aspects = account.missing.front().aspects;
  for (int i = 1; i <= 10; ++i) aspects.push_back("side-" + std::to_string(i));
  const std::string sentence = " has no expected mark: add it to a line `impression`\n";
  EXPECT_TRUE(holds(text(account, {}), "  - side-7" + sentence + "  - and 3 more\n"));
  EXPECT_TRUE(holds(text(account, {false, 80, true}), "  - side-10" + sentence));
}

TEST(TextReport, ShowsAPanelAloneWithoutAnEmptyEstimateBesideIt) {
  Account account = with_panel();
  const auto forget = [](auto& line) {
    line.expected.mark.reset();
    line.expected.points = line.difference = std::nullopt;
  };
  for (ElementLine& line : account.elements) forget(line);
  for (AspectLine& line : account.aspects) forget(line);
  account.total.estimate = account.total.difference = std::nullopt;
  account.bridge.reset();
  const std::string report = text(account, {});
  EXPECT_FALSE(holds(report, "change"));
  EXPECT_FALSE(holds(report, "estimate  "));
  EXPECT_EQ(numbers_in(line_starting(report, "     Total")), (std::vector<std::string>{"5.90", "73.6834"}));
}

TEST(TextReport, SumsNoDifficultyWhereNoElementHasOne) {
  Account account = with_panel();
  account.elements.clear();
  account.credited = Difficulty();
  account.recorded_credited = Difficulty();
  account.bridge.reset();
  account.timing = {};
  EXPECT_EQ(numbers_in(line_starting(text(account, {}), "    Total")),
            (std::vector<std::string>{"107.5250", "73.6834", "-33.8416"}));
}

TEST(TextReport, SumsTheBridgeByCauseOnlyWhenThereAreSeveral) {
  Account account = with_panel();
  account.bridge->steps.resize(1);
  EXPECT_FALSE(holds(text(account, {}), "by cause"));
}

TEST(TextReport, PrintsItsCautions) {
  EXPECT_TRUE(holds(text(with_panel(), {false, 120, false}),
                    "Take care\n  - Lifts: check the depth and a clear landing"));
}

TEST(TextReport, SaysOnItsFaceWhatIsInventedOrFromMemory) {
  const std::string report = text(with_panel(), {});
  EXPECT_EQ(lines_of(report)[4], "5 values behind it: 3 invented; 1 from memory, not checked; 1 published.");
  EXPECT_TRUE(holds(report, "  - 3 invented: kinds hybrid, lift; parts spin-720\n"));
  EXPECT_TRUE(holds(report, "  - 1 from memory, not checked: sync small\n"));
  EXPECT_FALSE(holds(report, "panels duet-free execution"));
}

TEST(TextReport, BoundsTheListOfInventedValuesUnlessAllIsWanted) {
  Account account = with_panel();
  for (int i = 0; i < 40; ++i) account.statuses[0].rows.push_back("parts code-" + std::to_string(i));
  EXPECT_TRUE(holds(text(account, {false, 200, false}), "code-8, and 31 more\n"));
  EXPECT_FALSE(holds(text(account, {false, 200, false}), "code-39"));
  EXPECT_TRUE(holds(text(account, {false, 200, true}), "code-39"));
}

TEST(TextReport, IsQuietAboutValuesThatAreAllPublished) {
  Account account = with_panel();
  account.statuses = {{Status::published, {"panels duet-free execution"}}};
  const std::string report = text(account, {});
  EXPECT_EQ(lines_of(report)[4], "1 value behind it: all published.");
  EXPECT_FALSE(holds(report, "no rule book"));
}

TEST(TextReport, TellsTheWholeBuildUpOnlyWhenWanted) {
  EXPECT_FALSE(holds(text(with_panel(), {false, 80, false}), "How the estimate comes about"));
  EXPECT_TRUE(holds(text(with_panel(), {false, 80, true}), "    from parts.csv line 12 [2]\n"));
}

TEST(TextReport, StandsForAnEmptyAccountToo) {
  EXPECT_EQ(layout_fault(text({}, {}), 80), "");
}

TEST(TextReport, ShowsElementsThatAreWeightedTogether) {
  Account account = with_panel();
  account.together = {points("33.1"), points("30.1"), points("-3")};
  EXPECT_EQ(
      numbers_in(line_starting(text(account, {false, 100, false}), "    Elements, weighted by difficulty")),
      (std::vector<std::string>{"33.1000", "30.1000", "-3.0000"}));
}

}  // namespace
}  // namespace landdrill::report
