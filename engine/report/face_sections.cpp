#include <algorithm>

#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

constexpr std::size_t most_names = 12;  // of values, on the face of a report that is not full

struct TableNames {
  std::string_view table;
  std::vector<std::string_view> rows;
};

// "parts spin-720" and "kinds hybrid" by table, each table once.
std::vector<TableNames> by_table(const std::vector<std::string>& rows) {
  std::vector<TableNames> tables;
  for (const std::string_view row : rows) {
    const std::size_t blank = std::min(row.find(' '), row.size());
    const std::string_view table = row.substr(0, blank);
    auto at =
        std::find_if(tables.begin(), tables.end(), [&](const TableNames& one) { return one.table == table; });
    if (at == tables.end()) at = tables.insert(at, {table, {}});
    at->rows.push_back(row.substr(std::min(blank + 1, row.size())));
  }
  return tables;
}

// "parts spin-720, thrust-high; kinds hybrid, and 3 more"
std::string row_names(const StatusCount& count, std::size_t most) {
  std::string result;
  std::size_t told = 0;
  for (const TableNames& table : by_table(count.rows)) {
    for (std::size_t i = 0; i < table.rows.size() && told < most; ++i, ++told) {
      if (i > 0) result += ", ";
      if (i == 0) result += (result.empty() ? "" : "; ") + std::string(table.table) + " ";
      result += table.rows[i];
    }
  }
  if (count.rows.size() > told) result += ", and " + std::to_string(count.rows.size() - told) + " more";
  return result;
}

std::string_view status_words(Status status) {
  switch (status) {
    case Status::published:
      return "published";
    case Status::practice:
      return "common practice";
    case Status::memory:
      return "from memory, not checked";
    case Status::invented:
      return "invented";
  }
  return "";
}

bool doubtful(const StatusCount& count) {
  return count.status == Status::invented || count.status == Status::memory;
}

std::string sentence_of(const StatusCount& count, const TextWish& wish) {
  return std::to_string(count.rows.size()) + " " + std::string(status_words(count.status)) + ": " +
         row_names(count, wish.full ? count.rows.size() : most_names);
}

// "42 values behind it: 40 invented, 2 published."
std::string counts_sentence(const Account& account) {
  std::size_t all = 0;
  std::string counts;
  for (const StatusCount& count : account.statuses) {
    all += count.rows.size();
    counts += (counts.empty() ? "" : "; ") + std::to_string(count.rows.size()) + " " +
              std::string(status_words(count.status));
  }
  if (account.statuses.size() == 1)
    counts = "all " + std::string(status_words(account.statuses.front().status));
  return std::to_string(all) + (all == 1 ? " value" : " values") + " behind it: " + counts + ".";
}

}  // namespace

std::string title_section(const Account& account, const TextWish& wish) {
  const std::string edition = account.edition.empty() ? "" : ", edition " + account.edition;
  const std::string title = paragraph("", plain(account.title), wish.width);
  const int longest = std::min(width_of(plain(account.title)), wish.width);
  std::string result = wish.colour ? coloured(title, Look::total) : title;
  result += std::string(static_cast<std::size_t>(std::max(1, longest)), '=') + "\n";
  result += paragraph("", plain(account.event + " - by the values of " + account.set + edition), wish.width);
  if (!account.statuses.empty()) result += paragraph("", counts_sentence(account), wish.width);
  return result;
}

std::string values_section(const Account& account, const TextWish& wish) {
  std::vector<std::string> sentences;
  for (const StatusCount& count : account.statuses) {
    if (doubtful(count)) sentences.push_back(sentence_of(count, wish));
  }
  if (sentences.empty()) return "";
  return heading("Values that are from no rule book", wish) + bullets(sentences, wish);
}

}  // namespace landdrill::report
