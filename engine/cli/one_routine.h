// The single routine of one file, for commands that look into one; or nothing, when why not was said already.
//
//   OneRoutine one(call, "duet.sheet");
//   if (!one) return one.exit();
//   one.routine()
#pragma once

#include <string>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/files/read_set.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {

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
