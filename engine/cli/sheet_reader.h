// One sheet after another, understood as far as it can be: read, put together, tied to its value set.
//
//   SheetReader reader(call);
//   while (reader.next()) if (reader.sheet().routine()) ...
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/read_ahead.h"
#include "engine/routine/sheet.h"
#include "grammar/blocks.h"
#include "tables/folder.h"

namespace landdrill::cli {

class SheetReader {
 public:
  // Heeds the operands FILE..., --set, --values and --season.
  explicit SheetReader(Call& call);
  SheetReader(Call& call, std::vector<std::string> files);

  // False at the end. Troubles and the mistakes of value sets are printed as they are met.
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
  // The worst that was met so far in the files and the sets.
  Exit worst() const { return worst_; }
  Values& values() { return values_; }

 private:
  void work_ahead(StreamSheet& sheet) const;
  bool read_next();
  void tie_to_set();
  std::string_view set_name(const ast::Sheet& sheet) const;
  void choose_set(const ast::Sheet& sheet);
  void no_such_set(const ast::Sheet& sheet, const Trouble& trouble);
  void report_set(const ReadSet& set);

  Call& call_;
  Values values_;
  ReadAhead::Work also_;
  StreamSheet nothing_;
  StreamSheet* sheet_ = nullptr;
  bool more_ = false;
  std::string forced_set_;
  std::vector<const ReadSet*> reported_;
  std::string first_file_;
  bool any_ = false;
  Exit worst_ = Exit::ok;
  ReadAhead ahead_;  // last, so that it ends first: its work needs the others
};

// Names every file that cannot be read; false when there is one: then nothing should be done.
bool all_readable(Call& call, const std::vector<std::string>& files);

}  // namespace landdrill::cli
