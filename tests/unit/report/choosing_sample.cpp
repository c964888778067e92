#include "choosing_sample.h"

namespace landdrill::report_test {
namespace {

using report::ComparedElement;
using report::ToldForecast;
using report::ToldPlan;

Option option(std::string_view title, std::string_view difficulty) {
  Option result;
  result.title = title;
  result.declared = Difficulty(d(difficulty));
  return result;
}

OptionWorth worth(std::size_t index, std::string title, std::string_view difficulty, std::string_view mark) {
  OptionWorth result;
  result.option = index;
  result.title = std::move(title);
  result.declared = Difficulty(d(difficulty));
  result.base = Difficulty(d("0.5"));
  result.mark = ExpectedMark{ExpectedMark::From::sheet, Mark(d(mark)), false, nullptr, {}};
  result.chance.from = BaseChance::From::sheet;
  return result;
}

OptionWorth as_written() {
  OptionWorth result = worth(0, "as written", "4", "7.25");
  result.chance.percent = d("12");
  result.clean = Points(d("29"));
  result.on_base = Points(d("3.625"));
  result.expected = Points(d("25.955"));
  result.total = Points(d("118.205"));
  result.spread = d("8.7123");
  PartWorth spin{"spin-720", 1, Difficulty(d("1.4")), Points(d("-8.932")), {}, {}};
  spin.easier = PartWorth::Exchange{"spin-360", Difficulty(d("3.5")), Points(d("-3.19"))};
  PartWorth split{"split-hold", 2, Difficulty(d("0.6")), Points(d("-3.828")), {}, {}};
  result.parts = {spin, split};
  return result;
}

OptionWorth safer() {
  OptionWorth result = worth(1, "safer", "2.7", "7.75");
  result.chance.percent = d("3");
  result.clean = Points(d("20.925"));
  result.on_base = Points(d("3.875"));
  result.expected = Points(d("20.4135"));
  result.total = Points(d("112.6635"));
  return result;
}

Duel duel() {
  Duel result;
  result.harder = 0;
  result.easier = 1;
  result.gain = Points(d("5.5415"));
  result.steps = {{WorthStep::Cause::part, "with spin-720 for spin-360", Points(d("3.7588"))},
                  {WorthStep::Cause::execution, "mark 7.75 -> 7.25", Points(d("-1.9525"))},
                  {WorthStep::Cause::risk, "base chance 3 % -> 12 %", Points(d("3.7352"))}};
  result.lowest_mark = Mark(d("5.75"));
  result.even_mark = Exact(d("5.7"));
  result.highest_chance = d("33.84");
  result.marks = {Mark(d("7.25")), Mark(d("5.5"))};
  result.chances = {d("0"), d("12")};
  result.table = {Points(d("8.5865")), Points(d("5.5415")), Points(d("1.5865")), Points(d("-0.7235"))};
  return result;
}

ForecastLine line(ForecastLine::What what, std::string label, Odds odds) {
  ForecastLine result;
  result.what = what;
  result.label = std::move(label);
  result.points = std::move(odds);
  return result;
}

ForecastLine marked(std::string label, std::string_view mark, BaseChance base, Odds odds) {
  ForecastLine result = line(ForecastLine::What::element, std::move(label), std::move(odds));
  result.expected_mark = d(mark);
  result.spread = {SpreadFrom::sheet, d("0.4"), "spread 0.4 in the sheet", nullptr};
  result.base = base;
  return result;
}

PlanChoice choice(std::vector<std::size_t> options, std::string_view total, std::string_view seconds) {
  PlanChoice result;
  result.options = std::move(options);
  result.total = Points(d(total));
  result.seconds = d(seconds);
  return result;
}

}  // namespace

std::unique_ptr<Scene> scene() {
  auto made = std::make_unique<Scene>();
  made->set.info.title = "Test league";
  made->event.code = "duet-free";
  made->event.title = "Duet, free";
  made->lift.title = "Lift";
  made->hybrid.title = "Hybrid";
  made->rule.title = "Execution";
  made->rule.step = d("0.25");
  made->rule.most = Mark(d("10"));
  made->rule.per_element = true;
  made->small.code = "small";
  Routine& routine = made->routine;
  routine.title = "Harbour Lights";
  routine.set = &made->set;
  routine.event = &made->event;
  Element lantern;
  lantern.number = 1;
  lantern.title = "Lantern";
  lantern.kind = &made->lift;
  lantern.panel = &made->rule;
  lantern.options = {option("", "2.3")};
  Element undertow = lantern;
  undertow.number = 2;
  undertow.title = "Undertow";
  undertow.kind = &made->hybrid;
  undertow.options = {option("", "4"), option("safer", "2.7")};
  routine.elements = {lantern, undertow};
  return made;
}

report::Face face() {
  report::Face result{estimate_only(), {}};
  result.elements.resize(2);
  return result;
}

ComparedElement undertow_compared() {
  ComparedElement result;
  result.comparison.element = 1;
  result.comparison.label = "2 Undertow";
  result.comparison.options = {as_written(), safer()};
  result.comparison.duels = {duel()};
  return result;
}

ToldForecast told_forecast(const Scene& scene) {
  ToldForecast told;
  const Odds lantern({{d("16.8"), 0.25}, {d("17.25"), 0.5}, {d("17.7"), 0.25}});
  const Odds undertow({{d("3.6"), 0.12}, {d("29"), 0.88}});
  told.forecast.lines = {
      marked("1 Lantern", "7.5", {}, lantern),
      marked("2 Undertow", "7.25", {BaseChance::From::sheet, d("12"), d("12"), {}, {}}, undertow),
      line(ForecastLine::What::sync, "Sync errors", Odds({{d("-0.2"), 0.5}, {d("0"), 0.5}}))};
  told.forecast.errors = {{&scene.small, d("2.5")}};
  told.forecast.errors_from = "the sheet";
  TotalOdds total;
  total.odds = Odds({{d("20.4"), 0.12}, {d("46.05"), 0.44}, {d("46.25"), 0.44}});
  total.grid = d("0.01");
  total.bound = d("0.025");
  told.forecast.total = total;
  told.targets = {{d("46.1"), {0.44, 0.43, 0.45}}, {d("20"), {1, 1, 1}}};
  told.rival = report::ForecastRival{"Heron Lake", "heron.sheet", {{0.625, 0.625, 0.625}, 0.0001}, {}};
  return told;
}

ToldPlan told_plan() {
  ToldPlan told;
  told.plan.choices = {choice({0, 1}, "118.205", "148"), choice({leave_out, 1}, "100.955", "140.5")};
  told.plan.as_written = choice({0, 0}, "112.6635", "150.04");
  PlanLimit limit;
  limit.words = "at most 160 s";
  limit.from = "events.csv line 4";
  limit.most = d("160");
  limit.used = d("148");
  limit.one_more = Points(d("0.84"));
  told.plan.limits = {limit};
  // The event of the scene has no panels, so its points are written without places.
  told.plan.choices[1].behind = d("17.25");
  told.plan.as_written->behind = d("5.5415");
  told.points = {"17.2500", "20.4135"};
  told.as_written = {0, 0};
  return told;
}

NextPoints told_gains() {
  NextPoints next;
  next.total = Points(d("118.205"));
  next.gains = {{Gain::What::base_chance, 1, "2 Undertow", "12", "6", Points(d("1.5225"))},
                {Gain::What::execution, 0, "1 Lantern", "7.5", "7.6", Points(d("0.23"))},
                {Gain::What::sync, 0, "small", "2", "1", Points(d("0.1"))},
                {Gain::What::penalty, 0, "overtime", "0.1", "0", Points()}};
  return next;
}

}  // namespace landdrill::report_test
