// Where a coach's own sets may be written: never over those that come with the program.
#pragma once

#include "engine/files/read_set.h"
#include "tables/folder.h"

namespace landdrill {

// Empty when the set in `folder` may be changed; else why not, and what to do.
std::optional<Trouble> no_own_folder(const ReadSet& set);
// Empty when a new set may be written into `folder`: it is not there, or empty.
std::optional<Trouble> not_new(const std::filesystem::path& folder);

}  // namespace landdrill
