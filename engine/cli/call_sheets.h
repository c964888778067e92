// The sheets that a call names, one after the other. Troubles and value sets that cannot be used are printed as they
// are met.
//
//   CallSheets sheets(call);
//   while (sheets.reader().next()) ...
//   return worse(worst, sheets.worst());
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {

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
