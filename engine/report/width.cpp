#include "engine/report/width.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>

namespace landdrill::report {
namespace {

struct Range {
  char32_t first, last;
};
constexpr bool operator<(const Range& range, char32_t c) {
  return range.last < c;
}

// Sorted. The main blocks of the Unicode standard: enough for titles; what is missing is off by one column.
constexpr std::array<Range, 13> no_room{{{0x300, 0x36F},
                                         {0x483, 0x489},
                                         {0x591, 0x5BD},
                                         {0x610, 0x61A},
                                         {0x64B, 0x65F},
                                         {0xE31, 0xE31},
                                         {0xE34, 0xE3A},
                                         {0x1AB0, 0x1AFF},
                                         {0x1DC0, 0x1DFF},
                                         {0x200B, 0x200D},
                                         {0x20D0, 0x20FF},
                                         {0xFE00, 0xFE0F},
                                         {0xFE20, 0xFE2F}}};
constexpr std::array<Range, 12> wide{{{0x1100, 0x115F},
                                      {0x2E80, 0x303E},
                                      {0x3041, 0xA4CF},
                                      {0xA960, 0xA97F},
                                      {0xAC00, 0xD7A3},
                                      {0xF900, 0xFAFF},
                                      {0xFE30, 0xFE6F},
                                      {0xFF00, 0xFF60},
                                      {0xFFE0, 0xFFE6},
                                      {0x1F300, 0x1F64F},
                                      {0x1F680, 0x1FAFF},
                                      {0x20000, 0x3FFFD}}};
// They turn the direction of what follows, or cannot be seen at all.
constexpr std::array<Range, 5> turning{
    {{0x80, 0x9F}, {0x200E, 0x200F}, {0x2028, 0x202E}, {0x2066, 0x2069}, {0xFEFF, 0xFEFF}}};

template <std::size_t size>
bool in(const std::array<Range, size>& ranges, char32_t c) {
  const auto at = std::lower_bound(ranges.begin(), ranges.end(), c);
  return at != ranges.end() && at->first <= c;
}

struct Character {
  char32_t code = 0;
  std::size_t length = 1;
  bool good = false;
};

Character first_of(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return {lead, 1, true};
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return {};
  char32_t code = lead & (0x7F >> length);
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0) != 0x80) return {};
    code = (code << 6) | (byte(i) & 0x3F);
  }
  constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
  const bool good = code >= least[length] && code <= 0x10FFFF && !(0xD800 <= code && code <= 0xDFFF);
  return {code, good ? length : 1, good};
}

int room_of(char32_t c) {
  if (c < no_room.front().first) return 1;  // Latin text, so nearly all
  return in(no_room, c) ? 0 : in(wide, c) ? 2 : 1;
}

std::string spelled_out(char32_t code, int digits, std::string_view start) {
  std::string result(start);
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
    result += "0123456789abcdef"[(code >> shift) & 15];
  return result;
}

bool is_plain_ascii(char c) {
  return ' ' <= c && c <= '~';
}

// How many bytes of `text` fit into `width` columns; what takes no room goes with the character before it.
std::size_t fitting(std::string_view text, int width) {
  std::size_t at = 0;
  while (at < text.size()) {
    const Character c = first_of(text.substr(at));
    width -= room_of(c.code);
    if (width < 0) break;
    at += c.length;
  }
  return at;
}

}  // namespace

int width_of(std::string_view text) {
  constexpr std::uint64_t beyond_ascii = 0x8080808080808080;
  std::size_t at = 0;
  for (std::uint64_t eight; at + 8 <= text.size(); at += 8) {
    std::memcpy(&eight, text.data() + at, 8);
    if ((eight & beyond_ascii) != 0) break;
  }
  while (at < text.size() && static_cast<unsigned char>(text[at]) < 0x80) ++at;
  int width = static_cast<int>(at);
  while (at < text.size()) {
    const Character c = first_of(text.substr(at));
    width += room_of(c.code);
    at += c.length;
  }
  return width;
}

bool is_plain(std::string_view text) {
  return std::all_of(text.begin(), text.end(), is_plain_ascii);
}

std::string plain(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t start = at;
    while (at < text.size() && is_plain_ascii(text[at])) ++at;
    result += text.substr(start, at - start);
    if (at == text.size()) break;
    const Character c = first_of(text.substr(at));
    if (!c.good || (c.code < 0x20 && c.code != '\t' && c.code != '\n' && c.code != '\r') || c.code == 0x7F) {
      result += spelled_out(static_cast<unsigned char>(text[at]), 2, "\\x");
    } else if (c.code < 0x20) {
      result += ' ';
    } else if (in(turning, c.code)) {
      result += spelled_out(c.code, 4, "\\u");
    } else {
      result += text.substr(at, c.length);
    }
    at += c.length;
  }
  return result;
}

std::string valid_text(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const Character c = first_of(text.substr(at));
    if (c.good) {
      result += text.substr(at, c.length);
    } else {
      result += spelled_out(static_cast<unsigned char>(text[at]), 2, "\\x");
    }
    at += c.length;
  }
  return result;
}

std::string cut(std::string_view text, int width) {
  if (width_of(text) <= width) return std::string(text);
  return std::string(text.substr(0, fitting(text, width - 1))) + "…";
}

std::vector<std::string> wrap(std::string_view text, int width) {
  std::vector<std::string> lines;
  while (width_of(text) > width) {
    // At least one character a line, or a wide one in a column of one would never end.
    const std::size_t most = std::max(fitting(text, width), first_of(text).length);
    const std::size_t blank = text.substr(0, most + 1).find_last_of(' ');
    const bool at_blank = blank != std::string_view::npos && blank > 0;
    std::string line(text.substr(0, at_blank ? blank : most));
    line.erase(line.find_last_not_of(' ') + 1);
    lines.push_back(std::move(line));
    text.remove_prefix(at_blank ? blank + 1 : most);
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
  }
  if (!text.empty() || lines.empty()) lines.emplace_back(text);
  return lines;
}

std::string paragraph(std::string_view first, std::string_view text, int width) {
  const int indent = width_of(first);
  std::string result, start(first);
  for (const std::string& line : wrap(text, std::max(1, width - indent))) {
    std::string whole = start + line;
    whole.erase(whole.find_last_not_of(' ') + 1);
    result += whole + "\n";
    start.assign(static_cast<std::size_t>(indent), ' ');
  }
  return result;
}

std::string pad(std::string text, int width) {
  const int missing = width - width_of(text);
  if (missing > 0) text.append(static_cast<std::size_t>(missing), ' ');
  return text;
}

}  // namespace landdrill::report
