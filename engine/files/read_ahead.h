// The next sheets of a stream, worked on by all processors at once and handed out one by one, in their order.
//
//   ReadAhead ahead(files, [](StreamSheet& sheet) { ... });
//   ReadAhead::Place& place = ahead.next();   // place.sheet, place.troubles, place.more
//   ahead.ahead();      // from now on the function is called for several sheets at once
//
// Before, there is one sheet at a time. It pays when the function leaves little of the sheet.
#pragma once

#include <condition_variable>
#include <deque>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <type_traits>
#include <vector>

#include "engine/files/read_sheets.h"
#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "tables/folder.h"

namespace landdrill {

// Work on one thing after another by all processors at once, handed out in the order of the things.
//
//   InOrder order([&](std::size_t slot) { return cut(places[slot]); },  // here: its bytes, none at the end
//                 [&](std::size_t slot) { work_on(places[slot]); });    // several slots at once
//   while (const auto slot = order.next()) print(places[*slot]);        // here again
//
// A thing lives in one of `slots()` slots until the next one is asked for, and few bytes are taken ahead, so
// a stream of any length needs little memory. This thread works too while it would wait, and as long as there
// is one thing only, no other is started.

class InOrder {
 public:
  using Fill = std::function<std::optional<std::size_t>(std::size_t slot)>;
  using Work = std::function<void(std::size_t slot)>;

  // `work` changes nothing but its slot, and nothing that it reads changes meanwhile.
  InOrder(Fill fill, Work work);
  // Waits for what is being worked on.
  ~InOrder();
  InOrder(const InOrder&) = delete;
  InOrder& operator=(const InOrder&) = delete;

  static std::size_t slots();
  // From now on slots are filled and worked on before they are asked for.
  void ahead() { ahead_ = true; }
  // Empty at the end. What `work` throws is thrown here, in its turn.
  std::optional<std::size_t> next();

 private:
  struct Slot {
    std::size_t bytes = 0;
    bool done = false;
    std::exception_ptr thrown;
  };
  bool may_fill() const;
  void fill();
  void start_others();
  void help();
  void work_on_next(std::unique_lock<std::mutex>& lock);

  const Fill fill_;
  const Work work_;
  bool ahead_ = false, ended_ = false, handed_out_ = false;
  std::size_t bytes_ = 0;  // in all slots

  std::mutex mutex_;
  std::condition_variable filled_one_, done_one_;
  // All that follows is behind the mutex. Things are counted from the first of all; thing i is in slot
  // i % slots(). Those before `next_` are gone, those before `taken_` are worked on or done, those before
  // `filled_` are there.
  std::size_t next_ = 0, taken_ = 0, filled_ = 0;
  std::vector<Slot> slots_;
  bool stop_ = false;

  std::vector<std::thread> others_;
};

// `make(i)` of 0 ... count - 1 by all processors, and `take` of what it made here, in order.
template <class Make, class Take>
void make_in_order(std::size_t count, Make make, Take take) {
  struct Slot {
    std::size_t which = 0;
    std::optional<std::invoke_result_t<Make, std::size_t>> made;
  };
  std::vector<Slot> slots(InOrder::slots());
  std::size_t begun = 0;
  const auto begin = [&](std::size_t slot) {
    slots[slot].which = begun;
    return begun++ < count ? std::optional<std::size_t>(0) : std::nullopt;
  };
  InOrder order(begin, [&](std::size_t slot) { slots[slot].made = make(slots[slot].which); });
  order.ahead();
  while (const auto slot = order.next()) take(std::move(*slots[*slot].made));
}

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
