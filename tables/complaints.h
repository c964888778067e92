// Complaints about rows of a set that has been read, at the cell that is to blame.
//
//   complaints.at(kind.from, "most_parts", {Problem::contradiction, "...", "..."});
#pragma once

#include <string>
#include <vector>

#include "grammar/diagnostics.h"
#include "tables/csv.h"
#include "tables/read_table.h"
#include "tables/value_set.h"

namespace landdrill {

class Complaints {
 public:
  Complaints(const std::vector<ReadTable>& tables, Diagnostics& diagnostics)
      : tables_(tables), diagnostics_(diagnostics) {}

  const std::vector<ReadTable>& tables() const { return tables_; }
  // nullptr when the set does not have the table.
  const ReadTable* table(std::string_view name) const;
  // The table is there, but not all of its rows are known: that a row is not in the set means nothing.
  bool is_incomplete(std::string_view name) const;

  bool wants_more() const { return diagnostics_.wants_more(); }
  // About the cell of `column` in the row that `from` names.
  void at(const Provenance& from, std::string_view column, Complaint complaint);
  // About the words `part` in that cell; about the cell when they are not in it.
  void at_part(const Provenance& from, std::string_view column, std::string_view part, Complaint complaint);
  void at_piece(const ReadTable& table, std::string_view piece, Complaint complaint);
  void about_file(const ReadTable& table, Complaint complaint);

 private:
  const CsvRow* row_of(const Provenance& from) const;
  void add(const ReadTable& table, std::string_view piece, Complaint complaint);

  const std::vector<ReadTable>& tables_;
  Diagnostics& diagnostics_;
};

// The parts of check().
void check_rows(const ValueSet& set, Complaints& complaints);
void check_formulas(const ValueSet& set, Complaints& complaints);
void check_panels(const ValueSet& set, Complaints& complaints);
void check_quotas(const ValueSet& set, Complaints& complaints);
void check_spreads(const ValueSet& set, Complaints& complaints);

}  // namespace landdrill
