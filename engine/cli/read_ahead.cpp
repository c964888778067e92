#include "engine/cli/read_ahead.h"

#include "grammar/span.h"

namespace landdrill::cli {
namespace {

constexpr std::size_t sheets_worth_a_thread = 32 * 1024;  // bytes of text

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
    text += length_of(place.pieces);
  }
  return batch.size > 0 ? std::optional(text) : std::nullopt;
}

void ReadAhead::cut(Place& place) {
  auto pieces = stream_.next();
  ended_ = place.ended = !pieces;
  place.more = stream_.more();
  place.troubles = stream_.take_troubles();
  place.pieces.clear();
  if (!pieces) return;
  place.pieces = std::move(*pieces);
  if (ahead_) place.keep_texts();
}

// The tree of the sheet before goes here too, so that taking it apart is shared as well.
void ReadAhead::work_on(Place& place) const {
  if (place.ended) return;
  place.sheet = {};
  place.sheet.pieces = std::move(place.pieces);
  work_(place.sheet);
}

}  // namespace landdrill::cli
