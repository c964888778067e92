#include "engine/report/pages/values_list.h"

namespace landdrill::report {
namespace {

// An amount of things, or nothing.
Entry count_if_any(std::optional<std::size_t> number) {
  return number ? Entry(std::to_string(*number), Datum(*number)) : Entry();
}

PageTable sets_table(const std::vector<ListedSet>& sets) {
  PageTable table("sets", {{"name", "name"},
                           {"title", "title", Align::words, Wraps::yes},
                           {"edition", "edition", Align::words, Wraps::yes},
                           {"rows", "rows", Align::amount},
                           {"edits", "edits", Align::amount},
                           {"place", "", Align::words, Wraps::no, Seen::by_programs},
                           {"hidden", "", Align::words, Wraps::no, Seen::by_programs},
                           {"", "place", Align::amount}});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (const ListedSet& set : sets)
    table.add({set.name,
               set.title,
               set.edition,
               count_if_any(set.rows),
               count_if_any(set.edits),
               set.place,
               {"", Datum::texts(set.hidden)},
               set.origin == 0 ? "" : std::to_string(set.origin)});
  return table;
}

// Each folder in a line of its own, so that it is not broken in two.
void put_origins(Page& page, const std::vector<SetOrigin>& origins) {
  page.heading("Places of sets: the first that is found counts");
  for (std::size_t i = 0; i < origins.size(); ++i) {
    page.say("  " + std::to_string(i + 1) + ". ", origins[i].words);
    for (const std::string& folder : origins[i].folders) page.path("     ", folder);
  }
}

void put_hidden(Page& page, const ListedSet& set) {
  if (set.hidden.empty()) return;
  page.apart();
  page.say("There are " + std::to_string(set.hidden.size() + 1) + " sets called " + set.name +
           ". The first one here counts, " +
           (set.hidden.size() == 1 ? "the other does not:" : "the others do not:"));
  page.path("  - ", set.place);
  for (const std::string& folder : set.hidden) page.path("  - ", folder);
}

}  // namespace

Page values_list_page(const ListedSets& listed) {
  Page page("values list");
  if (listed.sets.empty()) page.say("No value sets.");
  page.add(sets_table(listed.sets));
  if (listed.season.empty()) {
    put_origins(page, listed.origins);
  } else {
    page.apart();
    page.path("With --season, sets come from that file alone: ", listed.season);
  }
  for (const ListedSet& set : listed.sets) put_hidden(page, set);
  return page;
}

}  // namespace landdrill::report
