#include "engine/files/sheet_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/files/value_sets.h"
#include "engine/routine/problems.h"
#include "engine/score/objections.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/folder.h"

namespace landdrill {
namespace {

constexpr std::size_t sheets_worth_a_thread = 128 * 1024;  // bytes of text

std::size_t length_of(const std::vector<NamedText>& texts) {
  std::size_t length = 0;
  for (const NamedText& piece : texts) length += piece.text.size();
  return length;
}

std::string sets_found(const std::vector<std::string>& names) {
  if (names.empty()) return "no set was found; --values FOLDER says where to look";
  return fmt::format("the sets that were found: {}", fmt::join(names, ", "));
}

// The one with the `routine` line.
const std::string& file_of(const ast::Sheet& sheet) {
  return sheet.sources.of(sheet.routine.head.title.text).name;
}

}  // namespace

SheetReader::SheetReader(std::vector<std::string> files, ValueSets& sets, Heard heard, std::string set)
    : sets_(sets),
      heard_(std::move(heard)),
      forced_set_(std::move(set)),
      first_file_(shown(files.front())),
      stream_(std::move(files)),
      in_order_([this](Batch& batch) { return cut(batch); },
                [this](Batch& batch) {
                  for (Place& place : batch) work_on(place);
                }) {
  end_.ended = true;
}

void SheetReader::read_ahead(Work also) {
  also_ = std::move(also);
  in_order_.ahead();
}

std::optional<std::size_t> SheetReader::cut(Batch& batch) {
  std::size_t text = 0;
  while (!all_cut_ && (batch.empty() || (also_ && text < sheets_worth_a_thread))) {
    batch.push_back(cut_one());
    text += length_of(batch.back().texts);
  }
  return batch.empty() ? std::nullopt : std::optional(text);
}

SheetReader::Place SheetReader::cut_one() {
  Place place;
  auto texts = stream_.next();
  all_cut_ = place.ended = !texts;
  place.more = stream_.more();
  place.troubles = stream_.take_troubles();
  if (texts) place.texts = std::move(*texts);
  return place;
}

// Only what the set that was asked for last suffices for: whatever has to be looked for, or said, waits for
// the sheet's turn.
void SheetReader::work_on(Place& place) const {
  if (place.ended) return;
  StreamSheet& sheet = place.sheet = {read_sheet(std::move(place.texts))};
  if (!also_ || sheet.tree() == nullptr) return;
  const ReadSet* set = sets_.last_of_sheet(set_name(*sheet.tree()), file_of(*sheet.tree()));
  if (set == nullptr || !set->loaded.set) return;
  sheet.set = set;
  understand(sheet, *set->loaded.set);
  also_(sheet);
}

SheetReader::Place& SheetReader::next_place() {
  while (batch_ == nullptr || at_ == batch_->size()) {
    batch_ = in_order_.next();
    if (batch_ == nullptr) return end_;
    at_ = 0;
  }
  return (*batch_)[at_++];
}

// With nothing at all in the files there is one sheet with nothing in it.
bool SheetReader::read_next() {
  place_ = &next_place();
  for (const Trouble& trouble : place_->troubles) heard_.trouble(trouble);
  any_ = any_ || !place_->troubles.empty();
  if (place_->ended && any_) return false;
  any_ = true;
  if (place_->ended) place_->sheet = {read_sheet({{first_file_, ""}})};
  return true;
}

bool SheetReader::next_unpriced() {
  if (!read_next()) return false;
  place_->sheet.sort_messages();
  return true;
}

bool SheetReader::next() {
  if (!read_next()) return false;
  if (place_->sheet.set == nullptr) tie_to_set(place_->sheet);
  place_->sheet.sort_messages();
  return true;
}

void SheetReader::tie_to_set(StreamSheet& sheet) {
  if (sheet.tree() == nullptr) return;
  choose_set(sheet);
  if (sheet.set != nullptr && sheet.set->loaded.set) understand(sheet, *sheet.set->loaded.set);
}

std::string_view SheetReader::set_name(const ast::Sheet& sheet) const {
  if (!forced_set_.empty()) return forced_set_;
  return sheet.routine.values ? sheet.routine.values->text : std::string_view();
}

void SheetReader::choose_set(StreamSheet& sheet) {
  const ast::Sheet& tree = *sheet.tree();
  const std::string_view name = set_name(tree);
  if (name.empty() && !sheet.Sheet::ok()) return;  // the line may be there and not understood
  if (name.empty()) {
    return sheet.add(diagnostic_at(tree.sources, tree.routine.head.title.text,
                                   {Problem::missing_line, "a routine without a value set",
                                    "a line such as `values kingfisher-2026`, or --set on the command line",
                                    sets_found(sets_.names(file_of(tree)))}));
  }
  const auto found = sets_.of_sheet(name, file_of(tree));
  if (!found) return no_such_set(sheet, found.error());
  sheet.set = *found;
  sheet.without_set = !sheet.set->loaded.set;
  if (!sheet.without_set || std::find(reported_.begin(), reported_.end(), sheet.set) != reported_.end())
    return;
  reported_.push_back(sheet.set);
  heard_.unusable(*sheet.set);
}

// A name in the sheet is a mistake of the sheet; a name on the command line, or a season file that refuses,
// is not.
void SheetReader::no_such_set(StreamSheet& sheet, const Trouble& trouble) {
  const std::vector<std::string>& names = sets_.names(file_of(*sheet.tree()));
  if (!forced_set_.empty() || names.empty()) {
    heard_.trouble(trouble);
    sheet.without_set = true;
    return;
  }
  const std::string_view typed = sheet.tree()->routine.values->text;
  const std::vector<std::string_view> known(names.begin(), names.end());
  Hint hint = words::nearest_hint(typed, known);
  if (hint.empty()) hint = sets_found(names);
  sheet.add(diagnostic_at(sheet.tree()->sources, typed,
                          {Problem::unknown_set, fmt::format("the value set \"{}\"", typed),
                           "the name of a set that can be found", std::move(hint)}));
}

}  // namespace landdrill
