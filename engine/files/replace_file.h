// A file rewritten whole or not at all: a new file beside it, forced to disk, then renamed onto it.
#pragma once

#include <string>
#include <string_view>

#include "engine/files/value_sets.h"
#include "tables/folder.h"

namespace landdrill {

// Keeps the permissions of `file`; follows a symbolic link to the file it names.
Result<void> replace_file(const std::string& file, std::string_view text);

// Where a coach's own sets may be written: never over those that come with the program.

// Empty when the set in `folder` may be changed; else why not, and what to do.
std::optional<Trouble> no_own_folder(const ReadSet& set);
// Empty when a new set may be written into `folder`: it is not there, or empty.
std::optional<Trouble> not_new(const std::filesystem::path& folder);

}  // namespace landdrill
