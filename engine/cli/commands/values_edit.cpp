#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "engine/report/page.h"
#include "engine/report/pages/values.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/words.h"
#include "tables/edit_cell.h"
#include "tables/fill.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/problems.h"
#include "tables/store/season.h"
#include "tables/value_set.h"

namespace landdrill::cli {
namespace {

Result<void> write_edited(Values& values, const ReadSet& set, const EditedSet& edited) {
  if (!values.in_season()) return write_folder(edited.files, set.folder);
  const auto season = values.season(Season::Mode::write);
  if (!season) return tl::unexpected(season.error());
  return (*season)->together([&]() -> Result<void> {
    for (const Edit& edit : edited.edits)
      if (const auto one = (*season)->edit(edit); !one) return tl::unexpected(one.error());
    return {};
  });
}

// All of the edits, or none.
Exit carry_out(Call& call, Values& values, const ReadSet& set, const EditedSet& edited) {
  if (edited.edits.empty()) return Exit::ok;
  if (!values.in_season())
    if (const auto trouble = no_own_folder(set)) return refuse(call, *trouble);
  if (const Loaded loaded = load(edited.files); !loaded.diagnostics.ok()) {
    call.streams.say(to_string(loaded.diagnostics));
    call.streams.say(
        fmt::format("landdrill: nothing was changed: with that, {} could not be used\n", set.files.name));
    return Exit::errors;
  }
  const auto written = write_edited(values, set, edited);
  return written ? Exit::ok : refuse(call, written.error());
}

}  // namespace

Exit values_edit(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  Values values(call);
  const auto set = values.of_operand(typed[0]);
  if (!set) return refuse(call, set.error());
  if (!(*set)->loaded.set) return refuse_set(call, **set);
  const std::string& name = (*set)->files.name;
  const auto edited = edit_cell(
      (*set)->files, {name, typed[1], typed[2], typed[3], typed[4], std::string(call.given.value("--why"))},
      {std::string(call.given.value("--source")), std::string(call.given.value("--status"))});
  if (!edited) {
    refuse(call, edited.error());
    return Exit::usage;
  }
  const Exit done = carry_out(call, values, **set, *edited);
  if (done == Exit::ok)
    print_page(call, report::values_change_page(std::string(call.command.words), name, edited->change));
  return done;
}

namespace {

FillWish fill_wish(const Call& call) {
  FillWish wish;
  wish.overwrite = call.given.has("--overwrite");
  wish.family = call.given.value("--family");
  wish.source = call.given.value("--source", wish.source);
  wish.status = *words::value_of<Status>(status_words, call.given.value("--status", word_of(wish.status)));
  return wish;
}

Result<std::string> keep_in_season(Values& values, const Filled& outcome, std::string_view list) {
  const auto season = values.season(Season::Mode::write);
  if (!season) return tl::unexpected(season.error());
  const auto kept = (*season)->import_set(outcome.files, fmt::format("filled in from {}", list), true);
  if (!kept) return tl::unexpected(kept.error());
  return values.season_file();
}

Result<std::string> keep_in_folder(const Filled& outcome, const std::filesystem::path& folder) {
  if (const auto written = write_folder(outcome.files, folder); !written)
    return tl::unexpected(written.error());
  return folder.string();
}

// Where it was written; empty when it was only to be looked at.
Result<std::string> write_filled(Call& call, Values& values, const ReadSet& set, const Filled& outcome) {
  if (call.given.has("--to")) {
    const std::string folder(call.given.value("--to"));
    if (auto trouble = not_new(folder)) return tl::unexpected(*trouble);
    return keep_in_folder(outcome, folder);
  }
  if (values.in_season()) return keep_in_season(values, outcome, call.given.operands[1]);
  if (!call.given.has("--write")) return std::string();
  if (auto trouble = no_own_folder(set)) return tl::unexpected(*trouble);
  return keep_in_folder(outcome, set.folder);
}

bool has(ProblemCode problem, const Diagnostics& diagnostics) {
  const auto& list = diagnostics.list();
  return std::any_of(list.begin(), list.end(), [&](auto& one) { return one.problem == problem; });
}

}  // namespace

Exit values_fill(Call& call) {
  const std::string& list_name = call.given.operands[1];
  if (call.given.has("--to") && call.given.has("--write"))
    return misused(call, "found --to and --write; expected one of them");
  Values values(call);
  const auto set = values.of_operand(call.given.operands[0]);
  if (!set) return refuse(call, set.error());
  const auto list = read_whole(list_name);
  if (!list) return refuse(call, list.error());
  const Filled outcome = fill((*set)->files, {shown(list_name), *list}, fill_wish(call));
  call.streams.say(to_string(outcome.diagnostics));
  if (has(Problem::has_value, outcome.diagnostics))
    call.streams.say("landdrill: nothing is filled in; --overwrite replaces the values that differ\n");
  if (has(Problem::unknown_name, outcome.diagnostics) && !call.given.has("--family"))
    call.streams.say(
        "landdrill: nothing is filled in; --family FAMILY puts codes that the set does not have in as new "
        "parts\n");
  if (!outcome.diagnostics.ok()) return Exit::errors;
  const auto kept = write_filled(call, values, **set, outcome);
  if (!kept) return refuse(call, kept.error());
  print_page(call, report::values_fill_page(outcome, *kept));
  return Exit::ok;
}

Exit values_copy(Call& call) {
  Values values(call);
  const auto set = values.of_operand(call.given.operands[0]);
  if (!set) return refuse(call, set.error());
  const std::filesystem::path folder = call.given.operands[1];
  if (const auto trouble = not_new(folder)) return refuse(call, *trouble);
  if (const auto written = write_folder((*set)->files, folder); !written)
    return refuse(call, written.error());
  const std::string name = std::filesystem::weakly_canonical(folder).filename().string();
  print_page(call, report::values_copy_page(std::string(call.command.words),
                                            {(*set)->files.name, folder.string(), name}));
  return Exit::ok;
}

}  // namespace landdrill::cli
