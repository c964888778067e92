#include "engine/report/face_json.h"

namespace landdrill::report {

using boost::json::array;
using boost::json::object;

array texts(const std::vector<std::string>& list) {
  array result;
  for (const std::string& one : list) result.push_back(text_or_null(one));
  return result;
}

object values_object(const Account& account) {
  object by_status;
  for (const StatusCount& count : account.statuses) by_status[word_of(count.status)] = texts(count.rows);
  return {{"set", text_or_null(account.set)},
          {"edition", text_or_null(account.edition)},
          {"rows_used", by_status}};
}

object face_object(const Account& face) {
  return {{"routine", text_or_null(face.title)},
          {"event", text_or_null(face.event)},
          {"values", values_object(face)},
          {"cautions", texts(face.cautions)}};
}

}  // namespace landdrill::report
