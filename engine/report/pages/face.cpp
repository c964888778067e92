#include "engine/report/pages/face.h"

#include <algorithm>

#include "engine/report/figures.h"
#include "engine/report/sentences.h"
#include "grammar/problem_code.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

constexpr std::size_t most_names = 12;  // of values, on the face of a report that is not full

using TableNames = std::pair<std::string_view, std::vector<std::string_view>>;

// "parts spin-720" and "kinds hybrid" by table, each table once.
std::vector<TableNames> by_table(const std::vector<std::string>& rows) {
  std::vector<TableNames> tables;
  for (const std::string_view row : rows) {
    const std::size_t blank = std::min(row.find(' '), row.size());
    const std::string_view table = row.substr(0, blank);
    auto at =
        std::find_if(tables.begin(), tables.end(), [&](const TableNames& one) { return one.first == table; });
    if (at == tables.end()) at = tables.insert(at, {table, {}});
    at->second.push_back(row.substr(std::min(blank + 1, row.size())));
  }
  return tables;
}

// "parts spin-720, thrust-high; kinds hybrid, and 3 more"
std::string names_of(const StatusCount& count, std::size_t most) {
  std::string result;
  std::size_t told = 0;
  for (const auto& [table, rows] : by_table(count.rows)) {
    for (std::size_t i = 0; i < rows.size() && told < most; ++i, ++told) {
      if (i > 0) result += ", ";
      if (i == 0) result += (result.empty() ? "" : "; ") + std::string(table) + " ";
      result += rows[i];
    }
  }
  if (count.rows.size() > told) result += ", and " + std::to_string(count.rows.size() - told) + " more";
  return result;
}

std::string_view words_for(Status status) {
  constexpr std::string_view words[] = {"published", "common practice", "from memory, not checked",
                                        "invented"};
  return words[static_cast<std::size_t>(status)];
}

std::string sentence_of(const StatusCount& count, std::size_t most) {
  return std::to_string(count.rows.size()) + " " + std::string(words_for(count.status)) + ": " +
         names_of(count, most);
}

// "42 values behind it: 40 invented, 2 published."
std::string counts_sentence(const Account& account) {
  std::size_t all = 0;
  std::string counts;
  for (const StatusCount& count : account.statuses) {
    all += count.rows.size();
    counts += (counts.empty() ? "" : "; ") + std::to_string(count.rows.size()) + " " +
              std::string(words_for(count.status));
  }
  if (account.statuses.size() == 1) counts = "all " + std::string(words_for(account.statuses.front().status));
  return counted(all, "value") + " behind it: " + counts + ".";
}

Datum values_datum(const Account& account) {
  Record by_status;
  for (const StatusCount& count : account.statuses)
    by_status.emplace_back(word_of(count.status), Datum::texts(count.rows));
  return Record{{"set", account.set}, {"edition", account.edition}, {"rows_used", std::move(by_status)}};
}

// Characters of its line, counted from 1, and what goes in their place.
Datum fix_datum(const Diagnostic& one) {
  if (one.fix.empty()) return {};
  return Record{
      {"line", one.at.line}, {"column", one.at.column}, {"length", one.length}, {"replacement", one.fix}};
}

Datum message_datum(const Diagnostic& one) {
  return Record{{"severity", severity_word(one.problem)},
                {"code", code_of(one.problem)},
                {"file", one.file},
                {"line", one.at.line},
                {"column", one.at.column},
                {"found", one.found},
                {"expected", one.expected},
                {"hint", one.hint},
                {"fix", fix_datum(one)},
                {"text", one.line}};
}

Record messages_record(const Diagnostics& diagnostics) {
  Data messages;
  for (const Diagnostic& one : diagnostics.list()) messages.push_back(message_datum(one));
  return {{"errors", diagnostics.errors()},
          {"warnings", diagnostics.warnings()},
          {"doubts", diagnostics.doubts()},
          {"messages", std::move(messages)}};
}

std::string place_words(const Diagnostic& one) {
  return one.at.line == 0 ? "" : "line " + std::to_string(one.at.line) + ": ";
}

