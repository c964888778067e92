// Practice marks as lists: added from a spreadsheet, listed by session, exported again.
#include "engine/report/pages/practice_list.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/cli/practice_told.h"
#include "engine/cli/today.h"
#include "engine/report/render_csv.h"
#include "engine/season/practice_import.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/practice_list.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"
#include "tables/trainee_name.h"

namespace landdrill::cli {
namespace {

std::size_t marked(const PracticeSession& session) {
  return static_cast<std::size_t>(std::count_if(session.marks.begin(), session.marks.end(),
                                                [](const KeptMark& one) { return one.mark.has_value(); }));
}

std::size_t count(const std::vector<AddedMark>& added, AddedMark::Did did) {
  return static_cast<std::size_t>(
      std::count_if(added.begin(), added.end(), [did](const AddedMark& one) { return one.did == did; }));
}

// The lists of one call, one after the other; each list alone is added as a whole or not at all.
class AddingPractice {
 public:
  explicit AddingPractice(Call& call) : call_(call), messages_(call.streams) {}

  Exit add() {
    if (call_.given.has("--name")) {
      TraineeNamed named = name_of_trainee(call_);
      if (!named.mistake.empty()) return misused(call_, named.mistake);
      name_ = std::move(named.name);
    }
    const std::vector<std::string> files(call_.given.operands.begin() + 1, call_.given.operands.end());
    if (!all_readable(call_, files)) return Exit::environment;
    auto season = open_book(call_, Season::Mode::write);
    if (!season) return refuse(call_, season.error());
    Exit worst = Exit::ok;
    for (const std::string& file : files) worst = worse(worst, add_list(*season, file));
    messages_.finish();
    if (!told_.empty()) print_page(call_, report::practice_sessions_page("practice add", told_));
    call_.streams.say(worst == Exit::ok
                          ? fmt::format("landdrill: {} {} added, {} already there\n", added_,
                                        added_ == 1 ? "mark" : "marks", already_there_)
                          : std::string("landdrill: nothing was added of a list that has errors\n"));
    return worst;
  }

 private:
  Exit add_list(Season& season, const std::string& file) {
    const auto text = read_whole(file);
    if (!text) return refuse(call_, text.error());
    const Source list{shown(file), *text};
    Diagnostics diagnostics;
    std::vector<ListedPractice> rows = read_practice_list(list, name_, diagnostics);
    if (const auto known = name_as_known(season, rows); !known) return refuse(call_, known.error());
    const Book book(season);
    PracticeImport import(book, list, today());
    if (diagnostics.ok())
      if (const auto read = import.read(rows); !read) return refuse(call_, read.error());
    if (diagnostics.ok() && import.diagnostics.ok()) {
      const auto added = PracticeBook(season).add(import.sessions);
      if (!added) return refuse(call_, added.error());
      import.compare(*added);
      if (import.diagnostics.ok()) tell(import.sessions, *added);
    }
    diagnostics.append(std::move(import.diagnostics));
    messages_.add(diagnostics);
    return diagnostics.ok() ? Exit::ok : Exit::errors;
  }

  // In the way in which each trainee was written first.
  static Result<void> name_as_known(Season& season, std::vector<ListedPractice>& rows) {
    const PracticeBook practice(season);
    std::map<std::string, std::string> known;
    for (ListedPractice& row : rows) {
      const auto [place, is_new] = known.try_emplace(row.trainee);
      if (is_new) {
        auto name = practice.known_as(row.trainee);
        if (!name) return tl::unexpected(name.error());
        const auto before = std::find_if(known.begin(), known.end(), [&](const auto& one) {
          return !one.second.empty() && same_trainee(one.second, *name);
        });
        place->second = before == known.end() ? *name : before->second;
      }
      row.trainee = place->second;
    }
    return {};
  }

  void tell(const std::vector<PracticeSession>& sessions, const std::vector<std::vector<AddedMark>>& added) {
    for (std::size_t i = 0; i < sessions.size(); ++i) {
      const std::size_t is_new = count(added[i], AddedMark::Did::added);
      const std::size_t known = count(added[i], AddedMark::Did::already_there);
      added_ += is_new;
      already_there_ += known;
      told_.push_back({sessions[i].wish.trainee, 0, sessions[i].started_at, sessions[i].lines.size(),
                       marked(sessions[i]),
                       known == 0   ? "added"
                       : is_new > 0 ? fmt::format("{} added, {} already there", is_new, known)
                                    : std::string("already there")});
    }
  }

  Call& call_;
  Messages messages_;
  std::string name_;  // of --name
  std::vector<report::PracticeSessionLine> told_;
  std::size_t added_ = 0, already_there_ = 0;
};

// Sessions of --name, or of everyone, with the number by which `practice report` knows each.
template <class Work>
Exit with_sessions(Call& call, Work work) {
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  auto sessions = PracticeBook(*season).all();
  if (!sessions) return refuse(call, sessions.error());
  std::string name;
  if (call.given.has("--name")) {
    const TraineeNamed named = name_of_trainee(call);
    if (!named.mistake.empty()) return misused(call, named.mistake);
    name = named.name;
    std::erase_if(*sessions,
                  [&](const PracticeSession& one) { return !same_trainee(one.wish.trainee, name); });
  }
  if (sessions->empty()) {
    call.streams.say(name.empty() ? "landdrill: the book has no practice\n"
                                  : fmt::format("landdrill: the book has no practice of {}\n", name));
    return Exit::ok;
  }
  return work(Book(*season), *sessions);
}

}  // namespace

Exit practice_add(Call& call) {
  return AddingPractice(call).add();
}

Exit practice_list(Call& call) {
  return with_sessions(call, [&](const Book&, const std::vector<PracticeSession>& sessions) {
    std::vector<report::PracticeSessionLine> lines;
    for (const PracticeSession& one : sessions)
      lines.push_back({one.wish.trainee, one.number, one.started_at, one.lines.size(), marked(one),
                       one.finished ? "" : "paused"});
    print_page(call, report::practice_sessions_page("practice list", lines));
    return Exit::ok;
  });
}

Exit practice_export(Call& call) {
  return with_sessions(call, [&](const Book& book, const std::vector<PracticeSession>& sessions) {
    BookWish every;
    every.all_versions = true;
    const auto blocks = book.find(every);
    if (!blocks) return refuse(call, blocks.error());
    std::map<std::int64_t, const KeptBlock*> panels;
    for (const KeptBlock& block : *blocks) panels[block.id] = &block;
    std::vector<report::PracticeMarkLine> marks;
    for (const PracticeSession& session : sessions) {
      for (std::size_t i = 0; i < session.lines.size() && session.finished; ++i) {
        const KeptBlock& panel = *panels.at(session.lines[i].block);
        const KeptMark& mark = session.marks[i];
        marks.push_back({session.wish.trainee, session.started_at, panel.date, panel.title, panel.routine,
                         panel.event, session.lines[i].line, mark.mark ? mark.mark->text(2) : "", mark.late});
      }
    }
    call.streams.out.write(render_csv(report::practice_marks_page(marks)));
    return Exit::ok;
  });
}

}  // namespace landdrill::cli
