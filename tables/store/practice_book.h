// The marks of officials in training, kept in the season file: every mark is on disk as soon as it is given.
//
//   PracticeBook practice(*season);
//   auto session = practice.start({"Robin", 30}, {{panel_id, "2"}, {panel_id, "choreography"}});
//   practice.mark(*session, 0, {KeptMark::Did::marked, *Decimal::parse("7.25")});
//   practice.paused("Robin")     // gone on with there
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tables/decimal.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill {

// What is to be marked: a line of a panel of the book.
struct PracticeLine {
  std::int64_t block = 0;  // the panel, KeptBlock::id
  std::string line;        // "2", "choreography"
};
struct KeptMark {
  enum class Did { open, marked, skipped } did = Did::open;
  std::optional<Decimal> mark;  // for marked
  bool late = false;            // the time was up before

  bool operator==(const KeptMark&) const = default;
};
struct PracticeWish {
  std::string trainee;
  std::optional<int> seconds_each;
  bool tells_panel = false;  // the panel's marks behind each line, which then stays as it is
};
struct PracticeSession {
  std::int64_t id = 0;
  PracticeWish wish;
  std::string started_at;
  bool finished = false;
  std::vector<PracticeLine> lines;
  std::vector<KeptMark> marks;  // one for each line
  int number = 0;               // among all sessions of this trainee, by their start; 1 is the first
  bool left_out = false;        // it counts for nothing
};

// What became of a line of a session that was added.
struct AddedMark {
  enum class Did { added, already_there, differs, corrected } did = Did::added;
  std::optional<Decimal> kept;  // what the book has, where it differs, or had, where it is corrected
};

class PracticeBook {
 public:
  // The season outlives this; opened to write for everything that changes something.
  explicit PracticeBook(Season& season) : season_(season) {}

  // Starts a second after the last one of this trainee when that began just now: trainee and start tell
  // sessions apart wherever they are taken.
  Result<std::int64_t> start(const PracticeWish& wish, const std::vector<PracticeLine>& lines);
  // Also instead of what was given before: a trainee may go back until she is done. Keeps it if the line
  // still has `before`, and tells what it has then: the same session may go on in another window.
  Result<KeptMark> mark(std::int64_t session, std::size_t line, const KeptMark& mark, const KeptMark& before);
  Result<void> finish(std::int64_t session);
  // Finished sessions from elsewhere, by their trainee and start: for each line of each what became of it.
  // What is kept already stays, the rest is kept with it; where any mark differs from what is kept for the
  // same line of the same panel, nothing is, unless they `correct` what is kept.
  Result<std::vector<std::vector<AddedMark>>> add(const std::vector<PracticeSession>& sessions,
                                                  bool correct = false);
  // It keeps its marks and its number.
  Result<void> omit(std::int64_t session);
  Result<void> include(std::int64_t session);
  // Those that were not finished, oldest first; none that was left out.
  Result<std::vector<PracticeSession>> paused(std::string_view trainee) const;
  // The finished ones, oldest first; none that was left out.
  Result<std::vector<PracticeSession>> finished(std::string_view trainee) const;
  // Both, oldest first.
  Result<std::vector<PracticeSession>> of(std::string_view trainee) const;
  // Of everyone, finished or not, left out or not: by name, then oldest first.
  Result<std::vector<PracticeSession>> all() const;
  // Everyone who has a session, by name.
  Result<std::vector<std::string>> trainees() const;
  // How the name of a trainee was written at first, whatever its case; as it is given when it is new.
  Result<std::string> known_as(std::string_view trainee) const;

 private:
  Season& season_;
};

}  // namespace landdrill
