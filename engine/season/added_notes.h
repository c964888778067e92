// What there is to say of blocks that were added to the book: which version they belong to, and why.
//
//   AddedNotes notes(file, swum_until(book), shell_quoted);      // before they are added
//   notes.of(placed, added)
//   // {"the panel of 2026-05-09 \"Tarn Open\" has new words; it stays with ..."}
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "engine/season/placing.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// For each routine (title, event) and each of its versions the last day on which a panel saw it.
using SwumUntil = std::map<std::pair<std::string, std::string>, std::map<int, std::string>>;
Result<SwumUntil> swum_until(const Book& book);

class AddedNotes {
 public:
  // A word of a command as a shell reads it again.
  using Quoted = std::string (*)(std::string_view word);
  // `book`: the file, for commands.
  AddedNotes(std::string book, SwumUntil until, Quoted quoted)
      : book_(std::move(book)), until_(std::move(until)), quoted_(quoted) {}
  // Whole sentences, some with a hint on a line of its own.
  std::vector<std::string> of(const std::vector<Placed>& placed, const std::vector<AddedBlock>& added) const;

 private:
  std::string staying(const std::vector<Placed>& placed, const std::vector<AddedBlock>& added,
                      std::size_t routine) const;
  static std::string all_left(const std::vector<Placed>& placed);
  static std::string of_marks(const Placed& placed, const AddedBlock& added);
  std::string of_block(const Placed& placed, const AddedBlock& added) const;
  std::string too_late(const Block& block, const AddedBlock& added) const;
  std::string move_to(const Block& block, int version) const;

  const std::string book_;
  const SwumUntil until_;
  const Quoted quoted_;
};

}  // namespace landdrill
