// Judges, lessons and progress as they are printed: within the page, and whole for other programs.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/json.hpp>

#include "engine/report/figures.h"
#include "engine/report/judges.h"
#include "engine/report/lessons.h"
#include "engine/report/practice_list.h"
#include "engine/report/progress.h"
#include "sample.h"

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

std::vector<MeetView> meet(const PanelRule& rule, int lines) {
  MarkSheet sheet{"Execution", {}};
  for (int i = 0; i < lines; ++i) {
    MarkedLine line{std::to_string(i + 1), i % 2 == 0 ? "Lift" : "Hybrid", &rule, {}};
    for (const int judge : {0, 1, 2}) {
      const int quarters = 20 + 3 * i % 7 + judge * (i % 3);
      line.marks.push_back(Mark(Decimal::from_units(quarters * (Decimal::one / 4))));
    }
    sheet.lines.push_back(std::move(line));
  }
  return {{"2026-05-09", "Tarn Open", "duet-free", "Duet, free", {long_title}, 1, {panel_view(sheet)}}};
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

std::string judges(const std::vector<MeetView>& meets, Format format, const TextWish& wish) {
  const JudgesReport report(format, wish);
  std::string text = report.head();
  for (const MeetView& meet : meets) text += &meet == &meets.front() ? report.first(meet) : report.next(meet);
  return text + report.foot();
}

TEST(JudgesReport, StaysWithinThePage) {
  const PanelRule rule = rule_of_three();
  for (const int width : widths) {
    for (const bool full : {false, true}) {
      TextWish wish;
      wish.width = width;
      wish.full = full;
      EXPECT_EQ(layout_fault(judges(meet(rule, 12), Format::text, wish), width), "");
      EXPECT_EQ(layout_fault(judges(meet(rule, 2), Format::text, wish), width), "");
    }
  }
}

TEST(JudgesReport, SaysEveryPairOnlyInFull) {
  const PanelRule rule = rule_of_three();
  TextWish full;
  full.full = true;
  EXPECT_FALSE(holds(judges(meet(rule, 12), Format::text, {}), "Bland-Altman"));
  EXPECT_TRUE(holds(judges(meet(rule, 12), Format::text, full), "Bland-Altman"));
}

TEST(JudgesReport, OfTooFewMarksGivesTheMarksButNoAgreement) {
  const PanelRule rule = rule_of_three();
  const std::string text = judges(meet(rule, 2), Format::text, {});
  EXPECT_TRUE(holds(text, "Only 2 elements were marked")) << text;
  EXPECT_TRUE(holds(text, "Judge by judge"));
  EXPECT_FALSE(holds(text, "Krippendorff"));
}

TEST(JudgesReport, GivesOtherProgramsEveryNumber) {
  const PanelRule rule = rule_of_three();
  const auto views = meet(rule, 12);
  const boost::json::value json = boost::json::parse(judges(views, Format::json, {}));
  const auto& view = json.at("meets").at(0).at("views").at(0);
  EXPECT_EQ(view.at("judges").as_array().size(), 3u);
  EXPECT_EQ(view.at("pairs").as_array().size(), 3u);
  EXPECT_EQ(view.at("lines").as_array().size(), 12u);
  EXPECT_EQ(view.at("agreement").at("icc(2,1)").at("value").as_string(),
            exact_figure(views[0].views[0].intraclass.forms[1].value));
  const std::string csv = judges(views, Format::csv, {});
  EXPECT_TRUE(holds(csv, "\"icc(2,1)\"") || holds(csv, ",icc(2"));
}

TEST(LessonsReport, StaysWithinThePage) {
  const std::vector<Lesson> all = season("a-kind-with-a-long-code-of-its-own");
  const Learned learned = learn(all);
  const BackTest tested = back_test(all);
  for (const int width : widths) {
    TextWish wish;
    wish.width = width;
    EXPECT_EQ(layout_fault(lessons({&learned, &tested, {}, nullptr}, Format::text, wish), width), "");
  }
}

TEST(LessonsReport, SaysWhetherCalibratingWouldHaveHelped) {
  const std::vector<Lesson> all = season("hybrid");
  const Learned learned = learn(all);
  BackTest tested = back_test(all);
  const auto text = [&] { return lessons({&learned, &tested, {}, nullptr}, Format::text, {}); };
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
  const std::string csv = lessons({&learned, &tested, {}, nullptr}, Format::csv, {});
  EXPECT_EQ(lines_of(csv).size(), learned.biases.size() + 1);
  EXPECT_TRUE(is_even(csv)) << csv;
  const auto json = boost::json::parse(lessons({&learned, &tested, {}, nullptr}, Format::json, {}));
  EXPECT_EQ(json.at("back_test").at("verdict").as_string(), "helped");
  EXPECT_EQ(json.at("biases").as_array().size(), learned.biases.size());
}

TEST(ProgressReport, StaysWithinThePage) {
  for (const int width : widths) {
    TextWish wish;
    wish.width = width;
    wish.full = true;
    EXPECT_EQ(layout_fault(progress(course(), Format::text, wish), width), "");
  }
}

TEST(ProgressReport, TellsAVersionAndItsPanels) {
  const std::string text = progress(course(), Format::text, {});
  EXPECT_TRUE(holds(text, "Version 2 of 3: 2 elements, difficulty 4.50")) << text;
  EXPECT_TRUE(holds(text, "180.5000"));
  EXPECT_TRUE(holds(text, "-0.4"));
}

TEST(ProgressReport, GivesOtherProgramsEveryPoint) {
  const auto json = boost::json::parse(progress(course(), Format::json, {}));
  const auto& point = json.at("routines").at(0).at("versions").at(0).at("points").at(0);
  EXPECT_EQ(point.at("total").as_string(), "180.5000");
  EXPECT_EQ(point.at("mark").as_string(), "7.25");
  EXPECT_TRUE(point.at("penalties").is_null());
  EXPECT_EQ(lines_of(progress(course(), Format::csv, {})).size(), 2u);
}

TEST(PracticeList, TellsTheDayAloneWhereNoMoreIsKnownAndOtherProgramsWhatIsKept) {
  EXPECT_EQ(moment("2026-11-25T15:03:43Z"), "2026-11-25 15:03 UTC");
  EXPECT_EQ(moment("2026-05-10T00:00:00Z"), "2026-05-10");
  EXPECT_EQ(moment("2026-05-10T00:00:07Z"), "2026-05-10 00:00 UTC");
  const std::vector<PracticeSessionLine> one = {{"Robin", "1", "2026-05-10T00:00:00Z", "6", "5", ""}};
  EXPECT_NE(practice_sessions(one, Format::text, {}).find("2026-05-10   "), std::string::npos);
  EXPECT_NE(practice_sessions(one, Format::csv, {}).find(",2026-05-10T00:00:00Z,"), std::string::npos);
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
  EXPECT_EQ(exact_figure(1.0 / 3), "0.333333");
  EXPECT_EQ(exact_figure(-1e-9), "0");
  EXPECT_EQ(exact_figure(0.00001), "0.00001");
  EXPECT_EQ(exact_figure(12), "12");
}

}  // namespace
}  // namespace landdrill::report
