#include "engine/report/json.h"

#include "engine/report/face_json.h"

namespace landdrill::report {
namespace {

json::value decimal_or_null(const std::optional<Decimal>& number) {
  if (!number) return nullptr;
  return json::string(number->text());
}

template <class Row, class Make>
json::array array_of(const std::vector<Row>& rows, const Make& make) {
  json::array list;
  for (const Row& row : rows) list.push_back(make(row));
  return list;
}

json::object element(const ElementLine& line) {
  return {{"number", line.number},
          {"title", text_or_null(line.title)},
          {"kind", text_or_null(line.kind)},
          {"option", text_or_null(line.option)},
          {"declared", text_or_null(line.declared)},
          {"credited", text_or_null(line.credited)},
          {"base_mark", line.base},
          {"mark", text_or_null(line.mark)},
          {"points", text_or_null(line.points)},
          {"left", text_or_null(line.left)},
          {"rests_on", text_or_null(line.rests_on)},
          {"recorded_credited", text_or_null(line.recorded_credited)},
          {"recorded_base_mark", line.recorded_base},
          {"recorded_mark", text_or_null(line.recorded_mark)},
          {"recorded_points", text_or_null(line.recorded_points)},
          {"difference", text_or_null(line.difference)},
          {"worst", line.worst}};
}

json::object aspect(const AspectLine& line) {
  return {{"title", text_or_null(line.title)},
          {"weight", text_or_null(line.weight)},
          {"mark", text_or_null(line.mark)},
          {"points", text_or_null(line.points)},
          {"rests_on", text_or_null(line.rests_on)},
          {"recorded_mark", text_or_null(line.recorded_mark)},
          {"recorded_points", text_or_null(line.recorded_points)},
          {"difference", text_or_null(line.difference)}};
}

json::object both(const std::string& estimate, const std::string& recorded, const std::string& difference) {
  return {{"estimate", text_or_null(estimate)},
          {"recorded", text_or_null(recorded)},
          {"difference", text_or_null(difference)}};
}

json::object provenance(const Provenance& row) {
  return {{"table", text_or_null(row.table)},
          {"row", text_or_null(row.key)},
          {"line", row.line},
          {"status", text_or_null(word_of(row.status))},
          {"source", text_or_null(row.source)}};
}

json::object step_object(const Step& step) {
  return {{"what", text_or_null(word_of(step.role))}, {"path", text_or_null(step.path)},
          {"label", text_or_null(step.label)},        {"rule", text_or_null(step.rule)},
          {"value", text_or_null(step.value)},        {"remark", text_or_null(step.remark)},
          {"rows", array_of(step.rows, provenance)},  {"below", array_of(step.inputs, step_object)}};
}

json::value step_or_null(const std::optional<Step>& step) {
  if (!step) return nullptr;
  return step_object(*step);
}

json::value bridge_or_null(const std::optional<Bridge>& bridge, const std::vector<ElementLine>& elements) {
  if (!bridge) return nullptr;
  json::object by_cause;
  for (const Cause cause : all_causes) by_cause[word_of(cause)] = bridge->by_cause(cause).text();
  const auto step = [&](const BridgeStep& one) {
    return json::object{
        {"cause", text_or_null(word_of(one.cause))},
        {"element", one.element ? json::value(elements.at(*one.element).number) : json::value(nullptr)},
        {"label", text_or_null(one.label)},
        {"before", text_or_null(one.before)},
        {"after", text_or_null(one.after)},
        {"change", one.change.text()},
        {"reached", one.reached.text()}};
  };
  return json::object{{"from", bridge->from.text()},
                      {"to", bridge->to.text()},
                      {"steps", array_of(bridge->steps, step)},
                      {"by_cause", by_cause}};
}

json::object timing_object(const Timing& timing, const std::vector<ElementLine>& elements) {
  const auto item = [&](const ItemTime& one) {
    return json::object{{"element", one.item.is_element ? json::value(elements.at(one.item.index).number)
                                                        : json::value(nullptr)},
                        {"counts", one.counts},
                        {"under_counts", one.under},
                        {"seconds", decimal_or_null(one.seconds)},
                        {"under_seconds", decimal_or_null(one.under_seconds)}};
  };
  return {
      {"counts", timing.counts},
      {"under_counts", timing.under},
      {"longest_under_counts", timing.longest_under},
      {"seconds", decimal_or_null(timing.seconds)},
      {"under_seconds", decimal_or_null(timing.under_seconds)},
      {"longest_under_seconds", decimal_or_null(timing.longest_under_seconds)},
      {"under_per_cent", decimal_or_null(timing.under_share)},
      {"longest_starts_at", timing.items.empty() ? json::value(nullptr) : json::value(timing.longest_starts)},
      {"items", array_of(timing.items, item)}};
}

json::object account_object(const Account& account, const Diagnostics& objections, std::string_view file) {
  return {
      {"file", text_or_null(file)},
      {"routine", text_or_null(account.title)},
      {"event", text_or_null(account.event)},
      {"values", values_object(account)},
      {"panel", text_or_null(account.panel)},
      {"total", text_or_null(account.total)},
      {"recorded_total", text_or_null(account.recorded_total)},
      {"difference", text_or_null(account.difference)},
      {"announced", text_or_null(account.announced)},
      {"announced_difference", text_or_null(account.announced_difference)},
      {"so_far", text_or_null(account.so_far)},
      {"recorded_so_far", text_or_null(account.recorded_so_far)},
      {"declared", text_or_null(account.declared)},
      {"credited", text_or_null(account.credited)},
      {"recorded_credited", text_or_null(account.recorded_credited)},
      {"elements", array_of(account.elements, element)},
      {"elements_together", both(account.weighted, account.recorded_weighted, account.weighted_difference)},
      {"impression", array_of(account.aspects, aspect)},
      {"sync", both(account.sync, account.recorded_sync, account.sync_difference)},
      {"penalties", both(account.penalties, account.recorded_penalties, account.penalties_difference)},
      {"missing", texts(account.missing)},
      {"objections", diagnostics_object(objections)},
      {"bridge", bridge_or_null(account.bridge, account.elements)},
      {"time", timing_object(account.timing, account.elements)},
      {"cautions", texts(account.cautions)},
      {"estimate_build_up", step_or_null(account.estimate)},
      {"recorded_build_up", step_or_null(account.recorded)}};
}

}  // namespace

std::string account_json(const Account& account, const Diagnostics& objections, std::string_view file,
                         JsonLayout layout) {
  return json_text(account_object(account, objections, file), layout);
}

std::string diagnostics_json(const Diagnostics& diagnostics, JsonLayout layout) {
  return json_text(diagnostics_object(diagnostics), layout);
}

}  // namespace landdrill::report
