#include "engine/season/titles.h"

#include <algorithm>

namespace landdrill {
namespace {

const std::string& title_of(const auto& block) {
  return block.what == Block::What::routine ? block.routine : block.title;
}

}  // namespace

std::string bare_title(std::string_view title) {
  std::string letters;
  for (char c : title) {
    const auto byte = static_cast<unsigned char>(c);
    if (c >= 'A' && c <= 'Z') letters += static_cast<char>(c - 'A' + 'a');
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80) letters += c;
  }
  return letters;
}

template <class SomeBlock>
Titles::Name Titles::name_of(const SomeBlock& block) {
  return {block.what, block.what == Block::What::routine ? "" : block.routine, block.event, block.date,
          bare_title(title_of(block))};
}

void Titles::know(const KeptBlock& block) {
  known_[name_of(block)].push_back(title_of(block));
}

std::string Titles::take(const Block& block) {
  const std::string& title = title_of(block);
  const Name name = name_of(block);
  if (std::get<4>(name).empty()) return {};
  std::vector<std::string>& spellings = known_[name];
  if (std::find(spellings.begin(), spellings.end(), title) != spellings.end()) return {};
  if (!spellings.empty()) return spellings.front();
  spellings.push_back(title);
  return {};
}

}  // namespace landdrill
