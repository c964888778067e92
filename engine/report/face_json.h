// The head of every JSON report of choosing: which routine, by which values, how far they can be trusted.
#pragma once

#include "engine/report/amount_text.h"
#include "engine/report/face.h"
#include "engine/report/json_text.h"

namespace landdrill::report {

// An exact number as its text, or null when it is not there.
template <class Number>
json::value value_of(const std::optional<Number>& number) {
  return text_or_null(text_of(number));
}

json::array texts(const std::vector<std::string>& list);
// The set, and the rows used by their status.
json::object values_object(const Account& account);
// {"errors": 0, "warnings": 1, "messages": [...]}
json::object diagnostics_object(const Diagnostics& diagnostics);
// {"routine": "Harbour Lights", "event": ..., "values": {"set": ..., "rows_used": {"invented": [...]}},
// "objections": {...}, "cautions": [...]}
json::object face_object(const Face& face);

}  // namespace landdrill::report
