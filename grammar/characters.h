// What the sheet language is spelled with: blanks, codes, numbers and quotation marks, as parse and print
// both need it.
//
//   code_end of "split-hold x2"   // after "split-hold"
//   number_end of "7,25 7,50"     // after "7,25"
//
// All of it works on valid UTF-8 within one line, and never looks past `last`.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace landdrill::characters {

enum Kind : unsigned char { other = 0, digit = 1, letter = 2, sign = 4, blank = 8, beyond_ascii = 16 };

// The kind of every byte; `sign` are the marks a code may hold besides letters and digits.
inline constexpr auto kinds = [] {
  std::array<unsigned char, 256> table{};
  for (int c = '0'; c <= '9'; ++c) table[c] = digit;
  for (int c = 'a'; c <= 'z'; ++c) table[c] = table[c - 'a' + 'A'] = letter;
  for (char c : std::string_view(".-_*/'")) table[static_cast<unsigned char>(c)] = sign;
  table[' '] = table['\t'] = blank;
  for (int c = 0x80; c <= 0xFF; ++c) table[c] = beyond_ascii;
  return table;
}();

inline unsigned char kind(char c) {
  return kinds[static_cast<unsigned char>(c)];
}
inline bool is_digit(char c) {
  return '0' <= c && c <= '9';
}
// Nothing but digits, and at least one.
bool all_digits(std::string_view text);

// The bytes of the UTF-8 character at `first`; 1 for a byte that starts none. first < last.
std::size_t character_length(const char* first, const char* last);
// Of ASCII, or of the block behind it: U+0080 to U+009F.
bool is_control(std::string_view character);
// The first byte that is NUL or breaks UTF-8, or `last`.
const char* first_bad_byte(const char* first, const char* last);

// Past blanks, tabs, and the invisible blanks that word processors leave.
const char* skip_wide_blanks(const char* first, const char* last);
inline const char* skip_blanks(const char* first, const char* last) {
  while (first != last) {
    const unsigned char k = kind(*first);
    if (k == blank)
      ++first;
    else
      return k == beyond_ascii ? skip_wide_blanks(first, last) : first;
  }
  return first;
}

// Without blanks of any kind at either end.
std::string_view without_blanks(std::string_view text);

// The end of a bare code that goes beyond ASCII at `at`, or that has no letter or digit yet.
const char* wide_code_end(const char* first, const char* at, const char* last);
// The end of the bare code at `first`, or `first` when there is none.
inline const char* code_end(const char* first, const char* last) {
  const char* at = first;
  unsigned char seen = 0;
  while (at != last && (kind(*at) & (letter | digit | sign)) != 0) seen |= kind(*at++);
  const bool ascii_only = at == last || kind(*at) != beyond_ascii;
  if (ascii_only && seen == 0) return first;
  if (!ascii_only || (seen & (letter | digit)) == 0) return wide_code_end(first, at, last);
  return at != last && *at == '+' ? at + 1 : at;
}
// The end of sign, digits, and a point or comma with digits; or `first`.
inline const char* number_end(const char* first, const char* last) {
  const char* at = first;
  if (at != last && (*at == '-' || *at == '+')) ++at;
  const char* const digits = at;
  while (at != last && is_digit(*at)) ++at;
  if (at == digits) return first;
  if (last - at >= 2 && (*at == '.' || *at == ',') && is_digit(at[1]))
    for (++at; at != last && is_digit(*at);) ++at;
  return at;
}
// The end of `x` or `×` at `first`, or `first`.
const char* times_sign_end(const char* first, const char* last);
// The same for what begins with a dash, or goes beyond ASCII.
const char* dash_end(const char* first, const char* last);
// The end of the `-` or dash at `first` that stands for a missing judge, or `first`.
inline const char* missing_end(const char* first, const char* last) {
  return first == last || (*first != '-' && kind(*first) != beyond_ascii) ? first : dash_end(first, last);
}

// A pair of quotation marks; `closing` may hold more than one.
struct Quotes {
  std::string_view opening;
  std::array<std::string_view, 2> closing;
  bool trimmed;  // the French kind, whose inner blanks do not count
};
// The pairs in the order in which print prefers them.
inline constexpr std::array<Quotes, 6> quotes = {{{"\"", {"\"", "\""}, false},
                                                  {"“", {"”", "”"}, false},
                                                  {"«", {"»", "»"}, true},
                                                  {"»", {"«", "«"}, true},
                                                  {"„", {"“", "”"}, false},
                                                  {"”", {"”", "”"}, false}}};
// The quotation marks that open at `first`, or nullptr.
const Quotes* quotes_at(const char* first, const char* last);
// Where `pair` closes in `text`, and with how many bytes; {npos, 0} if never.
struct Closing {
  std::size_t at;
  std::size_t length;
};
Closing closing_of(const Quotes& pair, std::string_view text);

// A code that needs no quotation marks.
bool is_bare_code(std::string_view text);
// "7.25", "-3", "8up": what would be taken for a mark or a number of counts.
bool looks_like_number(std::string_view text);
// "x2": what would be taken for a multiplicity.
bool looks_like_times(std::string_view text);

}  // namespace landdrill::characters
