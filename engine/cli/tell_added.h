// What was added to the season book, as the commands that add tell it.
#pragma once

#include "engine/cli/call.h"
#include "tables/store/book.h"

namespace landdrill::cli {

// A table of the blocks, unless it would be very long, and how many were added.
void tell_added(Call& call, const std::vector<Block>& blocks, const std::vector<AddedBlock>& added);

// "3" -> 3; 0 when it is no number that a version can have.
int version_number(std::string_view text);

}  // namespace landdrill::cli
