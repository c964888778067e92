// What was said already in a block, so that a second time is found, and with it the place of the first.
//
//   Once seen;
//   seen.first({Word::element, "2"}, piece)   // nullptr: it is new
//   seen.first({Word::element, "2"}, again)   // points at the first piece
#pragma once

#include <compare>
#include <map>
#include <string_view>

#include "grammar/words.h"

namespace landdrill {

class Once {
 public:
  struct Key {
    words::Word word;
    std::string_view which = {};
    bool of_code = false;  // `limit "under"`, a code, is not `limit under`
    auto operator<=>(const Key&) const = default;
  };

  // The piece that said it first, or nullptr, and then `piece` is the first.
  const std::string_view* first(Key key, std::string_view piece) {
    const auto [at, is_new] = said_.try_emplace(key, piece);
    return is_new ? nullptr : &at->second;
  }
  void clear() { said_.clear(); }

 private:
  std::map<Key, std::string_view> said_;
};

}  // namespace landdrill
