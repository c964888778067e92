// One sheet after another, understood as far as it can be: read, put together, tied to its value set.
//
//   SheetReader reader(call);
//   while (reader.next()) if (reader.sheet().routine()) ...
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/cli/find_values.h"
#include "engine/cli/read_sheets.h"
#include "engine/resolve.h"
#include "grammar/blocks.h"

namespace landdrill::cli {

struct ReadSheet {
  std::vector<Source> pieces;  // of the text
  Assembled assembled;
  const ReadSet* set = nullptr;
  Resolved resolved;
  Diagnostics diagnostics;   // everything that is wrong with it
  bool without_set = false;  // its value set cannot be used; said already

  bool ok() const { return diagnostics.ok() && !without_set; }

  const std::string& file() const { return pieces.front().name; }
  std::string_view title() const;
  // Empty when anything is in error.
  const std::optional<Routine>& routine() const { return resolved.routine; }
};

class SheetReader {
 public:
  // Heeds the operands FILE..., --set, --values and --season.
  explicit SheetReader(Call& call);
  SheetReader(Call& call, std::vector<std::string> files);

  // False at the end. Troubles and the mistakes of value sets are printed as they are met.
  bool next();
  // The same without a value set: read and put together only.
  bool next_unpriced();
  ReadSheet& sheet() { return sheet_; }
  // Whether another routine follows.
  bool more() const { return stream_.more(); }
  // The worst that was met so far in the files and the sets.
  Exit worst() const { return worst_; }
  Values& values() { return values_; }

  // The same sheet tied to another set.
  static Resolved resolved_with(const ReadSheet& sheet, const ValueSet& set);

 private:
  bool read_next();
  void understand();
  void choose_set(const ast::Sheet& sheet);
  void no_such_set(const ast::Sheet& sheet, const Trouble& trouble);
  void report_set(const ReadSet& set);

  Call& call_;
  Values values_;
  SheetStream stream_;
  ReadSheet sheet_;
  std::string forced_set_;
  std::vector<const ReadSet*> reported_;
  std::string first_file_;
  bool any_ = false;
  Exit worst_ = Exit::ok;
};

// Names every file that cannot be read; false when there is one: then nothing should be done.
bool all_readable(Call& call, const std::vector<std::string>& files);

}  // namespace landdrill::cli
