// How wide a text is on the page, and texts made to fit: cut, wrapped, padded.
//
//   width_of("Élan 水")          // 7: an accent takes no room of its own, a wide character takes two columns
//   cut("Long way down", 8)      // "Long wa…"
//   plain("a\tb\x1b[1m")         // "a b\x1b[1m" with the control byte spelled out: no title can steer a terminal
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace landdrill::report {

// Columns that `text` (made plain) takes in a terminal.
int width_of(std::string_view text);
// Blanks for tabs and line ends; control bytes, bad UTF-8 and marks that turn the direction of writing
// spelled out.
std::string plain(std::string_view text);
// `text` with bytes that are no UTF-8 spelled out, and nothing else changed.
std::string valid_text(std::string_view text);
// `text`, or its beginning and an ellipsis, in at most `width` (>= 1) columns.
std::string cut(std::string_view text, int width);
// Lines of at most `width` (>= 1) columns, broken at blanks; a longer word is broken inside. Never empty.
std::vector<std::string> wrap(std::string_view text, int width);
// Lines of at most `width` columns, each ending in a newline: the first behind `first`, the others behind as
// many blanks.
std::string paragraph(std::string_view first, std::string_view text, int width);
// `text` with blanks up to `width` columns.
std::string pad(std::string text, int width);

}  // namespace landdrill::report
