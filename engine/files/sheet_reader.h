// One sheet after another, understood as far as it can be: read, put together, tied to its value set.
//
//   SheetReader reader({"duet.sheet", "-"}, sets, {tell_trouble, tell_set});
//   while (reader.next()) if (reader.sheet().routine()) ...
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/files/in_order.h"
#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "grammar/blocks.h"
#include "tables/folder.h"

namespace landdrill {

// No sheet is longer than this; reading stops there.
inline constexpr std::size_t longest_sheet = std::size_t{64} << 20;

// What a file is called in messages: "standard input" for "-".
std::string shown(const std::string& file);

// The files that cannot be read, before anything is read: not there, a folder, not allowed.
std::vector<Trouble> unreadable(const std::vector<std::string>& files);

// The whole of a file, or of standard input for "-". Refused when it is longer than longest_sheet.
Result<std::string> read_whole(const std::string& file);

// Many files as one long stream of sheets, one sheet in memory at a time.
//
//   SheetStream stream({"duet.sheet", "panels.sheet", "-"});
//   while (auto pieces = stream.next()) ...     // the texts of one routine with its runs and panels
//
// A sheet goes from one `routine` line (and the comments just above it) to the next; what stands in a file
// before its first `routine` line belongs to the sheet before, from the file before.

class SheetStream {
 public:
  explicit SheetStream(std::vector<std::string> files);
  ~SheetStream();

  // The pieces of the next sheet, in order; empty at the end. What stands before the first `routine` line of all
  // belongs to the first sheet.
  std::optional<std::vector<NamedText>> next();
  // Whether another `routine` line follows.
  bool more() const { return more_; }
  // The files that refused while they were read, or whose sheet was too long: that sheet and the rest of the
  // file are left out. Taken by the caller.
  std::vector<Trouble> take_troubles() { return std::exchange(troubles_, {}); }

 private:
  struct File;
  bool open_next();
  void close();

  std::vector<std::string> files_;
  std::size_t next_file_ = 0;
  std::unique_ptr<File> file_;
  std::vector<Trouble> troubles_;
  bool more_ = false;
};

// A sheet of a stream, and the set that it is tied to.
struct StreamSheet : Sheet {
  const ReadSet* set = nullptr;
  bool without_set = false;  // its value set cannot be used; said already
  // Its line of a batch, where that was worked out ahead of its turn; then its tree and its routine are gone.
  struct Ahead {
    std::string line, not_here;
  };
  std::optional<Ahead> ahead = {};

  bool ok() const { return Sheet::ok() && !without_set; }
};

class SheetReader {
 public:
  // What a reader tells as it meets it.
  struct Heard {
    std::function<void(const Trouble&)> trouble;
    std::function<void(const ReadSet&)> unusable;  // each set once
  };
  // `set`: the name of the one that all sheets are tied to, whatever they say; empty: the one that each says.
  SheetReader(std::vector<std::string> files, ValueSets& sets, Heard heard, std::string set = {});

  // False at the end.
  bool next();
  // The same without a value set: read and put together only.
  bool next_unpriced();
  // From now on several sheets at once are resolved ahead of their turn, and `also` is called for each of
  // them, at once as well: it changes nothing but this sheet. A sheet that needs another set than the one asked for
  // last waits for its turn, without `also`. That pays when `also` leaves little of the sheet.
  using Work = std::function<void(StreamSheet&)>;
  void read_ahead(Work also);
  const StreamSheet& sheet() const { return place_->sheet; }
  // Whether another routine follows.
  bool more() const { return place_->more; }

 private:
  // A sheet, and what was met on the way to it; or the end of the stream.
  struct Place {
    bool ended = false;
    bool more = false;  // whether another routine follows
    std::vector<Trouble> troubles;
    std::vector<NamedText> texts;  // as they were cut; then the sheet has them
    StreamSheet sheet;
  };
  // Some that follow each other: as many as are worth handing to another thread.
  using Batch = std::vector<Place>;

  std::optional<std::size_t> cut(Batch& batch);
  Place cut_one();
  void work_on(Place& place) const;
  Place& next_place();
  bool read_next();
  void tie_to_set(StreamSheet& sheet);
  std::string_view set_name(const ast::Sheet& sheet) const;
  void choose_set(StreamSheet& sheet);
  void no_such_set(StreamSheet& sheet, const Trouble& trouble);

  ValueSets& sets_;
  const Heard heard_;
  const std::string forced_set_, first_file_;
  std::vector<const ReadSet*> reported_;
  bool any_ = false;  // sheet, or trouble
  Work also_;
  SheetStream stream_;
  bool all_cut_ = false;
  Place end_;
  Place* place_ = nullptr;  // of the sheet
  Batch* batch_ = nullptr;
  std::size_t at_ = 0;       // in the batch: the next place
  InOrder<Batch> in_order_;  // last, so that its threads end first: their work needs the others
};

}  // namespace landdrill
