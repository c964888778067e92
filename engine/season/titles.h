// The titles of the book and of what is being added to it, for finding one that is spelled in two ways.
//
//   Titles titles;
//   titles.take(panel_of_may("Tarn Open"));        // ""
//   titles.take(panel_of_may("Tarn open"));        // "Tarn Open"
#pragma once

#include <map>
#include <string>
#include <tuple>
#include <vector>

#include "tables/store/book.h"

namespace landdrill {

// The letters and digits alone, in lower case as far as they are of ASCII: titles with the same ones differ
// in nothing but case, blanks or signs.
std::string bare_title(std::string_view title);

class Titles {
 public:
  // As it is in the book, where both spellings may be from before.
  void know(const KeptBlock& block);
  // The title of the same event or, of a run or panel, of the same routine and day that this one is another
  // spelling of; empty when there is none. Then it is known.
  std::string take(const Block& block);

 private:
  using Name = std::tuple<Block::What, std::string, std::string, std::string, std::string>;
  template <class SomeBlock>
  static Name name_of(const SomeBlock& block);

  std::map<Name, std::vector<std::string>> known_;
};

}  // namespace landdrill
