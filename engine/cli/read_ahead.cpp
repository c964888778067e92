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

// Calls `each` with 0 ... count - 1, several at once; what one of them throws is thrown here.
template <class Each>
void for_all(std::size_t count, Each each) {
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
  take();
  for (std::future<void>& other : others) other.get();
}

// The stream takes its text back when it goes on.
void keep_texts(ReadAhead::Place& place) {
  for (Source& piece : place.pieces) {
    place.kept.emplace_back(piece.text.begin(), piece.text.end());
    piece.text = {place.kept.back().data(), place.kept.back().size()};
  }
}

std::size_t length_of(const std::vector<Source>& pieces) {
  std::size_t length = 0;
  for (const Source& piece : pieces) length += piece.text.size();
  return length;
}

}  // namespace

ReadAhead::Place& ReadAhead::next() {
  if (at_ == in_round_) read_round();
  return places_[at_++];
}

void ReadAhead::read_round() {
  if (in_rounds_) most_ = std::min(2 * most_, most_sheets);
  cut_round();
  at_ = 0;
  for_all(in_round_, [this](std::size_t i) { work_on(places_[i]); });
}

void ReadAhead::cut_round() {
  std::size_t text = 0;
  for (in_round_ = 0; in_round_ < most_ && text < most_text;) {
    if (in_round_ > 0) keep_texts(places_[in_round_ - 1]);
    if (in_round_ == places_.size()) places_.emplace_back();
    Place& place = places_[in_round_++];
    auto pieces = stream_.next();
    place.kept.clear();
    place.ended = !pieces;
    place.more = stream_.more();
    place.troubles = stream_.take_troubles();
    if (!pieces) return;
    place.pieces = std::move(*pieces);
    text += length_of(place.pieces);
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
