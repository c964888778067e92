#include "engine/report/face_json.h"

namespace landdrill::report {

json::array texts(const std::vector<std::string>& list) {
  json::array result;
  for (const std::string& one : list) result.push_back(text_or_null(one));
  return result;
}

json::object values_object(const Account& account) {
  json::object by_status;
  for (const StatusCount& count : account.statuses) by_status[word_of(count.status)] = texts(count.rows);
  return {{"set", text_or_null(account.set)},
          {"edition", text_or_null(account.edition)},
          {"rows_used", by_status}};
}

namespace {

json::object message(const Diagnostic& one) {
  return {{"severity", severity_of(one.problem) == Severity::error ? "error" : "warning"},
          {"code", text_or_null(code_of(one.problem))},
          {"file", text_or_null(one.file)},
          {"line", one.at.line},
          {"column", one.at.column},
          {"found", text_or_null(one.found)},
          {"expected", text_or_null(one.expected)},
          {"hint", text_or_null(one.hint)},
          {"text", text_or_null(one.line)}};
}

}  // namespace

json::object diagnostics_object(const Diagnostics& diagnostics) {
  json::array messages;
  for (const Diagnostic& one : diagnostics.list()) messages.push_back(message(one));
  return {{"errors", diagnostics.errors()}, {"warnings", diagnostics.warnings()}, {"messages", messages}};
}

json::object face_object(const Face& face) {
  return {{"routine", text_or_null(face.title)},
          {"event", text_or_null(face.event)},
          {"values", values_object(face)},
          {"objections", diagnostics_object(face.objections)},
          {"cautions", texts(face.cautions)}};
}

}  // namespace landdrill::report
