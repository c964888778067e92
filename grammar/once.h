// What was said already in a block, so that a second time is found, and with it the place of the first.
//
//   Once seen;
//   seen.first({Word::element, "2"}, piece)   // nullptr: it is new
//   seen.first({Word::element, "2"}, again)   // points at the first piece
#pragma once

#include <functional>
#include <string_view>
#include <unordered_map>

#include "grammar/short_list.h"
#include "grammar/words.h"

namespace landdrill {

class Once {
 public:
  struct Key {
    words::Word word;
    std::string_view which = {};
    bool of_code = false;  // `limit "under"`, a code, is not `limit under`
    // Most are told apart by their first letter.
    bool operator==(const Key& other) const {
      if (word != other.word || of_code != other.of_code || which.size() != other.which.size()) return false;
      return which.empty() || (which.front() == other.which.front() && which == other.which);
    }
  };

  // The piece that said it first, or nullptr, and then `piece` is the first.
  const std::string_view* first(Key key, std::string_view piece) {
    if (many_.empty() && few_.size() < 32) {
      for (const Saying& one : few_)
        if (one.key == key) return &one.where;
      few_.emplace_back(key, piece);
      return nullptr;
    }
    if (many_.empty())
      for (const Saying& one : few_) many_.try_emplace(one.key, one.where);
    const auto [at, is_new] = many_.try_emplace(key, piece);
    return is_new ? nullptr : &at->second;
  }
  void clear() {
    few_.clear();
    if (!many_.empty()) many_.clear();
  }

 private:
  struct Hash {
    std::size_t operator()(const Key& key) const {
      return std::hash<std::string_view>{}(key.which) * 31 + static_cast<std::size_t>(key.word);
    }
  };
  // A usual block says few things, and looking through them is faster than hashing.
  struct Saying {
    Key key;
    std::string_view where;
  };
  ShortList<Saying, 12> few_;
  std::unordered_map<Key, std::string_view, Hash> many_;
};

}  // namespace landdrill
