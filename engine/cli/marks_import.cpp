#include "engine/cli/marks_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "engine/cli/in_order.h"
#include "grammar/print.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

bool is_element(std::string_view name) {
  return !name.empty() && name.find_first_not_of("0123456789") == name.npos;
}

// The text of panels in the sheet language, and for each of its lines where that stands in the list.
class Written {
 public:
  struct Origin {
    const ListedPanel* panel = nullptr;
    const ListedPanel::Line* line = nullptr;  // nullptr for the panel's first line
  };

  void write(const ListedPanel& panel) {
    ast::PanelLine head{{panel.date}, std::nullopt};
    if (!panel.meet.empty()) head.title = ast::Name{panel.meet, true};
    add(print(ast::Statement(head)), {&panel, nullptr});
    for (const ListedPanel::Line& line : panel.lines) write_line(panel, line);
  }

  // The seat whose mark starts in this column of the line, or the number of seats.
  static std::size_t seat_at(const ListedPanel::Line& line, std::size_t column) {
    std::size_t start = start_of(line).size() + 2, seat = 0;
    for (; seat < line.judges.size() && start != column; ++seat)
      start += written_mark(line.judges[seat]).size() + 1;
    return seat;
  }

  std::string text;
  std::vector<Origin> origins;  // of each line

 private:
  void add(const std::string& line, Origin origin) {
    text += line + "\n";
    origins.push_back(origin);
  }

  void write_line(const ListedPanel& panel, const ListedPanel::Line& line) {
    std::string written = start_of(line);
    for (const auto& given : line.judges) (written += ' ') += written_mark(given);
    add(written, {&panel, &line});
  }

  static std::string start_of(const ListedPanel::Line& line) {
    if (is_element(line.name)) return "  element " + line.name + (line.base ? " base:" : ":");
    std::string start = "  " + print(ast::Statement(ast::AspectMarksLine{{line.name, false}, {}}));
    while (start.ends_with(' ')) start.pop_back();
    return start;
  }
  static std::string written_mark(const std::optional<ListedPanel::Given>& given) {
    return given && given->mark ? given->mark->text(2) : "-";
  }
};

std::string_view place_of(const Diagnostic& one, const Written& written, std::size_t lines_above) {
  if (one.at.line <= lines_above || one.at.line - lines_above > written.origins.size()) return {};
  const Written::Origin& origin = written.origins[one.at.line - lines_above - 1];
  if (origin.line == nullptr) return origin.panel->date_piece;
  const std::size_t seat = Written::seat_at(*origin.line, one.at.column);
  const bool given = seat < origin.line->judges.size() && origin.line->judges[seat];
  return given ? origin.line->judges[seat]->piece : origin.line->piece;
}

// Some panels of one version of a routine as blocks, or what is wrong with them.
class ImportOfSome {
 public:
  struct Made {
    std::vector<Block> blocks;
    std::size_t marks = 0;
    Diagnostics diagnostics;
  };
  ImportOfSome(const Source& list, const KeptSheet& routine) : list_(list), routine_(routine) {}

  Made of(std::span<const ListedPanel* const> panels) {
    for (const ListedPanel* panel : panels) written_.write(*panel);
    check();
    if (made_.diagnostics.ok()) cut_into_blocks(panels);
    return std::move(made_);
  }

 private:
  // The routine alone with the new panels; what is found in them is said where it stands in the list.
  void check() {
    const std::string text = std::string(routine_alone(routine_.text)) + written_.text;
    const auto above =
        static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) - written_.origins.size();
    ReadSheet sheet;
    sheet.pieces = {{list_.name, text}};
    put_together(sheet);
    if (!sheet.assembled.sheets.empty()) resolve_from(*routine_.sheet.set, sheet);
    for (const Diagnostic& one : sheet.diagnostics.list()) {
      if (severity_of(one.problem) != Severity::error) continue;
      const std::string_view piece = place_of(one, written_, above);
      if (piece.data() == nullptr) continue;
      complain(piece, {one.problem, one.found, one.expected, one.hint});
    }
  }

  void complain(std::string_view piece, Complaint complaint) {
    if (!made_.diagnostics.wants_more()) return made_.diagnostics.count_only(severity_of(complaint.problem));
    made_.diagnostics.add(diagnostic_at(list_, piece, std::move(complaint)));
  }

  // Without the runs and panels that are kept already: they were checked when they came.
  static std::string_view routine_alone(std::string_view text) {
    std::size_t end = text.size();
    for (std::string_view start : {"\nrun ", "\npanel "}) {
      if (const std::size_t found = text.find(start); found != text.npos) end = std::min(end, found + 1);
    }
    return text.substr(0, end);
  }

  void cut_into_blocks(std::span<const ListedPanel* const> panels) {
    const KeptBlock& routine = routine_.routine;
    std::string_view rest = written_.text;
    for (const ListedPanel* panel : panels) {
      std::size_t length = 0;
      for (std::size_t line = 0; line < 1 + panel->lines.size(); ++line) length = rest.find('\n', length) + 1;
      made_.blocks.push_back({Block::What::panel, routine.routine, routine.event, panel->date, panel->meet,
                              std::string(rest.substr(0, length)), 0});
      rest.remove_prefix(length);
      for (const auto& one : panel->lines) made_.marks += one.judges.size();
    }
  }

  const Source& list_;
  const KeptSheet& routine_;
  Written written_;
  Made made_;
};

