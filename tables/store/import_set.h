// Puts a whole set into the season file, or another in its place.
//
//   import_into(db, *read_folder("kingfisher-2026"), "first import", false)   // true: it was written
//
// Runs inside the caller's transaction and throws Refused.
#pragma once

#include <string_view>

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_tables.h"

namespace landdrill::store {

// Refused when the folder that it would be exported to cannot have this name.
void refuse_bad_name(const std::string& name);
// Refused, with the loader's messages after `why`, when the set cannot be used.
void refuse_unless_loads(const TableFiles& files, const std::string& what, const std::string& why);

// False when the same bytes are there already. Other bytes are refused unless `replace`.
bool import_into(Database& db, const TableFiles& files, std::string_view why, bool replace);
// Takes the tables out and puts these files in.
void replace_tables(Database& db, SetId set, const std::vector<TableFile>& files);

}  // namespace landdrill::store
