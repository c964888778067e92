#include "engine/cli/read_ahead.h"

#include <algorithm>
#include <atomic>
#include <future>
#include <system_error>
#include <thread>

namespace landdrill::cli {
namespace {

constexpr std::size_t most_sheets = 256;
constexpr std::size_t most_text = 512 * 1024;
constexpr std::size_t sheets_worth_a_thread = 8;

// Calls `each` with 0 ... count - 1, several at once, and meanwhile `first` in this thread; what one of them
// throws is thrown here.
template <class First, class Each>
void for_all(std::size_t count, First first, Each each) {
  std::atomic<std::size_t> next = 0;
  const auto take = [&] {
    for (std::size_t i = next++; i < count; i = next++) each(i);
  };
  const std::size_t threads =
      std::min<std::size_t>(std::thread::hardware_concurrency(), count / sheets_worth_a_thread);
  std::vector<std::future<void>> others;
  try {
    while (others.size() + 1 < threads) others.push_back(std::async(std::launch::async, take));
  } catch (const std::system_error&) {
    // Without another thread this one does it all.
  }
  first();
  take();
  for (std::future<void>& other : others) other.get();
}

std::size_t length_of(const std::vector<Source>& pieces) {
  std::size_t length = 0;
  for (const Source& piece : pieces) length += piece.text.size();
  return length;
}

}  // namespace

// The stream takes its text back when it goes on.
void ReadAhead::Place::keep_texts() {
  if (kept.size() < pieces.size()) kept.resize(pieces.size());
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    kept[i].assign(pieces[i].text.begin(), pieces[i].text.end());
    pieces[i].text = {kept[i].data(), kept[i].size()};
  }
}

ReadAhead::Place& ReadAhead::next() {
  if (at_ == now_.size) read_round();
  return now_.places[at_++];
}

// In rounds, the texts of this round are kept, so the stream may go on while they are worked on.
void ReadAhead::read_round() {
  std::swap(now_, next_);
  next_.size = 0;
  if (now_.size == 0) cut(now_);
  at_ = 0;
  const auto cut_next = [this] {
    if (in_rounds_ && !now_.at_end()) cut(next_);
  };
  for_all(now_.size, cut_next, [this](std::size_t i) { work_on(now_.places[i]); });
}

void ReadAhead::cut(Round& round) {
  if (in_rounds_) most_ = std::min(2 * most_, most_sheets);
  std::size_t text = 0;
  for (round.size = 0; round.size < most_ && text < most_text;) {
    if (round.size == round.places.size()) round.places.emplace_back();
    Place& place = round.places[round.size++];
    auto pieces = stream_.next();
    place.ended = !pieces;
    place.more = stream_.more();
    place.troubles = stream_.take_troubles();
    if (!pieces) return;
    place.pieces = std::move(*pieces);
    text += length_of(place.pieces);
    if (in_rounds_) place.keep_texts();
  }
}

// The tree of the sheet before goes here too, so that taking it apart is shared as well.
void ReadAhead::work_on(Place& place) {
  if (place.ended) return;
  place.sheet = {};
  place.sheet.pieces = std::move(place.pieces);
  work_(place.sheet);
}

}  // namespace landdrill::cli
