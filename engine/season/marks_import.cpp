#include "engine/season/marks_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <span>

#include "engine/routine/problems.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/problems.h"
#include "tables/store/book.h"
#include "tables/store/refusal.h"

namespace landdrill {

using store::attempt;
using store::must;

Result<void> ListHomes::read() {
  return attempt([&] {
    BookWish wish;
    wish.what = Block::What::routine;
    latest_ = sheets_.read(versions_of(book_, wish));
    wish.all_versions = true;
    for (const KeptBlock& one : must(book_.find(wish)))
      entries_[{one.routine, one.event, one.version}] = one.id;
    wish = {};
    wish.what = Block::What::panel;
    for (const KeptBlock& one : must(book_.find(wish)))
      panels_[{one.routine, one.event, one.date, one.title}] = {one.id, one.of_version};
  });
}

ListHomes::Home ListHomes::of(const ListedPanel& panel, const KeptSheet& latest) {
  Home home{&latest, {}};
  const auto kept = panels_.find({latest.routine.routine, latest.routine.event, panel.date, panel.meet});
  if (kept != panels_.end())
    home.kept = kept->second.entry == 0 ? kept->second.text : must(book_.text(kept->second.entry));
  if (said_ != 0 || kept != panels_.end())
    home.version = version(latest, said_ == 0 ? kept->second.of_version : said_);
  return home;
}

std::string ListHomes::spelled_otherwise(const ListedPanel& panel, const KeptBlock& routine) const {
  const std::string bare = bare_title(panel.meet);
  if (bare.empty() || panels_.count({routine.routine, routine.event, panel.date, panel.meet}) != 0) return {};
  auto of_day = panels_.lower_bound({routine.routine, routine.event, panel.date, ""});
  for (; of_day != panels_.end(); ++of_day) {
    const auto& [title, event, date, meet] = of_day->first;
    if (title != routine.routine || event != routine.event || date != panel.date) break;
    if (bare_title(meet) == bare) return meet;
  }
  return {};
}

void ListHomes::take(const Block& panel, int of_version) {
  panels_[{panel.routine, panel.event, panel.date, panel.title}] = {0, of_version, panel.text};
}

const KeptSheet* ListHomes::version(const KeptSheet& latest, int number) {
  if (number == latest.routine.version) return &latest;
  const auto entry = entries_.find({latest.routine.routine, latest.routine.event, number});
  if (entry == entries_.end()) return nullptr;
  const KeptSheet*& version = versions_[entry->second];
  if (version == nullptr) version = sheets_.read({entry->second}).front();
  return version;
}

namespace {

// What follows in a text from the line of a piece of it on.
Source from_line_of(const Source& source, std::string_view piece) {
  const std::string_view line = line_around(source, piece);
  return {source.name, source.text.substr(static_cast<std::size_t>(line.data() - source.text.data())),
          position_of(source, piece).line};
}

class Importing {
 public:
  Importing(const Source& list, ListHomes& homes, Imported& out)
      : list_(list), homes_(homes), routines_(homes.latest()), out_(out) {}

  void import(const std::vector<ListedPanel>& panels) {
    find_homes(panels);
    for (const OfVersion& version : versions_) {
      out_.editions.push_back(version.routine->set->files);
      Source rest = list_;
      for (std::size_t at = 0; at < version.panels.size(); at += at_once) {
        const auto panels = std::span(version.panels).subspan(at);
        rest = from_line_of(rest, panels.front().listed->date_piece);
        const Piece piece{&version, panels.first(std::min(at_once, panels.size())), rest};
        ListedBlocks made = listed_blocks(*version.routine, piece.list, piece.panels);
        tell(std::move(made.wrong), piece);
        take(std::move(made), version);
      }
    }
  }

 private:
  static constexpr std::size_t at_once = 200;  // panels: what is wrong is looked for in few lines
  struct OfVersion {
    const KeptSheet* routine = nullptr;
    const KeptSheet* latest = nullptr;
    std::vector<OnePanel> panels;
  };
  struct Piece {
    const OfVersion* version = nullptr;
    std::span<const OnePanel> panels;
    Source list;  // from the first of them on
  };

  void find_homes(const std::vector<ListedPanel>& panels) {
    std::map<const KeptSheet*, std::size_t> places;
    for (const ListedPanel& panel : panels) {
      const auto routine = routine_of(panel);
      if (!routine || !is_first_of_its_name(panel, routines_[*routine]->routine)) continue;
      ListHomes::Home home = homes_.of(panel, *routines_[*routine]);
      if (home.version == nullptr) {
        no_such_version(panel, routines_[*routine]->routine);
        continue;
      }
      const auto [place, is_new] = places.try_emplace(home.version, versions_.size());
      if (is_new) versions_.push_back({home.version, routines_[*routine], {}});
      versions_[place->second].panels.push_back({&panel, std::move(home.kept)});
    }
    for (OfVersion& version : versions_)
      std::erase_if(version.panels, [&](const OnePanel& one) { return split_.count(one.listed) != 0; });
  }

