#include "tables/claims.h"

#include <algorithm>
#include <cassert>

#include "grammar/span.h"
#include "tables/csv.h"
#include "usual_claims.h"

namespace landdrill {

Decimal claim(std::string_view code) {
  static const CsvTable table = read_csv(Source{"usual-claims.csv", usual_claims_csv}).table;
  const auto row = std::find_if(table.rows.begin(), table.rows.end(),
                                [&](const CsvRow& one) { return text_at(one, 0) == code; });
  assert(row != table.rows.end());
  return *Decimal::parse(text_at(*row, 1));
}

}  // namespace landdrill
