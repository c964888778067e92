// The coach's list of codes and values, merged into parts.csv.
#include "tables/fill.h"

#include <gtest/gtest.h>

#include "kit.h"

namespace landdrill {
namespace {

using test::base_set;
using test::text_of;

const std::string header = "code,family,title,value,source,status\n";

TableFiles with_gaps() {
  return test::with(base_set(), "parts.csv",
                    header +
                        "SP-360,spins,\"Spin, full\",,book,published\r\n"
                        "SP-720,spins,Spin of two,,book,published\n"
                        "TH-1,thrusts,Thrust,0.7,book,published\n");
}

// The values afterwards, "SP-360=0.9 SP-720= TH-1=0.7", or the message.
std::string filled(std::string_view list, FillWish wish = {}) {
  const Filled result = fill(with_gaps(), {"list.csv", list}, wish);
  if (!result.diagnostics.ok()) {
    EXPECT_EQ(text_of(result.files, "parts.csv"), text_of(with_gaps(), "parts.csv"));
    EXPECT_TRUE(result.filled.empty());
    return to_string(result.diagnostics);
  }
  const Loaded loaded = load(result.files);
  std::string values;
  for (const char* code : {"SP-360", "SP-720", "TH-1"}) {
    const auto value = loaded.set->parts.find(code)->value;
    values += (values.empty() ? "" : " ") + std::string(code) + "=" + (value ? value->text() : "");
  }
  return values;
}

TEST(Fill, ReadsTheListsThatCoachesType) {
  const char* both = "SP-360=0.9 SP-720=1.3 TH-1=0.7";
  for (const char* list :
       {"code,value\nSP-360,0.9\nSP-720,1.3\n", "Code;Wert\r\nSP-360;0,9\r\nSP-720;1,3\r\n",
        "\xEF\xBB\xBF"
        "Code;Wert (2026)\nSP-360;0,9\nSP-720;1,3\n",
        "SP-360\t0,9\nSP-720\t1,3", "SP-360;0,9\nSP-720;1,3\n", "SP-360,0.9\nSP-720,1.3\n",
        "code,value\nSP-360,\"0,9\"\nSP-720,1.30\n",
        "Valor,C\xC3\xB3"
        "digo\n0.9,SP-360\n1.3,SP-720\n",
        "0.9,SP-360\n1.3,SP-720\n", "sp-360, 0.9\nSp-720 ,1.3\n",
        "\"SP-360\";\"0,9\"\n\n;\n\"SP-720\";\"1,3\"\n", "what,how much,page\nSP-360,0.9,12\nSP-720,1.3,13\n",
        "code,title,difficulty\nSP-360,Spin 1,0.9\nSP-720,Spin 2,1.3\n",
        "\xD0\x9A\xD0\xBE\xD0\xB4;\xD0\x97\xD0\xBD\xD0\xB0\xD1\x87\xD0\xB5\xD0\xBD\xD0\xB8\xD0\xB5\nSP-360;0,"
        "9\nSP-720;1,3\n"}) {
    EXPECT_EQ(filled(list), both) << list;
  }
}

TEST(Fill, ChangesOnlyTheCellsOfTheRow) {
  const Filled result =
      fill(with_gaps(), {"list.csv", "SP-360,0.90\n"}, {false, "own catalogue, page 4", Status::published});
  EXPECT_EQ(text_of(result.files, "parts.csv"),
            header +
                "SP-360,spins,\"Spin, full\",0.9,\"own catalogue, page 4\",published\r\n"
                "SP-720,spins,Spin of two,,book,published\n"
                "TH-1,thrusts,Thrust,0.7,book,published\n");
  EXPECT_EQ(result.filled, std::vector<std::string>{"SP-360"});
  EXPECT_EQ(result.still_missing, std::vector<std::string>{"SP-720"});
  EXPECT_EQ(text_of(result.files, "kinds.csv"), text_of(with_gaps(), "kinds.csv"));
}

TEST(Fill, WritesTheDecimalSignOfTheFile) {
  const auto value_written = [](const std::string& parts) {
    const Filled result = fill(test::with(base_set(), "parts.csv", parts), {"list.csv", "a,0.25\n"}, {});
    const std::string text = text_of(result.files, "parts.csv");
    return text.substr(text.find("\na") + 1, 12);
  };
  const std::string columns = "code;family;title;value;source;status\n";
  EXPECT_EQ(value_written(columns + "a;spins;A;;x;memory\nb;spins;B;0,7;x;memory\n"), "a;spins;A;0,");
  EXPECT_EQ(value_written(columns + "a;spins;A;;x;memory\nb;spins;B;0.7;x;memory\n"), "a;spins;A;0.");
  EXPECT_EQ(value_written(header + "a,spins,A,,x,memory\nb,spins,B,\"0,7\",x,memory\n"), "a,spins,A,0.");
}

TEST(Fill, LeavesWhatIsThereAlready) {
  const Filled result = fill(with_gaps(), {"list.csv", "TH-1,0.70\nSP-360,\n"}, {});
  EXPECT_EQ(result.unchanged, std::vector<std::string>{"TH-1"});
  EXPECT_TRUE(result.filled.empty());
  EXPECT_EQ(text_of(result.files, "parts.csv"), text_of(with_gaps(), "parts.csv"));
  EXPECT_EQ(result.still_missing, (std::vector<std::string>{"SP-360", "SP-720"}));
}

TEST(Fill, AsksBeforeItReplacesAValue) {
  EXPECT_EQ(filled("code,value\nTH-1,0.8\n"),
            "list.csv:2:6: error: found 0.8 for \"TH-1\"; expected its value 0.7, as in line 4 of parts.csv "
            "[has-value]\n"
            "  TH-1,0.8\n       ^~~\n  hint: ask for overwriting if the list is right\n");
  EXPECT_EQ(filled("code,value\nTH-1,0.8\n", {.overwrite = true}), "SP-360= SP-720= TH-1=0.8");
}

TEST(Fill, ChangesNothingWhenOneRowIsWrong) {
  EXPECT_EQ(filled("code,value\nSP-360,0.9\nSP-730,1.3\n"),
            "list.csv:3:1: error: found \"SP-730\"; expected a code of parts.csv [unknown-name]\n  "
            "SP-730,1.3\n  ^~~~~~\n"
            "  hint: the nearest are SP-720, SP-360\n");
  EXPECT_EQ(filled("SP-360,0.9\nSP-720,1.3x\n"),
            "list.csv:2:8: error: found \"1.3x\"; expected a value such as 0.9 [bad-number]\n  SP-720,1.3x\n "
            "        ^~~~\n"
            "  hint: write the number alone: 1.3\n");
  EXPECT_EQ(filled("SP-360,0.9\nSP-360,1.0\n"),
            "list.csv:2:8: error: found 1 for \"SP-360\"; expected one value, and line 1 gives 0.9 "
            "[two-values]\n  SP-360,1.0\n"
            "         ^~~\n");
  EXPECT_EQ(filled("SP-360,0.9\nSP-360,0.90\n"), "SP-360=0.9 SP-720= TH-1=0.7");
  EXPECT_EQ(filled("code,value\nSP-360,-0.9\n"),
            "list.csv:2:8: error: found \"-0.9\"; expected a value not below 0 [out-of-range]\n  "
            "SP-360,-0.9\n         ^~~~\n");
  EXPECT_EQ(filled("code,value\n,0.9\n"),
            "list.csv:2:1: error: found a value without a code; expected a code of parts.csv "
            "[missing-cell]\n  ,0.9\n  ^\n");
}

TEST(Fill, ExplainsADecimalCommaBetweenCommas) {
  EXPECT_EQ(filled("code,value\nSP-360,0,9\n"),
            "list.csv:2:8: error: found a number in two cells; expected code and value [cell-count]\n  "
            "SP-360,0,9\n         ^~~\n"
            "  hint: a decimal comma splits the cell here: write 0.9, or put it in quotation marks\n");
  EXPECT_NE(filled("SP-360,0,9\nSP-720,1,3\n").find("write 0.9"), std::string::npos);
}

TEST(Fill, NeverTakesAWrongFirstRowForAHeader) {
  EXPECT_NE(filled("SP-361,0.9\nSP-720,1.3\n").find("list.csv:1:1: error: found \"SP-361\""),
            std::string::npos);
  EXPECT_NE(filled("SP-361,0.9x\nSP-720,1.3\n").find("list.csv:1:1: error: found \"SP-361\""),
            std::string::npos);
}

TEST(Fill, SaysWhenItFindsNoColumns) {
  EXPECT_EQ(filled(""),
            "list.csv: error: found an empty list; expected two columns, code and value [no-code-column]\n");
  EXPECT_EQ(filled("SP-360 0.9\nSP-720 1.3\n"),
            "list.csv: error: found one column; expected two columns, code and value [no-code-column]\n"
            "  hint: put a comma, a semicolon or a tab between the code and its value\n");
  EXPECT_EQ(filled("code,title\nSP-360,Spin\n"),
            "list.csv: error: found no column of numbers; expected two columns, code and value "
            "[no-value-column]\n");
}

TEST(Fill, NeedsAPartsTableThatCanBeRead) {
  const Filled none = fill(test::without(base_set(), "parts.csv"), {"list.csv", "a,1\n"}, {});
  EXPECT_EQ(to_string(none.diagnostics),
            "parts.csv: error: found no such file; expected the parts whose values are to be filled in "
            "[missing-table]\n");
  const Filled bad = fill(test::edited(base_set(), "parts.csv", "0.9", "x"), {"list.csv", "spin-720,1\n"},
                          {.overwrite = true});
  EXPECT_EQ(bad.diagnostics.errors(), 1u);
  EXPECT_TRUE(bad.filled.empty());
  const Filled no_values = fill(test::with(base_set(), "parts.csv", "code,source,status\na,x,memory\n"),
                                {"list.csv", "a,1\n"}, {});
  EXPECT_EQ(to_string(no_values.diagnostics),
            "parts.csv:1:1: error: found no column \"value\"; expected a column \"value\" to fill "
            "[missing-column]\n"
            "  code,source,status\n  ^~~~\n");
}

TEST(Fill, UnderstandsCodesThatAreNumbers) {
  const TableFiles figures =
      test::with(base_set(), "parts.csv", header + "101,spins,,,x,memory\n225,spins,,,x,memory\n");
  const Filled result = fill(figures, {"list.csv", "1.6,101\n3.1,225\n"}, {});
  EXPECT_EQ(to_string(result.diagnostics), "");
  EXPECT_EQ(result.filled, (std::vector<std::string>{"101", "225"}));
  EXPECT_NE(text_of(result.files, "parts.csv").find("225,spins,,3.1,"), std::string::npos);
}

// parts.csv after a list with codes that the set does not have.
std::string with_new_codes(std::string_view list, const std::string& family = "thrusts") {
  const Filled result = fill(with_gaps(), {"list.csv", list}, {.family = family});
  if (!result.diagnostics.ok()) return to_string(result.diagnostics);
  EXPECT_TRUE(load(result.files).set);
  const std::string before = text_of(with_gaps(), "parts.csv"), after = text_of(result.files, "parts.csv");
  return after.starts_with(before) ? after.substr(before.size()) : after;
}

TEST(Fill, TakesNewCodesIntoTheFamilyThatIsTold) {
  EXPECT_EQ(with_new_codes("TH-2;0,9\nTH-3;1,25\n"),
            "TH-2,thrusts,,0.9,typed in,memory\nTH-3,thrusts,,1.25,typed in,memory\n");
  EXPECT_EQ(with_new_codes("code,title,dd\nTH-2,\"Thrust, split\",0.9\n"),
            "TH-2,thrusts,\"Thrust, split\",0.9,typed in,memory\n");
}

TEST(Fill, TellsNewCodesFromThoseThatHadARow) {
  const Filled result =
      fill(with_gaps(), {"list.csv", "TH-2,0.9\nSP-360,0.8\nTH-1,0.7\n"}, {.family = "thrusts"});
  EXPECT_EQ(result.added, std::vector<std::string>{"TH-2"});
  EXPECT_EQ(result.filled, std::vector<std::string>{"SP-360"});
  EXPECT_EQ(result.unchanged, std::vector<std::string>{"TH-1"});
  EXPECT_EQ(result.still_missing, std::vector<std::string>{"SP-720"});
}

TEST(Fill, EndsALastLineThatHasNoEnding) {
  const TableFiles set =
      test::with(base_set(), "parts.csv", header + "TH-1,thrusts,Thrust,0.7,book,published");
  const Filled result = fill(set, {"list.csv", "TH-2,0.9\n"}, {.family = "thrusts"});
  EXPECT_EQ(text_of(result.files, "parts.csv"),
            header + "TH-1,thrusts,Thrust,0.7,book,published\nTH-2,thrusts,,0.9,typed in,memory\n");
}

TEST(Fill, ANewCodeIsOneCodeHoweverItIsSpelt) {
  EXPECT_EQ(with_new_codes("TH-2,0.9\nth-2,0.90\n"), "TH-2,thrusts,,0.9,typed in,memory\n");
  EXPECT_EQ(
      with_new_codes("TH-2,0.9\nth-2,1.0\n"),
      "list.csv:2:6: error: found 1 for \"TH-2\"; expected one value, and line 1 gives 0.9 [two-values]\n"
      "  th-2,1.0\n       ^~~\n");
}

TEST(Fill, RefusesWhatCannotBeANewCode) {
  EXPECT_EQ(with_new_codes("TH-2,0.9\n\"TH \"\"3\"\"\",1\n")
                .find("list.csv:2:1: error: found a code with a quotation mark, a tab or a line break in it"),
            0u);
  EXPECT_EQ(with_new_codes("TH-2,0.9\n", "thrust"),
            "families.csv: error: found no family \"thrust\" for the new codes; expected one of its codes "
            "[unknown-name]\n  hint: the nearest is thrusts\n");
}

}  // namespace
}  // namespace landdrill
