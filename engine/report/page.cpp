#include "engine/report/page.h"

#include <cassert>

namespace landdrill::report {

bool is_for_people(Seen seen, bool full) {
  switch (seen) {
    case Seen::always:
    case Seen::by_people:
      return true;
    case Seen::by_programs:
      return false;
    case Seen::in_full:
      return full;
    case Seen::in_brief:
      return !full;
  }
  return true;
}

bool is_for_programs(Seen seen) {
  return seen != Seen::by_people && seen != Seen::in_brief;
}

Datum::Datum(std::string text) {
  if (!text.empty()) is = std::move(text);
}

Datum Datum::texts(const std::vector<std::string>& list) {
  Data data;
  for (const std::string& one : list) data.emplace_back(one);
  return data;
}

PageColumn for_programs(std::string key, std::string csv) {
  return {std::move(key), "", Align::words, Wraps::no, Seen::by_programs, "", 2, 0, std::move(csv)};
}

std::vector<PageColumn> program_columns(std::initializer_list<std::string_view> keys) {
  std::vector<PageColumn> columns;
  for (const std::string_view key : keys) columns.push_back(for_programs(std::string(key)));
  return columns;
}

PageColumn amount_column(std::string key, std::string heading, std::string group, std::string csv) {
  return {std::move(key), std::move(heading), Align::amount, Wraps::no, Seen::always, std::move(group), 2, 0,
          std::move(csv)};
}

void PageTable::add(std::vector<Entry> cells, Look look, Seen seen) {
  assert(cells.size() == columns.size());
  rows.push_back({std::move(cells), look, seen, std::exchange(rule_next_, false)});
}

Data records_of(const PageTable& table) {
  Data records;
  for (const PageRow& row : table.rows) {
    if (!is_for_programs(row.seen)) continue;
    Record record;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
      const PageColumn& column = table.columns[i];
      if (!column.key.empty() && is_for_programs(column.seen))
        record.emplace_back(column.key, row.cells[i].data());
    }
    records.emplace_back(std::move(record));
  }
  return records;
}

void PageParts::put(What what, Seen seen) {
  parts_.push_back({std::move(what), seen, std::exchange(apart_, false)});
}

void PageParts::title(std::string text) {
  put(Title{std::move(text)}, Seen::by_people);
}

void PageParts::heading(std::string text, Seen seen) {
  apart();
  put(Heading{std::move(text)}, seen);
}

void PageParts::say(std::string text, Seen seen) {
  put(Sentence{"", std::move(text)}, seen);
}

void PageParts::say(std::string first, std::string text, Seen seen) {
  put(Sentence{std::move(first), std::move(text)}, seen);
}

void PageParts::list(std::string key, const std::vector<std::string>& items, Seen seen) {
  Bullets bullets{std::move(key), {}};
  for (const std::string& item : items) bullets.items.emplace_back(item, Seen::always);
  put(std::move(bullets), seen);
}

void PageParts::short_list(std::string key, const std::vector<std::string>& items, std::size_t most) {
  Bullets bullets{std::move(key), {}};
  for (std::size_t i = 0; i < items.size(); ++i)
    bullets.items.emplace_back(items[i], i < most ? Seen::always : Seen::in_full);
  if (items.size() > most)
    bullets.items.emplace_back("and " + std::to_string(items.size() - most) + " more", Seen::in_brief);
  put(std::move(bullets), Seen::always);
}

void PageParts::fact(std::string key, Entry cell, Seen seen) {
  put(Fact{std::move(key), std::move(cell)}, seen);
}

void PageParts::add(PageTable table, Seen seen) {
  put(std::move(table), seen);
}

void PageParts::tree(std::string key, Step step, std::string set, Seen seen) {
  put(Tree{std::move(key), std::move(step), std::move(set)}, seen);
}

void PageParts::verbatim(std::string key, std::string text) {
  put(Verbatim{std::move(key), std::move(text)}, Seen::always);
}

void PageParts::path(std::string before, std::string path) {
  put(Path{std::move(before), std::move(path)}, Seen::by_people);
}

void PageParts::section(std::string key, PageParts inside, Seen seen) {
  put(Section{std::move(key), std::move(inside), Section::In::list}, seen);
}

void PageParts::single(std::string key, PageParts inside, Seen seen) {
  put(Section{std::move(key), std::move(inside), Section::In::single}, seen);
}

void PageParts::no_sections(std::string key) {
  put(Section{std::move(key), {}, Section::In::empty_list}, Seen::by_programs);
}

void PageParts::either(PageTable wide, int readable, PageParts narrow) {
  put(Either{std::move(wide), readable, std::move(narrow)}, Seen::by_people);
}

void PageParts::append(PageParts more) {
  for (PagePart& part : more.parts_) {
    part.apart = std::exchange(apart_, false) || part.apart;
    parts_.push_back(std::move(part));
  }
}

Page brief_page(std::string question, std::string lines, Facts facts) {
  Page page(std::move(question));
  page.verbatim("", std::move(lines));
  for (auto& [key, entry] : facts) page.fact(std::move(key), std::move(entry));
  return page;
}

}  // namespace landdrill::report
