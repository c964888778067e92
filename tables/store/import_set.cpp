#include "tables/store/import_set.h"

#include <fmt/format.h>

#include <algorithm>

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/history.h"
#include "tables/store/refusal.h"

namespace landdrill::store {

void refuse_unless_loads(const TableFiles& files, const std::string& what, const std::string& why) {
  const Loaded loaded = load(files);
  if (loaded.set) return;
  std::string messages = to_string(loaded.diagnostics);
  while (messages.ends_with('\n')) messages.pop_back();
  throw Refused({what, fmt::format("{}:\n{}", why, messages), "nothing was changed"});
}

// A set is exported to a folder of its name.
void refuse_bad_name(const std::string& name) {
  const bool odd =
      std::any_of(name.begin(), name.end(), [](unsigned char c) { return c < ' ' || c == '/' || c == '\\'; });
  if (!name.empty() && name.front() != '.' && !odd) return;
  throw Refused(
      {fmt::format("\"{}\"", name), "a value set cannot be called that", "a name such as kingfisher-2026"});
}

namespace {

void put_set(Database& db, const TableFiles& files, std::string_view why) {
  const SetId set = add_set(db, files.name);
  record_import(db, set, why);
  put_tables(db, set, tables_of(files.files));
}

}  // namespace

bool import_into(Database& db, const TableFiles& files, std::string_view why, bool replace) {
  const std::optional<SetId> set = find_set_id(db, files.name);
  if (!set) {
    put_set(db, files, why);
    return true;
  }
  const std::vector<TableFile> in_force = texts_of(kept_tables(db, *set));
  if (same_files(in_force, files.files)) return false;
  if (!replace) {
    throw Refused(
        {db.file(), fmt::format("it holds another value set \"{}\" already", files.name),
         fmt::format("replace it (that can be undone; {} edits stand in it), or import under another name",
                     standing_edits(db, *set))});
  }
  record_replacement(db, *set, in_force, why);
  replace_tables(db, *set, files.files);
  return true;
}

void replace_tables(Database& db, SetId set, const std::vector<TableFile>& files) {
  drop_tables(db, set);
  put_tables(db, set, tables_of(files));
}

}  // namespace landdrill::store