class Importing {
 public:
  Importing(const Source& list, ListHomes& homes, Imported& out)
      : list_(list), homes_(homes), routines_(homes.latest()), out_(out) {}

  Result<void> import(const std::vector<ListedPanel>& panels) {
    if (auto found = find_homes(panels); !found) return found;
    std::vector<Piece> pieces;
    for (const OfVersion& version : versions_) {
      out_.editions.push_back(version.routine->sheet.set->files);
      for (std::size_t at = 0; at < version.panels.size(); at += worth_a_thread)
        pieces.push_back({version.routine,
                          std::span(version.panels)
                              .subspan(at)
                              .first(std::min(worth_a_thread, version.panels.size() - at)),
                          out_.editions.size() - 1});
    }
    const auto make = [&](std::size_t i) {
      return ImportOfSome(list_, *pieces[i].routine).of(pieces[i].panels);
    };
    std::size_t next = 0;
    make_in_order(pieces.size(), make, [&](ImportOfSome::Made made) {
      const std::size_t edition = pieces[next++].edition;
      for (Block& block : made.blocks) {
        block.edition = edition;
        out_.blocks.push_back(std::move(block));
      }
      out_.marks += made.marks;
      out_.diagnostics.append(std::move(made.diagnostics));
    });
    return {};
  }

 private:
  static constexpr std::size_t worth_a_thread = 200;  // panels
  struct OfVersion {
    const KeptSheet* routine = nullptr;
    std::vector<const ListedPanel*> panels;
  };
  struct Piece {
    const KeptSheet* routine = nullptr;
    std::span<const ListedPanel* const> panels;
    std::size_t edition = 0;
  };

  Result<void> find_homes(const std::vector<ListedPanel>& panels) {
    std::map<const KeptSheet*, std::size_t> places;
    for (const ListedPanel& panel : panels) {
      const auto routine = routine_of(panel);
      if (!routine) continue;
      const auto home = homes_.of(panel, *routines_[*routine]);
      if (!home) return tl::unexpected(home.error());
      const auto [place, is_new] = places.try_emplace(*home, versions_.size());
      if (is_new) versions_.push_back({*home, {}});
      versions_[place->second].panels.push_back(&panel);
    }
    return {};
  }

  void complain(std::string_view piece, Complaint complaint) {
    if (!out_.diagnostics.wants_more()) return out_.diagnostics.count_only(severity_of(complaint.problem));
    out_.diagnostics.add(diagnostic_at(list_, piece, std::move(complaint)));
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
};

}  // namespace

Result<void> ListHomes::read() {
  BookWish wish;
  wish.what = Block::What::routine;
  const auto newest = versions_of(book_, wish);
  if (!newest) return tl::unexpected(newest.error());
  auto sheets = sheets_.read(*newest);
  if (!sheets) return tl::unexpected(sheets.error());
  latest_ = std::move(*sheets);
  wish.what = Block::What::panel;
  const auto panels = book_.find(wish);
  if (!panels) return tl::unexpected(panels.error());
  for (const KeptBlock& one : *panels)
    if (newest->count(one.of_routine) == 0)
      older_[{one.routine, one.event, one.date, one.title}] = one.of_routine;
  return {};
}

Result<const KeptSheet*> ListHomes::of(const ListedPanel& panel, const KeptSheet& latest) {
  const auto older = older_.find({latest.routine.routine, latest.routine.event, panel.date, panel.meet});
  if (older == older_.end()) return &latest;
  const KeptSheet*& version = versions_[older->second];
  if (version == nullptr) {
    const auto sheets = sheets_.read(Versions{older->second});
    if (!sheets) return tl::unexpected(sheets.error());
    version = sheets->front();
  }
  return version;
}

Result<Imported> panels_from(const std::vector<ListedPanel>& panels, const Source& list, ListHomes& homes) {
  Imported made;
  if (const auto done = Importing(list, homes, made).import(panels); !done)
    return tl::unexpected(done.error());
  made.diagnostics.sort();
  return made;
}

}  // namespace landdrill::cli
