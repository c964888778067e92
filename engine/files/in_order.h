// Work on one thing after another by all processors at once, handed out in the order of the things.
//
//   InOrder<Batch> order([&](Batch& batch) { return cut(batch); },   // here: its bytes, none at the end
//                        [&](Batch& batch) { work_on(batch); });     // several batches at once
//   order.ahead();
//   while (const Batch* batch = order.next()) print(*batch);         // here again
//
// A thing lives until the next one is asked for, and few bytes are taken ahead, so a stream of any length needs
// little memory. As long as there is one thing only, no other thread is started.
#pragma once

#include <algorithm>
#include <cstddef>
#include <deque>
#include <functional>
#include <future>
#include <optional>
#include <thread>
#include <utility>

namespace landdrill {

template <class Thing>
class InOrder {
 public:
  using Fill = std::function<std::optional<std::size_t>(Thing&)>;
  using Work = std::function<void(Thing&)>;

  // `work` changes nothing but its thing, and nothing that it reads changes meanwhile.
  // `most_bytes`: of things that are not handed out yet none is filled beyond these.
  InOrder(Fill fill, Work work, std::size_t most_bytes = 512 * 1024)
      : fill_(std::move(fill)), work_(std::move(work)), most_bytes_(most_bytes) {}

  // From now on things are filled and worked on before they are asked for.
  void ahead() { ahead_ = true; }

  // nullptr at the end. What `work` throws is thrown here, in its turn.
  Thing* next() {
    if (std::exchange(handed_out_, false)) {
      bytes_ -= slots_.front().bytes;
      slots_.pop_front();
    }
    while (may_fill()) fill();
    if (slots_.empty()) return nullptr;
    handed_out_ = true;
    slots_.front().done.get();
    return &slots_.front().thing;
  }

 private:
  struct Slot {
    Thing thing;
    std::size_t bytes = 0;
    std::future<void> done;  // waits at its end when it has a thread
  };

  // One more than there are processors, for while this thread prints a thing the others are worked on.
  static std::size_t most_slots() {
    static const unsigned processors = std::thread::hardware_concurrency();
    return processors > 1 ? processors + 1 : 1;
  }

  bool may_fill() const {
    if (ended_ || slots_.empty()) return !ended_;
    return ahead_ && slots_.size() < most_slots() && bytes_ < most_bytes_;
  }

  // The one that is asked for next has nothing to wait for: it is worked on here, as is everything where no thread
  // can be had.
  void fill() {
    const auto policy = slots_.empty() ? std::launch::deferred : std::launch::async | std::launch::deferred;
    Slot& slot = slots_.emplace_back();
    const std::optional<std::size_t> bytes = fill_(slot.thing);
    ended_ = !bytes;
    if (ended_) return slots_.pop_back();
    bytes_ += slot.bytes = *bytes;
    slot.done = std::async(policy, [this, &slot] { work_(slot.thing); });
  }

  const Fill fill_;
  const Work work_;
  const std::size_t most_bytes_;
  bool ahead_ = false, ended_ = false, handed_out_ = false;
  std::size_t bytes_ = 0;   // in all slots
  std::deque<Slot> slots_;  // last, so that its threads end first
};

}  // namespace landdrill
