// A sheet whose routine was changed so that runs or panels below it fit it no longer, without those of them
// that the book has already in these very words.
//
//   const auto rest = fitting_rest(sheet, placing);
//   (*rest)->sheet.ok()       // nothing else is wrong with it
//   (*rest)->left[0].of       // the version that the first one that was left out belongs to
#pragma once

#include "engine/files/read_ahead.h"
#include "engine/season/placing.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

struct FittingRest {
  StreamSheet sheet;  // its lines stand where they stood
  std::vector<Block> left;
};

// Given a sheet with errors; empty when nothing of it can be left out.
Result<std::optional<FittingRest>> fitting_rest(const StreamSheet& sheet, Placing& placing);

}  // namespace landdrill
