#include "engine/report/pages/score.h"

#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/price_wish.h"
#include "engine/report/pages/score_parts.h"
#include "engine/report/pages/score_words.h"

namespace landdrill::report {
namespace {

constexpr std::size_t most_missing = 8;

std::string what_is_lacking(const Account& account) {
  if (account.total.estimate) return "the panel has no total yet";
  return account.total.recorded ? "there is no estimate yet" : "there is no total yet";
}

void put_missing(PageParts& page, const Account& account) {
  if (!account.missing.empty()) page.heading("Missing, so " + what_is_lacking(account));
  page.short_list("missing", missing_sentences(account), most_missing);
}

void put_build_ups(PageParts& page, const Account& account) {
  page.fact("estimate_build_up", {});
  page.fact("recorded_build_up", {});
  put_build_up(page, account);
}

}  // namespace

Answer score(const Asked& asked, const Routine& routine, const Diagnostics& messages, std::string_view file) {
  const PriceWish priced = whole_price_wish(asked, routine);
  if (!priced.mistake.empty()) return tl::unexpected(priced.mistake);
  return score_page(account(routine, priced.wish, priced.panel), messages, file);
}

Page score_page(const Account& account, const Diagnostics& objections, std::string_view file) {
  Page page("score");
  page.csv = {"file",
              "routine",
              "panel",
              "line",
              "number",
              "title",
              "kind",
              "option",
              "weight",
              "declared",
              "credited",
              "base_mark",
              "mark",
              "points",
              "left",
              "rests_on",
              "recorded_credited",
              "recorded_base_mark",
              "recorded_mark",
              "recorded_points",
              "difference"};
  page.fact("file", file);
  put_title(page, account);
  put_amounts(page, account);
  put_judges(page, account);
  put_score_tables(page, account);
  put_score_notes(page, account);
  put_missing(page, account);
  put_bridge(page, account);
  put_objections(page, objections);
  put_time(page, account);
  put_cautions(page, account);
  put_doubtful_values(page, account);
  put_build_ups(page, account);
  return page;
}

Page refused_page(std::string_view file, const Diagnostics& messages) {
  Page page("score");
  page.fact("file", file);
  put_messages(page, messages);
  return page;
}

}  // namespace landdrill::report
