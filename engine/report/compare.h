// The options of elements side by side, as text, JSON or CSV: what each gives, why, and how far the harder
// one may slip.
//
//   2 Undertow, Hybrid
//                       as declared        base mark       to expect
//   option      mark  difficulty   points  chance  points   points  scatter
//   as written  7.25        4.00  29.0000    12 %  3.6250  25.9550     8.71
//
// Computes nothing. `face`: the account of the routine as it is, for title, values and cautions.
#pragma once

#include <string>
#include <vector>

#include "engine/choosing/compare.h"
#include "engine/report/face.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct ComparedElement {
  Comparison comparison;      // without obstacles
  std::vector<Step> stories;  // for each option, how its line of a score comes about; for --full
};
// The names of options in all reports of choosing: "as written", "safer".
std::string option_name(const Element& element, std::size_t option);

std::string comparison_report(const Routine& routine, const Face& face,
                              const std::vector<ComparedElement>& elements, Format format,
                              const TextWish& wish);

// The parts of it: compare.cpp, compare_parts.cpp, compare_rows.cpp.
std::string parts_section(const Routine& routine, const ComparedElement& compared, const TextWish& wish);
std::string comparison_csv(const Routine& routine, const std::vector<ComparedElement>& elements);
std::string comparison_json(const Routine& routine, const Face& face,
                            const std::vector<ComparedElement>& elements);

}  // namespace landdrill::report
