#include "tables/store/practice_book.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "tables/store/season_inside.h"

namespace landdrill {

using namespace store;

namespace {

using Did = KeptMark::Did;

constexpr std::string_view words_of_did[] = {"open", "marked", "skipped"};

Did did_from(std::string_view word) {
  return static_cast<Did>(std::find(std::begin(words_of_did), std::end(words_of_did), word) -
                          std::begin(words_of_did));
}

void read_lines(Database& db, PracticeSession& session) {
  Statement rows(
      db, "SELECT block_id, line, did, mark, late FROM practice_line WHERE practice_id = ? ORDER BY position",
      session.id);
  while (rows.next()) {
    session.lines.push_back({rows.number(0), rows.text(1)});
    KeptMark mark{did_from(rows.text(2)), std::nullopt, rows.number(4) != 0};
    if (!rows.is_null(3)) mark.mark = Decimal::parse(rows.text(3));
    session.marks.push_back(mark);
  }
}

// Those that `which` chooses, with their lines.
std::vector<PracticeSession> sessions_of(Database& db, std::string_view trainee, const std::string& which) {
  Transaction transaction(db, Transaction::Kind::read);
  std::vector<PracticeSession> sessions;
  Statement rows(
      db,
      "SELECT id, started_at, finished_at IS NOT NULL, seconds_each FROM practice WHERE trainee = ? AND " +
          which,
      trainee);
  while (rows.next()) {
    PracticeSession session;
    session.id = rows.number(0);
    session.wish.trainee = trainee;
    session.started_at = rows.text(1);
    session.finished = rows.number(2) != 0;
    if (!rows.is_null(3)) session.wish.seconds_each = static_cast<int>(rows.number(3));
    read_lines(db, session);
    sessions.push_back(std::move(session));
  }
  return sessions;
}

}  // namespace

Result<std::int64_t> PracticeBook::start(const PracticeWish& wish, const std::vector<PracticeLine>& lines) {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::write);
    Statement insert(db,
                     "INSERT INTO practice (trainee, started_at, seconds_each) VALUES (?, "
                     "strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), nullif(?, 0)) RETURNING id",
                     wish.trainee, wish.seconds_each.value_or(0));
    insert.next();
    const std::int64_t id = insert.number(0);
    insert.next();
    Statement line(db,
                   "INSERT INTO practice_line (practice_id, position, block_id, line) VALUES (?, ?, ?, ?)");
    for (std::size_t i = 0; i < lines.size(); ++i) line.run(id, i, lines[i].block, lines[i].line);
    transaction.commit();
    return id;
  });
}

Result<void> PracticeBook::mark(std::int64_t session, std::size_t line, const KeptMark& mark) {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::write);
    const std::optional<std::string> text = mark.mark ? std::optional(mark.mark->text()) : std::nullopt;
    Statement update(
        db,
        "UPDATE practice_line SET did = ?, mark = ?, late = ? WHERE practice_id = ? AND position = ? "
        "RETURNING 1",
        words_of_did[static_cast<std::size_t>(mark.did)], text, mark.late ? 1 : 0, session, line);
    if (!update.next())
      throw Refused({db.file(), fmt::format("the session {} has no line {}", session, line + 1), ""});
    update.next();
    transaction.commit();
  });
}

Result<void> PracticeBook::finish(std::int64_t session) {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::write);
    Statement update(
        db, "UPDATE practice SET finished_at = strftime('%Y-%m-%dT%H:%M:%SZ', 'now') WHERE id = ?", session);
    update.next();
    transaction.commit();
  });
}

Result<std::optional<PracticeSession>> PracticeBook::unfinished(std::string_view trainee) const {
  return attempt([&]() -> std::optional<PracticeSession> {
    std::vector<PracticeSession> open =
        sessions_of(season_.inside_->db, trainee, "finished_at IS NULL ORDER BY id DESC LIMIT 1");
    if (open.empty()) return std::nullopt;
    return std::move(open.front());
  });
}

Result<std::vector<PracticeSession>> PracticeBook::sessions(std::string_view trainee) const {
  return attempt(
      [&] { return sessions_of(season_.inside_->db, trainee, "finished_at IS NOT NULL ORDER BY id"); });
}

Result<std::vector<std::string>> PracticeBook::trainees() const {
  return attempt([&] {
    std::vector<std::string> names;
    Statement rows(season_.inside_->db, "SELECT DISTINCT trainee FROM practice ORDER BY trainee");
    while (rows.next()) names.push_back(rows.text(0));
    return names;
  });
}

}  // namespace landdrill
