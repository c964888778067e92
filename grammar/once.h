// What was said already in a block, so that a second time is found, and with it the place of the first.
//
//   Once seen;
//   seen.first({Said::element, "2"}, piece)   // nullptr: it is new
//   seen.first({Said::element, "2"}, again)   // points at the first piece
#pragma once

#include <functional>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace landdrill {

enum class Said {
  event,
  values,
  tempo,
  swimmers,
  element,
  option,
  aspect,
  parts,
  counts,
  difficulty,
  expect,
  slip,
  sync,
  penalty,
  result,
  spread,
  day,
  errors,
  risk,
  optional,
  stays,
  limit,
  limit_of_code
};

class Once {
 public:
  struct Key {
    Said what;
    std::string_view which = {};
    bool operator==(const Key&) const = default;
  };

  // The piece that said it first, or nullptr, and then `piece` is the first.
  const std::string_view* first(Key key, std::string_view piece) {
    if (many_.empty() && few_.size() < 32) {
      for (const auto& [said, where] : few_)
        if (said == key) return &where;
      few_.emplace_back(key, piece);
      return nullptr;
    }
    if (many_.empty()) many_.insert(few_.begin(), few_.end());
    const auto [at, is_new] = many_.try_emplace(key, piece);
    return is_new ? nullptr : &at->second;
  }
  void clear() {
    few_.clear();
    many_.clear();
  }

 private:
  struct Hash {
    std::size_t operator()(const Key& key) const {
      return std::hash<std::string_view>{}(key.which) * 31 + static_cast<std::size_t>(key.what);
    }
  };
  // A usual block says few things, and looking through them is faster than hashing.
  std::vector<std::pair<Key, std::string_view>> few_;
  std::unordered_map<Key, std::string_view, Hash> many_;
};

}  // namespace landdrill
