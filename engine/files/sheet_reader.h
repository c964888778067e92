// One sheet after another, understood as far as it can be: read, put together, tied to its value set.
//
//   SheetReader reader({"duet.sheet", "-"}, sets, {tell_trouble, tell_set});
//   while (reader.next()) if (reader.sheet().routine()) ...
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/files/in_order.h"
#include "engine/files/read_sheets.h"
#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "grammar/blocks.h"
#include "tables/folder.h"

namespace landdrill {

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

// The sheets of a stream, put together and worked on one by one, in their order.
//
//   ReadAhead ahead(files, [](StreamSheet& sheet) { ... });
//   ReadAhead::Place& place = ahead.next();   // place.sheet, place.troubles, place.more
//   ahead.ahead();      // from now on the function is called for several sheets at once
//
// That pays when the function leaves little of the sheet.

class ReadAhead {
 public:
  // Ahead it changes nothing but this sheet, and this thread goes on meanwhile.
  using Work = std::function<void(StreamSheet&)>;

  ReadAhead(std::vector<std::string> files, Work work);

  struct Place {
    bool ended = false;             // no sheet here: the stream is at its end
    bool more = false;              // whether another routine follows
    std::vector<Trouble> troubles;  // met on the way to this sheet
    StreamSheet sheet;
    std::vector<NamedText> texts;  // as they were cut; then the sheet has them
  };
  // Lives until the next call.
  Place& next();
  void ahead();

 private:
  // Some sheets that follow each other: as many as are worth handing to another thread.
  using Batch = std::vector<Place>;
  std::optional<std::size_t> cut(Batch& batch);
  Place cut_one();
  void work_on(Place& place) const;

  SheetStream stream_;
  Work work_;
  bool ahead_ = false, ended_ = false;
  Batch* now_ = nullptr;
  std::size_t at_ = 0;
  Place end_;
  InOrder<Batch> in_order_;  // last, so that its threads end first
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
  // them, at once as well. A sheet that needs another set than the one asked for last waits for its turn,
  // without `also`.
  void read_ahead(ReadAhead::Work also);
  const StreamSheet& sheet() const { return *sheet_; }
  // Whether another routine follows.
  bool more() const { return more_; }

 private:
  void work_ahead(StreamSheet& sheet) const;
  bool read_next();
  void tie_to_set();
  std::string_view set_name(const ast::Sheet& sheet) const;
  void choose_set(const ast::Sheet& sheet);
  void no_such_set(const ast::Sheet& sheet, const Trouble& trouble);
  void report_set(const ReadSet& set);

  ValueSets& sets_;
  const Heard heard_;
  ReadAhead::Work also_;
  StreamSheet nothing_;
  StreamSheet* sheet_ = nullptr;
  bool more_ = false;
  const std::string forced_set_;
  std::vector<const ReadSet*> reported_;
  std::string first_file_;
  bool any_ = false;  // sheet, or trouble
  ReadAhead ahead_;   // last, so that it ends first: its work needs the others
};

}  // namespace landdrill
