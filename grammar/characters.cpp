#include "grammar/characters.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

namespace landdrill::characters {
namespace {

constexpr std::string_view wide_blanks[] = {"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x8B", "\xEF\xBB\xBF"};
constexpr std::string_view dashes[] = {"–", "—", "−"};
constexpr std::string_view times_sign = "×";
// Beyond ASCII, and yet no part of a code: quotation marks, the times sign, blanks and line separators.
constexpr std::string_view never_in_codes[] = {"“",
                                               "”",
                                               "„",
                                               "«",
                                               "»",
                                               times_sign,
                                               "\xC2\x85",
                                               "\xE2\x80\xA8",
                                               "\xE2\x80\xA9",
                                               "\xC2\xA0",
                                               "\xE2\x80\xAF",
                                               "\xE2\x80\x8B",
                                               "\xEF\xBB\xBF"};

bool starts(const char* first, const char* last, std::string_view with) {
  return static_cast<std::size_t>(last - first) >= with.size() &&
         std::memcmp(first, with.data(), with.size()) == 0;
}

template <class List>
std::size_t one_of(const List& list, const char* first, const char* last) {
  for (std::string_view each : list)
    if (starts(first, last, each)) return each.size();
  return 0;
}

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

// Bytes of the valid UTF-8 sequence at `first`, or 0 (overlong, surrogate, cut short ...).
std::size_t sequence_length(const char* first, const char* last) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(first[i]); };
  const std::size_t left = static_cast<std::size_t>(last - first);
  const unsigned char lead = byte(0);
  if (lead < 0x80) return 1;
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || left < length) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if (!continues(first[i])) return 0;
  const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
  const bool surrogate = lead == 0xED && byte(1) >= 0xA0;
  const bool past_the_end = lead == 0xF4 && byte(1) >= 0x90;
  return overlong || surrogate || past_the_end ? 0 : length;
}

}  // namespace

std::size_t character_length(const char* first, const char* last) {
  return std::max<std::size_t>(1, sequence_length(first, last));
}

bool is_control(std::string_view character) {
  const auto byte = static_cast<unsigned char>(character.front());
  const bool second_block =
      character.size() == 2 && byte == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0;
  return byte < 0x20 || byte == 0x7F || second_block;
}

const char* first_bad_byte(const char* first, const char* last) {
  constexpr std::uint64_t ones = 0x0101010101010101, highs = 0x8080808080808080;
  while (first != last) {
    for (std::uint64_t eight; last - first >= 8; first += 8) {
      std::memcpy(&eight, first, 8);
      if (((eight | (eight - ones)) & highs) != 0) break;
    }
    if (first == last) break;
    // A byte at a time until the next eight are plain again.
    const std::size_t length = *first == '\0' ? 0 : sequence_length(first, last);
    if (length == 0) return first;
    first += length;
  }
  return last;
}

const char* skip_wide_blanks(const char* first, const char* last) {
  while (first != last) {
    const std::size_t length = kind(*first) == blank ? 1 : one_of(wide_blanks, first, last);
    if (length == 0) break;
    first += length;
  }
  return first;
}

std::string_view without_blanks(std::string_view text) {
  const char* last = text.data() + text.size();
  const char* first = skip_blanks(text.data(), last);
  const char* end = first;
  for (const char* at = first; at != last; at = skip_blanks(at, last)) end = at += character_length(at, last);
  return {first, static_cast<std::size_t>(end - first)};
}

const char* wide_code_end(const char* first, const char* at, const char* last) {
  // A code of nothing but dashes and points is none.
  bool solid = std::any_of(first, at, [](char c) { return (kind(c) & (letter | digit)) != 0; });
  for (; at != last; ++at) {
    const unsigned char k = kind(*at);
    if ((k & (letter | digit)) != 0) {
      solid = true;
    } else if (k == beyond_ascii) {
      if (one_of(never_in_codes, at, last) != 0) break;
      solid = solid || one_of(dashes, at, last) == 0;
      at += character_length(at, last) - 1;
    } else if (k != sign) {
      break;
    }
  }
  if (!solid) return first;
  return at != last && *at == '+' ? at + 1 : at;
}

const char* times_sign_end(const char* first, const char* last) {
  if (first == last) return first;
  if (*first == 'x' || *first == 'X') return first + 1;
  return starts(first, last, times_sign) ? first + times_sign.size() : first;
}

const char* dash_end(const char* first, const char* last) {
  const char* end = *first == '-' ? first + 1 : first + one_of(dashes, first, last);
  if (end == first || end == last) return end;
  const bool stands_alone = kind(*end) == blank || *end == ',' || *end == ';' || *end == '#' ||
                            (kind(*end) == beyond_ascii && skip_wide_blanks(end, last) != end);
  return stands_alone ? end : first;
}

const Quotes* quotes_at(const char* first, const char* last) {
  if (first == last || (*first != '"' && kind(*first) != beyond_ascii)) return nullptr;
  for (const Quotes& pair : quotes)
    if (starts(first, last, pair.opening)) return &pair;
  return nullptr;
}

Closing closing_of(const Quotes& pair, std::string_view text) {
  const std::size_t one = text.find(pair.closing[0]);
  const std::size_t other = pair.closing[1] == pair.closing[0] ? one : text.find(pair.closing[1]);
  if (one == text.npos && other == text.npos) return {text.npos, 0};
  return one <= other ? Closing{one, pair.closing[0].size()} : Closing{other, pair.closing[1].size()};
}

bool is_bare_code(std::string_view text) {
  const char* last = text.data() + text.size();
  return !text.empty() && code_end(text.data(), last) == last;
}

bool looks_like_number(std::string_view text) {
  if (text.empty()) return false;
  if (text[0] == '-' || text[0] == '+') text.remove_prefix(1);
  return !text.empty() && is_digit(text[0]);
}

bool looks_like_times(std::string_view text) {
  return text.size() > 1 && (text[0] == 'x' || text[0] == 'X') && all_digits(text.substr(1));
}

bool all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), is_digit);
}

}  // namespace landdrill::characters
