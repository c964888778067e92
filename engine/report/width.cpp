#include "engine/report/width.h"

#include <utf8proc.h>

#include <algorithm>

namespace landdrill::report {
namespace {

struct Character {
  utf8proc_int32_t code = 0;
  std::size_t length = 1;
  bool good = false;
};

Character first_of(std::string_view text) {
  Character c;
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  const auto length = utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size()), &c.code);
  if (length < 1) return {};
  return {c.code, static_cast<std::size_t>(length), true};
}

int room_of(const Character& c) {
  constexpr utf8proc_int32_t first_accent = 0x300;
  return c.code < first_accent ? 1 : utf8proc_charwidth(c.code);
}

// What is drawn as one: a letter with its accents, a syllable, a flag, a family of joined emoji. Terminals give
// none of them more than two columns.
struct Letter {
  std::size_t length = 0;
  int width = 0;
};

Letter first_letter(std::string_view text) {
  Character last = first_of(text);
  Letter letter{last.length, room_of(last)};
  for (utf8proc_int32_t state = 0; last.good && letter.length < text.size();) {
    const Character next = first_of(text.substr(letter.length));
    if (!next.good || utf8proc_grapheme_break_stateful(last.code, next.code, &state)) break;
    letter.length += next.length;
    letter.width = std::min(2, letter.width + room_of(next));
    last = next;
  }
  return letter;
}

// It steers a terminal, turns the direction of what follows, or is the mark of the order of bytes.
bool is_unseen(utf8proc_int32_t code) {
  constexpr utf8proc_int32_t byte_order = 0xFEFF;
  const utf8proc_property_t& known = *utf8proc_get_property(code);
  const bool steers = known.category == UTF8PROC_CATEGORY_CC || known.category == UTF8PROC_CATEGORY_ZL ||
                      known.category == UTF8PROC_CATEGORY_ZP;
  const bool turns = known.category == UTF8PROC_CATEGORY_CF && known.ignorable != 0 &&
                     known.bidi_class != UTF8PROC_BIDI_CLASS_BN;
  return steers || turns || code == byte_order;
}

std::string spelled_out(utf8proc_int32_t code, int digits, std::string_view start) {
  std::string result(start);
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
    result += "0123456789abcdef"[(code >> shift) & 15];
  return result;
}

void each_character(std::string_view text, auto use) {
  while (!text.empty()) {
    const Character c = first_of(text);
    use(c, text.substr(0, c.length));
    text.remove_prefix(c.length);
  }
}

// How many bytes of `text` fit into `width` columns.
std::size_t fitting(std::string_view text, int width) {
  std::size_t at = 0;
  while (at < text.size()) {
    const Letter letter = first_letter(text.substr(at));
    width -= letter.width;
    if (width < 0) break;
    at += letter.length;
  }
  return at;
}

}  // namespace

int width_of(std::string_view text) {
  const auto beyond_ascii = [](char c) { return static_cast<unsigned char>(c) >= 0x80; };
  auto at = static_cast<std::size_t>(std::find_if(text.begin(), text.end(), beyond_ascii) - text.begin());
  if (at == text.size()) return static_cast<int>(at);
  at -= std::min<std::size_t>(at, 1);  // what follows may go with the last of these
  int width = static_cast<int>(at);
  while (at < text.size()) {
    const Letter letter = first_letter(text.substr(at));
    width += letter.width;
    at += letter.length;
  }
  return width;
}

std::string plain(std::string_view text) {
  std::string result;
  each_character(text, [&](const Character& c, std::string_view bytes) {
    const bool blank = bytes == "\t" || bytes == "\n" || bytes == "\r";
    if (blank) {
      result += ' ';
    } else if (!c.good || c.code < 0x20 || c.code == 0x7F) {
      result += spelled_out(static_cast<unsigned char>(bytes.front()), 2, "\\x");
    } else {
      result += is_unseen(c.code) ? spelled_out(c.code, 4, "\\u") : std::string(bytes);
    }
  });
  return result;
}

std::string valid_text(std::string_view text) {
  std::string result;
  each_character(text, [&](const Character& c, std::string_view bytes) {
    result += c.good ? std::string(bytes) : spelled_out(static_cast<unsigned char>(bytes.front()), 2, "\\x");
  });
  return result;
}

std::string cut(std::string_view text, int width) {
  if (width_of(text) <= width) return std::string(text);
  return std::string(text.substr(0, fitting(text, width - 1))) + "…";
}

std::vector<std::string> wrap(std::string_view text, int width) {
  std::vector<std::string> lines;
  while (width_of(text) > width) {
    // At least one letter a line, or a wide one in a column of one would never end.
    const std::size_t most = std::max(fitting(text, width), first_letter(text).length);
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
