// How a page is wanted as text.
//
//   TextWish{.colour = true, .width = 100}
#pragma once

namespace landdrill::report {

struct TextWish {
  bool colour = false;
  int width = 80;     // columns of the page; below 60 is taken as 60
  bool full = false;  // everything: the whole build-up, and every invented or remembered value by name
};

}  // namespace landdrill::report
