#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <utility>

#include "engine/files/sheet_reader.h"
#include "engine/routine/sheet.h"
#include "grammar/characters.h"
#include "grammar/words.h"
#include "tables/folder.h"

namespace landdrill {
namespace {

constexpr std::size_t chunk = 1 << 18;
constexpr std::string_view standard_input = "-";

Trouble trouble_with(const std::string& file, int error) {
  Trouble trouble{shown(file), std::strerror(error), {}};
  if (error == ENOENT) trouble = {file, "there is no such file", "check the spelling and the folder"};
  if (error == EISDIR)
    trouble = {file, "this is a folder, not a sheet", "name the files in it: " + file + "/*.sheet"};
  if (error == EACCES) trouble = {file, "you are not allowed to read it", {}};
  return trouble;
}

int refusal_of(const std::string& file) {
  struct stat seen {};
  if (file == standard_input) return 0;
  if (stat(file.c_str(), &seen) != 0) return errno;
  if (S_ISDIR(seen.st_mode)) return EISDIR;
  return access(file.c_str(), R_OK) == 0 ? 0 : errno;
}

enum class LineKind { empty, comment, routine, other };

LineKind kind_of(const char* first, const char* last) {
  if (last - first >= 3 && std::memcmp(first, "\xEF\xBB\xBF", 3) == 0) first += 3;
  first = characters::skip_blanks(first, last);
  if (first == last) return LineKind::empty;
  if (*first == '#') return LineKind::comment;
  if (*first != 'r' && *first != 'R') return LineKind::other;
  const char* end = characters::code_end(first, last);
  const std::string_view word(first, static_cast<std::size_t>(end - first));
  return words::find(word) == words::Word::routine ? LineKind::routine : LineKind::other;
}

}  // namespace

std::string shown(const std::string& file) {
  return file == standard_input ? "standard input" : file;
}

std::vector<Trouble> unreadable(const std::vector<std::string>& files) {
  std::vector<Trouble> found;
  for (const std::string& file : files)
    if (const int error = refusal_of(file); error != 0) found.push_back(trouble_with(file, error));
  return found;
}

// A file that is read through a window: what is not yet handed out, as far as it has been read.
struct SheetStream::File {
  std::string name;
  int descriptor = -1;
  std::vector<char> window;
  std::size_t begin = 0, end = 0;  // of what is not handed out
  std::size_t line = 1;            // the line that starts at `begin`
  bool ended = false;
  int error = 0;

  File(std::string file, int opened) : name(std::move(file)), descriptor(opened) {
    struct stat seen {};
    const bool plain = fstat(opened, &seen) == 0 && S_ISREG(seen.st_mode);
    const auto size = plain ? static_cast<std::size_t>(seen.st_size) : chunk;
    window.resize(std::min(size, chunk) + 1);
  }
  ~File() {
    if (descriptor > 0) ::close(descriptor);
  }

  // Reads on. Moves what is not handed out to the front of the window first.
  void read_more() {
    if (begin > 0) {
      std::memmove(window.data(), window.data() + begin, end - begin);
      end -= begin;
      begin = 0;
    }
    if (end == window.size()) window.resize(2 * window.size() + chunk);
    const ssize_t got = ::read(descriptor, window.data() + end, window.size() - end);
    if (got < 0 && errno == EINTR) return;
    if (got < 0) error = errno;
    if (got <= 0) ended = true;
    if (got > 0) end += static_cast<std::size_t>(got);
  }

  // The first `wanted` in the window from `from` on, or `to`.
  std::size_t find(char wanted, std::size_t from, std::size_t to) const {
    if (from == to) return to;
    const void* found = std::memchr(window.data() + from, wanted, to - from);
    return found == nullptr ? to : static_cast<std::size_t>(static_cast<const char*>(found) - window.data());
  }

  // The end of the line, with its ending, that starts `from` bytes after `begin`; counted from `begin` as
  // well, for the window moves. At the end of the file the last line has no ending.
  std::size_t line_end(std::size_t from) {
    for (std::size_t seen = from;;) {
      const std::size_t at = find('\r', begin + seen, find('\n', begin + seen, end));
      const bool is_return = at != end && window[at] == '\r';
      const bool maybe_half = is_return && at + 1 == end && !ended;
      if (at != end && !maybe_half)
        return at - begin + (is_return && at + 1 != end && window[at + 1] == '\n' ? 2 : 1);
      seen = at - begin;
      if (ended || seen > longest_sheet) return seen;
      read_more();
    }
  }

