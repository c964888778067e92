#include "engine/report/compare.h"
#include "engine/report/face_json.h"
#include "engine/report/wide_csv.h"

namespace landdrill::report {
namespace {

std::string_view cause_word(WorthStep::Cause cause) {
  switch (cause) {
    case WorthStep::Cause::part:
      return "part";
    case WorthStep::Cause::difficulty:
      return "difficulty";
    case WorthStep::Cause::execution:
      return "execution";
    case WorthStep::Cause::risk:
      return "base mark";
  }
  return "";
}

std::string_view chance_source_word(BaseChance::From from) {
  return from == BaseChance::From::slip ? "slip" : from == BaseChance::From::runs ? "runs" : "";
}

// Where both are equal, shortened only where it cannot be written exactly.
std::string even_text(const Duel& duel) {
  if (!duel.even_mark) return "";
  return round(*duel.even_mark, Decimal::places, Rounding::half_up).text();
}

std::string option_mark(const OptionWorth& option) {
  return option.mark ? text_of(option.mark->mark) : "";
}

std::string joined(const std::vector<std::string>& limits) {
  std::string result;
  for (const std::string& limit : limits) result += (result.empty() ? "" : "; ") + limit;
  return result;
}

// ---- CSV ----

class ComparisonRows {
 public:
  ComparisonRows(const Routine& routine, WideCsv& csv, const Comparison& comparison)
      : csv_(csv), comparison_(comparison), places_(places_of(routine)) {}

  void add() {
    for (const OptionWorth& option : comparison_.options) add(option);
    for (const Duel& duel : comparison_.duels) add(duel);
  }

 private:
  std::string title(std::size_t option) const { return comparison_.options.at(option).title; }
  void row(std::string what, WideCsv::Cells cells) {
    cells.insert(cells.begin(), {{"element", comparison_.label}, {"what", std::move(what)}});
    csv_.add(cells);
  }

  void add(const OptionWorth& option) {
    row("option", {{"option", option.title},
                   {"difficulty", option.declared.text(2)},
                   {"base_difficulty", text_of(option.base)},
                   {"mark", option_mark(option)},
                   {"chance", option.chance.percent.text()},
                   {"chance_from", std::string(chance_source_word(option.chance.from))},
                   {"points_declared", text_of(option.clean)},
                   {"points_base", text_of(option.on_base)},
                   {"points", option.expected.text(places_)},
                   {"scatter", text_of(option.spread)},
                   {"total", option.total.text(places_)},
                   {"breaks", joined(option.breaks)}});
    for (const PartWorth& part : option.parts) add(option, part);
  }

  void add(const OptionWorth& option, const PartWorth& part) {
    row("part", {{"option", option.title},
                 {"part", part.code},
                 {"times", std::to_string(part.times)},
                 {"difficulty", text_of(part.adds)},
                 {"points", text_of(part.dropping)},
                 {"easier_part", part.easier ? part.easier->code : ""},
                 {"easier_points", part.easier ? part.easier->change.text(places_) : ""},
                 {"harder_part", part.harder ? part.harder->code : ""},
                 {"harder_points", part.harder ? part.harder->change.text(places_) : ""}});
  }

  void add(const Duel& duel) {
    const std::string harder = title(duel.harder), easier = title(duel.easier);
    for (const WorthStep& step : duel.steps)
      row("step", {{"option", harder},
                   {"against", easier},
                   {"cause", std::string(cause_word(step.cause))},
                   {"step", step.label},
                   {"points", step.change.text(places_)}});
    row("gain", {{"option", harder}, {"against", easier}, {"points", duel.gain.text(places_)}});
    row("lowest mark", {{"option", harder}, {"against", easier}, {"mark", text_of(duel.lowest_mark)}});
    row("even mark", {{"option", harder}, {"against", easier}, {"mark", even_text(duel)}});
    row("highest chance",
        {{"option", harder}, {"against", easier}, {"chance", text_of(duel.highest_chance)}});
    for (std::size_t i = 0; i < duel.table.size(); ++i)
      row("gain at", {{"option", harder},
                      {"against", easier},
                      {"mark", duel.marks.at(i / duel.chances.size()).text()},
                      {"chance", duel.chances.at(i % duel.chances.size()).text()},
                      {"points", duel.table[i].text(places_)}});
  }

