#include "engine/report/pages/values_show.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/cli/find_values.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/report/pages/asked.h"
#include "grammar/words.h"
#include "tables/columns.h"

namespace landdrill::cli {
namespace {

std::string hint_for(std::string_view typed, const std::vector<std::string>& known) {
  const std::vector<std::string_view> views(known.begin(), known.end());
  const std::string hint = words::nearest_hint(typed, views);
  if (!hint.empty()) return hint;
  return known.size() > 30 ? "without ROW it shows them all"
                           : fmt::format("there is {}", fmt::join(known, ", "));
}

Exit no_such_table(Call& call, std::string_view typed) {
  std::vector<std::string> known;
  for (const Table& table : value_tables()) known.emplace_back(table.name);
  return misused(
      call, report::with_hint(fmt::format("found \"{}\"; expected a table", typed), hint_for(typed, known)));
}

}  // namespace

Exit values_show(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  Values values(call);
  const auto set = values.of_operand(typed[0]);
  if (!set) return refuse(call, set.error());
  const std::string table = typed.size() > 1 ? typed[1] : std::string();
  if (!table.empty() && find_table(table) == nullptr) return no_such_table(call, table);
  const std::string row =
      typed.size() > 2 ? fmt::format("{}", fmt::join(typed.begin() + 2, typed.end(), " ")) : std::string();
  const TableFiles& files = (*set)->files;
  if (const auto page = report::values_show_page(files, {table, row})) {
    print_page(call, *page);
    return Exit::ok;
  }
  if (row.empty()) return misused(call, fmt::format("{} has no table {}", files.name, table));
  return misused(call,
                 report::with_hint(fmt::format("found \"{}\"; expected a row of {} in {}", row, table, files.name),
                           hint_for(row, report::row_keys(files, table))));
}

}  // namespace landdrill::cli
