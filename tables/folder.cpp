#include "tables/folder.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <system_error>

#include "grammar/words.h"

namespace landdrill {
namespace fs = std::filesystem;
namespace {

constexpr std::uintmax_t largest_file = 64 * 1024 * 1024;

bool has_tables(const fs::path& folder) {
  std::error_code ignored;
  return fs::is_regular_file(folder / "set.csv", ignored);
}

// "club-2026" also for "sets/club-2026/" and ".".
std::string name_of(const fs::path& folder) {
  std::error_code failed;
  const fs::path whole = fs::canonical(folder, failed);
  return (failed ? folder.lexically_normal() : whole).filename().string();
}

std::string_view environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? "" : value;
}

void add_from_environment(std::vector<SearchedFolder>& folders) {
  std::string_view rest = environment("LANDDRILL_VALUES");
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(':'), rest.size());
    if (end > 0) folders.push_back({SetFrom::environment, rest.substr(0, end)});
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
}

// Where a user keeps data of programs: the base directory specification of freedesktop.org, 0.8.
void add_of_user(std::vector<SearchedFolder>& folders) {
  fs::path data = environment("XDG_DATA_HOME");
  if (!data.is_absolute())
    data = fs::path(environment("HOME")) / ".local/share";  // as the specification says
  if (data.is_absolute()) folders.push_back({SetFrom::user, data / "landdrill/values"});
}

// A path says where the set is and is not searched for: "./club-2026", "../sets/club-2026".
bool is_path(std::string_view name) {
  return name.find('/') != std::string_view::npos || name == "." || name == "..";
}

std::optional<SetPlace> set_at(const fs::path& folder, SetFrom from) {
  if (!has_tables(folder)) return std::nullopt;
  return SetPlace{name_of(folder), folder, from};
}

bool same_folder(const fs::path& one, const fs::path& other) {
  std::error_code failed;
  return fs::equivalent(one, other, failed);
}

std::optional<SetPlace> set_at_path(std::string_view path, const Search& search) {
  for (const fs::path& beside : search.beside) {
    if (auto place = set_at(beside / path, SetFrom::told)) return place;
  }
  return set_at(path, SetFrom::told);
}

std::optional<SetPlace> set_called(std::string_view name, const Search& search) {
  for (const fs::path& folder : search.told) {
    if (has_tables(folder) && name_of(folder) == name) return set_at(folder, SetFrom::told);
    if (auto place = set_at(folder / name, SetFrom::told)) return place;
  }
  for (const fs::path& folder : search.told) {
    if (auto place = set_at(folder, SetFrom::told)) return place;
  }
  std::optional<SetPlace> found;
  for (const auto& [from, folder] : searched_folders(search)) {
    if (!has_tables(folder / name)) continue;
    if (!found)
      found = set_at(folder / name, from);
    else if (!same_folder(found->folder, folder / name))
      found->hidden.push_back(folder / name);
  }
  return found;
}

Trouble no_such_set(std::string_view name, const Search& search) {
  const std::vector<SetPlace> sets = all_sets(search);
  std::vector<std::string_view> names;
  std::string known;
  for (const SetPlace& set : sets) {
    names.push_back(set.name);
    known += (known.empty() ? "" : ", ") + set.name;
  }
  std::string hint = words::nearest_hint(name, names);
  if (hint.empty())
    hint = known.empty() ? "no value set was found at all" : "the sets that were found are " + known;
  std::string why = is_path(name) ? "there is no folder with a set.csv at that place"
                                  : "no folder of that name with a set.csv in";
  if (!is_path(name)) {
    for (const auto& [from, folder] : searched_folders(search)) why += " " + folder.string();
  }
  return {"the value set \"" + std::string(name) + "\"", why, hint};
}

// ---- reading ----

Trouble trouble_with(const fs::path& file) {
  return {file.string(), std::strerror(errno), ""};
}

Result<std::string> read_file(const fs::path& file) {
  std::error_code failed;
  const fs::file_status about = fs::status(file, failed);
  if (failed) return tl::unexpected(Trouble{file.string(), failed.message(), ""});
  if (!fs::is_regular_file(about))
    return tl::unexpected(Trouble{file.string(), "it is not a file with text", ""});
  const std::uintmax_t size = fs::file_size(file, failed);
  if (!failed && size > largest_file) {
    return tl::unexpected(
        Trouble{file.string(), "it is larger than 64 MB, and no table of a value set is", ""});
  }
  std::ifstream open(file, std::ios::binary);
  std::string text(failed ? 0 : size, '\0');
  if (failed || !open.read(text.data(), static_cast<std::streamsize>(size)))
    return tl::unexpected(trouble_with(file));
  return text;
}

// None of a folder that cannot be read.
std::vector<fs::path> paths_in(const fs::path& folder) {
  std::vector<fs::path> paths;
  std::error_code failed;
  for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed))
    paths.push_back(at->path());
  std::sort(paths.begin(), paths.end());
  return paths;
}

// ---- writing ----

int write_all(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(file, text.data(), text.size());
    if (written < 0 && errno != EINTR) return errno;
    if (written > 0) text.remove_prefix(static_cast<std::size_t>(written));
  }
  return ::fsync(file) == 0 ? 0 : errno;
}

