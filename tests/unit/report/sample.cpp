#include "sample.h"

#include <array>

#include "engine/report/width.h"
#include "engine/score/problems.h"

namespace landdrill::report_test {
namespace {

Difficulty difficulty(std::string_view text) {
  return Difficulty(d(text));
}

PanelMark mark(std::string_view text) {
  return {d(text), 2};
}

ElementLine lantern() {
  ElementLine line;
  line.number = 1;
  line.title = "Lantern";
  line.kind = "Lift";
  line.declared = difficulty("2.3");
  line.expected = {{mark("7.5"), points("17.25"), {}}, difficulty("2.3"), false};
  line.left = points("5.75");
  line.recorded = ElementResult{{mark("7.3333"), points("16.8667"), {}}, difficulty("2.3"), false};
  line.difference = points("-0.3833");
  line.rests_on = RestsOn{ExpectedMark::From::sheet, {}, 0};
  return line;
}

ElementLine undertow() {
  ElementLine line = lantern();
  line.number = 2;
  line.title = "Undertow";
  line.kind = "Hybrid";
  line.declared = difficulty("4");
  line.expected = {{mark("9.5"), points("38"), {}}, difficulty("4"), false};
  line.left = points("2");
  line.recorded = ElementResult{{mark("6.8333"), points("3.4167"), {}}, difficulty("0.5"), true};
  line.difference = points("-34.5833");
  line.worst = true;
  line.rests_on = of_the_run();
  return line;
}

ElementLine beacon() {
  ElementLine line = lantern();
  line.number = 10;
  line.title = "Beacon";
  line.kind = "Hybrid";
  line.option = "dimmed";
  line.declared = difficulty("3.1");
  line.expected = {{mark("7.25"), points("22.475"), {}}, difficulty("3.1"), false};
  line.left = points("8.525");
  line.recorded = ElementResult{{mark("8"), points("24.8"), {}}, difficulty("3.1"), false};
  line.difference = points("2.325");
  return line;
}

Provenance row(std::string_view table, std::string key, std::size_t line, Status status) {
  return {table, std::move(key), line,
          status == Status::published ? "Rule book, p. 88" : "invented for the test", status};
}

Step estimate() {
  Step mark{Role::mark, "element 2 mark", "mark", "", "9.50", "from the run of 2026-05-07", {}, {}};
  Step difficulty{Role::difficulty,
                  "element 2 difficulty",
                  "declared difficulty",
                  "base + sum(parts) = 0.5 + 3.5",
                  "4.00",
                  "",
                  {row("kinds", "hybrid", 2, Status::invented)},
                  {part_step()}};
  Step second{Role::element,
              "element 2",
              "Undertow",
              "9.5 x 4.00 x 1",
              "38.0000",
              "",
              {row("panels", "duet-free execution", 11, Status::published)},
              {difficulty, mark}};
  Step first{Role::element, "element 1", "Lantern", "7.5 x 2.30 x 1", "17.2500", "", {}, {}};
  Step third{Role::element, "element 10", "Beacon", "7.25 x 3.10 x 1", "22.4750", "", {}, {}};
  return {Role::total, "total", "Total", "17.2500 + 38.0000 + 22.4750 + 30.0000 - 0.2000",
          "107.5250",  "",      {},      {first, second, third}};
}

Bridge steps() {
  Bridge bridge{Points(d("107.525")), Points(d("73.6834")), {}};
  const auto add = [&](Cause cause, std::optional<std::size_t> element, std::string label,
                       std::array<std::string_view, 2> moved, std::string_view change,
                       std::string_view reached) {
    const int places = cause == Cause::execution ? 4 : cause == Cause::difficulty ? 2 : 0;
    bridge.steps.push_back({cause, element, std::move(label), d(moved[0]), d(moved[1]), places,
                            points(change), points(reached)});
  };
  add(Cause::execution, 0, "1 Lantern", {"7.5", "7.3333"}, "-0.3833", "107.1417");
  add(Cause::difficulty, 1, "2 Undertow", {"4", "0.5"}, "-33.25", "73.8917");
  add(Cause::execution, 1, "2 Undertow", {"9.5", "6.8333"}, "-1.3333", "72.5584");
  add(Cause::execution, 2, "10 Beacon", {"7.25", "8"}, "2.325", "74.8834");
  add(Cause::sync, {}, "Sync errors", {"-0.2", "-0.9"}, "-0.7", "74.1834");
  add(Cause::penalty, {}, "Penalties", {"0", "-0.5"}, "-0.5", "73.6834");
  return bridge;
}

Timing times() {
  Timing timing;
  timing.items = {{{true, 0}, 16, 8, d("7.5"), d("3.8")},
                  {{false, 0}, 16, 4, d("7.5"), d("1.9")},
                  {{true, 1}, 32, 24, d("15"), d("11.3")},
                  {{true, 2}, 32, 30, d("15"), d("14.1")}};
  timing.counts = 96;
  timing.under = 66;
  timing.longest_under = 28;
  timing.longest_starts = 1;
  timing.seconds = d("45");
  timing.under_seconds = d("30.9");
  timing.longest_under_seconds = d("13.1");
  timing.under_share = d("68.8");
  return timing;
}

void forget_panel(Account& account) {
  account.panel_date.clear();
  account.panel.clear();
  account.recorded.reset();
  account.bridge.reset();
  account.recorded_credited.reset();
  account.recorded_so_far.reset();
  account.announced.reset();
  account.announced_difference.reset();
  for (Amounts* amounts : {&account.total, &account.sync, &account.penalties})
    amounts->recorded = amounts->difference = std::nullopt;
  for (ElementLine& line : account.elements) {
    line.recorded.reset();
    line.difference.reset();
  }
  for (AspectLine& line : account.aspects) {
    line.recorded = {};
    line.difference.reset();
  }
}

}  // namespace

Decimal d(std::string_view text) {
  return *Decimal::parse(text);
}

Points points(std::string_view text) {
  return Points(d(text));
}

RestsOn of_the_run() {
  return {ExpectedMark::From::run, "2026-05-07", 1};
}

Step part_step() {
  return {Role::part,
          "element 2 spin-720",
          "spin-720",
          "",
          "1.40",
          "Spin down through 720 degrees",
          {row("parts", "spin-720", 12, Status::invented)},
          {}};
}

Account with_panel() {
  Account account;
  account.title = "Harbour Lights";
  account.event = "Duet, free routine";
  account.set = "Kingfisher club league";
  account.edition = "2026";
  account.panel_date = "2026-05-09";
  account.panel = "Tarn Open";
  account.places = 4;
  account.elements = {lantern(), undertow(), beacon()};
  for (ElementLine& line : account.elements) {
    line.expected.places = account.places;
    if (line.recorded) line.recorded->places = account.places;
  }
  const LineResult kept{mark("7.5"), points("30"), {}, account.places};
  account.aspects = {{"Choreography and music", Factor(d("4")), kept, kept, Points(), of_the_run()}};
  account.sync = {points("-0.2"), points("-0.9"), points("-0.7")};
  account.penalties = {std::nullopt, points("-0.5"), points("-0.5")};
  account.declared = account.credited = difficulty("9.4");
  account.recorded_credited = difficulty("5.9");
  account.total = {points("107.525"), points("73.6834"), points("-33.8416")};
  account.so_far = points("107.525");
  account.recorded_so_far = account.announced = points("73.6834");
  account.announced_difference = Points();
  account.estimate = estimate();
  account.recorded = Step{Role::total, "total", "Total", "", "73.6834", "", {}, {}};
  account.bridge = steps();
  account.timing = times();
  account.cautions = {
      {CautionRule::When::lift, "lifts", "lifts", "check the depth and a clear landing.", {}}};
  account.statuses = {{Status::invented, {"kinds hybrid", "parts spin-720", "kinds lift"}},
                      {Status::memory, {"sync small"}},
                      {Status::published, {"panels duet-free execution"}}};
  return account;
}

Account estimate_only() {
  Account account = with_panel();
  forget_panel(account);
  return account;
}

Account unfinished() {
  Account account = estimate_only();
  ElementLine& line = account.elements[1];
  line.expected.mark.reset();
  line.expected.points = line.left = std::nullopt;
  line.rests_on = RestsOn{};
  line.worst = false;
  account.total.estimate.reset();
  account.so_far = points("69.525");
  account.missing = {{{{2}, {}, false}, MissingMarks::Of::estimate}};
  return account;
}

Diagnostics one_objection() {
  Diagnostics objections;
  Diagnostic one{Problem::quota, "harbour.sheet",   {7, 1},     "element 1 lift", 0, 7,
                 "3 elements",   "6 to 7 elements", "add three"};
  objections.add(one);
  return objections;
}

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

bool holds(std::string_view text, std::string_view piece) {
  return text.find(piece) != std::string_view::npos;
}

std::vector<std::string> numbers_in(std::string_view text) {
  const auto digit = [&](std::size_t i) { return i < text.size() && '0' <= text[i] && text[i] <= '9'; };
  std::vector<std::string> numbers;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!digit(i)) continue;
    const bool is_sign =
        i > 0 && (text[i - 1] == '-' || text[i - 1] == '+') && (i == 1 || text[i - 2] == ' ');
    const std::size_t first = is_sign ? i - 1 : i;
    while (digit(i)) ++i;
    if (i < text.size() && text[i] == '.' && digit(i + 1)) {
      ++i;
      while (digit(i)) ++i;
    }
    numbers.emplace_back(text.substr(first, i - first));
  }
  return numbers;
}

std::string layout_fault(std::string_view text, int width) {
  if (text.empty() || text.back() != '\n') return "does not end in a newline";
  for (const std::string& line : lines_of(text)) {
    if (report::width_of(line) > width) return "wider than " + std::to_string(width) + ": " + line;
    if (!line.empty() && line.back() == ' ') return "blanks at the end of: " + line;
    for (const char c : line) {
      if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) return "a control byte in: " + line;
    }
  }
  return "";
}

}  // namespace landdrill::report_test
