// Sections of reports that are no pages yet. Each is whole lines, or empty when there is nothing to say.
#pragma once

#include <string>

#include "engine/report/text.h"
#include "engine/score/account.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

std::string title_section(const Account& account, const TextWish& wish);
std::string objection_section(const Diagnostics& objections, const TextWish& wish);
std::string caution_section(const Account& account, const TextWish& wish);
// Which of the values used are invented or remembered.
std::string values_section(const Account& account, const TextWish& wish);
std::string build_up_section(const Account& account, const TextWish& wish);

// An empty line and the heading of a section.
std::string heading(std::string_view words, const TextWish& wish);
// Each sentence behind a "-", made plain.
std::string bullets(const std::vector<std::string>& sentences, const TextWish& wish);
// "+1.25" for "1.25": how a difference is written.
std::string with_sign(std::string_view difference);
// "1 judge", "2 judges".
std::string counted(std::size_t count, std::string_view one, std::string_view many);
// "2 Undertow", or "2 Hybrid" for an element without a title.
std::string name_of(const ElementLine& line);
// "Undertow, hybrid", or "hybrid" for an element without a title.
std::string title_and_kind(const ElementLine& line);

}  // namespace landdrill::report
