// A build-up as an indented tree of lines, each with its rule and its rows, and below it where these are from.
#pragma once

#include <string>

#include "engine/report/page.h"
#include "engine/report/text_wish.h"

namespace landdrill::report {

std::string tree_text(const Tree& tree, const TextWish& wish);

}  // namespace landdrill::report
