// Pieces of reports that are no pages yet. Each is whole lines, or empty when there is nothing to say.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/render_text.h"

namespace landdrill::report {

// An empty line and the heading of a section.
std::string heading(std::string_view words, const TextWish& wish);
// Each sentence behind a "-", made plain.
std::string bullets(const std::vector<std::string>& sentences, const TextWish& wish);
// "+1.25" for "1.25": how a difference is written.
std::string with_sign(std::string_view difference);
// "1 judge", "2 judges".
std::string counted(std::size_t count, std::string_view one, std::string_view many);

}  // namespace landdrill::report
