// A page in the format that is asked for.
//
//   render(page, Format::csv, {})
#pragma once

#include <string>

#include "engine/report/page.h"
#include "engine/report/render_text.h"

namespace landdrill::report {

enum class Format { text, csv, json };
// `wish` is for text alone.
std::string render(const Page& page, Format format, const TextWish& wish);

}  // namespace landdrill::report
