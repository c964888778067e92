// Judges, lessons and progress as they are printed: within the page, and whole for other programs.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/json.hpp>

#include "engine/judging/statistics/figures.h"
#include "engine/report/figures.h"
#include "engine/report/pages/book.h"
#include "engine/report/pages/judges.h"
#include "engine/report/pages/practice.h"
#include "engine/report/render.h"
#include "sample.h"
#include "tests/unit/kit/kit.h"

namespace landdrill::report {
namespace {

using namespace report_test;

constexpr int widths[] = {60, 80, 132};
const std::string long_title = "A very long title of a routine that nobody would want to read twice in a row";

PanelRule rule_of_three() {
  PanelRule rule;
  rule.title = "Execution";
  rule.per_element = true;
  rule.judges = 3;
  rule.step = d("0.25");
  rule.most = Mark(d("10"));
  return rule;
}

MarkSheet marked(const PanelRule& rule, int lines) {
  MarkSheet sheet{"Execution", {}};
  for (int i = 0; i < lines; ++i) {
    MarkedLine line{std::to_string(i + 1), i % 2 == 0 ? "Lift" : "Hybrid", &rule, {}};
    for (const int judge : {0, 1, 2}) {
      const int quarters = 20 + 3 * i % 7 + judge * (i % 3);
      line.marks.push_back(Mark(Decimal::from_units(quarters * (Decimal::one / 4))));
    }
    sheet.lines.push_back(std::move(line));
  }
  return sheet;
}

SatPanel sat(const PanelRule& rule, int lines, const std::string& date = "2026-05-09") {
  return {date, "Tarn Open", "duet-free", "Duet, free", long_title, {marked(rule, lines)}};
}

std::vector<Lesson> season(const std::string& kind) {
  std::vector<Lesson> all;
  for (int i = 0; i < 24; ++i) {
    Lesson one;
    one.date = "2026-0" + std::to_string(1 + i / 4) + "-01";
    one.kind = i % 3 == 0 ? kind : "lift";
    one.families = {"spins"};
    one.expected = 7;
    one.given = 6.5 + 0.01 * (i % 5);
    all.push_back(one);
  }
  return all;
}

std::vector<SeasonProgress> course() {
  ProgressPoint point;
  point.date = "2026-05-09";
  point.title = long_title;
  point.marked = point.of = 2;
  point.mark = 7.25;
  point.total = Points(d("180.5"));
  point.sync = Points(d("0.4"));
  ProgressVersion version{2, 3, {}, "kingfisher-2026", 2, Difficulty(d("4.5")), 4, {point}, {}, 1};
  return {season_progress({long_title, "duet-free", "Duet, free"}, {version})};
}

// How many cells each row of a CSV has, where no cell holds a comma.
bool is_even(const std::string& csv) {
  const std::vector<std::string> lines = lines_of(csv);
  return std::all_of(lines.begin(), lines.end(), [&](const std::string& line) {
    return std::count(line.begin(), line.end(), ',') == std::count(lines[0].begin(), lines[0].end(), ',');
  });
}

std::string judges_report(const SatPanel& panel, Format format, const TextWish& wish) {
  return render(*judges(Asked("judges"), {panel}), format, wish);
}

TEST(JudgesReport, StaysWithinThePage) {
  const PanelRule rule = rule_of_three();
  for (const int width : widths) {
    for (const bool full : {false, true}) {
      TextWish wish;
      wish.width = width;
      wish.full = full;
      EXPECT_EQ(layout_fault(judges_report(sat(rule, 12), Format::text, wish), width), "");
      EXPECT_EQ(layout_fault(judges_report(sat(rule, 2), Format::text, wish), width), "");
    }
  }
}

TEST(JudgesReport, SaysEveryPairOnlyInFull) {
  const PanelRule rule = rule_of_three();
  TextWish full;
  full.full = true;
  EXPECT_FALSE(holds(judges_report(sat(rule, 12), Format::text, {}), "Bland-Altman"));
  EXPECT_TRUE(holds(judges_report(sat(rule, 12), Format::text, full), "Bland-Altman"));
}

TEST(JudgesReport, HasNoCoefficientUnlessInFull) {
  const PanelRule rule = rule_of_three();
  TextWish full;
  full.full = true;
  const std::string brief = judges_report(sat(rule, 12), Format::text, {});
  for (const char* word :
       {"ICC", "intraclass", "Kendall", "Krippendorff", "Spearman", "kappa", "correlation"}) {
    EXPECT_FALSE(holds(brief, word)) << word;
    EXPECT_TRUE(holds(judges_report(sat(rule, 12), Format::text, full), word)) << word;
  }
}

TEST(JudgesReport, SaysOfEachJudgeHowFarUpOrDownAndWhatItMayBe) {
  const PanelRule rule = rule_of_three();
  const std::string text = judges_report(sat(rule, 12), Format::text, {});
  EXPECT_TRUE(holds(text, "above or below the others")) << text;
  EXPECT_TRUE(holds(text, "may be chance") || holds(text, "higher")) << text;
}

TEST(JudgesReport, OfTooFewMarksGivesTheMarksButNoAgreement) {
  const PanelRule rule = rule_of_three();
  const std::string text = judges_report(sat(rule, 2), Format::text, {});
  EXPECT_TRUE(holds(text, "Only 2 elements were marked")) << text;
  EXPECT_TRUE(holds(text, "Judge by judge"));
  EXPECT_FALSE(holds(text, "Krippendorff"));
}

TEST(JudgesReport, GivesOtherProgramsEveryNumber) {
  const PanelRule rule = rule_of_three();
  const SatPanel panel = sat(rule, 12);
  const boost::json::value json = boost::json::parse(judges_report(panel, Format::json, {}));
  const auto& view = json.at("meets").at(0).at("views").at(0);
  EXPECT_EQ(view.at("judges").as_array().size(), 3u);
  EXPECT_EQ(view.at("pairs").as_array().size(), 3u);
  EXPECT_EQ(view.at("lines").as_array().size(), 12u);
  EXPECT_EQ(view.at("agreement").at("icc(2,1)").at("value").as_string(),
            exact_figure(*panel_view(panel.sheets.front()).intraclass.forms[1].value));
  const std::string csv = judges_report(panel, Format::csv, {});
  EXPECT_TRUE(holds(csv, "\"icc(2,1)\"") || holds(csv, ",icc(2"));
}

TEST(JudgesReport, PutsPanelsOfTheSameJudgesTogetherWhereThatIsAsked) {
  const PanelRule rule = rule_of_three();
  const std::vector<SatPanel> panels = {sat(rule, 6), sat(rule, 6, "2026-06-13")};
  Asked asked("judges");
  const auto meets = [&] {
    const auto json = boost::json::parse(render_json(*judges(asked, panels)));
    return json.at("meets").as_array();
  };
  EXPECT_EQ(meets().size(), 2u);
  asked.add("--same-judges", {"yes"});
  EXPECT_EQ(meets().size(), 1u);
  EXPECT_EQ(meets().at(0).at("panels").as_int64(), 2);
  EXPECT_TRUE(meets().at(0).at("date").is_null());
}

TEST(JudgesReport, SaysThatThereIsNoPanelInsteadOfAnEmptyPage) {
  const Answer answer = judges(Asked("judges"), {});
  ASSERT_FALSE(answer);
  EXPECT_EQ(answer.error(), "there is no recorded panel in it");
}

TEST(LessonsReport, StaysWithinThePage) {
  const std::vector<Lesson> all = season("a-kind-with-a-long-code-of-its-own");
  const Learned learned = learn(all);
  const BackTest tested = back_test(all);
  for (const int width : widths) {
    TextWish wish;
    wish.width = width;
    EXPECT_EQ(layout_fault(render(lessons_page(learned, tested), Format::text, wish), width), "");
  }
}

// Two elements of the kind on each day, off by so much.
std::vector<Lesson> days_of(const std::string& kind, const std::vector<double>& biases) {
  std::vector<Lesson> all(2 * biases.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].date = "2026-0" + std::to_string(1 + i / 2) + "-01";
    all[i].kind = kind;
    all[i].expected = 7;
    all[i].given = 7 + biases[i / 2];
  }
  return all;
}
std::string first_sentences(std::vector<Lesson> all, const std::vector<Lesson>& more = {}) {
  all.insert(all.end(), more.begin(), more.end());
  TextWish wide;
  wide.width = 132;
  return render(lessons_page(learn(all), back_test(all)), Format::text, wide);
}

TEST(LessonsReport, ClaimsNothingOfFewElementsOrDays) {
  const std::string one = first_sentences(days_of("hybrid", {-0.5}));
  EXPECT_TRUE(
      holds(one,
            "On average panels gave elements of kind hybrid 0.50 less than you expected, on 2 elements on "
            "1 day: too little to tell"))
      << one;
  const std::string two = first_sentences(days_of("hybrid", {0.5, 0.5}), days_of("lift", {0.5, 0.4}));
  EXPECT_TRUE(
      holds(two, "On average panels gave 0.48 more than you expected, on 8 elements on 2 days: too little"))
      << two;
  EXPECT_FALSE(holds(two, "panels give"));
}

TEST(LessonsReport, SaysWhereChanceSuffices) {
  const std::string text = first_sentences(days_of("hybrid", {-0.5, 0.1, 0.2, -0.3}));
  EXPECT_TRUE(
      holds(text,
            "On average panels gave elements of kind hybrid 0.13 less than you expected, but so small a "
            "difference may be chance."))
      << text;
  EXPECT_TRUE(
      holds(first_sentences(days_of("hybrid", {-0.5, 0.5, 0.5, -0.5})), "hybrid what you expected.\n"));
}

TEST(LessonsReport, ClaimsADifferenceWithItsIntervalBeyondChance) {
  const std::string text =
      first_sentences(days_of("hybrid", {0.5, 0.4, 0.5, 0.6}), days_of("lift", {0.5, 0.4, 0.5, 0.6}));
  EXPECT_TRUE(holds(text,
                    "On average panels give more than you expect: 0.50 so far, 0.37 to 0.63 where chance is "
                    "allowed for."))
      << text;
}

TEST(LessonsReport, SaysOfOneKindWhatIsOfOneKind) {
  const std::string text =
      first_sentences(days_of("hybrid", {-0.5, -0.4, -0.5, -0.6}), days_of("lift", {0.1, -0.1, 0.1, -0.1}));
  EXPECT_TRUE(holds(text, "On average panels give elements of kind hybrid less than you expect: 0.50 so far"))
      << text;
  EXPECT_TRUE(holds(text, "Of other kinds of elements that cannot be told."));
  EXPECT_FALSE(holds(text, "panels give less"));
}

TEST(LessonsReport, SaysThatAnAddedBiasMayBeChance) {
  const kit::ReadSheet sheet(kit::reeds, kit::pond());
  const auto text = [&](const std::vector<Lesson>& all) {
    TextWish wide;
    wide.width = 132;
    return render(lessons_page(learn(all), back_test(all), &sheet.routine()), Format::text, wide);
  };
  EXPECT_TRUE(holds(text(days_of("hybrid", {-0.5, 0.1, 0.2, -0.3})), ", but what was added may be chance."));
  EXPECT_FALSE(holds(text(days_of("hybrid", {-0.5, -0.4, -0.5, -0.6})), "may be chance."));
}

TEST(LessonsReport, SaysWhetherCalibratingWouldHaveHelped) {
  const std::vector<Lesson> all = season("hybrid");
  const Learned learned = learn(all);
  BackTest tested = back_test(all);
  const auto text = [&] { return render(lessons_page(learned, tested), Format::text, {}); };
  EXPECT_TRUE(holds(text(), "Calibrating would have helped this season")) << text();
  tested.verdict = BackTest::Verdict::harmed;
  EXPECT_TRUE(holds(text(), "Calibrating would have made it worse"));
  tested.verdict = BackTest::Verdict::open;
  EXPECT_TRUE(holds(text(), "Whether calibrating would have helped is open"));
  tested.verdict = BackTest::Verdict::untested;
  EXPECT_TRUE(holds(text(), "cannot be tested yet"));
}

TEST(LessonsReport, GivesOtherProgramsEveryNumber) {
  const std::vector<Lesson> all = season("hybrid");
  const Learned learned = learn(all);
  const BackTest tested = back_test(all);
  const std::string csv = render(lessons_page(learned, tested), Format::csv, {});
  EXPECT_EQ(lines_of(csv).size(), learned.biases.size() + 1);
  EXPECT_TRUE(is_even(csv)) << csv;
  const auto json = boost::json::parse(render(lessons_page(learned, tested), Format::json, {}));
  EXPECT_EQ(json.at("back_test").at("verdict").as_string(), "helped");
  EXPECT_EQ(json.at("biases").as_array().size(), learned.biases.size());
}

TEST(ProgressReport, StaysWithinThePage) {
  for (const int width : widths) {
    TextWish wish;
    wish.width = width;
    wish.full = true;
    EXPECT_EQ(layout_fault(render(progress_page(course()), Format::text, wish), width), "");
  }
}

TEST(ProgressReport, TellsAVersionAndItsPanels) {
  const std::string text = render(progress_page(course()), Format::text, {});
  EXPECT_TRUE(holds(text, "Version 2 of 3: 2 elements, difficulty 4.50")) << text;
  EXPECT_TRUE(holds(text, "180.5000"));
  EXPECT_TRUE(holds(text, "-0.4"));
}

TEST(ProgressReport, GivesOtherProgramsEveryPoint) {
  const auto json = boost::json::parse(render(progress_page(course()), Format::json, {}));
  const auto& point = json.at("routines").at(0).at("versions").at(0).at("points").at(0);
  EXPECT_EQ(point.at("total").as_string(), "180.5000");
  EXPECT_EQ(point.at("mark").as_string(), "7.25");
  EXPECT_TRUE(point.at("penalties").is_null());
  EXPECT_EQ(lines_of(render(progress_page(course()), Format::csv, {})).size(), 2u);
}

TEST(PracticeList, TellsTheDayAloneWhereNoMoreIsKnownAndOtherProgramsWhatIsKept) {
  EXPECT_EQ(moment("2026-11-25T15:03:43Z"), "2026-11-25 15:03 UTC");
  EXPECT_EQ(moment("2026-05-10T00:00:00Z"), "2026-05-10");
  EXPECT_EQ(moment("2026-05-10T00:00:07Z"), "2026-05-10 00:00 UTC");
  const Page page = practice_sessions_page("practice list", {{"Robin", 1, "2026-05-10T00:00:00Z", 6, 5, ""}});
  EXPECT_TRUE(holds(render_text(page, {}), "2026-05-10   "));
  EXPECT_TRUE(holds(render_csv(page), ",2026-05-10T00:00:00Z,"));
}

TEST(PracticeList, GivesOtherProgramsCountsAsNumbersAndNoNumberOfAPausedSession) {
  const Page page =
      practice_sessions_page("practice list", {{"Robin", 0, "2026-05-10T00:00:00Z", 6, 5, "paused"}});
  const auto json = boost::json::parse(render_json(page));
  EXPECT_EQ(json.at("report").as_string(), "practice list");
  EXPECT_EQ(json.at("sessions").at(0).at("lines").as_int64(), 6);
  EXPECT_TRUE(json.at("sessions").at(0).at("number").is_null());
}

TEST(PracticeReport, GivesPeopleAndProgramsTheSameMarks) {
  PracticeTask task;
  task.routine = "Harbour Lights";
  task.panel = "2026-05-09 Tarn Open";
  task.line = "2";
  task.label = "2 Undertow";
  task.kept = 7 + 1.0 / 6;
  const std::vector<PracticeTask> tasks = {task, task};
  const std::vector<Practised> done = {{Mark(d("7.5")), false}, {std::nullopt, true}};
  PracticeReport report;
  report.warnings = {"0 marks: too few to say much"};
  const Page page = practice_page({"Robin", "2026-05-10T00:00:00Z", tasks, done, &report});
  const std::string text = render_text(page, {});
  EXPECT_TRUE(holds(text, "Practice of Robin, 2026-05-10: 0 marked, 0 not\n\n  - 0 marks")) << text;
  EXPECT_TRUE(holds(text, "too late"));
  const auto json = boost::json::parse(render_json(page));
  EXPECT_EQ(json.at("marks").at(0).at("mark").as_string(), "7.50");
  EXPECT_EQ(json.at("marks").at(0).at("kept").as_string(), "7.166667");
  EXPECT_TRUE(json.at("marks").at(1).at("mark").is_null());
  EXPECT_TRUE(json.at("marks").at(1).at("late").as_bool());
  EXPECT_EQ(lines_of(render_csv(page)).at(1),
            "Robin,2026-05-10T00:00:00Z,Harbour Lights,2026-05-09 Tarn Open,2,,7.50,no,7.17,+0.33,no,no");
}

TEST(PracticeReport, RoundsASharePerCentHalfUp) {
  PracticeReport report;
  report.within_one = 0.125;
  report.difference = 0.34;
  const std::string text =
      render_text(practice_curve_page("Robin", "the panel", {{1, "2026-05-10T00:00:00Z", &report}}), {});
  EXPECT_TRUE(holds(text, " 13 %")) << text;
  EXPECT_TRUE(holds(text, "==="));
}

TEST(PracticeReport, TellsEveryNumberWithItsInterval) {
  PracticeReport report;
  report.bias = {0.25, -0.1, 0.6, "", 12};
  report.difference = 0.4;
  report.within_one = report.within_two = 1;
  report.order = {0.8, 0.4, 0.95, "", 12};
  report.where = {{PracticeReport::Where::By::kind, "lift", 6, {0.5, 0.2, 0.8, "", 6}, 0.5},
                  {PracticeReport::Where::By::kind, "hybrid", 6, {0, {}, {}, "", 6}, 0.3}};
  report.judges = {{"2026-05-09 Tarn Open", "duet-free", true, 2, {0.1, -0.2, 0.4, "", 12}, 0.3}};
  const Page page = practice_page({"Robin", "2026-05-10T00:00:00Z", {}, {}, &report});
  const std::string text = render_text(page, {});
  EXPECT_TRUE(holds(text, "+0.25 marks (-0.10 to +0.60; above the panel is +)")) << text;
  EXPECT_TRUE(holds(text, "0.80 (0.40 to 0.95; 1 ranks as the panel does, 0 as chance")) << text;
  EXPECT_TRUE(holds(text, "lift        6    +0.50  +0.20 to +0.80")) << text;
  EXPECT_TRUE(holds(text, "Where nothing is said of it above, a difference between these may be chance."))
      << text;
  EXPECT_TRUE(holds(text, "judge 3     12    +0.10  -0.20 to +0.40")) << text;
  const auto json = boost::json::parse(render_json(page));
  EXPECT_EQ(json.at("summary").at("bias_low").as_string(), "-0.1");
  EXPECT_FALSE(json.at("where").at(0).at("more_than_chance").as_bool());
  EXPECT_EQ(json.at("judges").at(0).at("panel").as_string(), "2026-05-09 Tarn Open");
}

TEST(PracticeReport, NamesTheExpertWhoseMarksStandInThePlaceOfThePanels) {
  PracticeReport report;
  report.bias = {0.25, -0.1, 0.6, "", 12};
  const std::string text =
      render_text(practice_page({"Robin", "2026-05-10T00:00:00Z", {}, {}, &report, "Ash"}), {});
  EXPECT_TRUE(holds(text, "Your marks beside Ash's")) << text;
  EXPECT_TRUE(holds(text, "above Ash is +")) << text;
  EXPECT_FALSE(holds(text, "panel")) << text;
}

BookLine kept(std::string routine, int versions) {
  BookLine line;
  line.routine = std::move(routine);
  line.event = "duet-free";
  line.what = "panel";
  line.set = "kingfisher-2026";
  line.of_version = 1;
  line.routine_versions = versions;
  return line;
}

TEST(BookList, SetsRoutinesApartForPeopleAndNotForPrograms) {
  const Page page = book_list_page("book list", {kept("Reed Song", 1), kept("Low Water", 2)});
  const std::string text = render_text(page, {});
  EXPECT_TRUE(holds(text, "Reed Song, duet-free\n")) << text;
  EXPECT_TRUE(holds(text, "\n\nLow Water, duet-free\n"));
  EXPECT_TRUE(holds(text, "1 of 2"));
  const auto json = boost::json::parse(render_json(page));
  EXPECT_EQ(json.at("entries").as_array().size(), 2u);
  EXPECT_EQ(json.at("entries").at(1).at("of_version").as_int64(), 1);
  EXPECT_EQ(lines_of(render_csv(page)).size(), 3u);
}

TEST(BookList, OfNothingIsAnEmptyList) {
  const Page page = book_list_page("book add", {});
  EXPECT_EQ(render_text(page, {}), "");
  EXPECT_EQ(boost::json::parse(render_json(page)).at("entries").as_array().size(), 0u);
  EXPECT_EQ(lines_of(render_csv(page)).size(), 1u);
}

TEST(BookAdded, GivesProgramsTheCountsAndEveryNote) {
  const BookAdded added{{kept("Reed Song", 1)}, 2, 1, 0, {"look here"}};
  EXPECT_EQ(in_words(added), "2 added, 1 new version, 0 already there");
  const Page page = book_added_page("book add", added);
  EXPECT_EQ(render_text(page, {}), render_text(book_list_page("book add", added.lines), {}));
  const auto told = boost::json::parse(render_json(page));
  EXPECT_EQ(told.at("new_versions"), 1);
  EXPECT_EQ(told.at_pointer("/notes/0"), "look here");
}

TEST(BookCheck, TellsProgramsWhatIsDamaged) {
  EXPECT_EQ(render_text(book_check_page("club.season", ""), {}), "club.season: ok\n");
  EXPECT_EQ(render_text(book_check_page("club.season", "a text"), {}), "");
  const auto told = boost::json::parse(render_json(book_check_page("club.season", "a text")));
  EXPECT_EQ(told.at("sound"), false);
  EXPECT_EQ(told.at("damage"), "a text");
}

TEST(BookScores, TellTheFirstTenNotesAndHowManyMoreThereAre) {
  BookScore score;
  score.routine = "Reed Song";
  score.date = "2026-05-09";
  score.note = "no total: element 2";
  const std::string text = render_text(book_scores_page(std::vector<BookScore>(12, score)), {});
  EXPECT_TRUE(holds(text, "\n\n  - Reed Song, 2026-05-09, no total: element 2\n")) << text;
  EXPECT_TRUE(holds(text, "  - and 2 more, which CSV and JSON have"));
}

TEST(BookEditions, TellTheDayToPeopleAndTheMomentToPrograms) {
  BookEdition edition;
  edition.number = 2;
  edition.set = "kingfisher-2026";
  edition.kept_at = "2026-05-09T10:00:00Z";
  edition.panels = 3;
  const Page page = book_editions_page({edition});
  EXPECT_TRUE(holds(render_text(page, {}), "2026-05-09 "));
  EXPECT_FALSE(holds(render_text(page, {}), "10:00"));
  const auto json = boost::json::parse(render_json(page)).at("editions").at(0);
  EXPECT_EQ(json.at("kept_at").as_string(), "2026-05-09T10:00:00Z");
  EXPECT_EQ(json.at("panels").as_int64(), 3);
}

TEST(Figures, AreWrittenForPeopleAndForPrograms) {
  EXPECT_EQ(figure(0.125001), "0.13");
  EXPECT_EQ(figure(-0.001), "0.00");
  EXPECT_EQ(figure(std::nullopt), "");
  EXPECT_EQ(signed_figure(0.25), "+0.25");
  EXPECT_EQ(signed_figure(-0.25), "-0.25");
  EXPECT_EQ(signed_figure(0.001), "0.00");
  EXPECT_EQ(signed_interval(-0.5, 0.5), "-0.50 to +0.50");
  EXPECT_EQ(interval(0.1, std::nullopt), "");
  EXPECT_EQ(std::get<std::string>(figure_datum(1.0 / 3).is), "0.333333");
  EXPECT_EQ(std::get<std::string>(figure_datum(-1e-9).is), "0");
  EXPECT_EQ(std::get<std::string>(figure_datum(0.00001).is), "0.00001");
  EXPECT_EQ(std::get<std::string>(figure_datum(12).is), "12");
  EXPECT_TRUE(std::holds_alternative<std::monostate>(figure_datum(std::nullopt).is));
}

}  // namespace
}  // namespace landdrill::report