std::string objection_words(const Diagnostic& one) {
  const std::string hint = one.hint.empty() ? "" : " (" + one.hint + ")";
  return place_words(one) + "found " + one.found + "; expected " + one.expected + hint;
}

}  // namespace

void put_title(PageParts& page, const Account& account) {
  const std::string edition = account.edition.empty() ? "" : ", edition " + account.edition;
  page.title(account.title);
  page.say(account.event + " - by the values of " + account.set + edition);
  if (!account.panel_date.empty()) page.say("Panel of " + panel_name(account));
  if (!account.statuses.empty()) page.say(counts_sentence(account));
  page.fact("routine", account.title);
  page.fact("event", account.event);
  page.fact("values", values_datum(account));
}

std::string panel_name(const Account& account) {
  return account.panel_date + (account.panel.empty() ? "" : " " + account.panel);
}

void put_objections(PageParts& page, const Diagnostics& objections) {
  page.fact("objections", messages_record(objections));
  std::vector<std::string> broken, doubtful, what_to_do;
  for (const Diagnostic& one : objections.list()) {
    if (severity_of(one.problem) != Severity::doubt) {
      broken.push_back(objection_words(one));
      continue;
    }
    doubtful.push_back(place_words(one) + one.found);
    if (std::find(what_to_do.begin(), what_to_do.end(), one.hint) == what_to_do.end())
      what_to_do.push_back(one.hint);
  }
  const std::size_t more = objections.all() - objections.list().size();
  if (more > 0) (broken.empty() ? doubtful : broken).push_back("and " + std::to_string(more) + " more");
  if (!broken.empty()) page.heading("What the rules would object to");
  page.list("", broken);
  if (doubtful.empty()) return;
  page.heading("Marks to look at again");
  page.list("", doubtful);
  for (const std::string& words : what_to_do) page.say("Hint: " + words);
}

void put_cautions(PageParts& page, const Account& account) {
  const std::vector<std::string> sentences = sentences_of(account.cautions);
  if (!sentences.empty()) page.heading("Take care");
  page.list("cautions", sentences);
}

void put_doubtful_values(PageParts& page, const Account& account) {
  std::vector<std::string> brief, full;
  for (const StatusCount& count : account.statuses) {
    if (count.status != Status::invented && count.status != Status::memory) continue;
    brief.push_back(sentence_of(count, most_names));
    full.push_back(sentence_of(count, count.rows.size()));
  }
  if (brief.empty()) return;
  page.heading("Values that are from no rule book");
  page.list("", brief, Seen::in_brief);
  page.list("", full, Seen::in_full);
}

void put_values_place(PageParts& page, const ValuesPlace& place) {
  page.apart();
  if (place.season.empty())
    page.path("Values from ", place.folder);
  else
    page.path("Values from " + place.name + " in the season file ", place.season);
  page.fact("values_place", {"", Record{{"name", place.name},
                                        {"folder", place.folder},
                                        {"season", place.season},
                                        {"hidden", Datum::texts(place.hidden)}}});
  if (place.hidden.empty()) return;
  page.say(place.hidden.size() == 1
               ? "There is another " + place.name + ", which does not count; --values FOLDER chooses it:"
               : "There are others called " + place.name +
                     ", which do not count; --values FOLDER chooses one:");
  for (const std::string& folder : place.hidden) page.path("  - ", folder);
}

void put_build_up(PageParts& page, Account account) {
  if (account.estimate) {
    page.heading("How the estimate comes about", Seen::in_full);
    page.tree("estimate_build_up", std::move(*account.estimate), account.set, Seen::in_full);
  }
  if (account.recorded) {
    page.heading("How the panel's result comes about", Seen::in_full);
    page.tree("recorded_build_up", std::move(*account.recorded), account.set, Seen::in_full);
  }
}

void put_notes(PageParts& page, const Face& face) {
  put_objections(page, face.objections);
  put_cautions(page, face);
  put_doubtful_values(page, face);
}

void put_messages(PageParts& page, const Diagnostics& diagnostics) {
  for (auto& [key, datum] : messages_record(diagnostics)) page.fact(key, std::move(datum));
}

}  // namespace landdrill::report
