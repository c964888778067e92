// A sheet and a value set read in one go, for the tests of the engine.
//
//   ReadSheet reeds(kit::reeds, kit::pond());
//   reeds.routine().elements.size()      // 2
//   reeds.complaints()
//   // "7:9 found the part \"spin-c\"; expected a part of pond [unknown-part]"
#pragma once

#include <string>
#include <string_view>

#include "engine/routine/sheet.h"
#include "engine/score/score.h"
#include "tables/load.h"

namespace landdrill::kit {

// Numbers as typed in a test: mark("7.25").
Decimal number(std::string_view text);
// "22/3", or "7.25" where it is a decimal.
std::string fraction(const Exact& value);
inline Mark mark(std::string_view text) {
  return Mark(number(text));
}
inline Difficulty difficulty(std::string_view text) {
  return Difficulty(number(text));
}
inline Points points(std::string_view text) {
  return Points(number(text));
}
inline Factor factor(std::string_view text) {
  return Factor(number(text));
}
// "7.25 7.50 - 7.00" -> the marks of a panel, `-` for a judge who is missing.
JudgeMarks marks(std::string_view text);

// The set of tables/data called `name`, read once.
const ValueSet& shipped(std::string_view name);

// `text` with its one `piece` replaced; throws when `piece` is not in it exactly once.
std::string replaced(std::string text, std::string_view piece, std::string_view by);

// The tables of a small invented set, the pond (pond.cpp), to change a row before it is loaded.
class Tables {
 public:
  Tables();
  Tables& replace(std::string_view file, std::string_view piece, std::string_view by);
  Tables& add(std::string_view file, std::string_view row);
  const TableFiles& files() const { return files_; }
  ValueSet load() const;  // throws with the messages when the tables have errors

 private:
  std::string& text_of(std::string_view file);
  TableFiles files_;
};
const ValueSet& pond();

// A free solo in the event `open` of the pond: 86.4 points.
extern const std::string reeds;

// A sheet of a test, which has no mistake but those that it complains of.
class ReadSheet {
 public:
  ReadSheet(std::string text, const ValueSet& set);  // throws with the messages of a text that is no sheet

  const Routine& routine() const;  // throws with the messages when there is none
  // One line for each complaint: place, found, expected, code in brackets and the hint.
  std::string complaints() const;
  const Sheet& sheet() const { return sheet_; }

 private:
  Sheet sheet_;
};

// What resolving `text` against the pond complains of.
std::string complaints(const std::string& text);
// The total the coach expects, or "" while marks are missing.
std::string expected_total(const Routine& routine, const Wish& wish = {});
// The total of the sheet's panel.
std::string recorded_total(const Routine& routine, std::size_t panel = 0, const Wish& wish = {});

}  // namespace landdrill::kit
