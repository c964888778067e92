// A file rewritten whole or not at all: a new file beside it, forced to disk, then renamed onto it.
#pragma once

#include <string>
#include <string_view>

#include "tables/folder.h"

namespace landdrill {

// Keeps the permissions of `file`; follows a symbolic link to the file it names.
Result<void> replace_file(const std::string& file, std::string_view text);

}  // namespace landdrill
