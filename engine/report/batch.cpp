#include "engine/report/batch.h"

#include <algorithm>

#include "engine/report/figures.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

constexpr int amount_columns = 4;
constexpr int amount_width = 10;  // "difficulty", "difference"; "-1234.5678"
constexpr int column_gap = 2;
constexpr int width_behind = 5;  // of them behind the point, with the point

constexpr int readable_name = 7;  // of a title or a file name

struct Widths {
  int file, routine;  // routine: 0 on a page too narrow for it
};
Widths widths_for(const TextWish& wish) {
  const int rest = std::max(60, wish.width) - amount_columns * (amount_width + column_gap);
  const int routine = (rest - column_gap) / 2 - 1;
  if (routine < readable_name) return {rest, 0};
  return {rest - column_gap - routine, routine};
}

// The end of a path says more than its beginning.
std::string cut_front(std::string_view text, int width) {
  if (width_of(text) <= width) return std::string(text);
  while (width_of(text) > width - 1) {
    text.remove_prefix(1);
    while (!text.empty() && (static_cast<unsigned char>(text.front()) & 0xC0) == 0x80) text.remove_prefix(1);
  }
  return "…" + std::string(text);
}

// In a column of its own, with so many blanks behind it.
void add_right(std::string& line, std::string_view words, std::size_t behind = 0) {
  const int before = std::max(0, amount_width - width_of(words) - static_cast<int>(behind));
  line.append(static_cast<std::size_t>(column_gap + before), ' ').append(words).append(behind, ' ');
}

// With its point where the other lines have theirs, as no line knows how wide the others are.
void add_amount(std::string& line, std::string_view text) {
  const std::size_t point = std::min(text.find('.'), text.size());
  const std::size_t behind = text.size() - point;
  const bool has_room = !text.empty() && point + width_behind <= amount_width && behind < width_behind;
  add_right(line, text, has_room ? width_behind - behind : 0);
}

struct TotalTexts {
  std::string difficulty, estimate, recorded, difference, announced;
};
TotalTexts texts_of(const Totals& totals) {
  return {totals.difficulty.text(2), text_of(totals.estimate, totals.places),
          text_of(totals.recorded, totals.places), signed_text(totals.difference, totals.places),
          text_of(totals.announced, totals.places)};
}

std::string sheet_names(const std::string& file, const std::string& routine, const Widths& widths) {
  std::string line = pad(file, widths.file);
  if (widths.routine > 0)
    line.append(column_gap, ' ').append(pad(cut(routine, widths.routine), widths.routine));
  return line;
}

std::string ended(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line += '\n';
}

}  // namespace

std::string batch_header(const TextWish& wish) {
  std::string line = sheet_names("file", "routine", widths_for(wish));
  for (const std::string_view column : {"difficulty", "estimate", "panel", "change"}) add_right(line, column);
  return ended(std::move(line));
}

std::string batch_line(const SheetRow& row, const TextWish& wish) {
  const Widths widths = widths_for(wish);
  std::string line = sheet_names(cut_front(plain(row.file), widths.file), plain(row.routine), widths);
  const TotalTexts texts = texts_of(row.totals);
  for (const std::string* amount : {&texts.difficulty, &texts.estimate, &texts.recorded, &texts.difference})
    add_amount(line, *amount);
  return ended(std::move(line));
}

std::string batch_refusal(std::string_view file, std::size_t errors, const TextWish& wish) {
  const Widths widths = widths_for(wish);
  const std::string words = "not scored: " + counted(errors, "error");
  return pad(cut_front(plain(file), widths.file), widths.file) + std::string(column_gap, ' ') + words + "\n";
}

std::string batch_csv_header() {
  return csv_row(
      {"file", "routine", "event", "difficulty", "estimate", "recorded", "difference", "announced"});
}

std::string batch_csv_line(const SheetRow& row) {
  const TotalTexts texts = texts_of(row.totals);
  return csv_row({row.file, row.routine, row.event, texts.difficulty, texts.estimate, texts.recorded,
                  texts.difference, texts.announced});
}

}  // namespace landdrill::report
