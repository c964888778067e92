#include "tables/store/practice_book.h"

#include <fmt/format.h>

#include <algorithm>

#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/store/database.h"
#include "tables/store/refusal.h"

namespace landdrill {

using namespace store;

namespace {

constexpr std::string_view words_of_marking[] = {"open", "marked", "skipped"};

// Of did, mark and late from this column on.
KeptMark kept_mark(const Statement& row, int column) {
  KeptMark mark{
      words::value_of<KeptMark::Did>(words_of_marking, row.view(column)).value_or(KeptMark::Did::open),
      std::nullopt, row.number(column + 2) != 0};
  if (!row.is_null(column + 1)) mark.mark = Decimal::parse(row.text(column + 1));
  return mark;
}

void read_lines(Database& db, PracticeSession& session) {
  Statement rows(
      db, "SELECT block_id, line, did, mark, late FROM practice_line WHERE practice_id = ? ORDER BY position",
      session.id);
  while (rows.next()) {
    session.lines.push_back({rows.number(0), rows.text(1)});
    session.marks.push_back(kept_mark(rows, 2));
  }
}

// Those that `which` chooses, with their lines; in it ? is the trainee.
std::vector<PracticeSession> sessions_of(Database& db, std::string_view trainee, const std::string& which) {
  std::vector<PracticeSession> sessions;
  Statement rows(
      db,
      "SELECT id, started_at, finished_at IS NOT NULL, seconds_each, trainee, number, left_out, tells_panel "
      "FROM (SELECT *, "
      "row_number() OVER (PARTITION BY trainee ORDER BY started_at, id) AS number FROM practice) WHERE " +
          which,
      trainee);
  while (rows.next()) {
    PracticeSession session;
    session.id = rows.number(0);
    session.wish.trainee = rows.text(4);
    session.started_at = rows.text(1);
    session.finished = rows.number(2) != 0;
    if (!rows.is_null(3)) session.wish.seconds_each = static_cast<int>(rows.number(3));
    session.number = static_cast<int>(rows.number(5));
    session.left_out = rows.number(6) != 0;
    session.wish.tells_panel = rows.number(7) != 0;
    read_lines(db, session);
    sessions.push_back(std::move(session));
  }
  return sessions;
}

std::optional<std::string> mark_text(const std::optional<Decimal>& mark) {
  return mark ? std::optional(mark->text()) : std::nullopt;
}

std::string_view word_for(KeptMark::Did did) {
  return words_of_marking[static_cast<std::size_t>(did)];
}

// Adds sessions, inside the caller's transaction.
class AddingSessions {
 public:
  AddingSessions(Database& db, bool correct)
      : correct_(correct),
        session_(db, "SELECT id FROM practice WHERE trainee = ? AND started_at = ? ORDER BY id LIMIT 1"),
        make_(db,
              "INSERT INTO practice (trainee, started_at, finished_at, seconds_each) VALUES (?1, ?2, ?2, "
              "nullif(?3, 0))"),
        known_(db,
               "SELECT l.mark, l.position FROM practice_line l JOIN block k ON k.id = l.block_id JOIN block "
               "g ON g.id = ?3 "
               "WHERE l.practice_id = ?1 AND l.line = ?2 AND k.routine_id = g.routine_id AND k.what = g.what "
               "AND k.date = g.date AND k.title = g.title"),
        line_(db,
              "INSERT INTO practice_line (practice_id, position, block_id, line, did, mark, late) SELECT ?1, "
              "coalesce(max(position) + 1, 0), ?2, ?3, ?4, ?5, ?6 FROM practice_line WHERE practice_id = ?1"),
        correction_(
            db,
            "UPDATE practice_line SET did = ?, mark = ?, late = ? WHERE practice_id = ? AND position = ?") {}

  std::vector<AddedMark> add(const PracticeSession& session) {
    const std::int64_t id = id_of(session);
    std::vector<AddedMark> added;
    for (std::size_t i = 0; i < session.lines.size(); ++i)
      added.push_back(add_line(id, session.lines[i], session.marks[i]));
    return added;
  }

 private:
  std::int64_t id_of(const PracticeSession& session) {
    session_.start(session.wish.trainee, session.started_at);
    if (session_.next()) return session_.number(0);
    make_.start(session.wish.trainee, session.started_at, session.wish.seconds_each.value_or(0));
    return make_.new_row();
  }

  AddedMark add_line(std::int64_t session, const PracticeLine& line, const KeptMark& mark) {
    known_.start(session, line.line, line.block);
    if (!known_.next()) {
      line_.run(session, line.block, line.line, word_for(mark.did), mark_text(mark.mark), mark.late ? 1 : 0);
      return {};
    }
    const std::optional<Decimal> kept = known_.is_null(0) ? std::nullopt : Decimal::parse(known_.text(0));
    if (kept == mark.mark) return {AddedMark::Did::already_there, kept};
    if (!correct_) return {AddedMark::Did::differs, kept};
    correction_.run(word_for(mark.did), mark_text(mark.mark), mark.late ? 1 : 0, session, known_.number(1));
    return {AddedMark::Did::corrected, kept};
  }

