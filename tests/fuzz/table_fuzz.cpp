// Fuzzes the tables: CSV round trip, loading, filling, and the laws of the formula.
//
// The first byte says which; the rest is the text.
#include <array>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "tables/edit_cell.h"
#include "tables/csv.h"
#include "tables/fill.h"
#include "tables/formula.h"
#include "tables/load.h"

namespace {

using namespace landdrill;

void require(bool law) {
  if (!law) std::abort();
}

// Every text is written back byte for byte, and every cell that was understood can be written by itself.
void fuzz_csv(std::string_view text) {
  const CsvRead read = read_csv({"a.csv", text});
  require(write_csv(read.table) == text);
  for (const CsvRow& row : read.table.rows) {
    if (row.broken) continue;
    for (const CsvCell& cell : row.cells) {
      const std::string file = "a" + std::string(1, read.table.separator) + "b\nx" + read.table.separator +
                               csv_cell(cell.text, read.table.separator) + "\n";
      const CsvRead again = read_csv({"a.csv", file});
      require(again.table.rows.size() == 1 && again.table.rows[0].cells.size() == 2);
      require(again.table.rows[0].cells[1].text == cell.text);
    }
  }
}

void fuzz_formula(std::string_view text) {
  const Source source{"kinds.csv", text};
  const FormulaRead read = read_formula(source, text);
  require(read.diagnostics.ok() != read.formula.steps.empty());
  if (!read.diagnostics.ok()) {
    require(!to_string(read.diagnostics).empty());
    return;
  }
  const std::string printed = print(read.formula);
  const FormulaRead again = read_formula({"kinds.csv", printed}, printed);
  require(again.formula == read.formula && print(again.formula) == printed);
  FormulaInput input;
  input.base = Decimal::from_units(500'000);
  input.sum = Decimal::from_units(3'400'000);
  input.count = 4;
  input.families = {{"spins", input.sum, 4}};
  const FormulaResult result = evaluate(read.formula, input);
  require(result.value.has_value() == result.why_not.empty());
  // The same numbers, written down, are worth the same.
  const std::string numbers = with_numbers(read.formula, input);
  const FormulaRead written = read_formula({"kinds.csv", numbers}, numbers);
  if (!written.diagnostics.ok()) return;  // the numbers may be longer than the words, and too long
  const FormulaResult same = evaluate(written.formula, {});
  require(same.value.has_value() == result.value.has_value());
  if (same.value) require(*same.value == *result.value);
}

constexpr std::string_view panels =
    "event,aspect,kind,title,per,judges,drop_high,drop_low,combine,step,least,most,use,weight,places,"
    "rounding,missing,"
    "missing_step,source,status\nsolo,execution,,,element,5,1,1,mean,0.25,0,10,times-difficulty,1,4,,,,x,"
    "invented\n";

TableFiles little_set() {
  return {"little",
          "",
          {{"set.csv", "title,source,status\nA,x,invented\n"},
           {"families.csv", "code,kinds,most_in_element,source,status\nspins,hybrid,3,x,invented\n"},
           {"parts.csv",
            "code,family,value,source,status\nspin-360,spins,0.9,x,invented\nspin-720,spins,,x,invented\n"},
           {"kinds.csv", "code,formula,base,source,status\nhybrid,base + sum(spins),0.5,x,invented\n"},
           {"events.csv", "code,seconds,tolerance,source,status\nsolo,120,5,x,invented\n"},
           {"quotas.csv", "event,kind,family,least,most,source,status\nsolo,hybrid,spins,1,5,x,invented\n"},
           {"panels.csv", std::string(panels)},
           {"faults.csv", "code,small,source,status\ntravel,0.1,x,invented\n"},
           {"sync.csv", "code,points,source,status\nsmall,0.1,x,invented\n"},
           {"penalties.csv", "code,points,most,source,status\novertime,1,1,x,invented\n"}}};
}

// Any text in place of any table: an answer, never a crash; and a set only when there is no error.
void fuzz_load(std::size_t which, std::string_view text) {
  TableFiles files = little_set();
  files.files[which % files.files.size()].text = text;
  const Loaded loaded = load(files);
  require(loaded.set.has_value() == loaded.diagnostics.ok());
  require(loaded.diagnostics.list().size() <= Diagnostics::most);
  (void)to_string(loaded.diagnostics);
  if (loaded.set) require(compare_sets(files, files).rows.empty());
  (void)compare_sets(little_set(), files);
}

void fuzz_fill(std::string_view list) {
  const TableFiles before = little_set();
  const Filled filled = fill(before, {"list.csv", list}, {.overwrite = true});
  const Loaded loaded = load(filled.files);
  require(loaded.set.has_value());
  if (!filled.diagnostics.ok()) require(filled.filled.empty());
  for (const std::string& code : filled.filled) require(loaded.set->parts.find(code)->value.has_value());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
  switch (data[0] % 16) {
    case 0:
      fuzz_csv(text);
      break;
    case 1:
      fuzz_formula(text);
      break;
    case 2:
      fuzz_fill(text);
      break;
    default:
      fuzz_load(data[0] % 16u - 3u, text);
      break;
  }
  return 0;
}
