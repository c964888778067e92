// How trainees' marks compare with the panels', an expert's and each other; and a form to mark on by hand.
#include "engine/judging/practice_report.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/marking.h"
#include "engine/judging/practice_compare.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/practice.h"
#include "engine/report/pages/practice_compare.h"
#include "engine/report/render.h"
#include "engine/season/kept_sheets.h"
#include "engine/season/practice_tasks.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/store/practice_book.h"
#include "tables/store/refusal.h"

namespace landdrill::cli {

report::Typed<const PracticeSession*> chosen_session(const Call& call,
                                                     const std::vector<PracticeSession>& sessions,
                                                     std::string_view expected) {
  const std::string wanted(call.given.value("--session"));
  const PracticeSession* found = nullptr;
  std::vector<int> numbers;
  for (const PracticeSession& one : sessions) {
    if (std::to_string(one.number) != wanted && one.started_at.substr(0, 10) != wanted) continue;
    found = &one;
    numbers.push_back(one.number);
  }
  if (numbers.size() == 1) return found;
  return tl::unexpected(
      numbers.empty()
          ? fmt::format(
                "found --session {}; expected the number or the day of {}: see `landdrill practice list`",
                wanted, expected)
          : fmt::format("{} has several sessions of {}: name one of {} by its number", found->wish.trainee,
                        wanted, fmt::join(numbers, ", ")));
}

void tell_practice(Call& call, const PracticeSession& session, const ComparedMarks& marks,
                   const std::string& reference) {
  const PracticeReport report = practice_report(marks.tasks, marks.done, reference);
  print_page(call, report::practice_page({session.wish.trainee, session.started_at, marks.tasks, marks.done,
                                          &report, reference}));
}

namespace {

// The book, opened to read, with what is asked of the practice in it.
struct PracticeRead {
  explicit PracticeRead(Season& season) : book(season), practice(season), tasks(book) {}
  Book book;
  PracticeBook practice;
  BookTasks tasks;
};

// Whose marks stand in the place of the panels'.
struct Expert {
  std::string name = "the panel";
  std::optional<ComparedMarks> marks;  // none: the panels'

  ComparedMarks in_place(ComparedMarks of) const { return marks ? beside_expert(of, *marks) : std::move(of); }
};

// Of --expert; throws Refused.
report::Typed<Expert> expert_of(const Call& call, PracticeRead& read) {
  Expert expert;
  if (!call.given.has("--expert")) return expert;
  auto name = trainee_name(call.given.value("--expert"));
  if (!name)
    return tl::unexpected(fmt::format("found {}; expected {}", name.error().found, name.error().expected));
  expert.name = store::must(read.practice.known_as(*name));
  expert.marks = store::must(marks_so_far(read.practice, read.tasks, expert.name));
  if (expert.marks->tasks.empty())
    return tl::unexpected(fmt::format("{} has no finished session in this book", expert.name));
  return expert;
}

// Throws Refused.
Exit tell_session(Call& call, PracticeRead& read, const std::vector<PracticeSession>& all,
                  const Expert& expert) {
  std::vector<PracticeSession> finished = all;
  std::erase_if(finished, [](const PracticeSession& one) { return !one.finished; });
  const PracticeSession* session = &finished.back();
  if (call.given.has("--session")) {
    const auto chosen = chosen_session(call, finished, "a finished session");
    if (!chosen) return misused(call, chosen.error());
    session = *chosen;
  }
  const ComparedMarks marks = compared_marks(store::must(tasks_of(*session, all, read.tasks)), *session);
  tell_practice(call, *session, expert.in_place(marks), expert.name);
  return Exit::ok;
}

// Throws Refused.
Exit tell_curve(Call& call, PracticeRead& read, const std::vector<PracticeSession>& all,
                const Expert& expert) {
  std::vector<PracticeReport> reports;
  std::vector<report::PracticePoint> points;
  for (const PracticeSession& session : all) {
    if (!session.finished) continue;
    const ComparedMarks marks =
        expert.in_place(compared_marks(store::must(tasks_of(session, all, read.tasks)), session));
    reports.push_back(practice_report(marks.tasks, marks.done, expert.name));
    points.push_back({session.number, session.started_at, nullptr});
  }
  for (std::size_t i = 0; i < points.size(); ++i) points[i].report = &reports[i];
  print_page(call, report::practice_curve_page(all.front().wish.trainee, expert.name, points));
  return Exit::ok;
}

// What reads practice in the book.
template <class Work>
Exit with_practice(Call& call, Work work) {
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const auto done = store::attempt([&] {
    PracticeRead read(*season);
    return work(read);
  });
  return done ? *done : refuse(call, done.error());
}

// Those of --name, otherwise all, without the expert.
std::vector<std::string> compared_names(const Call& call, const PracticeRead& read, const Expert& expert) {
  std::vector<std::string> names;
  for (const std::string& name : call.given.values("--name"))
    names.push_back(store::must(read.practice.known_as(name)));
  if (names.empty()) names = store::must(read.practice.trainees());
  if (expert.marks) std::erase(names, expert.name);
  return names;
}

}  // namespace

Exit practice_report(Call& call) {
  const auto named = name_of_trainee(call);
  if (!named) return misused(call, named.error());
  return with_practice(call, [&](PracticeRead& read) {
    const std::string trainee = store::must(read.practice.known_as(*named));
    const auto expert = expert_of(call, read);
    if (!expert) return misused(call, expert.error());
    const std::vector<PracticeSession> all = store::must(read.practice.of(trainee));
    if (std::ranges::none_of(all, &PracticeSession::finished))
      return misused(call, fmt::format("{} has no finished session in this book", trainee));
    return call.given.has("--curve") ? tell_curve(call, read, all, *expert)
                                     : tell_session(call, read, all, *expert);
  });
}

Exit practice_compare(Call& call) {
  return with_practice(call, [&](PracticeRead& read) {
    const auto expert = expert_of(call, read);
    if (!expert) return misused(call, expert.error());
    std::vector<TraineeMarks> trainees;
    for (const std::string& name : compared_names(call, read, *expert)) {
      ComparedMarks marks = expert->in_place(store::must(marks_so_far(read.practice, read.tasks, name)));
      if (!marks.tasks.empty()) trainees.push_back({name, std::move(marks.tasks), std::move(marks.done)});
    }
    if (trainees.empty())
      return misused(call, "there are no finished sessions to compare: see `landdrill practice list`");
    print_page(call, report::practice_compare_page(compare_trainees(trainees, expert->name)));
    return Exit::ok;
  });
}

Exit practice_form(Call& call) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    constexpr int columns_of_a4 = 76;
    KeptSheets kept(book);
    std::string forms;
    const auto read = store::attempt([&] {
      for (const KeptSheet* sheet : kept.read(versions_of(book, wish)))
        if (const std::optional<Routine>& routine = sheet->sheet.routine())
          forms += (forms.empty() ? "" : "\f") +
                   render_text(report::marking_form_page(*routine), {.width = columns_of_a4});
    });
    if (!read) return refuse(call, read.error());
    if (forms.empty()) return nothing_found(call, book, wish);
    call.streams.out.write(forms);
    return Exit::ok;
  });
}

}  // namespace landdrill::cli
