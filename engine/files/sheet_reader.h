// One sheet after another, understood as far as it can be: read, put together, tied to its value set.
//
//   SheetReader reader({"duet.sheet", "-"}, sets, {tell_trouble, tell_set});
//   while (reader.next()) if (reader.sheet().routine()) ...
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "engine/files/read_ahead.h"
#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "grammar/blocks.h"
#include "tables/folder.h"

namespace landdrill {

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
