// A page as text for people: what a coach reads in a terminal and pins on the wall. No line is wider than the
// wish, and nothing rests on colour alone.
#pragma once

#include <string>
#include <string_view>

#include "engine/report/page.h"
#include "engine/report/text_wish.h"  // IWYU pragma: export

namespace landdrill::report {

inline constexpr std::string_view bullet = "  - ";  // before one of several sentences

std::string render_text(const Page& page, const TextWish& wish);

}  // namespace landdrill::report