  // One panel of a list may look like two, when its meet is spelled in two ways or its event is said in some
  // of its rows. Neither is looked at any further then.
  bool is_first_of_its_name(const ListedPanel& panel, const KeptBlock& routine) {
    const std::string bare = bare_title(panel.meet);
    const auto [known, is_new] =
        named_.try_emplace({routine.id, panel.date, bare.empty() ? panel.meet : bare}, &panel);
    const ListedPanel& first = *known->second;
    if (!is_new) split_.insert(&first);
    const std::string in_book = homes_.spelled_otherwise(panel, routine);
    if (!in_book.empty()) {
      wrong_meet(panel, in_book, "the book");
    } else if (first.meet != panel.meet) {
      wrong_meet(panel, first.meet, "another row");
    } else if (!is_new) {
      complain(panel.event_piece, {Problem::repeated, "rows of one panel with and without the event",
                                   "the event in each of its rows, or in none"});
    }
    return is_new && in_book.empty();
  }

  void wrong_meet(const ListedPanel& panel, const std::string& expected, std::string_view where) {
    complain(panel.meet_piece,
             {Problem::two_spellings, fmt::format("the meet \"{}\"", panel.meet),
              fmt::format("\"{}\", as {} has it on this day", expected, where), "write the meet in one way"});
  }

  void take(ListedBlocks made, const OfVersion& version) {
    for (Placed& panel : made.panels) {
      panel.block.edition = out_.editions.size() - 1;
      if (homes_.said() != 0) panel.block.of = version.routine->routine.id;
      homes_.take(panel.block, version.routine->routine.version);
      out_.panels.push_back(std::move(panel));
    }
  }

  // An element that is not there may be one of an older version.
  void tell(std::vector<Diagnostic> wrong, const Piece& piece) {
    const bool elements = std::any_of(wrong.begin(), wrong.end(), [](const Diagnostic& one) {
      return one.problem == Problem::unknown_element;
    });
    std::string hint;
    if (elements && homes_.said() == 0 && piece.version->routine == piece.version->latest) {
      if (const int fitting = older_version_for(piece); fitting != 0)
        hint = fmt::format("version {0} of the routine has it: add the list with --swum-as {0}", fitting);
    }
    for (Diagnostic& one : wrong) {
      if (one.problem == Problem::unknown_element && !hint.empty()) one.hint = hint;
      out_.diagnostics.add(std::move(one));
    }
  }

  // The latest one into which all panels fit; 0 when there is none.
  int older_version_for(const Piece& piece) {
    const KeptSheet& latest = *piece.version->latest;
    for (int number = latest.routine.version - 1; number > 0; --number) {
      const KeptSheet* const older = homes_.version(latest, number);
      if (older != nullptr && listed_blocks(*older, piece.list, piece.panels).wrong.empty()) return number;
    }
    return 0;
  }

  void complain(std::string_view piece, Complaint complaint) {
    out_.diagnostics.complain(list_, piece, std::move(complaint));
  }

  std::optional<std::size_t> routine_of(const ListedPanel& panel) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < routines_.size(); ++i) {
      const KeptBlock& kept = routines_[i]->routine;
      if (kept.routine == panel.routine && (panel.event.empty() || kept.event == panel.event))
        found.push_back(i);
    }
    if (found.size() == 1) return found.front();
    if (found.empty()) no_such_routine(panel);
    if (found.size() > 1) several_events(panel, found);
    return std::nullopt;
  }

  void no_such_routine(const ListedPanel& panel) {
    std::vector<std::string_view> titles;
    for (const KeptSheet* kept : routines_) titles.push_back(kept->routine.routine);
    const bool event = std::find(titles.begin(), titles.end(), panel.routine) != titles.end();
    complain(event ? panel.event_piece : panel.routine_piece,
             {Problem::unknown_name,
              event ? fmt::format("the event \"{}\" for {}", panel.event, panel.routine)
                    : fmt::format("the routine \"{}\"", panel.routine),
              "a routine of the book", event ? "" : words::nearest_hint(panel.routine, titles)});
  }

  void no_such_version(const ListedPanel& panel, const KeptBlock& latest) {
    complain(panel.routine_piece,
             {Problem::unknown_name, fmt::format("{} with --swum-as {}", panel.routine, homes_.said()),
              latest.version == 1 ? "--swum-as 1, for there is one version of it"
                                  : fmt::format("one of its versions, 1 to {}", latest.version)});
  }

  void several_events(const ListedPanel& panel, const std::vector<std::size_t>& found) {
    std::string events;
    for (std::size_t i : found) events += (events.empty() ? "" : ", ") + routines_[i]->routine.event;
    complain(panel.routine_piece, {Problem::unknown_name, fmt::format("the routine \"{}\"", panel.routine),
                                   "one routine", "add a column event: the book has it in " + events});
  }

  const Source& list_;
  ListHomes& homes_;
  const std::vector<const KeptSheet*>& routines_;
  Imported& out_;
  std::vector<OfVersion> versions_;
  // By routine, day and meet; and those that others are rows of.
  std::map<std::tuple<std::int64_t, std::string, std::string>, const ListedPanel*> named_;
  std::set<const ListedPanel*> split_;
};

}  // namespace

Result<Imported> panels_from(const std::vector<ListedPanel>& panels, const Source& list, ListHomes& homes) {
  return attempt([&] {
    Imported made;
    Importing(list, homes, made).import(panels);
    made.diagnostics.sort();
    return made;
  });
}

}  // namespace landdrill
