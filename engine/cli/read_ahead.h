// The next sheets of a stream, worked on by all processors at once and handed out one by one, in their order.
//
//   ReadAhead ahead(files, [](ReadSheet& sheet) { ... });
//   ReadAhead::Place& place = ahead.next();   // place.sheet, place.troubles, place.more
//   ahead.in_rounds();                        // from now on the function is called for several sheets at
//   once
//
// A round grows from one sheet up to a bound of sheets and of text: a call with a few sheets starts no
// thread, and a stream of any length needs no more memory than a round. It pays when the function leaves
// little of the sheet.
#pragma once

#include <deque>
#include <functional>
#include <string>
#include <vector>

#include "engine/cli/read_sheet.h"
#include "engine/cli/read_sheets.h"

namespace landdrill::cli {

class ReadAhead {
 public:
  // Given a sheet of which only the texts are known. In rounds it changes nothing but this sheet.
  using Work = std::function<void(ReadSheet&)>;

  ReadAhead(std::vector<std::string> files, Work work) : stream_(std::move(files)), work_(std::move(work)) {}

  struct Place {
    bool ended = false;             // no sheet here: the stream is at its end
    bool more = false;              // whether another routine follows
    std::vector<Trouble> troubles;  // met on the way to this sheet
    ReadSheet sheet;
    std::vector<Source> pieces;           // as they were cut
    std::vector<std::vector<char>> kept;  // their texts, once the stream has gone on
    void keep_texts();
  };
  // Lives until the next call.
  Place& next();
  void in_rounds() { in_rounds_ = true; }

 private:
  struct Round {
    std::deque<Place> places;  // what points into a place stays when another is added
    std::size_t size = 0;      // of them in use
    bool at_end() const { return size > 0 && places[size - 1].ended; }
  };
  void read_round();
  void cut(Round& round);
  void work_on(Place& place);

  SheetStream stream_;
  Work work_;
  Round now_, next_;  // while a round is worked on, the next one is cut already
  bool in_rounds_ = false;
  std::size_t at_ = 0, most_ = 1;
};

}  // namespace landdrill::cli