Result<void> write_file(const TableFile& file, const fs::path& folder) {
  if (fs::path(file.file).filename() != file.file || file.file.empty() || file.file == "." ||
      file.file == "..") {
    return tl::unexpected(Trouble{file.file, "that is no name for a table's file", ""});
  }
  const fs::path path = folder / file.file;
  const Result<std::string> before = read_file(path);
  if (before && *before == file.text) return {};
  return replace_file(path, file.text);
}

}  // namespace

Result<void> replace_file(const fs::path& file, std::string_view text) {
  std::error_code not_there;
  const fs::path real = fs::canonical(file, not_there);
  const std::string target = not_there ? file.string() : real.string();
  struct stat before {};
  const bool there = ::stat(target.c_str(), &before) == 0;
  if (there && ::access(target.c_str(), W_OK) != 0)
    return tl::unexpected(Trouble{file.string(), "you are not allowed to change it", ""});
  std::string beside = target + ".XXXXXX";
  const int descriptor = ::mkstemp(beside.data());
  if (descriptor < 0) return tl::unexpected(trouble_with(file));
  int error = write_all(descriptor, text);
  if (error == 0 && ::fchmod(descriptor, there ? before.st_mode & 07777 : 0644) != 0) error = errno;
  if (::close(descriptor) != 0 && error == 0) error = errno;
  if (error == 0 && ::rename(beside.c_str(), target.c_str()) != 0) error = errno;
  if (error == 0) return {};
  ::unlink(beside.c_str());
  return tl::unexpected(
      Trouble{file.string(), std::string("it was not changed: ") + std::strerror(error), ""});
}

std::string to_string(const Trouble& trouble) {
  std::string text = trouble.what + ": " + trouble.why + "\n";
  return trouble.hint.empty() ? text : text + "  hint: " + trouble.hint + "\n";
}

fs::path shipped_place() {
  std::error_code failed;
  const fs::path program = fs::read_symlink("/proc/self/exe", failed);
  const fs::path folder = program.parent_path().parent_path() / "share/landdrill/values";
  const fs::path whole = fs::canonical(folder, failed);
  return failed ? folder : whole;
}

std::vector<SearchedFolder> searched_folders(const Search& search) {
  std::vector<SearchedFolder> folders;
  for (const fs::path& told : search.told) folders.push_back({SetFrom::told, told});
  for (const fs::path& beside : search.beside) {
    folders.push_back({SetFrom::beside, beside});
    folders.push_back({SetFrom::beside, beside / "values"});
  }
  add_from_environment(folders);
  add_of_user(folders);
  folders.push_back({SetFrom::program, shipped_place()});
  std::vector<SearchedFolder> once;
  for (const SearchedFolder& one : folders) {
    const auto same = [&](const SearchedFolder& known) { return known.folder == one.folder; };
    if (std::none_of(once.begin(), once.end(), same)) once.push_back(one);
  }
  return once;
}

Result<SetPlace> find_set(std::string_view name, const Search& search) {
  if (name.empty()) return tl::unexpected(Trouble{"the value set", "it has no name", ""});
  const auto place = is_path(name) ? set_at_path(name, search) : set_called(name, search);
  if (!place) return tl::unexpected(no_such_set(name, search));
  return *place;
}

std::vector<SetPlace> all_sets(const Search& search) {
  std::vector<SetPlace> sets;
  const auto add = [&](const fs::path& folder, SetFrom from) {
    const auto place = set_at(folder, from);
    if (!place) return;
    const auto known =
        std::find_if(sets.begin(), sets.end(), [&](const SetPlace& one) { return one.name == place->name; });
    if (known == sets.end())
      sets.push_back(*place);
    else if (!same_folder(known->folder, folder))
      known->hidden.push_back(folder);
  };
  for (const fs::path& folder : search.told) add(folder, SetFrom::told);
  for (const auto& [from, folder] : searched_folders(search)) {
    for (const fs::path& inside : paths_in(folder)) add(inside, from);
  }
  return sets;
}

Result<TableFiles> read_folder(const fs::path& folder) {
  std::error_code ignored;
  if (!fs::is_directory(folder, ignored)) {
    return tl::unexpected(Trouble{folder.string(), "there is no such folder", ""});
  }
  TableFiles files;
  files.name = name_of(folder);
  files.place = (folder / "").string();
  for (const fs::path& file : paths_in(folder)) {
    if (!words::same(file.extension().string(), ".csv")) continue;
    Result<std::string> text = read_file(file);
    if (!text) return tl::unexpected(text.error());
    files.files.push_back({file.filename().string(), std::move(*text)});
  }
  if (files.files.empty()) {
    return tl::unexpected(Trouble{folder.string(), "there is no table in it",
                                  "a value set is a folder with set.csv, events.csv, panels.csv ..."});
  }
  return files;
}

Result<void> write_folder(const TableFiles& files, const fs::path& folder) {
  std::error_code failed;
  fs::create_directories(folder, failed);
  if (failed) return tl::unexpected(Trouble{folder.string(), failed.message(), ""});
  for (const TableFile& file : files.files) {
    if (auto done = write_file(file, folder); !done) return done;
  }
  const int opened = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  const bool kept = opened >= 0 && ::fsync(opened) == 0;
  if (opened >= 0) ::close(opened);
  if (!kept) return tl::unexpected(trouble_with(folder));
  return {};
}

}  // namespace landdrill
