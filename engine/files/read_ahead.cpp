#include "engine/files/read_ahead.h"

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

namespace {

constexpr std::size_t sheets_worth_a_thread = 32 * 1024;  // bytes of text

std::size_t length_of(const std::vector<NamedText>& texts) {
  std::size_t length = 0;
  for (const NamedText& piece : texts) length += piece.text.size();
  return length;
}

}  // namespace

ReadAhead::ReadAhead(std::vector<std::string> files, Work work)
    : stream_(std::move(files)),
      work_(std::move(work)),
      batches_(InOrder::slots()),
      in_order_([this](std::size_t slot) { return cut(batches_[slot]); },
                [this](std::size_t slot) {
                  for (std::size_t i = 0; i < batches_[slot].size; ++i) work_on(batches_[slot].places[i]);
                }) {
  end_.ended = true;
}

void ReadAhead::ahead() {
  ahead_ = true;
  in_order_.ahead();
}

ReadAhead::Place& ReadAhead::next() {
  while (now_ == nullptr || at_ == now_->size) {
    const auto slot = in_order_.next();
    if (!slot) return end_;
    now_ = &batches_[*slot];
    at_ = 0;
  }
  return now_->places[at_++];
}

std::optional<std::size_t> ReadAhead::cut(Batch& batch) {
  std::size_t text = 0;
  batch.size = 0;
  while (!ended_ && (batch.size == 0 || (ahead_ && text < sheets_worth_a_thread))) {
    if (batch.size == batch.places.size()) batch.places.emplace_back();
    Place& place = batch.places[batch.size++];
    cut(place);
    text += length_of(place.texts);
  }
  return batch.size > 0 ? std::optional(text) : std::nullopt;
}

void ReadAhead::cut(Place& place) {
  auto texts = stream_.next();
  ended_ = place.ended = !texts;
  place.more = stream_.more();
  place.troubles = stream_.take_troubles();
  place.texts = texts ? std::move(*texts) : std::vector<NamedText>();
}

// The tree of the sheet before goes here too, so that taking it apart is shared as well.
void ReadAhead::work_on(Place& place) const {
  if (place.ended) return;
  place.sheet = {read_sheet(std::move(place.texts))};
  work_(place.sheet);
}

}  // namespace landdrill
