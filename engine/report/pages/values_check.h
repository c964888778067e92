// What is wrong with a value set, and how many of its values are still to fill in.
//
//   values_check_page("my-2026", load(files))     // my-2026: can be used, with 1 warning; 3 values still to fill in
#pragma once

#include <string_view>

#include "engine/report/page.h"
#include "tables/load.h"

namespace landdrill::report {

Page values_check_page(std::string_view set, const Loaded& loaded);

}  // namespace landdrill::report
