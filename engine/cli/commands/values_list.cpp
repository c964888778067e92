#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/output.h"
#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "engine/report/page.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/values.h"
#include "engine/report/render.h"
#include "engine/routine/problems.h"
#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/score/totals.h"
#include "engine/season/season_sets.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/edit_cell.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill::cli {
namespace {

std::size_t changes(const Season& season, const SeasonSet& set) {
  const auto history = season.history(set.name);
  return history ? standing_changes(*history) : set.edits;
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
  report::ListedSet listed{
      place.name, "has errors: see values check", {}, report::row_keys((*set)->files, {}).size()};
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

Exit values_show(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  Values values(call);
  const auto set = values.of_operand(typed[0]);
  if (!set) return refuse(call, set.error());
  const std::string table = typed.size() > 1 ? typed[1] : std::string();
  const std::string row =
      typed.size() > 2 ? fmt::format("{}", fmt::join(typed.begin() + 2, typed.end(), " ")) : std::string();
  const report::Answer page = report::values_show_page((*set)->files, table, row);
  if (!page) return misused(call, page.error());
  print_page(call, *page);
  return Exit::ok;
}

namespace {

Diagnostics without_gaps(const Diagnostics& all) {
  Diagnostics rest;
  for (const Diagnostic& one : all.list())
    if (one.problem != Problem::value_missing && severity_of(one.problem) == Severity::error) rest.add(one);
  return rest;
}

}  // namespace

Exit values_missing(Call& call) {
  CallSheets sheets(call);
  return with_sheets(call, sheets, [&](const SheetReader& reader, Messages& messages) {
    const StreamSheet& sheet = reader.sheet();
    messages.add(without_gaps(sheet.messages()));
    const Exit sound = sheet.ok() ? Exit::ok : Exit::errors;
    if (sheet.set == nullptr || sheet.without_set) return sound;
    const bool shipped = !sheet.set->folder.empty() && no_own_folder(*sheet.set).has_value();
    print_page(call, report::values_missing_page({sheet.file(), std::string(sheet.title()),
                                                  sheet.set->files.name, sheet.gaps(), shipped}));
    return sound;
  });
}

Exit values_check(Call& call) {
  Values values(call);
  Exit worst = Exit::ok;
  for (const std::string& operand : call.given.operands) {
    const auto set = values.of_operand(operand);
    if (!set) {
      worst = worse(worst, refuse(call, set.error()));
      continue;
    }
    if (format_of(call) == report::Format::text) call.streams.say(to_string((*set)->loaded.diagnostics));
    print_page(call, report::values_check_page((*set)->files.name, (*set)->loaded),
               call.given.operands.size() > 1);
    if (!(*set)->loaded.diagnostics.ok()) worst = worse(worst, Exit::errors);
  }
  return worst;
}

// Two sets, and what their difference does to a sheet.

namespace {

class Comparing {
 public:
  Comparing(Call& call, const ReadSet& before, const ReadSet& after)
      : call_(call), before_(before), after_(after), changes_(compare_sets(before.files, after.files)) {}

  void print(std::string sheet, std::vector<SheetMove> moved) {
    print_page(call_, report::values_compare_page({before_.files.name, after_.files.name, changes_,
                                                   std::move(sheet), std::move(moved)}));
  }

  Exit sheet(const StreamSheet& sheet) {
    const Resolved one = understood(*sheet.tree(), *before_.loaded.set);
    const Resolved other = understood(*sheet.tree(), *after_.loaded.set);
    if (!one.routine || !other.routine) return not_priced(sheet, one, other);
    const report::PriceWish a = report::whole_price_wish(call_.given, *one.routine);
    const report::PriceWish b = report::whole_price_wish(call_.given, *other.routine);
    if (!a.mistake.empty()) return misused(call_, a.mistake);
    print(fmt::format("{} ({})", sheet.title(), sheet.file()),
          moves({*one.routine, a.wish}, {*other.routine, b.wish}));
    return Exit::ok;
  }

 private:
  Exit not_priced(const StreamSheet& sheet, const Resolved& one, const Resolved& other) {
    for (const auto& [set, resolved] : {std::pair{&before_, &one}, {&after_, &other}}) {
      if (resolved->routine) continue;
      call_.streams.say(to_string(resolved->diagnostics));
      call_.streams.say(
          fmt::format("landdrill: {} cannot be priced from {}\n", sheet.file(), set->files.name));
    }
    return Exit::errors;
  }

  Call& call_;
  const ReadSet& before_;
  const ReadSet& after_;
  SetComparison changes_;
};

Exit compare_sheets(Call& call, Comparing& comparing) {
  CallSheets sheets(call, {call.given.operands.begin() + 2, call.given.operands.end()});
  SheetReader& reader = sheets.reader();
  Messages messages(call.streams);
  Exit worst = Exit::ok;
  while (reader.next_unpriced()) {
    const StreamSheet& sheet = reader.sheet();
    messages.add(sheet.messages());
    worst = worse(worst, sheet.ok() ? comparing.sheet(sheet) : Exit::errors);
  }
  return worse(worst, sheets.worst());
}

}  // namespace

Exit values_compare(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  if (!all_readable(call, {typed.begin() + 2, typed.end()})) return Exit::environment;
  Values values(call);
  const ReadSet* sets[2] = {};
  for (std::size_t i = 0; i < 2; ++i) {
    const auto set = values.of_operand(typed[i]);
    if (!set) return refuse(call, set.error());
    if (!(*set)->loaded.set) return refuse_set(call, **set);
    sets[i] = *set;
  }
  Comparing comparing(call, *sets[0], *sets[1]);
  if (typed.size() > 2) return compare_sheets(call, comparing);
  comparing.print({}, {});
  return Exit::ok;
}

}  // namespace landdrill::cli