  bool correct_;
  Statement session_, make_, known_, line_, correction_;
};

bool any_differs(const std::vector<std::vector<AddedMark>>& all) {
  for (const auto& session : all)
    for (const AddedMark& one : session)
      if (one.did == AddedMark::Did::differs) return true;
  return false;
}

}  // namespace

Result<std::int64_t> PracticeBook::start(const PracticeWish& wish, const std::vector<PracticeLine>& lines) {
  Database& db = *season_.db_;
  return writing(db, [&] {
    Statement insert(
        db,
        "INSERT INTO practice (trainee, started_at, seconds_each, tells_panel) SELECT ?1, "
        "max(strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), coalesce((SELECT strftime('%Y-%m-%dT%H:%M:%SZ', "
        "max(started_at), '+1 second') FROM practice WHERE trainee = ?1), '')), nullif(?2, 0), ?3",
        wish.trainee, wish.seconds_each.value_or(0), wish.tells_panel ? 1 : 0);
    const std::int64_t id = insert.new_row();
    Statement line(db,
                   "INSERT INTO practice_line (practice_id, position, block_id, line) VALUES (?, ?, ?, ?)");
    for (std::size_t i = 0; i < lines.size(); ++i) line.run(id, i, lines[i].block, lines[i].line);
    return id;
  });
}

Result<KeptMark> PracticeBook::mark(std::int64_t session, std::size_t line, const KeptMark& mark,
                                    const KeptMark& before) {
  Database& db = *season_.db_;
  return writing(db, [&] {
    Statement row(
        db,
        "SELECT l.did, l.mark, l.late, p.finished_at IS NOT NULL FROM practice_line l JOIN practice p "
        "ON p.id = l.practice_id WHERE l.practice_id = ? AND l.position = ?",
        session, line);
    if (!row.next())
      throw Refused({db.file(), fmt::format("the session {} has no line {}", session, line + 1), ""});
    const KeptMark now = kept_mark(row, 0);
    if (row.number(3) != 0 || now != before) return now;
    Statement(db,
              "UPDATE practice_line SET did = ?, mark = ?, late = ? WHERE practice_id = ? AND position = ?",
              word_for(mark.did), mark_text(mark.mark), mark.late ? 1 : 0, session, line)
        .next();
    return mark;
  });
}

Result<void> PracticeBook::finish(std::int64_t session) {
  Database& db = *season_.db_;
  return writing(db, [&] {
    Statement(db, "UPDATE practice SET finished_at = strftime('%Y-%m-%dT%H:%M:%SZ', 'now') WHERE id = ?",
              session)
        .next();
  });
}

namespace {

Result<void> set_left_out(Database& db, std::int64_t session, bool left_out) {
  return writing(db, [&] {
    Statement(db, "UPDATE practice SET left_out = ? WHERE id = ?", left_out ? 1 : 0, session).next();
  });
}

}  // namespace

Result<void> PracticeBook::omit(std::int64_t session) {
  return set_left_out(*season_.db_, session, true);
}

Result<void> PracticeBook::include(std::int64_t session) {
  return set_left_out(*season_.db_, session, false);
}

Result<std::vector<std::vector<AddedMark>>> PracticeBook::add(const std::vector<PracticeSession>& sessions,
                                                              bool correct) {
  return attempt([&] {
    Database& db = *season_.db_;
    Transaction transaction(db, Transaction::Kind::write);
    std::vector<std::vector<AddedMark>> added;
    {
      AddingSessions adding(db, correct);
      for (const PracticeSession& session : sessions) added.push_back(adding.add(session));
    }
    if (!any_differs(added)) transaction.commit();
    return added;
  });
}

Result<std::vector<PracticeSession>> PracticeBook::paused(std::string_view trainee) const {
  Database& db = *season_.db_;
  return reading(db, [&] {
    return sessions_of(db, trainee, "trainee = ? AND finished_at IS NULL AND NOT left_out ORDER BY number");
  });
}

Result<std::vector<PracticeSession>> PracticeBook::finished(std::string_view trainee) const {
  Database& db = *season_.db_;
  return reading(db, [&] {
    return sessions_of(db, trainee,
                       "trainee = ? AND finished_at IS NOT NULL AND NOT left_out ORDER BY number");
  });
}

Result<std::vector<PracticeSession>> PracticeBook::of(std::string_view trainee) const {
  Database& db = *season_.db_;
  return reading(db,
                 [&] { return sessions_of(db, trainee, "trainee = ? AND NOT left_out ORDER BY number"); });
}

Result<std::vector<PracticeSession>> PracticeBook::all() const {
  return reading(*season_.db_,
                 [&] { return sessions_of(*season_.db_, "", "? = '' ORDER BY trainee, number"); });
}

Result<std::vector<std::string>> PracticeBook::trainees() const {
  return attempt([&] {
    std::vector<std::string> names;
    Statement rows(*season_.db_, "SELECT DISTINCT trainee FROM practice ORDER BY trainee");
    while (rows.next()) names.push_back(rows.text(0));
    return names;
  });
}

Result<std::string> PracticeBook::known_as(std::string_view trainee) const {
  auto known = trainees();
  if (!known) return tl::unexpected(known.error());
  if (std::find(known->begin(), known->end(), trainee) != known->end()) return std::string(trainee);
  const auto same = std::find_if(known->begin(), known->end(),
                                 [&](const std::string& one) { return same_trainee(one, trainee); });
  return same == known->end() ? std::string(trainee) : *same;
}

}  // namespace landdrill
