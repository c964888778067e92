// What was made up -> the text a coach would have typed.
//
//   SheetWriter(set, made, dice).write(17)   // routine "Slack Water 0000017" ...
#pragma once

#include <string>

#include "tests/bench/sheet_maker.h"

namespace landdrill::bench {

// Rolls the dice for what does not count in the total: titles, counts, options, comments.
class SheetWriter {
 public:
  SheetWriter(const ValueSet& set, const MadeSheet& made, Dice& dice) : set_(set), made_(made), dice_(dice) {}
  std::string write(std::uint64_t number);

 private:
  void header(std::uint64_t number);
  void routine();
  void element(std::size_t index);
  void variant(const MadeElement& element, std::string_view indent);
  void option(const MadeElement& element);
  void passage(int counts);
  void run(const MadeRun& run, int day);
  void run_element(const MadeRunElement& seen);
  void panel(const MadePanel& panel);
  template <class Row>
  void uses(std::string_view keyword, const std::vector<MadeUse>& uses, const Rows<Row>& rows);
  void marks(const MadeMarks& marks);
  void mark(int quarters);
  void number(int value) { text_ += std::to_string(value); }
  void title();

  const ValueSet& set_;
  const MadeSheet& made_;
  Dice& dice_;
  std::string text_;
  int counts_left_ = 0;
};

}  // namespace landdrill::bench
