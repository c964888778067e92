// How a set that is kept in a season file was changed.
//
//   values_history_page("club-2026", {{"4", "2026-04-14T18:03:11Z", "parts", "spin-360", "value", "0.9", "1.0"}})
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

struct HistoryLine {
  std::int64_t number = 0;
  std::string at, table;
  std::string key = {}, column = {}, before = {}, after = {}, why = {};
  bool undone = false;
  bool companion = false;  // goes with another change, and people are told of that one
};
Page values_history_page(std::string_view set, const std::vector<HistoryLine>& edits);

}  // namespace landdrill::report
