// A panel of a list as text of the sheet language, and where each of its lines stands in the list.
//
//   written(panel, {"choreography"}).text
//   // panel 2026-05-09 "Tarn Open"
//   //   element 2: 7.25 7.50
//   written_into("panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.25 7.25\n  penalty: overtime\n", panel, {})
//   // the same, but with judge 2's 7.50; the penalty stays
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tables/marks_list.h"

namespace landdrill {

// How a panel differs from what it was: how many marks there were, how many of these are another now or are
// gone, how many are new; and of how many elements that it had the base mark is given now, or no longer.
struct MarksApart {
  std::size_t there = 0, changed = 0, gone = 0, added = 0, based = 0, unbased = 0;

  bool any() const { return changed + gone + added + based + unbased > 0; }
};
MarksApart marks_apart(std::string_view before, std::string_view now);

struct ListedText {
  std::string text;  // whole lines
  // For each line of the text: where its marks come from; nullptr when they are not from the list.
  std::vector<const ListedPanel::Line*> lines;
  MarksApart marks = {};  // of a panel that was there

  // Where in the list the piece stands that is in this column (1 is the first) of this line (0 is the first);
  // otherwise the line's name; empty when the line is not from the list.
  std::string_view piece_at(std::size_t line, std::size_t column) const;
};

// `aspects`: as the event calls them. A name that differs in case alone is that of the event.
ListedText written(const ListedPanel& panel, std::span<const std::string> aspects);

// Given a panel's text as it is kept. A mark of the list takes the place of the kept one; what the list does
// not speak of stays, and so does the wording of a mark with the same value. Where the list has a column for
// the base mark, it says it of each element that it has marks for.
ListedText written_into(std::string_view kept, const ListedPanel& panel,
                        std::span<const std::string> aspects);

}  // namespace landdrill
