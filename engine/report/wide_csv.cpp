#include "engine/report/wide_csv.h"

#include <algorithm>
#include <cassert>

#include "engine/report/csv.h"

namespace landdrill::report {

WideCsv::WideCsv(std::vector<std::string_view> columns)
    : columns_(std::move(columns)), text_(csv_row(columns_)) {}

void WideCsv::add(const Cells& cells) {
  std::vector<std::string_view> row(columns_.size());
  for (const auto& [column, cell] : cells) {
    const auto at = std::find(columns_.begin(), columns_.end(), column);
    assert(at != columns_.end());
    row[static_cast<std::size_t>(at - columns_.begin())] = cell;
  }
  text_ += csv_row(row);
}

}  // namespace landdrill::report
