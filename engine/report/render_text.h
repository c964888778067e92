// A page as text for people: what a coach reads in a terminal and pins on the wall. No line is wider than the
// wish, and nothing rests on colour alone.
#pragma once

#include <string>
#include <string_view>

#include "engine/report/page.h"

namespace landdrill::report {

// How a page is wanted as text.
//
//   TextWish{.colour = true, .width = 100}

struct TextWish {
  bool colour = false;
  int width = 80;     // columns of the page; below 60 is taken as 60
  bool full = false;  // everything: the whole build-up, and every invented or remembered value by name
};

inline constexpr std::string_view bullet = "  - ";  // before one of several sentences

std::string render_text(const Page& page, const TextWish& wish);

// A build-up as an indented tree of lines, each with its rule and its rows, and below it where these are from.

std::string tree_text(const Tree& tree, const TextWish& wish);

}  // namespace landdrill::report
