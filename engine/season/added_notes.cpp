
#include <fmt/format.h>

#include "engine/season/placing.h"
#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/refusal.h"

namespace landdrill {
namespace {

using Why = Placed::Why;
using Did = AddedBlock::Did;

std::string day_and_title(const Block& block) {
  return block.date + (block.title.empty() ? "" : fmt::format(" \"{}\"", block.title));
}
std::string called(const Block& block) {
  return fmt::format("the {} of {}", word_of(block.what), day_and_title(block));
}

std::string elements_have(std::size_t count) {
  return fmt::format("{} {}", count, count == 1 ? "element has" : "elements have");
}

}  // namespace

Result<SwumUntil> swum_until(const Book& book) {
  return store::attempt([&] {
    BookWish panels;
    panels.what = Block::What::panel;
    SwumUntil until;
    for (const KeptBlock& one : store::must(book.find(panels))) {
      std::string& last = until[{one.routine, one.event}][one.of_version];
      last = std::max(last, one.date);
    }
    return until;
  });
}

std::vector<std::string> AddedNotes::of(const std::vector<Placed>& placed,
                                        const std::vector<AddedBlock>& added) const {
  std::vector<std::string> notes;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const bool routine = placed[i].block.what == Block::What::routine;
    if (std::string marks = of_marks(placed[i], added[i]); !marks.empty()) notes.push_back(std::move(marks));
    std::string note = routine ? staying(placed, added, i) : of_block(placed[i], added[i]);
    if (!note.empty()) notes.push_back(std::move(note));
  }
  if (std::string left = all_left(placed); !left.empty()) notes.push_back(std::move(left));
  return notes;
}

std::string AddedNotes::all_left(const std::vector<Placed>& placed) {
  std::string blocks;
  for (const Placed& one : placed)
    if (one.why == Why::left)
      blocks += fmt::format("\n  {} {}, {}: version {}{}", word_of(one.block.what), day_and_title(one.block),
                            one.block.routine, one.version,
                            one.corrected_since ? ", as it was corrected since" : "");
  if (blocks.empty()) return {};
  return "what does not fit its routine any more was left as it is kept, with the version that it belongs "
         "to:" +
         blocks + "\n  hint: take it out of the sheet, for the other commands stumble over it";
}

// The panels below a routine that has become a new version, as far as they stay with older ones.
std::string AddedNotes::staying(const std::vector<Placed>& placed, const std::vector<AddedBlock>& added,
                                std::size_t routine) const {
  if (added[routine].did != Did::new_version) return {};
  std::string panels;
  for (std::size_t i = routine + 1; i < placed.size() && placed[i].block.what != Block::What::routine; ++i) {
    if (placed[i].block.what != Block::What::panel || added[i].did != Did::already_there ||
        added[i].of_version == added[i].beside || placed[i].why == Why::left)
      continue;
    panels += fmt::format("\n  {}: version {}", day_and_title(placed[i].block), added[i].of_version);
  }
  if (panels.empty()) return {};
  const Block& block = placed[routine].block;
  return fmt::format(
      "{}, {} {} version {}; panels stay with the version that they were swum as:{}", block.routine,
      block.event,
      placed[routine].why == Why::same_words ? "has another value set, and so is" : "was changed and is",
      added[routine].version, panels);
}

// Of a panel whose words are others than those that are kept: a line that slipped away is seen.
std::string AddedNotes::of_marks(const Placed& placed, const AddedBlock& added) {
  const MarksApart& marks = placed.marks;
  if (added.did != Did::new_version || !marks.any()) return {};
  std::vector<std::string> told;
  const auto tell = [&](std::size_t count, std::string_view what) {
    if (count == 0) return;
    const std::string of_them = !told.empty()      ? fmt::format("{}", count)
                                : marks.there == 1 ? std::string("its one mark")
                                                   : fmt::format("{} of its {} marks", count, marks.there);
    told.push_back(fmt::format("{} {} {}", of_them, count == 1 ? "is" : "are", what));
  };
  tell(marks.changed, "another now");
  tell(marks.gone, "gone");
  if (marks.added > 0)
    told.push_back(fmt::format("{} {} new", marks.added, marks.added == 1 ? "mark is" : "marks are"));
  if (marks.based > 0) told.push_back(fmt::format("{} the base mark now", elements_have(marks.based)));
  const bool of_list = placed.why == Why::as_given;
  if (marks.unbased > 0)
    told.push_back(fmt::format("{} the base mark no longer{}", elements_have(marks.unbased),
                               of_list ? ", as the list's column for it says" : ""));
  return fmt::format("{} of {} was kept before: {}{}", called(placed.block), placed.block.routine,
                     fmt::join(told, ", "), of_list ? "; the rest stays as it was" : "");
}

std::string AddedNotes::of_block(const Placed& placed, const AddedBlock& added) const {
  const Block& block = placed.block;
  if (placed.again != 0 && added.did == Did::new_version)
    return fmt::format(
        "{} of {} is again as it was in its version {}: what was corrected since counts no longer\n  hint: "
        "if "
        "it shall count, correct the sheet too and add it, or add the list with the corrections again",
        called(block), block.routine, placed.again);
  switch (placed.why) {
    case Why::stays:
      if (added.beside == placed.version) return {};
      return fmt::format(
          "{} has new words; it stays with version {} of {}, as which it was swum\n  hint: if it was "
          "version {} that was swum: {}",
          called(block), placed.version, block.routine, added.beside, move_to(block, added.beside));
    case Why::moves:
      if (added.of_version == placed.version) return {};
      return fmt::format("{} has new words, which do not fit version {} of {}; it belongs to version {} now",
                         called(block), placed.version, block.routine, added.of_version);
    case Why::corrected:
      return fmt::format(
          "{} has new words; they are kept with version {} of {} too, which the run counts with",
          called(block), placed.version, block.routine);
    case Why::left:
      return {};
    default:
      return block.of == 0 && block.what == Block::What::panel && added.did == Did::added
                 ? too_late(block, added)
                 : std::string();
  }
}

// A new panel that is older than what was swum of an older version.
std::string AddedNotes::too_late(const Block& block, const AddedBlock& added) const {
  const auto routine = until_.find({block.routine, block.event});
  if (routine == until_.end()) return {};
  for (const auto& [version, day] : routine->second) {
    if (version >= added.of_version || day <= block.date) continue;
    return fmt::format(
        "{} was put to version {} of {}, though a panel saw version {} later, on {}\n  hint: if it "
        "was version {} that was swum: {}",
        called(block), added.of_version, block.routine, version, day, version, move_to(block, version));
  }
  return {};
}

std::string AddedNotes::move_to(const Block& block, int version) const {
  return fmt::format("landdrill book swum-as {} {} {} --event {} --from {} --until {}", quoted_(book_),
                     version, quoted_(block.routine + (block.title.empty() ? "" : " ") + block.title),
                     quoted_(block.event), block.date, block.date);
}

}  // namespace landdrill
