// Where a piece of text stands in a source.
//
//   Source source{"duet.sheet", "routine \"Tarn\"\nevent duet-free\n"};
//   position_of(source, source.text.substr(23, 4))   // line 2, column 9
//
// Lines and columns count from 1; a column is a character (a UTF-8 code point), not a byte.
#pragma once

#include <cstddef>
#include <deque>
#include <string>
#include <string_view>
#include <vector>

namespace landdrill {

// A named text. Does not own the text: whoever parses keeps it alive as long as the tree that points into it.
struct Source {
  std::string name;
  std::string_view text;
  std::size_t first_line = 1;  // of `text` in the file, when the text is a piece of a longer one
};

struct Position {
  std::size_t line = 0;
  std::size_t column = 0;
};

// Given a view into `source.text` (checked by assert), the position of its first character.
Position position_of(const Source& source, std::string_view piece);

// The whole line in which `piece` starts, without its line ending.
std::string_view line_around(const Source& source, std::string_view piece);

// Words that are read otherwise than they stand in a text, as "7.25" for a cell `7,25`. What is said of such a word is said
// of what was typed.
class Spellings {
 public:
  // A view to read in place of `typed`, which lives as long as this: `typed` itself where it is spelled so.
  std::string_view add(std::string_view spelling, std::string_view typed);
  // What was typed in place of what `piece` is in; `piece` itself when it is in no spelling.
  std::string_view typed(std::string_view piece) const;

 private:
  struct Spelled {
    std::string spelling;
    std::string_view typed;
  };
  std::deque<Spelled> all_;
};

// The texts that one tree points into. A view is asked where it is from, so that nobody has to remember it.
class Sources {
 public:
  // `source` and its text outlive the tree.
  void add(const Source& source) { all_.push_back(&source); }
  // What is read otherwise than it stands in one of them; outlives the tree.
  void add(const Spellings& spellings) { spellings_ = &spellings; }
  // The one that `piece` is a view into (checked by assert).
  const Source& of(std::string_view piece) const;
  // `piece`, or what was typed in its place.
  std::string_view typed(std::string_view piece) const {
    return spellings_ == nullptr ? piece : spellings_->typed(piece);
  }

 private:
  std::vector<const Source*> all_;
  const Spellings* spellings_ = nullptr;
};

}  // namespace landdrill
