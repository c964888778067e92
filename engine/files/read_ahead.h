// The next sheets of a stream, worked on by all processors at once and handed out one by one, in their order.
//
//   ReadAhead ahead(files, [](StreamSheet& sheet) { ... });
//   ReadAhead::Place& place = ahead.next();   // place.sheet, place.troubles, place.more
//   ahead.ahead();      // from now on the function is called for several sheets at once
//
// Before, there is one sheet at a time. It pays when the function leaves little of the sheet.
#pragma once

#include <deque>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/files/in_order.h"
#include "engine/files/read_set.h"
#include "engine/files/read_sheets.h"
#include "engine/routine/sheet.h"
#include "tables/folder.h"

namespace landdrill {

// A sheet of a stream, and the set that it is tied to.
struct StreamSheet : Sheet {
  const ReadSet* set = nullptr;
  bool without_set = false;  // its value set cannot be used; said already
  // Its line of a batch, where that was worked out ahead of its turn; then its tree and its routine are gone.
  struct Ahead {
    std::string line, not_here;
  };
  std::optional<Ahead> ahead = {};

  bool ok() const { return Sheet::ok() && !without_set; }
};

class ReadAhead {
 public:
  // Given a sheet that is put together. Ahead it changes nothing but this sheet, and this thread
  // goes on meanwhile.
  using Work = std::function<void(StreamSheet&)>;

  ReadAhead(std::vector<std::string> files, Work work);

  struct Place {
    bool ended = false;             // no sheet here: the stream is at its end
    bool more = false;              // whether another routine follows
    std::vector<Trouble> troubles;  // met on the way to this sheet
    StreamSheet sheet;
    std::vector<NamedText> texts;  // as they were cut; then the sheet has them
  };
  // Lives until the next call.
  Place& next();
  void ahead();

 private:
  // Some sheets that follow each other: as many as are worth handing to another thread.
  struct Batch {
    std::deque<Place> places;  // what points into a place stays when another is added
    std::size_t size = 0;      // of them in use
  };
  std::optional<std::size_t> cut(Batch& batch);
  void cut(Place& place);
  void work_on(Place& place) const;

  SheetStream stream_;
  Work work_;
  bool ahead_ = false, ended_ = false;
  std::vector<Batch> batches_;
  Batch* now_ = nullptr;
  std::size_t at_ = 0;
  Place end_;
  InOrder in_order_;  // last, so that its threads end first
};

}  // namespace landdrill
