#include "tables/complaints.h"

#include <algorithm>

#include "tables/csv.h"

namespace landdrill {

const ReadTable* Complaints::table(std::string_view name) const {
  const auto at = std::find_if(tables_.begin(), tables_.end(),
                               [&](const ReadTable& read) { return read.table->name == name; });
  return at == tables_.end() ? nullptr : &*at;
}

bool Complaints::is_incomplete(std::string_view name) const {
  const ReadTable* read = table(name);
  return read && !read->complete();
}

const CsvRow* Complaints::row_of(const Provenance& from) const {
  const ReadTable* read = table(from.table);
  if (!read) return nullptr;
  const auto& rows = read->csv.rows;
  const auto row =
      std::lower_bound(rows.begin(), rows.end(), from.line,
                       [](const CsvRow& candidate, std::size_t line) { return candidate.line < line; });
  return row != rows.end() && row->line == from.line ? &*row : nullptr;
}

void Complaints::at(const Provenance& from, std::string_view column, Complaint complaint) {
  at_part(from, column, {}, std::move(complaint));
}

void Complaints::at_part(const Provenance& from, std::string_view column, std::string_view part,
                         Complaint complaint) {
  const CsvRow* row = row_of(from);
  if (!row) return;
  const ReadTable& read = *table(from.table);
  const std::string_view cell = read.piece(*row, column);
  const std::size_t place = part.empty() ? std::string_view::npos : cell.find(part);
  add(read, place == std::string_view::npos ? cell : cell.substr(place, part.size()), std::move(complaint));
}

void Complaints::at_piece(const ReadTable& table, std::string_view piece, Complaint complaint) {
  add(table, piece, std::move(complaint));
}

void Complaints::about_file(const ReadTable& table, Complaint complaint) {
  diagnostics_.add(diagnostic_about(table.source.name, std::move(complaint)));
}

void Complaints::add(const ReadTable& table, std::string_view piece, Complaint complaint) {
  if (!diagnostics_.wants_more()) return diagnostics_.count_only(severity_of(complaint.problem));
  diagnostics_.add(diagnostic_at(table.source, piece, std::move(complaint)));
}

}  // namespace landdrill
