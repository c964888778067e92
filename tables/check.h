// What a value set promises that no single cell can show: names that exist, limits that can be met.
//
// Duplicate code; a formula that names an unknown family; least over most; a quota nobody can meet (more
// required than the event allows in all, or no part of that family); a panel that drops all its judges; a
// step that does not divide the scale; a fault without any size; an event without a panel; two element panels
// for one kind; a kind or event that is named but not there; invented rows without a source ...
#pragma once

#include <vector>

#include "grammar/diagnostics.h"
#include "tables/read_table.h"
#include "tables/value_set.h"

namespace landdrill {

// Adds what is wrong with `set` to `diagnostics`; `tables` are the texts it was read from, for places in
// messages.
void check(const ValueSet& set, const std::vector<ReadTable>& tables, Diagnostics& diagnostics);

}  // namespace landdrill
