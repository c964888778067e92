#include "engine/judging/mark_sheet.h"

#include <algorithm>

namespace landdrill {

Others others_of(const MarkedLine& line, std::size_t judge, const std::vector<bool>& left_out) {
  Others others;
  for (std::size_t other = 0; other < line.marks.size(); ++other) {
    if (other == judge || !line.marks[other] || (!left_out.empty() && left_out[other])) continue;
    others.sum += *line.marks[other];
    ++others.count;
  }
  return others;
}

std::vector<std::string> kinds_of(const MarkSheet& sheet) {
  std::vector<std::string> kinds;
  for (const MarkedLine& line : sheet.lines) {
    if (std::find(kinds.begin(), kinds.end(), line.kind) == kinds.end()) kinds.push_back(line.kind);
  }
  return kinds.size() > 1 ? kinds : std::vector<std::string>();
}

}  // namespace landdrill
