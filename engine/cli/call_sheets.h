// What a call names: value sets, from folders or from the season file, each read once; and sheets, one after the other.
// Troubles and value sets that cannot be used are printed as they are met.
//
//   Values values(call);
//   auto set = values.of_operand("kingfisher-2026");   // (*set)->loaded.set
//
//   CallSheets sheets(call);
//   while (sheets.reader().next()) ...
//   return worse(worst, sheets.worst());
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/season/season_sets.h"
#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill::cli {

class Values {
 public:
  // Heeds --values and --season as far as the command has them.
  explicit Values(const Call& call);

  // Where those of sheets come from.
  ValueSets& of_sheets();
  SetFolders& folders() { return folders_; }
  // The set that an operand names: a folder when it has a `/` in it, else a name.
  Result<const ReadSet*> of_operand(const std::string& operand);

  bool in_season() const { return !season_.file().empty(); }
  // Only with --season.
  const std::string& season_file() const { return season_.file(); }
  Result<Season*> season(Season::Mode mode) { return season_.season(mode); }

 private:
  SetFolders folders_;
  SeasonSets season_;
};

// What reports say of where the set is from.
report::ValuesPlace values_place(const ReadSet& set);
// A report with that as its last words.
report::Page with_place(report::Page page, const ReadSet& set);

// Prints the mistakes of a set that cannot be used; Exit::errors.
Exit refuse_set(Call& call, const ReadSet& set);

class CallSheets {
 public:
  // Heeds the operands FILE..., --set, --values and --season.
  explicit CallSheets(Call& call);
  CallSheets(Call& call, std::vector<std::string> files);
  CallSheets(const CallSheets&) = delete;
  CallSheets& operator=(const CallSheets&) = delete;

  SheetReader& reader() { return reader_; }
  const SheetReader& reader() const { return reader_; }
  // The worst that was met so far in the files and the sets.
  Exit worst() const { return worst_; }

 private:
  Values values_;
  Exit worst_ = Exit::ok;
  SheetReader reader_;
};

// Names every file that cannot be read; false when there is one: then nothing should be done.
bool all_readable(Call& call, const std::vector<std::string>& files);

// `tell` of every one of `sheets`, those that the call names, one after the other, as long as there is somebody to
// tell; messages are bounded over all of them. The worst of it all. What `tell` keeps of a routine points into the
// value sets of `sheets`.
Exit with_sheets(Call& call, CallSheets& sheets,
                 const std::function<Exit(SheetReader&, Messages&)>& tell);

// The single routine of one file, for commands that look into one; or nothing, when why not was said already.
//
//   OneRoutine one(call, "duet.sheet");
//   if (!one) return one.exit();
//   one.routine()
class OneRoutine {
 public:
  // Heeds what CallSheets heeds.
  OneRoutine(Call& call, const std::string& file);

  explicit operator bool() const { return exit_ == Exit::ok; }
  Exit exit() const { return exit_; }
  const Diagnostics& messages() const { return sheets_.reader().sheet().messages(); }
  const Routine& routine() const { return *sheets_.reader().sheet().routine(); }
  const ReadSet& values() const { return *sheets_.reader().sheet().set; }

 private:
  Exit read(Call& call, const std::string& file);

  CallSheets sheets_;
  Exit exit_;
};

}  // namespace landdrill::cli
