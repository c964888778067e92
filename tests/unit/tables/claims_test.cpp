// What reports may claim, and that each row says where it is from.
#include "tables/claims.h"

#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>
#include <string>

#include "grammar/span.h"
#include "kit.h"
#include "tables/csv.h"

namespace landdrill {
namespace {

using test::d;

TEST(Claims, NameSomebodyWronglyOnOnePanelInTwentyAtMost) {
  const Decimal of_elements = claim("judge-level") + claim("judge-scatter") + claim("judge-dropped");
  EXPECT_LE(of_elements + of_elements, d("0.05"));  // and as much again for the whole routine
}

TEST(Claims, SayWhereTheyAreFrom) {
  std::ifstream file(SHIPPED_SETS "/usual-claims.csv");
  std::ostringstream text;
  text << file.rdbuf();
  const CsvTable table = read_csv(Source{"usual-claims.csv", text.str()}).table;
  const std::set<std::string_view> statuses = {"published", "practice", "memory", "invented"};
  EXPECT_GT(table.rows.size(), 5u);
  for (const CsvRow& row : table.rows) {
    const std::string code(text_at(row, 0));
    EXPECT_EQ(claim(code), d(text_at(row, 1)));
    EXPECT_NE(text_at(row, 2), "") << code;
    EXPECT_NE(text_at(row, 3), "") << code;
    EXPECT_TRUE(statuses.contains(text_at(row, 4))) << code;
  }
}

}  // namespace
}  // namespace landdrill
