#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/marking.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/practice.h"
#include "engine/report/render.h"
#include "engine/season/practice_tasks.h"
#include "grammar/calendar.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

report::Typed<std::string> name_of_trainee(const Call& call) {
  if (!call.given.has("--name"))
    return tl::unexpected<std::string>("--name NAME is missing: whose marks are these?");
  auto name = trainee_name(call.given.value("--name"));
  if (name) return std::move(*name);
  return tl::unexpected(fmt::format("found {}; expected {}", name.error().found, name.error().expected));
}

namespace {

std::string as_day(const std::tm& time) {
  return fmt::format("{:04}-{:02}-{:02}", time.tm_year + 1900, time.tm_mon + 1, time.tm_mday);
}

}  // namespace

std::string today() {
  const char* const said = std::getenv("LANDDRILL_TODAY");
  if (said != nullptr && is_written_day(said)) return said;
  const std::time_t now = std::time(nullptr);
  std::tm here{}, universal{};
  localtime_r(&now, &here);
  gmtime_r(&now, &universal);
  return std::max(as_day(here), as_day(universal));
}

// Practice marks as lists: added from a spreadsheet, listed by session, exported again.

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
      const auto named = name_of_trainee(call_);
      if (!named) return misused(call_, named.error());
      name_ = *named;
    }
    const std::vector<std::string> files(call_.given.operands.begin() + 1, call_.given.operands.end());
    if (!all_readable(call_, files)) return Exit::environment;
    auto season = open_book(call_, Season::Mode::write);
    if (!season) return refuse(call_, season.error());
    Exit worst = Exit::ok;
    for (const std::string& file : files) worst = worse(worst, add_list(*season, file));
    messages_.finish();
    if (!told_.empty()) print_page(call_, report::practice_sessions_page("practice add", told_));
    const std::string corrected = corrected_ == 0 ? "" : fmt::format("{} corrected, ", corrected_);
    call_.streams.say(worst == Exit::ok
                          ? fmt::format("landdrill: {} {} added, {}{} already there\n", added_,
                                        added_ == 1 ? "mark" : "marks", corrected, already_there_)
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
      const auto added = PracticeBook(season).add(import.sessions, call_.given.has("--correct"));
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
      const std::size_t corrected = count(added[i], AddedMark::Did::corrected);
      added_ += is_new;
      already_there_ += known;
      corrected_ += corrected;
      told_.push_back({sessions[i].wish.trainee, 0, sessions[i].started_at, sessions[i].lines.size(),
                       marked(sessions[i]), what_became(is_new, corrected, known)});
    }
  }

  // "added", "1 added, 5 already there"
  static std::string what_became(std::size_t is_new, std::size_t corrected, std::size_t known) {
    if (corrected == 0 && known == 0) return "added";
    if (corrected == 0 && is_new == 0) return "already there";
    std::string text;
    const auto say = [&](std::size_t number, std::string_view what) {
      if (number > 0) text += fmt::format("{}{} {}", text.empty() ? "" : ", ", number, what);
    };
    say(is_new, "added");
    say(corrected, "corrected");
    say(known, "already there");
    return text;
  }

  Call& call_;
  Messages messages_;
  std::string name_;  // of --name
  std::vector<report::PracticeSessionLine> told_;
  std::size_t added_ = 0, already_there_ = 0, corrected_ = 0;
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
    const auto named = name_of_trainee(call);
    if (!named) return misused(call, named.error());
    name = *named;
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
                       one.left_out   ? "left out"
                       : one.finished ? ""
                                      : "paused"});
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
      for (std::size_t i = 0; i < session.lines.size() && session.finished && !session.left_out; ++i) {
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

// Left out, a session counts for nothing and keeps its marks, so that it can count again.

namespace {

Exit change_whether_it_counts(Call& call, bool out) {
  const auto named = name_of_trainee(call);
  if (!named) return misused(call, named.error());
  if (!call.given.has("--session")) return misused(call, "--session NUMBER|DATE is missing: which session?");
  auto season = open_book(call, Season::Mode::write);
  if (!season) return refuse(call, season.error());
  PracticeBook practice(*season);
  auto sessions = practice.all();
  if (!sessions) return refuse(call, sessions.error());
  std::erase_if(*sessions, [&](const PracticeSession& one) {
    return !same_trainee(one.wish.trainee, *named) || one.left_out == out;
  });
  const auto chosen =
      chosen_session(call, *sessions, out ? "a session of hers" : "a session of hers that was left out");
  if (!chosen) return misused(call, chosen.error());
  const PracticeSession& session = **chosen;
  const auto done = out ? practice.omit(session.id) : practice.include(session.id);
  if (!done) return refuse(call, done.error());
  print_page(call, report::practice_counted_page({session.wish.trainee, session.number, session.started_at,
                                                  session.lines.size(), marked(session), ""},
                                                 out));
  return Exit::ok;
}

}  // namespace

Exit practice_omit(Call& call) {
  return change_whether_it_counts(call, true);
}

Exit practice_include(Call& call) {
  return change_whether_it_counts(call, false);
}

}  // namespace landdrill::cli
