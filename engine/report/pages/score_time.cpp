#include "engine/report/amount_text.h"
#include "engine/report/page.h"
#include "engine/report/pages/score_parts.h"
#include "engine/report/pages/score_words.h"
#include "engine/routine/timing.h"
#include "engine/score/account.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

// "96 counts, 45.0 s", or the counts alone without a tempo.
std::string length_words(int counts, const std::optional<Decimal>& seconds) {
  const std::string words = std::to_string(counts) + (counts == 1 ? " count" : " counts");
  return seconds ? seconds->text(1) + " s (" + words + ")" : words;
}

std::string where_longest_starts(const Account& account) {
  const std::vector<ItemTime>& items = account.timing.items;
  for (std::size_t i = account.timing.longest_starts; i < items.size(); ++i) {
    if (!items[i].item.is_element) continue;
    const std::string name = named(account.elements.at(items[i].item.index));
    return i == account.timing.longest_starts ? ", from " + name : ", from the passage before " + name;
  }
  return account.timing.longest_starts < items.size() ? ", from the last passage" : "";
}

std::string time_words(const Account& account) {
  const Timing& timing = account.timing;
  std::string words = length_words(timing.counts, timing.seconds) + "; under water " +
                      length_words(timing.under, timing.under_seconds);
  if (timing.under_share) words += ", " + timing.under_share->text() + " %";
  if (timing.longest_under > 0) {
    words += "; longest in one go " + length_words(timing.longest_under, timing.longest_under_seconds) +
             where_longest_starts(account);
  }
  if (!timing.seconds) words += ". No seconds without a tempo";
  return words + ".";
}

PageTable items_table(const Account& account) {
  PageTable table("items", {{"element", "element"},
                            {"counts", "counts"},
                            {"under_counts", "under water"},
                            {"seconds", "seconds"},
                            {"under_seconds", "under water"}});
  for (const ItemTime& one : account.timing.items) {
    const Datum number = one.item.is_element ? Datum(account.elements.at(one.item.index).number) : Datum();
    table.add(
        {{"", number}, {"", one.counts}, {"", one.under}, text_of(one.seconds), text_of(one.under_seconds)});
  }
  return table;
}

}  // namespace

void put_time(PageParts& page, const Account& account) {
  const Timing& timing = account.timing;
  PageParts time;
  time.fact("counts", {"", timing.counts});
  time.fact("under_counts", {"", timing.under});
  time.fact("longest_under_counts", {"", timing.longest_under});
  time.fact("seconds", text_of(timing.seconds));
  time.fact("under_seconds", text_of(timing.under_seconds));
  time.fact("longest_under_seconds", text_of(timing.longest_under_seconds));
  time.fact("under_per_cent", text_of(timing.under_share));
  time.fact("longest_starts_at", {"", timing.items.empty() ? Datum() : Datum(timing.longest_starts)});
  time.add(items_table(account), Seen::by_programs);
  page.single("time", std::move(time), Seen::by_programs);
  if (timing.counts == 0) return;
  page.apart();
  page.say("Time: ", time_words(account));
}

}  // namespace landdrill::report