  WideCsv& csv_;
  const Comparison& comparison_;
  int places_;
};

// ---- JSON ----

json::value exchange_or_null(const std::optional<PartWorth::Exchange>& exchange) {
  if (!exchange) return nullptr;
  return json::object{{"part", text_or_null(exchange->code)},
                      {"declared", exchange->declared.text()},
                      {"change", exchange->change.text()}};
}

json::object part_object(const PartWorth& part) {
  return {{"part", text_or_null(part.code)},
          {"times", part.times},
          {"adds", value_of(part.adds)},
          {"dropping", value_of(part.dropping)},
          {"easier", exchange_or_null(part.easier)},
          {"harder", exchange_or_null(part.harder)}};
}

json::object option_object(const OptionWorth& option) {
  json::array parts;
  for (const PartWorth& part : option.parts) parts.push_back(part_object(part));
  return {{"option", text_or_null(option.title)},
          {"declared", option.declared.text()},
          {"base_difficulty", value_of(option.base)},
          {"mark", text_or_null(option_mark(option))},
          {"base_chance", option.chance.percent.text()},
          {"base_chance_from", text_or_null(chance_source_word(option.chance.from))},
          {"points_declared", value_of(option.clean)},
          {"points_base", value_of(option.on_base)},
          {"points_expected", option.expected.text()},
          {"scatter", value_of(option.spread)},
          {"total_expected", option.total.text()},
          {"breaks", texts(option.breaks)},
          {"parts", parts}};
}

json::object duel_object(const Duel& duel, const Comparison& comparison) {
  json::array steps, cells;
  for (const WorthStep& step : duel.steps)
    steps.push_back(json::object{{"cause", text_or_null(cause_word(step.cause))},
                                 {"step", text_or_null(step.label)},
                                 {"change", step.change.text()}});
  for (std::size_t i = 0; i < duel.table.size(); ++i)
    cells.push_back(json::object{{"mark", duel.marks.at(i / duel.chances.size()).text()},
                                 {"base_chance", duel.chances.at(i % duel.chances.size()).text()},
                                 {"gain", duel.table[i].text()}});
  return {{"harder", text_or_null(comparison.options.at(duel.harder).title)},
          {"easier", text_or_null(comparison.options.at(duel.easier).title)},
          {"gain", duel.gain.text()},
          {"steps", steps},
          {"lowest_mark", value_of(duel.lowest_mark)},
          {"even_mark", text_or_null(even_text(duel))},
          {"highest_base_chance", value_of(duel.highest_chance)},
          {"gain_at", cells}};
}

json::object element_object(const Routine& routine, const Comparison& comparison) {
  json::array options, duels;
  for (const OptionWorth& option : comparison.options) options.push_back(option_object(option));
  for (const Duel& duel : comparison.duels) duels.push_back(duel_object(duel, comparison));
  const Element& element = routine.elements.at(comparison.element);
  return {{"number", element.number},
          {"title", text_or_null(element.title)},
          {"kind", text_or_null(element.kind->title)},
          {"options", options},
          {"against", duels}};
}

}  // namespace

std::string comparison_csv(const Routine& routine, const std::vector<ComparedElement>& elements) {
  WideCsv csv({"element",     "what",          "option",      "against",         "cause",
               "step",        "part",          "times",       "difficulty",      "base_difficulty",
               "mark",        "chance",        "chance_from", "points_declared", "points_base",
               "points",      "scatter",       "total",       "easier_part",     "easier_points",
               "harder_part", "harder_points", "breaks"});
  for (const ComparedElement& one : elements) ComparisonRows(routine, csv, one.comparison).add();
  return csv.text();
}

std::string comparison_json(const Routine& routine, const Face& face,
                            const std::vector<ComparedElement>& elements) {
  json::array list;
  for (const ComparedElement& one : elements) list.push_back(element_object(routine, one.comparison));
  json::object all = face_object(face);
  all["elements"] = list;
  return json_text(all, JsonLayout::indented);
}

}  // namespace landdrill::report
