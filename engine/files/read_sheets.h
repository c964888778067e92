// Many files as one long stream of sheets, one sheet in memory at a time.
//
//   SheetStream stream({"duet.sheet", "panels.sheet", "-"});
//   while (auto pieces = stream.next()) ...     // the texts of one routine with its runs and panels
//
// A sheet goes from one `routine` line (and the comments just above it) to the next; what stands in a file
// before its first `routine` line belongs to the sheet before, from the file before.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/routine/sheet.h"
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

}  // namespace landdrill
