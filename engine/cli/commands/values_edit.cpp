#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/files/own_folder.h"
#include "engine/files/read_set.h"
#include "engine/season/edit_cell.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

namespace landdrill::cli {
namespace {

Exit write_season(Call& call, Values& values, const std::vector<Edit>& edits) {
  const auto season = values.season(Season::Mode::write);
  if (!season) return refuse(call, season.error());
  const auto done = (*season)->together([&]() -> Result<void> {
    for (const Edit& edit : edits)
      if (const auto one = (*season)->edit(edit); !one) return tl::unexpected(one.error());
    return {};
  });
  return done ? Exit::ok : refuse(call, done.error());
}

Exit write_own_folder(Call& call, const ReadSet& set, const TableFiles& changed) {
  const auto written = write_folder(changed, set.folder);
  return written ? Exit::ok : refuse(call, written.error());
}

// Whether the set can still be used with the change; says why not.
bool still_loads(Call& call, const TableFiles& changed) {
  const Loaded loaded = load(changed);
  if (loaded.diagnostics.ok()) return true;
  call.streams.say(to_string(loaded.diagnostics));
  call.streams.say(
      fmt::format("landdrill: nothing was changed: with that, {} could not be used\n", changed.name));
  return false;
}

// All of the edits, or none.
Exit carry_out(Call& call, Values& values, const ReadSet& set, const std::vector<Edit>& edits) {
  if (!values.in_season())
    if (const auto trouble = no_own_folder(set)) return refuse(call, *trouble);
  TableFiles changed = set.files;
  for (const Edit& edit : edits)
    if (const auto before = change_cell(changed, edit); !before) return refuse(call, before.error());
  if (!still_loads(call, changed)) return Exit::errors;
  return values.in_season() ? write_season(call, values, edits) : write_own_folder(call, set, changed);
}

// "my-2026 parts spin-720"; the one row of a set has no key.
std::string row_edited(const Edit& edit) {
  return fmt::format("{} {}{}{}", edit.set, edit.table, edit.key.empty() ? "" : " ", edit.key);
}

std::string edits_told(const std::vector<Edit>& edits, const std::string& before) {
  const Edit& main = edits.back();
  const auto shown = [](const std::string& value) { return value.empty() ? std::string("nothing") : value; };
  std::string text =
      fmt::format("{}: {} {} -> {}\n", row_edited(main), main.column, shown(before), shown(main.value));
  for (const Edit& edit : edits)
    if (&edit != &main) text += fmt::format("  its {} is now \"{}\"\n", edit.column, edit.value);
  return text;
}

}  // namespace

Exit values_edit(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  Values values(call);
  const auto set = values.of_operand(typed[0]);
  if (!set) return refuse(call, set.error());
  if (!(*set)->loaded.set) return refuse_set(call, **set);
  const Edit wish{(*set)->files.name, typed[1], typed[2],
                  typed[3],           typed[4], std::string(call.given.value("--why"))};
  const auto edits =
      change_of(wish, (*set)->files,
                {std::string(call.given.value("--source")), std::string(call.given.value("--status"))});
  if (!edits) {
    refuse(call, edits.error());
    return Exit::usage;
  }
  if (edits->empty()) {
    call.streams.out.write(fmt::format("{}: {} is {} already\n", row_edited(wish), wish.column, wish.value));
    return Exit::ok;
  }
  TableFiles copy = (*set)->files;
  const auto before = change_cell(copy, edits->back());
  const Exit done = carry_out(call, values, **set, *edits);
  if (done == Exit::ok) call.streams.out.write(edits_told(*edits, *before));
  return done;
}

}  // namespace landdrill::cli
