// Value sets on disk: finding, reading and writing the CSV folders.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "tables/load.h"

namespace landdrill {

// What the world refuses: a file, a folder, a database. `what` names it, `why` is the reason, `hint` what to
// do.
struct Trouble {
  std::string what, why, hint;
};
std::string to_string(const Trouble& trouble);
template <class T>
using Result = tl::expected<T, Trouble>;

// Where a set called NAME is looked for, in this order; the first that is found counts.
enum class SetFrom {
  told,         // where the user told: a folder with tables, or one that holds NAME
  beside,       // beside the sheet: NAME/ or values/NAME/
  environment,  // in $LANDDRILL_VALUES, folders with `:` between them
  user,         // $XDG_DATA_HOME/landdrill/values, otherwise ~/.local/share/landdrill/values
  program,      // where the program's own sets are
};
struct SetPlace {
  std::string name;
  std::filesystem::path folder;
  SetFrom from = SetFrom::told;
  std::vector<std::filesystem::path> hidden = {};  // further ones of that name, which do not count
};

struct Search {
  std::vector<std::filesystem::path> told;    // --values, in order
  std::vector<std::filesystem::path> beside;  // folders of the sheets
};
struct SearchedFolder {
  SetFrom from;
  std::filesystem::path folder;
};
// The folders that are searched, each once, in order, existing or not.
std::vector<SearchedFolder> searched_folders(const Search& search);
// The one with the sets that come with the program, ../share/landdrill/values from its folder: nothing in it
// is to be changed.
std::filesystem::path shipped_place();
Result<SetPlace> find_set(std::string_view name, const Search& search);
std::vector<SetPlace> all_sets(const Search& search);

Result<TableFiles> read_folder(const std::filesystem::path& folder);
// Writes `file` whole or not at all: a new file beside it, forced to disk, then renamed onto it. Keeps its
// permissions; follows a symbolic link to the file it names.
Result<void> replace_file(const std::filesystem::path& file, std::string_view text);
// Replaces the files that differ.
Result<void> write_folder(const TableFiles& files, const std::filesystem::path& folder);

}  // namespace landdrill
