// What a book gives as sheets can be added again: to the same book it changes nothing, an empty book becomes
// the same.
#include <rapidcheck.h>

#include "scene.h"
#include "tables/store/book.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using What = Block::What;

// "routine 1", "panel 2026-05-01 2", "run 2026-05-02 0": the text says what block it is.
Block block_of(const std::string& text) {
  const std::size_t first = text.find(' '), last = text.rfind(' ');
  const std::string word = text.substr(0, first);
  Block block{What::routine, "Low Water", "solo-free", "", "", text, 0};
  if (word == "routine") return block;
  block.what = word == "run" ? What::run : What::panel;
  block.date = text.substr(first + 1, last - first - 1);
  return block;
}

std::vector<Block> blocks_of(const std::string& sheets) {
  std::vector<Block> blocks;
  for (std::size_t at = 0; at < sheets.size();) {
    const std::size_t end = std::min(sheets.find("\n\n", at), sheets.size() - 1);
    blocks.push_back(block_of(sheets.substr(at, end + 1 - at)));
    at = end + 2;
  }
  return blocks;
}

constexpr int texts = 24;

// A line of somebody's sheet; few different ones, so that they come again.
std::string some_text(int number) {
  const std::string words = " " + std::to_string(number / 4 % 3) + "\n";
  const std::string day = " 2026-05-0" + std::to_string(1 + number / 12 % 2);
  return number % 4 < 2 ? "routine" + words : (number % 4 == 2 ? "panel" : "run") + day + words;
}

struct KeptBook {
  explicit KeptBook(const std::filesystem::path& file)
      : season(std::move(*Season::open(file, Mode::create))) {}

  std::vector<AddedBlock> add(const std::vector<Block>& blocks) {
    return Book(season).add(blocks, {odd_set()}).value();
  }
  // Each number a text and, of some runs and panels, the version that they are said to belong to.
  std::vector<Block> blocks_of(const std::vector<int>& numbers) const {
    std::vector<Block> blocks;
    for (const int number : numbers) {
      blocks.push_back(block_of(some_text(number % texts)));
      for (const KeptBlock& one : routines())
        if (blocks.back().what != What::routine && one.version == number / texts) blocks.back().of = one.id;
    }
    return blocks;
  }
  std::vector<KeptBlock> routines() const { return *book.find({"", What::routine, "", "", "", true}); }
  // What is swum of each version, and which runs count with it.
  std::string state() const {
    std::string text;
    for (const KeptBlock& one : routines())
      text += std::to_string(one.version) + ": " + *book.sheet(one.id) + "--\n";
    const auto runs = book.find({"", What::run, "", "", "", false});
    for (const KeptBlock& one : *runs)
      text += one.date + " counts with " + std::to_string(one.of_version) + "\n";
    return text;
  }
  std::string sheets() const {
    std::string text;
    for (const KeptBlock& one : routines()) {
      const auto all_words = book.sheets_of_all_words(one.id);
      for (const std::string& sheet : *all_words) text += (text.empty() ? "" : "\n") + sheet;
    }
    return text;
  }

  Season season;
  Book book{season};
};

class BookAgain : public SeasonTest {};

TEST_F(BookAgain, WhateverWasAddedTheSheetsOfTheBookBringItBack) {
  int number = 0;
  const bool holds = rc::check([&] {
    const auto adds = *rc::gen::container<std::vector<std::vector<int>>>(
        rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 4 * texts)));
    KeptBook one(folder / (std::to_string(++number) + ".season"));
    one.add({block_of("routine 0\n")});
    for (const std::vector<int>& numbers : adds) one.add(one.blocks_of(numbers));
    const std::string sheets = one.sheets(), state = one.state();

    KeptBook other(folder / (std::to_string(++number) + ".season"));
    other.add(blocks_of(sheets));
    RC_ASSERT(other.state() == state);
    RC_ASSERT(other.sheets() == sheets);

    for (const AddedBlock& added : one.add(blocks_of(sheets)))
      RC_ASSERT(added.did == AddedBlock::Did::already_there);
    RC_ASSERT(one.state() == state);
  });
  EXPECT_TRUE(holds);
}

}  // namespace
}  // namespace landdrill
