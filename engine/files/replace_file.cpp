#include "engine/files/replace_file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>

#include "tables/folder.h"

namespace landdrill {
namespace {

int write_all(int descriptor, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(descriptor, text.data(), text.size());
    if (written < 0 && errno != EINTR) return errno;
    if (written > 0) text.remove_prefix(static_cast<std::size_t>(written));
  }
  return ::fsync(descriptor) == 0 ? 0 : errno;
}

// The file itself, where `file` is a symbolic link.
std::string target_of(const std::string& file) {
  char* real = ::realpath(file.c_str(), nullptr);
  const std::string target = real == nullptr ? file : real;
  std::free(real);
  return target;
}

}  // namespace

Result<void> replace_file(const std::string& file, std::string_view text) {
  const std::string target = target_of(file);
  struct stat before {};
  const bool there = ::stat(target.c_str(), &before) == 0;
  if (there && ::access(target.c_str(), W_OK) != 0)
    return tl::unexpected(Trouble{file, "you are not allowed to change it", {}});
  std::string beside = target + ".XXXXXX";
  const int descriptor = ::mkstemp(beside.data());
  if (descriptor < 0) return tl::unexpected(Trouble{file, std::strerror(errno), {}});
  int error = write_all(descriptor, text);
  if (error == 0 && ::fchmod(descriptor, there ? before.st_mode & 07777 : 0644) != 0) error = errno;
  if (::close(descriptor) != 0 && error == 0) error = errno;
  if (error == 0 && ::rename(beside.c_str(), target.c_str()) != 0) error = errno;
  if (error == 0) return {};
  ::unlink(beside.c_str());
  return tl::unexpected(Trouble{file, std::string("it was not changed: ") + std::strerror(error), {}});
}

namespace fs = std::filesystem;
namespace {

bool is_inside(const fs::path& folder, const fs::path& outer) {
  std::error_code ignored;
  const fs::path whole = fs::weakly_canonical(folder, ignored), around = fs::weakly_canonical(outer, ignored);
  return !around.empty() &&
         std::mismatch(around.begin(), around.end(), whole.begin(), whole.end()).first == around.end();
}

}  // namespace

std::optional<Trouble> no_own_folder(const ReadSet& set) {
  if (!is_inside(set.folder, shipped_place())) return std::nullopt;
  return Trouble{
      set.files.name, "it comes with the program and is not changed",
      fmt::format("make a set of your own first: landdrill values copy {} my-set", set.files.name)};
}

std::optional<Trouble> not_new(const fs::path& folder) {
  std::error_code failed;
  if (!fs::exists(folder, failed)) return std::nullopt;
  if (fs::is_directory(folder, failed) && fs::is_empty(folder, failed)) return std::nullopt;
  return Trouble{folder.string(), "there is something of that name already", "give the name of a new folder"};
}

}  // namespace landdrill
