// The sections of the text report, top to bottom. Each is whole lines, or empty when there is nothing to say.
#pragma once

#include <string>

#include "engine/report/text.h"

namespace landdrill::report {

std::string title_section(const Account& account, const TextWish& wish);
// The table of elements, impression, sync, penalties and total; where marks come from; the result as
// announced.
std::string score_section(const Account& account, const TextWish& wish);
// The table alone, and whether it says how many points are left on each line.
std::string score_tables(const Account& account, const TextWish& wish);
bool shows_left(const Account& account);
std::string bridge_section(const Account& account, const TextWish& wish);
std::string time_section(const Account& account, const TextWish& wish);
std::string objection_section(const Diagnostics& objections, const TextWish& wish);
std::string missing_section(const Account& account, const TextWish& wish);
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
// "2 Undertow", or "2 Hybrid" for an element without a title.
std::string name_of(const ElementLine& line);
// "Undertow, hybrid", or "hybrid" for an element without a title.
std::string title_and_kind(const ElementLine& line);

}  // namespace landdrill::report
