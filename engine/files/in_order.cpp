#include "engine/files/in_order.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace landdrill {
namespace {

constexpr std::size_t most_bytes = 512 * 1024;

std::size_t processors() {
  static const std::size_t known = std::max(1u, std::thread::hardware_concurrency());
  return known;
}

}  // namespace

std::size_t InOrder::slots() {
  constexpr std::size_t for_each_processor = 4;  // so that none runs out of work while this thread prints
  return for_each_processor * processors();
}

InOrder::InOrder(Fill fill, Work work) : fill_(std::move(fill)), work_(std::move(work)), slots_(slots()) {}

InOrder::~InOrder() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  filled_one_.notify_all();
  for (std::thread& other : others_) other.join();
}

std::optional<std::size_t> InOrder::next() {
  if (std::exchange(handed_out_, false)) bytes_ -= slots_[next_++ % slots_.size()].bytes;
  fill();
  std::unique_lock lock(mutex_);
  if (next_ == filled_) return std::nullopt;
  const std::size_t place = next_ % slots_.size();
  while (!slots_[place].done) {
    if (taken_ < filled_) {
      work_on_next(lock);
    } else {
      done_one_.wait(lock);
    }
  }
  handed_out_ = true;
  if (slots_[place].thrown) std::rethrow_exception(std::exchange(slots_[place].thrown, nullptr));
  return place;
}

// Only this thread changes `next_` and `filled_`, so it may read them without the mutex.
bool InOrder::may_fill() const {
  if (ended_) return false;
  if (filled_ == next_) return true;
  return ahead_ && filled_ - next_ < slots_.size() && bytes_ < most_bytes;
}

void InOrder::fill() {
  while (may_fill()) {
    const std::size_t place = filled_ % slots_.size();
    const std::optional<std::size_t> bytes = fill_(place);
    ended_ = !bytes;
    if (ended_) return;
    bytes_ += *bytes;
    {
      const std::lock_guard lock(mutex_);
      slots_[place] = {*bytes, false, nullptr};
      ++filled_;
    }
    filled_one_.notify_one();
    if (others_.empty() && filled_ - next_ > 1) start_others();
  }
}

void InOrder::start_others() {
  try {
    while (others_.size() + 1 < processors()) others_.emplace_back([this] { help(); });
  } catch (const std::system_error&) {
    // Without another thread this one does it all.
  }
}

void InOrder::help() {
  std::unique_lock lock(mutex_);
  while (true) {
    filled_one_.wait(lock, [this] { return stop_ || taken_ < filled_; });
    if (stop_) return;
    work_on_next(lock);
  }
}

void InOrder::work_on_next(std::unique_lock<std::mutex>& lock) {
  const std::size_t place = taken_++ % slots_.size();
  lock.unlock();
  std::exception_ptr thrown;
  try {
    work_(place);
  } catch (...) {
    thrown = std::current_exception();
  }
  lock.lock();
  slots_[place].done = true;
  slots_[place].thrown = std::move(thrown);
  done_one_.notify_one();
}

}  // namespace landdrill
