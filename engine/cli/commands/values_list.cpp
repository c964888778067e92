#include "engine/report/pages/values_list.h"

#include <algorithm>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/page.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/values_show.h"
#include "engine/season/edit_cell.h"
#include "tables/columns.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

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

Exit list_season(Call& call, Values& values) {
  const auto season = values.season(Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const auto sets = (*season)->sets();
  if (!sets) return refuse(call, sets.error());
  report::ListedSets listed;
  listed.season = values.season_file();
  for (const SeasonSet& set : *sets)
    listed.sets.push_back(
        {set.name, set.title, set.edition, set.rows, changes(**season, set), listed.season});
  print_page(call, report::values_list_page(listed));
  return Exit::ok;
}

// In the order of SetFrom.
std::vector<report::SetOrigin> origins(const Search& search) {
  std::vector<report::SetOrigin> all = {
      {"the folders that --values names"},
      {"the folder of the sheet (here: the one where you are), and values/ in it"},
      {"the folders that LANDDRILL_VALUES names"},
      {"your own folder"},
      {"the sets that come with the program"}};
  for (const auto& [from, folder] : searched_folders(search))
    if (from != SetFrom::beside) all[static_cast<std::size_t>(from)].folders.push_back(folder.string());
  return all;
}

Result<report::ListedSet> listed_set(Values& values, const SetPlace& place) {
  const auto set = values.folders().at(place);
  if (!set) return tl::unexpected(set.error());
  report::ListedSet listed{place.name, "has errors: see values check", {}, row_count((*set)->files)};
  if (const auto& usable = (*set)->loaded.set) {
    listed.title = usable->info.title;
    listed.edition = usable->info.edition;
  }
  const report::ValuesPlace at = values_place(**set);
  listed.place = at.folder;
  listed.origin = static_cast<std::size_t>(place.from) + 1;
  listed.hidden = at.hidden;
  return listed;
}

}  // namespace

Exit values_list(Call& call) {
  Values values(call);
  if (values.in_season()) return list_season(call, values);
  const Search search = values.folders().search_beside("-");
  report::ListedSets listed{{}, origins(search)};
  Exit worst = Exit::ok;
  for (const SetPlace& place : all_sets(search)) {
    if (auto set = listed_set(values, place))
      listed.sets.push_back(std::move(*set));
    else
      worst = worse(worst, refuse(call, set.error()));
  }
  print_page(call, report::values_list_page(listed));
  return worst;
}

}  // namespace landdrill::cli
