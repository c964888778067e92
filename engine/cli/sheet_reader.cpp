#include "engine/cli/sheet_reader.h"

#include <fmt/format.h>

#include <algorithm>

#include "grammar/parse.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

std::string listed(const std::vector<std::string>& names) {
  if (names.empty()) return "no set was found; --values FOLDER says where to look";
  std::string text = "the sets that were found: ";
  for (std::size_t i = 0; i < names.size(); ++i) text += (i == 0 ? "" : ", ") + names[i];
  return text;
}

// False for what may only follow from a line that was not understood, and so is not in the tree.
bool stands_by_itself(const Diagnostic& one) {
  return severity_of(one.problem) == Severity::error && one.problem != Problem::missing_line &&
         one.problem != Problem::no_difficulty && one.problem != Problem::unknown_element;
}

bool forces_set(const Command& command) {
  return std::any_of(command.options.begin(), command.options.end(),
                     [](auto* row) { return row->name == "--set"; });
}

}  // namespace

std::string_view ReadSheet::title() const {
  return assembled.sheets.empty() ? std::string_view() : assembled.sheets.front().routine.head.title.text;
}

SheetReader::SheetReader(Call& call) : SheetReader(call, call.given.operands) {}

SheetReader::SheetReader(Call& call, std::vector<std::string> files)
    : call_(call), values_(call), stream_(files), first_file_(shown(files.front())) {
  if (forces_set(call.command)) forced_set_ = call.given.value("--set");
}

// The texts of the next sheet, put together. With nothing at all in the files there is one sheet with nothing
// in it.
bool SheetReader::read_next() {
  auto pieces = stream_.next();
  const std::vector<Trouble> troubles = stream_.take_troubles();
  for (const Trouble& trouble : troubles) worst_ = worse(worst_, refuse(call_, trouble));
  if (!pieces && (any_ || worst_ != Exit::ok)) return false;
  any_ = true;
  sheet_ = {};
  sheet_.pieces = pieces ? std::move(*pieces) : std::vector<Source>{{first_file_, "", 1}};
  for (const Source& piece : sheet_.pieces) {
    Parsed parsed = parse(piece);
    sheet_.diagnostics.append(std::move(parsed.diagnostics));
    assemble(piece, parsed.lines, sheet_.assembled);
  }
  sheet_.diagnostics.append(std::move(sheet_.assembled.diagnostics));
  if (sheet_.assembled.sheets.empty() && sheet_.diagnostics.ok())
    sheet_.diagnostics.add(diagnostic_about(sheet_.file(), {Problem::missing_line, "no routine in it",
                                                            "a line such as `routine \"Harbour Lights\"`"}));
  return true;
}

bool SheetReader::next_unpriced() {
  if (!read_next()) return false;
  sheet_.diagnostics.sort();
  return true;
}

bool SheetReader::next() {
  if (!read_next()) return false;
  understand();
  sheet_.diagnostics.sort();
  return true;
}

void SheetReader::understand() {
  if (sheet_.assembled.sheets.empty()) return;
  choose_set(sheet_.assembled.sheets.front());
  if (sheet_.set == nullptr || !sheet_.set->loaded.set) return;
  sheet_.resolved = resolve(sheet_.assembled.sheets.front(), *sheet_.set->loaded.set);
  if (sheet_.diagnostics.ok()) return sheet_.diagnostics.append(std::move(sheet_.resolved.diagnostics));
  sheet_.resolved.routine.reset();
  for (const Diagnostic& one : sheet_.resolved.diagnostics.list())
    if (stands_by_itself(one)) sheet_.diagnostics.add(one);
}

void SheetReader::choose_set(const ast::Sheet& sheet) {
  const std::string_view typed = sheet.routine.values ? sheet.routine.values->set.text : std::string_view();
  const std::string_view name = forced_set_.empty() ? typed : std::string_view(forced_set_);
  if (name.empty() && !sheet_.diagnostics.ok()) return;  // the line may be there and not understood
  if (name.empty()) {
    const std::string_view title = sheet.routine.head.title.text;
    return sheet_.diagnostics.add(
        diagnostic_at(*sheet.source, title,
                      {Problem::missing_line, "a routine without a value set",
                       "a line such as `values kingfisher-2026`, or --set on the command line",
                       listed(values_.names(sheet.source->name))}));
  }
  const auto found = values_.of_sheet(name, sheet.source->name);
  if (!found) return no_such_set(sheet, found.error());
  sheet_.set = *found;
  if (!sheet_.set->loaded.set) report_set(*sheet_.set);
}

// A name in the sheet is a mistake of the sheet; a name on the command line, or a season file that refuses,
// is not.
void SheetReader::no_such_set(const ast::Sheet& sheet, const Trouble& trouble) {
  const std::vector<std::string> names = values_.names(sheet.source->name);
  if (!forced_set_.empty() || names.empty()) {
    worst_ = worse(worst_, refuse(call_, trouble));
    sheet_.without_set = true;
    return;
  }
  const std::string_view typed = sheet.routine.values->set.text;
  const std::vector<std::string_view> known(names.begin(), names.end());
  std::string hint = words::nearest_hint(typed, known);
  if (hint.empty()) hint = listed(names);
  sheet_.diagnostics.add(diagnostic_at(*sheet.source, typed,
                                       {Problem::unknown_set, fmt::format("the value set \"{}\"", typed),
                                        "the name of a set that can be found", std::move(hint)}));
}

void SheetReader::report_set(const ReadSet& set) {
  sheet_.without_set = true;
  if (std::find(reported_.begin(), reported_.end(), &set) != reported_.end()) return;
  reported_.push_back(&set);
  worst_ = worse(worst_, refuse_set(call_, set));
}

Resolved SheetReader::resolved_with(const ReadSheet& sheet, const ValueSet& set) {
  return resolve(sheet.assembled.sheets.front(), set);
}

bool all_readable(Call& call, const std::vector<std::string>& files) {
  const auto troubles = unreadable(files);
  for (const Trouble& trouble : troubles) refuse(call, trouble);
  return troubles.empty();
}

}  // namespace landdrill::cli
