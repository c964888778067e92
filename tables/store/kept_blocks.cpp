#include "tables/store/kept_blocks.h"

#include "tables/store/checksum.h"

namespace landdrill {

std::string_view word_of(Block::What what) {
  constexpr std::string_view words[] = {"routine", "run", "panel"};
  return words[static_cast<std::size_t>(what)];
}

bool StoredText::sound() const {
  return !checksum || *checksum == store::checksum_of(text);
}

}  // namespace landdrill
