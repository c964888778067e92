#include "kit.h"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>

namespace landdrill::test {
namespace fs = std::filesystem;
namespace {

[[noreturn]] void give_up(std::string_view why) {
  std::cerr << "the test itself is wrong: " << why << "\n";
  std::abort();
}

std::string& text_in(TableFiles& files, std::string_view file) {
  for (TableFile& candidate : files.files) {
    if (candidate.file == file) return candidate.text;
  }
  give_up(file);
}

}  // namespace

Decimal d(std::string_view text) {
  const auto number = Decimal::parse(text);
  if (!number) give_up(text);
  return *number;
}

Exact exact(std::string_view text) {
  if (const std::size_t bar = text.find('/'); bar != text.npos)
    return exact(text.substr(0, bar)) / exact(text.substr(bar + 1));
  if (const auto number = Decimal::parse(text)) return Exact(*number);
  constexpr std::size_t digits = 12;  // that a Decimal has room for
  const std::size_t at = text.size() - digits;
  const Exact above = exact(text.substr(0, at)) * Exact(Decimal::whole(1'000'000'000'000));
  const Exact below = exact(text.substr(at));
  return text.starts_with('-') ? above - below : above + below;
}

const TableFiles& base_set() {
  static const TableFiles files = [] {
    auto read = read_folder(BAD_TABLES "/base");
    if (!read) give_up(to_string(read.error()));
    read->place.clear();
    return *read;
  }();
  return files;
}

TableFiles with(TableFiles files, std::string_view file, std::string_view text) {
  for (TableFile& candidate : files.files) {
    if (candidate.file == file) {
      candidate.text = text;
      return files;
    }
  }
  files.files.push_back({std::string(file), std::string(text)});
  return files;
}

TableFiles without(TableFiles files, std::string_view file) {
  if (std::erase_if(files.files, [&](const TableFile& candidate) { return candidate.file == file; }) != 1)
    give_up(file);
  return files;
}

TableFiles edited(TableFiles files, std::string_view file, std::string_view from, std::string_view to) {
  std::string& text = text_in(files, file);
  const std::size_t at = text.find(from);
  if (at == std::string::npos) give_up(from);
  text.replace(at, from.size(), to);
  return files;
}

std::string text_of(const TableFiles& files, std::string_view file) {
  TableFiles copy = files;
  return text_in(copy, file);
}

std::string messages(const TableFiles& files) {
  return to_string(load(files).diagnostics);
}

ScratchFolder::ScratchFolder() {
  std::string name = (fs::temp_directory_path() / "landdrill-XXXXXX").string();
  if (!::mkdtemp(name.data())) give_up(name);
  path_ = fs::canonical(name);
}

ScratchFolder::~ScratchFolder() {
  std::error_code ignored;
  fs::remove_all(path_, ignored);
}

std::string bytes_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) give_up(file.string());
  return {std::istreambuf_iterator<char>(in), {}};
}

void put_bytes(const fs::path& file, std::string_view bytes) {
  fs::create_directories(file.parent_path());
  std::ofstream out(file, std::ios::binary);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  if (!out.flush()) give_up(file.string());
}

}  // namespace landdrill::test
