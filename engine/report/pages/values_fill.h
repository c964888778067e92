// What a list of values filled in, and what is missing still.
//
//   values_fill_page(fill(files, list, wish))      // "Filled in (2): solo-1, solo-2" ...
#pragma once

#include "engine/report/page.h"
#include "tables/fill.h"

namespace landdrill::report {

Page values_fill_page(const Filled& outcome);

}  // namespace landdrill::report
