#include <gtest/gtest.h>

#include <boost/json.hpp>

#include "engine/report/pages/score.h"
#include "engine/report/render.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;
using boost::json::value;

std::string account_json(const Account& account, const Diagnostics& objections = {},
                         std::string_view file = {}, JsonLayout layout = JsonLayout::indented) {
  return render_json(score_page(account, objections, file), layout);
}

value parsed(const std::string& text) {
  boost::system::error_code error;
  value result = boost::json::parse(text, error);
  EXPECT_FALSE(error) << error.message() << " in " << text;
  return result;
}

TEST(JsonReport, ReadsBackWithTheSameAmounts) {
  const value report = parsed(account_json(with_panel(), one_objection(), "harbour.sheet"));
  EXPECT_EQ(report.at("file"), "harbour.sheet");
  EXPECT_EQ(report.at("total"), "107.5250");
  EXPECT_EQ(report.at("recorded_total"), "73.6834");
  EXPECT_EQ(report.at("difference"), "-33.8416");
  EXPECT_EQ(report.at_pointer("/elements/1/number"), 2);
  EXPECT_EQ(report.at_pointer("/elements/1/recorded_base_mark"), true);
  EXPECT_EQ(report.at_pointer("/elements/1/recorded_points"), "3.4167");
  EXPECT_EQ(report.at_pointer("/elements/1/worst"), true);
  EXPECT_EQ(report.at_pointer("/impression/0/weight"), "4");
  EXPECT_EQ(report.at_pointer("/sync/recorded"), "-0.9000");
  EXPECT_TRUE(report.at_pointer("/penalties/estimate").is_null());
  EXPECT_EQ(report.at_pointer("/values/rows_used/memory/0"), "sync small");
  EXPECT_EQ(report.at_pointer("/objections/messages/0/code"), "quota");
  EXPECT_EQ(report.at_pointer("/objections/messages/0/line"), 7);
}

TEST(JsonReport, HoldsTheWholeBuildUpWithItsRows) {
  const value report = parsed(account_json(with_panel()));
  EXPECT_EQ(report.at_pointer("/estimate_build_up/value"), "107.5250");
  EXPECT_EQ(report.at_pointer("/estimate_build_up/below/1/path"), "element 2");
  const value part = report.at_pointer("/estimate_build_up/below/1/below/0/below/0");
  EXPECT_EQ(part.at("what"), "part");
  EXPECT_EQ(part.at_pointer("/rows/0/table"), "parts");
  EXPECT_EQ(part.at_pointer("/rows/0/row"), "spin-720");
  EXPECT_EQ(part.at_pointer("/rows/0/line"), 12);
  EXPECT_EQ(part.at_pointer("/rows/0/status"), "invented");
  EXPECT_EQ(part.at_pointer("/rows/0/source"), "invented for the test");
}

TEST(JsonReport, HoldsTheBridgeStepByStep) {
  const value bridge = parsed(account_json(with_panel())).at("bridge");
  EXPECT_EQ(bridge.at("from"), "107.525");
  EXPECT_EQ(bridge.at("to"), "73.6834");
  ASSERT_EQ(bridge.at("steps").as_array().size(), 6u);
  EXPECT_EQ(bridge.at_pointer("/steps/1/cause"), "difficulty");
  EXPECT_EQ(bridge.at_pointer("/steps/1/element"), 2);
  EXPECT_EQ(bridge.at_pointer("/steps/1/change"), "-33.25");
  EXPECT_EQ(bridge.at_pointer("/steps/5/reached"), "73.6834");
  EXPECT_TRUE(bridge.at_pointer("/steps/4/element").is_null());
  EXPECT_EQ(bridge.at_pointer("/by_cause/execution"), "0.6084");
}

