#include "engine/files/read_ahead.h"

namespace landdrill {
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
