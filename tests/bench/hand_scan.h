// The words of a line, scanned by hand: each moves `at` behind what it took, or returns false.
//
//   Scan scan{"7,25 7.50"};   scan.number(n)   // n is "7,25"
//
// ASCII is read here, with its own table; what lies beyond it is left to grammar/characters.h.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "grammar/ast.h"

namespace landdrill::bench {

enum Class : unsigned char { nothing = 0, solid = 1, dash = 2, space = 4, foreign = 8 };

inline constexpr auto classes = [] {
  std::array<unsigned char, 256> table{};
  for (int c = '0'; c <= '9'; ++c) table[c] = solid;
  for (int c = 'a'; c <= 'z'; ++c) table[c] = table[c - 'a' + 'A'] = solid;
  for (const char c : {'.', '-', '_', '*', '/', '\''}) table[static_cast<unsigned char>(c)] = dash;
  table[' '] = table['\t'] = space;
  for (int c = 0x80; c <= 0xFF; ++c) table[c] = foreign;
  return table;
}();

inline unsigned char class_of(char c) {
  return classes[static_cast<unsigned char>(c)];
}
inline bool is_figure(char c) {
  return static_cast<unsigned char>(c - '0') < 10;
}

// `word` is in small letters.
inline bool spells(std::string_view text, std::string_view word) {
  if (text.size() != word.size()) return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (('A' <= c && c <= 'Z' ? c + 32 : c) != word[i]) return false;
  }
  return true;
}

class Scan {
 public:
  Scan(const char* first, const char* last) : at(first), last_(last) {}

  const char* at;

  void blanks() {
    while (at != last_ && class_of(*at) == space) ++at;
    if (at != last_ && class_of(*at) == foreign) wide_blanks();
  }
  bool sign(char c) {
    blanks();
    if (at == last_ || *at != c) return false;
    ++at;
    return true;
  }
  // The end of the statement: nothing, or a comment.
  bool end() {
    blanks();
    return at == last_ || *at == '#';
  }
  std::string_view rest() const { return {at, static_cast<std::size_t>(last_ - at)}; }

  // The bare code here; empty when there is none. Skips no blanks.
  std::string_view bare() {
    const char* first = at;
    unsigned char seen = 0;
    while (at != last_ && (class_of(*at) & (solid | dash)) != 0) seen |= class_of(*at++);
    if (at != last_ && class_of(*at) == foreign) return foreign_code(first);
    if ((seen & solid) == 0) at = first;
    if (at != first && at != last_ && *at == '+') ++at;
    return {first, static_cast<std::size_t>(at - first)};
  }

  bool code(ast::Name& name);             // a code, bare or in quotation marks
  bool code_but_number(ast::Name& name);  // ... that does not look like a number
  bool code_but_none(ast::Name& name);
  bool fault_code(ast::Name& name);
  bool size_code(ast::Name& name);
  bool title(ast::Name& name);
  bool number(ast::Number& number);
  bool whole(ast::Number& number);
  bool mark(ast::JudgeMark& mark);
  bool starts_mark();
  bool between_marks();  // false: the marks end here
  bool times(std::optional<ast::Number>& times);
  bool date(ast::Date& date);
  bool word(std::string_view wanted);

 private:
  void wide_blanks();
  std::string_view foreign_code(const char* first);
  bool goes_on(const char* from) const {
    return last_ - from >= 2 && (*from == '.' || *from == ',') && is_figure(from[1]);
  }
  const char* end_of_number() const;
  const char* end_of_missing() const;
  bool quoted(ast::Name& name);

  const char* last_;
};

}  // namespace landdrill::bench