TEST(JsonReport, TellsWhatBecameOfEachJudgesMark) {
  Account account = with_panel();
  account.elements[1].recorded->judges = {{Mark(d("7.25"))},
                                          {Mark(d("7.5")), JudgeMark::State::dropped_high},
                                          {Mark(), JudgeMark::State::absent}};
  const value marks = parsed(account_json(account)).at("panel_marks");
  ASSERT_EQ(marks.as_array().size(), 3u);
  EXPECT_EQ(marks.at_pointer("/0/line"), "2 Undertow");
  EXPECT_EQ(marks.at_pointer("/0/mark"), "7.25");
  EXPECT_EQ(marks.at_pointer("/0/state"), "kept");
  EXPECT_EQ(marks.at_pointer("/1/judge"), 2);
  EXPECT_EQ(marks.at_pointer("/1/state"), "dropped as highest");
  EXPECT_TRUE(marks.at_pointer("/2/mark").is_null());
}

TEST(JsonReport, OffersAMendWhereThereIsNoChoice) {
  Diagnostics objections = one_objection();
  Diagnostic one = objections.list().front();
  one.fix = "lift";
  objections.add(one);
  const value messages = parsed(account_json(with_panel(), objections)).at_pointer("/objections/messages");
  EXPECT_TRUE(messages.at_pointer("/0/fix").is_null());
  EXPECT_EQ(messages.at_pointer("/1/fix/line"), 7);
  EXPECT_EQ(messages.at_pointer("/1/fix/column"), 1);
  EXPECT_EQ(messages.at_pointer("/1/fix/length"), 7);
  EXPECT_EQ(messages.at_pointer("/1/fix/replacement"), "lift");
}

TEST(JsonReport, HoldsTheTimeOfEachItem) {
  const value time = parsed(account_json(with_panel())).at("time");
  EXPECT_EQ(time.at("counts"), 96);
  EXPECT_EQ(time.at("seconds"), "45");
  EXPECT_EQ(time.at("longest_starts_at"), 1);
  EXPECT_EQ(time.at_pointer("/items/2/element"), 2);
  EXPECT_TRUE(time.at_pointer("/items/1/element").is_null());
}

TEST(JsonReport, HasAllKeysAlwaysInTheSameOrder) {
  const auto keys = [](const Account& account) {
    std::vector<std::string> names;
    const value report = parsed(account_json(account));
    for (const auto& one : report.as_object()) names.emplace_back(one.key());
    return names;
  };
  EXPECT_EQ(keys(with_panel()), keys(unfinished()));
  EXPECT_EQ(keys(with_panel()), keys({}));
  EXPECT_EQ(keys({})[3], "routine");
}

TEST(JsonReport, WritesNothingAsNull) {
  const value report = parsed(account_json(estimate_only()));
  for (const std::string key :
       {"panel", "recorded_total", "difference", "bridge", "recorded_build_up", "announced"}) {
    EXPECT_TRUE(report.at(key).is_null()) << key;
  }
}

TEST(JsonReport, SaysTheSameInOneLine) {
  const std::string line = account_json(with_panel(), {}, "a.sheet", JsonLayout::one_line);
  EXPECT_EQ(line.find('\n'), line.size() - 1);
  EXPECT_EQ(parsed(line), parsed(account_json(with_panel(), {}, "a.sheet")));
}

TEST(JsonReport, EscapesWhatItMust) {
  Account account = with_panel();
  account.title = "say \"go\"\\ \x1b[1m\n\x01 水 \xFF";
  const std::string text = account_json(account);
  for (const char c : text) EXPECT_TRUE(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
  EXPECT_EQ(parsed(text).at("routine"), "say \"go\"\\ \x1b[1m\n\x01 水 \\xff");
}

TEST(JsonReport, SaysOfASheetThatIsNotScoredWhatIsWrongWithIt) {
  const value report = parsed(render_json(refused_page("harbour.sheet", one_objection())));
  EXPECT_EQ(report.at("report"), "score");
  EXPECT_EQ(report.at("file"), "harbour.sheet");
  EXPECT_EQ(report.at("warnings"), 1);
  EXPECT_EQ(report.at("errors"), 0);
  EXPECT_EQ(report.at_pointer("/messages/0/severity"), "warning");
  EXPECT_EQ(report.at_pointer("/messages/0/found"), "3 elements");
  EXPECT_EQ(report.at_pointer("/messages/0/hint"), "add three");
}

}  // namespace
}  // namespace landdrill::report
