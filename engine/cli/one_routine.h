// The single routine of one file, for commands that look into one; or nothing, when why not was said already.
//
//   OneRoutine one(call, "duet.sheet");
//   if (!one) return one.exit();
//   one.routine()
#pragma once

#include <string>

#include "engine/cli/sheet_reader.h"
#include "engine/report/pages/price_wish.h"

namespace landdrill::cli {

class OneRoutine {
 public:
  // Heeds what SheetReader and price_wish heed.
  OneRoutine(Call& call, const std::string& file);

  explicit operator bool() const { return ready_; }
  Exit exit() const { return exit_; }
  const ReadSheet& sheet() const { return reader_.sheet(); }
  const Routine& routine() const { return *sheet().routine(); }
  const Wish& wish() const { return price_.wish; }

 private:
  Exit read(Call& call, const std::string& file);

  SheetReader reader_;
  report::PriceWish price_;
  Exit exit_;
  bool ready_ = false;
};

}  // namespace landdrill::cli
