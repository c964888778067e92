// The description of the tables holds together, and the shipped sets keep to it.
#include "tables/columns.h"

#include <gtest/gtest.h>

#include <set>

#include "kit.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

TEST(Columns, AreNamedOnceAndEndInSourceAndStatus) {
  for (const Table& table : value_tables()) {
    std::set<std::string_view> names;
    for (const Column& column : table.columns) {
      EXPECT_TRUE(names.insert(column.name).second) << table.name << " " << column.name;
      EXPECT_FALSE(column.meaning.empty()) << table.name << " " << column.name;
      EXPECT_EQ(column.holds == Cell::choice, !column.choices.empty()) << table.name << " " << column.name;
    }
    ASSERT_GT(table.columns.size(), 2u);
    EXPECT_EQ(table.columns[table.columns.size() - 2].name, "source") << table.name;
    EXPECT_EQ(table.columns.back().name, "status") << table.name;
    EXPECT_LE(table.key_columns, table.columns.size());
  }
}

TEST(Columns, ReferToTablesThatExist) {
  int references = 0;
  for (const Table& table : value_tables()) {
    for (const Column& column : table.columns) {
      if (column.refers_to.empty()) continue;
      ++references;
      const Table* target = find_table(column.refers_to);
      ASSERT_TRUE(target) << column.refers_to;
      EXPECT_TRUE(find_column(*target, "code")) << column.refers_to;
    }
  }
  EXPECT_EQ(references, 8);
}

TEST(Columns, AreFoundByName) {
  EXPECT_EQ(find_table("parts")->columns[0].name, "code");
  EXPECT_EQ(find_table("prices"), nullptr);
  EXPECT_EQ(find_column(*find_table("parts"), "value")->holds, Cell::number);
  EXPECT_EQ(find_column(*find_table("parts"), "cost"), nullptr);
}

// No shipped set has them.
bool is_rare(std::string_view column) {
  return column == "missing_rounding" || column == "run_rounding" || column == "run_base" ||
         column == "best" || column == "slip";
}

TEST(Columns, OfTheBaseSetAreAllThereAreInTheirOrder) {
  for (const Table& table : value_tables()) {
    std::string header;
    for (const Column& column : table.columns)
      if (!is_rare(column.name)) header += (header.empty() ? "" : ",") + std::string(column.name);
    const std::string text = test::text_of(test::base_set(), std::string(table.name) + ".csv");
    EXPECT_EQ(text.substr(0, text.find('\n')), header) << table.name;
  }
}

}  // namespace
}  // namespace landdrill
