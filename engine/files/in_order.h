// Work on one thing after another by all processors at once, handed out in the order of the things.
//
//   InOrder order([&](std::size_t slot) { return cut(places[slot]); },  // here: its bytes, none at the end
//                 [&](std::size_t slot) { work_on(places[slot]); });    // several slots at once
//   while (const auto slot = order.next()) print(places[*slot]);        // here again
//
// A thing lives in one of `slots()` slots until the next one is asked for, and few bytes are taken ahead, so
// a stream of any length needs little memory. This thread works too while it would wait, and as long as there
// is one thing only, no other is started.
#pragma once

#include <condition_variable>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <type_traits>
#include <vector>

namespace landdrill {

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

}  // namespace landdrill
