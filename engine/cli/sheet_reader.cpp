#include "engine/cli/sheet_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/read_sheet.h"
#include "engine/routine/problems.h"
#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/hint.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/value_set.h"

namespace landdrill::cli {
namespace {

std::string sets_found(const std::vector<std::string>& names) {
  if (names.empty()) return "no set was found; --values FOLDER says where to look";
  return fmt::format("the sets that were found: {}", fmt::join(names, ", "));
}

// The one with the `routine` line.
const std::string& file_of(const ast::Sheet& sheet) {
  return sheet.sources.of(sheet.routine.head.title.text).name;
}

}  // namespace

SheetReader::SheetReader(Call& call) : SheetReader(call, call.given.operands) {}

SheetReader::SheetReader(Call& call, std::vector<std::string> files)
    : call_(call),
      values_(call),
      first_file_(shown(files.front())),
      ahead_(files, [this](ReadSheet& sheet) { work_ahead(sheet); }) {
  if (has_option(call.command, "--set")) forced_set_ = call.given.value("--set");
}

void SheetReader::read_ahead(ReadAhead::Work also) {
  also_ = std::move(also);
  ahead_.ahead();
}

// Only what the set that was asked for last suffices for: whatever has to be looked for, or said, waits for
// the sheet's turn.
void SheetReader::work_ahead(ReadSheet& sheet) const {
  put_together(sheet);
  if (!also_ || sheet.assembled.sheets.empty()) return;
  const ast::Sheet& first = sheet.assembled.sheets.front();
  const ReadSet* set = values_.last_of_sheet(set_name(first), file_of(first));
  if (set == nullptr || !set->loaded.set) return;
  resolve_from(*set, sheet);
  also_(sheet);
}

// With nothing at all in the files there is one sheet with nothing in it.
bool SheetReader::read_next() {
  ReadAhead::Place& place = ahead_.next();
  for (const Trouble& trouble : place.troubles) worst_ = worse(worst_, refuse(call_, trouble));
  if (place.ended && (any_ || worst_ != Exit::ok)) return false;
  any_ = true;
  more_ = place.more;
  sheet_ = place.ended ? &nothing_ : &place.sheet;
  if (!place.ended) return true;
  nothing_.pieces = {{first_file_, "", 1}};
  put_together(nothing_);
  return true;
}

bool SheetReader::next_unpriced() {
  if (!read_next()) return false;
  sheet_->diagnostics.sort();
  return true;
}

bool SheetReader::next() {
  if (!read_next()) return false;
  if (sheet_->set == nullptr) understand();
  sheet_->diagnostics.sort();
  return true;
}

void SheetReader::understand() {
  if (sheet_->assembled.sheets.empty()) return;
  choose_set(sheet_->assembled.sheets.front());
  if (sheet_->set != nullptr && sheet_->set->loaded.set) resolve_from(*sheet_->set, *sheet_);
}

std::string_view SheetReader::set_name(const ast::Sheet& sheet) const {
  if (!forced_set_.empty()) return forced_set_;
  return sheet.routine.values ? sheet.routine.values->text : std::string_view();
}

void SheetReader::choose_set(const ast::Sheet& sheet) {
  const std::string_view name = set_name(sheet);
  if (name.empty() && !sheet_->diagnostics.ok()) return;  // the line may be there and not understood
  if (name.empty()) {
    const std::string_view title = sheet.routine.head.title.text;
    return sheet_->diagnostics.add(
        diagnostic_at(sheet.sources, title,
                      {Problem::missing_line, "a routine without a value set",
                       "a line such as `values kingfisher-2026`, or --set on the command line",
                       sets_found(values_.names(file_of(sheet)))}));
  }
  const auto found = values_.of_sheet(name, file_of(sheet));
  if (!found) return no_such_set(sheet, found.error());
  sheet_->set = *found;
  if (!sheet_->set->loaded.set) report_set(*sheet_->set);
}

// A name in the sheet is a mistake of the sheet; a name on the command line, or a season file that refuses,
// is not.
void SheetReader::no_such_set(const ast::Sheet& sheet, const Trouble& trouble) {
  const std::vector<std::string>& names = values_.names(file_of(sheet));
  if (!forced_set_.empty() || names.empty()) {
    worst_ = worse(worst_, refuse(call_, trouble));
    sheet_->without_set = true;
    return;
  }
  const std::string_view typed = sheet.routine.values->text;
  const std::vector<std::string_view> known(names.begin(), names.end());
  Hint hint = words::nearest_hint(typed, known);
  if (hint.empty()) hint = sets_found(names);
  sheet_->diagnostics.add(diagnostic_at(sheet.sources, typed,
                                        {Problem::unknown_set, fmt::format("the value set \"{}\"", typed),
                                         "the name of a set that can be found", std::move(hint)}));
}

void SheetReader::report_set(const ReadSet& set) {
  sheet_->without_set = true;
  if (std::find(reported_.begin(), reported_.end(), &set) != reported_.end()) return;
  reported_.push_back(&set);
  worst_ = worse(worst_, refuse_set(call_, set));
}

Resolved SheetReader::resolved_with(const ReadSheet& sheet, const ValueSet& set) {
  return understood(sheet.assembled.sheets.front(), set);
}

bool all_readable(Call& call, const std::vector<std::string>& files) {
  const auto troubles = unreadable(files);
  for (const Trouble& trouble : troubles) refuse(call, trouble);
  return troubles.empty();
}

}  // namespace landdrill::cli
