// The single routine of one file, for commands that look into one; or nothing, when why not was said already.
//
//   OneRoutine one(call, "duet.sheet");
//   if (!one) return one.exit();
//   one.routine()
#pragma once

#include <string>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/sheet_reader.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {

class OneRoutine {
 public:
  // Heeds what SheetReader heeds.
  OneRoutine(Call& call, const std::string& file);

  explicit operator bool() const { return exit_ == Exit::ok; }
  Exit exit() const { return exit_; }
  const Diagnostics& messages() const { return reader_.sheet().messages(); }
  const Routine& routine() const { return *reader_.sheet().routine(); }
  const ReadSet& values() const { return *reader_.sheet().set; }

 private:
  Exit read(Call& call, const std::string& file);

  SheetReader reader_;
  Exit exit_;
};

}  // namespace landdrill::cli
