// CSV: what was read is written back byte for byte, and the cells are what a spreadsheet shows.
#include "tables/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace landdrill {
namespace {

// "a|b/c|d": cells between bars, rows between slashes; the header first.
std::string dump(std::string_view text) {
  const CsvTable table = read_csv({"a.csv", text}).table;
  std::string result;
  const auto add = [&](const CsvRow& row) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) result += (i > 0 ? "|" : "") + row.cells[i].text;
  };
  add(table.header);
  for (const CsvRow& row : table.rows) {
    result += "/";
    add(row);
  }
  return result;
}

std::string messages(std::string_view text) {
  return to_string(read_csv({"a.csv", text}).diagnostics);
}

TEST(Csv, ReadsTheCellsThatASpreadsheetShows) {
  const std::pair<std::string_view, const char*> table[] = {
      {"", ""},
      {"code,value\n", "code|value"},
      {"code,value", "code|value"},
      {"code;value\nspin;0,9\n", "code|value/spin|0,9"},
      {"code\tvalue\nspin\t0,9\n", "code|value/spin|0,9"},
      {"code,value\r\nspin,0.9\r\n", "code|value/spin|0.9"},
      {"code,value\rspin,0.9\r", "code|value/spin|0.9"},
      {"\xEF\xBB\xBF"
       "code,value\n",
       "code|value"},
      {"a,b\n\"x,y\",\"say \"\"go\"\"\"\n", "a|b/x,y|say \"go\""},
      {"a,b\n\"two\nlines\",2\n", "a|b/two\nlines|2"},
      {"a,b\n\"x\" ,2\n", "a|b/x|2"},
      {"a,b\n x , 2\n", "a|b/ x | 2"},
      {"a,b\n,\n", "a|b/|"},
      {"a,b\n\nc,d\n", "a|b//c|d"},
      {"a,b\nx\"y,2\n", "a|b/x\"y|2"},
      {"a;b,c;d\n", "a|b,c|d"},
      {"\"a,b,c\";d\n", "a,b,c|d"},
      {"SP-360;0,9\n", "SP-360|0,9"},
      {"a,b\n\"\",1\n", "a|b/|1"}};
  for (const auto& [text, expected] : table) {
    EXPECT_EQ(dump(text), expected) << text;
    EXPECT_EQ(messages(text), "") << text;
  }
}

TEST(Csv, KnowsTheLineOfEveryRow) {
  const CsvTable table = read_csv({"a.csv", "a,b\n\"1\n2\",x\n\n3,y\n"}).table;
  ASSERT_EQ(table.rows.size(), 3u);
  EXPECT_EQ(table.header.line, 1u);
  EXPECT_EQ(table.rows[0].line, 2u);
  EXPECT_EQ(table.rows[1].line, 4u);
  EXPECT_EQ(table.rows[2].line, 5u);
}

TEST(Csv, GoesOnInTheLineBelowAnUnclosedQuote) {
  EXPECT_EQ(dump("a,b\n\"x,1\ny,2\n"), "a|b/x,1/y|2");
  EXPECT_EQ(dump("a,b\n\"x,1\ny,\"2,3\"\n"), "a|b/x,1/y|2,3");
  EXPECT_EQ(messages("a,b\n\"x,1\ny,2\n"),
            "a.csv:2:1: error: found a quotation mark that is never closed; expected a closing quotation "
            "mark in this line "
            "[unclosed-quote]\n  \"x,1\n  ^\n");
}

TEST(Csv, SaysWhatGoesOnAfterAClosingQuote) {
  EXPECT_EQ(messages("a,b\n\"x\"y,1\n"),
            "a.csv:2:4: error: found text after the closing quotation mark; expected a separator or the end "
            "of the line "
            "[after-quote]\n  \"x\"y,1\n     ^\n  hint: write a quotation mark inside a cell twice: \"\"\n");
}

TEST(Csv, SaysThatAFileIsNoUtf8Text) {
  EXPECT_NE(messages("code,title\nkip,K\xFCrzel\n").find("a.csv:2:6: error: found a byte that is not UTF-8"),
            std::string::npos);
  EXPECT_NE(messages(std::string_view("a,b\n\0,1\n", 8)).find("found a NUL byte"), std::string::npos);
  EXPECT_NE(messages("PK\x03\x04zip").find("found a spreadsheet workbook"), std::string::npos);
  EXPECT_NE(messages("\xFF\xFE"
                     "c\0")
                .find("found UTF-16 text"),
            std::string::npos);
}

TEST(Csv, StaysSmallWhateverTheFile) {
  for (char sign : {',', '\n', '"', ';'}) {
    const std::string text = "a,b\n" + std::string(8'000'000, sign);
    const CsvRead read = read_csv({"a.csv", text});
    std::size_t cells = 0;
    for (const CsvRow& row : read.table.rows) cells += row.cells.size();
    EXPECT_LE(cells, 2'000'001u) << sign;
    EXPECT_LE(read.table.rows.size(), 500'001u) << sign;
    EXPECT_TRUE(write_csv(read.table) == text) << sign;
    EXPECT_FALSE(read.diagnostics.ok()) << sign;
  }
}

TEST(CsvLaw, WritesTheBytesThatWereRead) {
  static constexpr char signs[] = ",;\t\"\"\"\n\n\r ab0.\xEF\xBB\xBF\xC3\0";
  EXPECT_TRUE(rc::check([] {
    const auto text =
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string(signs, sizeof signs - 1)));
    RC_ASSERT(write_csv(read_csv({"a.csv", text}).table) == text);
  }));
  EXPECT_TRUE(rc::check([] {
    const auto text = *rc::gen::arbitrary<std::string>();
    RC_ASSERT(write_csv(read_csv({"a.csv", text}).table) == text);
  }));
}

TEST(CsvLaw, EveryTextIsReadBackFromItsCell) {
  EXPECT_TRUE(rc::check([] {
    const char separator = *rc::gen::elementOf(std::string(",;\t"));
    const auto text = *rc::gen::container<std::string>(rc::gen::elementOf(std::string(",;\t\"\n\r ab0.")));
    const std::string header = std::string("a") + separator + "b\n";
    const std::string file = header + "x" + separator + csv_cell(text, separator) + "\n";
    const CsvRead read = read_csv({"a.csv", file});
    RC_ASSERT(read.diagnostics.ok());
    RC_ASSERT(read.table.rows.size() == 1u);
    RC_ASSERT(read.table.rows[0].cells.size() == 2u);
    RC_ASSERT(read.table.rows[0].cells[1].text == text);
  }));
}

TEST(Csv, TrimsBlanksOfEveryKind) {
  EXPECT_EQ(trimmed(" \t 0,9\xC2\xA0 \r\n"), "0,9");
  EXPECT_EQ(trimmed("a b"), "a b");
  EXPECT_EQ(trimmed(" \xC2\xA0"), "");
}

}  // namespace
}  // namespace landdrill