  NamedText hand_out(std::size_t length, std::size_t lines) {
    NamedText piece{name, {window.data() + begin, length}, line};
    begin += length;
    line += lines;
    return piece;
  }

  // Up to the next `routine` line and the comments above it, or to the end; comments right below the last
  // line, with an empty line after them, belong to that. A first `routine` line is not the next one unless
  // `routine_seen`.
  struct Cut {
    NamedText piece;
    bool at_routine = false;
    bool too_long = false;
  };
  Cut cut(bool& routine_seen) {
    std::size_t at = 0, lines = 0;                 // the line that is looked at
    std::size_t comments_at = 0, lines_there = 0;  // where the comments just above it start
    bool right_below = false;                      // no empty line since the last that says something
    for (;;) {
      const std::size_t next = line_end(at);
      if (next > longest_sheet) return {{}, false, true};
      if (next == at) return {hand_out(at, lines)};
      const char* text = window.data() + begin;
      const LineKind kind = kind_of(text + at, text + without_ending(text, at, next));
      if (kind == LineKind::routine && std::exchange(routine_seen, true))
        return {hand_out(comments_at, lines_there), true};
      const bool says_something = kind == LineKind::other || kind == LineKind::routine;
      if (says_something || (kind == LineKind::empty && right_below)) {
        comments_at = says_something ? next : at;
        lines_there = says_something ? lines + 1 : lines;
        right_below = says_something;
      }
      at = next;
      ++lines;
    }
  }

  static std::size_t without_ending(const char* text, std::size_t from, std::size_t to) {
    while (to > from && (text[to - 1] == '\n' || text[to - 1] == '\r')) --to;
    return to;
  }
};

SheetStream::SheetStream(std::vector<std::string> files) : files_(std::move(files)) {}
SheetStream::~SheetStream() = default;

bool SheetStream::open_next() {
  while (next_file_ < files_.size()) {
    const std::string& name = files_[next_file_++];
    const int descriptor = name == standard_input ? 0 : ::open(name.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor >= 0) {
      file_ = std::make_unique<File>(shown(name), descriptor);
      return true;
    }
    troubles_.push_back(trouble_with(name, errno));
  }
  return false;
}

void SheetStream::close() {
  if (file_->error != 0) troubles_.push_back(trouble_with(file_->name, file_->error));
  file_.reset();
}

std::optional<std::vector<NamedText>> SheetStream::next() {
  std::vector<NamedText> pieces;
  bool routine_seen = false;
  more_ = false;
  while (file_ || open_next()) {
    auto [piece, at_routine, too_long] = file_->cut(routine_seen);
    if (too_long) {
      troubles_.push_back(
          {shown(file_->name), "a sheet longer than 64 MB", "a sheet starts with a `routine` line"});
      pieces.clear();
      routine_seen = false;
      close();
      continue;
    }
    if (!piece.text.empty()) pieces.push_back(std::move(piece));
    more_ = at_routine;
    if (at_routine) return pieces;
    close();
  }
  if (pieces.empty()) return std::nullopt;
  return pieces;
}

namespace {

// "marks.csv:1368231:7"
std::string file_line_column(const std::string& file, const std::string& text, std::size_t at) {
  const auto end = text.begin() + static_cast<std::ptrdiff_t>(at);
  const std::size_t line_start = text.rfind('\n', at - 1) + 1;
  return fmt::format("{}:{}:{}", file, 1 + std::count(text.begin(), end, '\n'), at - line_start + 1);
}

}  // namespace

Result<std::string> read_whole(const std::string& file) {
  if (const int error = refusal_of(file); error != 0) return tl::unexpected(trouble_with(file, error));
  const int descriptor = file == standard_input ? 0 : ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) return tl::unexpected(trouble_with(file, errno));
  std::string text;
  ssize_t got = 0;
  std::string piece(chunk, '\0');  // to make room in the text itself would fill all of it with zeros first
  do {
    got = ::read(descriptor, piece.data(), piece.size());
    text.append(piece, 0, static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
  } while (got > 0 && text.size() <= longest_sheet);
  const int error = got < 0 ? errno : 0;
  if (descriptor > 0) ::close(descriptor);
  if (error != 0) return tl::unexpected(trouble_with(file, error));
  if (text.size() > longest_sheet) {
    return tl::unexpected(Trouble{file_line_column(shown(file), text, longest_sheet),
                                  "it is longer than 64 MB here", "split it into several files"});
  }
  return text;
}

}  // namespace landdrill
