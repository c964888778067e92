#include <algorithm>

#include "engine/cli/edit_cell.h"
#include "engine/cli/find_values.h"
#include "engine/cli/page.h"
#include "tables/columns.h"

namespace landdrill::cli {
namespace {

std::size_t row_count(const TableFiles& files) {
  std::size_t rows = 0;
  for (const Table& table : value_tables()) rows += report::row_keys(files, table.name).size();
  return rows;
}

// The changes that stand, as a coach counts them: a value with its source and status is one.
std::size_t changes(const Season& season, const SeasonSet& set) {
  const auto history = season.history(set.name);
  if (!history) return set.edits;
  return static_cast<std::size_t>(
      std::count_if(history->begin(), history->end(), [](const EditRecord& record) {
        return record.did == EditRecord::Did::edit && !record.undone && !goes_with_another(record);
      }));
}

std::string kept_in(const std::filesystem::path& folder) {
  const std::string outer = folder.parent_path().string();
  return outer.empty() ? "." : outer;
}

Exit list_season(Call& call, Values& values) {
  const auto season = values.season(Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const auto sets = (*season)->sets();
  if (!sets) return refuse(call, sets.error());
  std::vector<report::SetLine> lines;
  for (const SeasonSet& set : *sets)
    lines.push_back(
        {set.name, set.title, set.edition, values.season_file(), set.rows, changes(**season, set)});
  call.streams.out.write(report::set_list(lines, format_of(call), page_wish(call)));
  return Exit::ok;
}

}  // namespace

Exit values_list(Call& call) {
  Values values(call);
  if (values.in_season()) return list_season(call, values);
  std::vector<report::SetLine> lines;
  Exit worst = Exit::ok;
  for (const std::string& name : values.names("-")) {
    const auto set = values.of_operand(name);
    if (!set) {
      worst = worse(worst, refuse(call, set.error()));
      continue;
    }
    report::SetLine line{name, {}, {}, kept_in((*set)->folder), row_count((*set)->files), {}};
    if ((*set)->loaded.set) {
      line.title = (*set)->loaded.set->info.title;
      line.edition = (*set)->loaded.set->info.edition;
    } else {
      line.title = "has errors: see values check";
    }
    lines.push_back(std::move(line));
  }
  call.streams.out.write(report::set_list(lines, format_of(call), page_wish(call)));
  return worst;
}

}  // namespace landdrill::cli
