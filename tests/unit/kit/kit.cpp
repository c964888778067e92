#include "tests/unit/kit/kit.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <stdexcept>

#include "engine/score/objections.h"

namespace landdrill::kit {
namespace {

ValueSet loaded(const TableFiles& files) {
  Loaded result = load(files);
  if (!result.set) throw std::runtime_error(to_string(result.diagnostics));
  return std::move(*result.set);
}

ValueSet read_shipped(const std::string& name) {
  TableFiles files{name, "tables/data/" + name + "/", {}};
  for (const auto& entry :
       std::filesystem::directory_iterator(std::filesystem::path(LANDDRILL_DATA) / name)) {
    std::ifstream in(entry.path(), std::ios::binary);
    files.files.push_back(
        {entry.path().filename().string(), std::string(std::istreambuf_iterator<char>(in), {})});
  }
  return loaded(files);
}

}  // namespace

Decimal number(std::string_view text) {
  const std::optional<Decimal> value = Decimal::parse(text);
  if (!value) throw std::runtime_error("no number: " + std::string(text));
  return *value;
}

std::string fraction(const Exact& value) {
  if (const std::optional<Decimal> decimal = value.decimal()) return decimal->text();
  std::int64_t parts = 2;
  const auto whole = [&] {
    const std::optional<Decimal> number = (value * Exact(Decimal::whole(parts))).decimal();
    return number && number->is_multiple_of(Decimal::whole(1)) ? number : std::nullopt;
  };
  while (!whole()) ++parts;
  return whole()->text() + "/" + std::to_string(parts);
}

JudgeMarks marks(std::string_view text) {
  JudgeMarks result;
  std::istringstream words{std::string(text)};
  for (std::string word; words >> word;) {
    result.push_back(word == "-" ? std::nullopt : std::optional<Mark>(mark(word)));
  }
  return result;
}

const ValueSet& shipped(std::string_view name) {
  static std::map<std::string, ValueSet, std::less<>> sets;
  auto found = sets.find(name);
  if (found == sets.end()) found = sets.emplace(name, read_shipped(std::string(name))).first;
  return found->second;
}

std::string replaced(std::string text, std::string_view piece, std::string_view by) {
  const std::size_t at = text.find(piece);
  if (at == std::string::npos || text.find(piece, at + 1) != std::string::npos) {
    throw std::runtime_error("not exactly once in the text: " + std::string(piece));
  }
  return text.replace(at, piece.size(), by);
}

std::string& Tables::text_of(std::string_view file) {
  for (TableFile& one : files_.files) {
    if (one.file == file) return one.text;
  }
  throw std::runtime_error("no table " + std::string(file));
}

Tables& Tables::replace(std::string_view file, std::string_view piece, std::string_view by) {
  std::string& text = text_of(file);
  text = replaced(text, piece, by);
  return *this;
}

Tables& Tables::add(std::string_view file, std::string_view row) {
  text_of(file) += std::string(row) + "\n";
  return *this;
}

ValueSet Tables::load() const {
  return loaded(files_);
}

const ValueSet& pond() {
  static const ValueSet set = Tables().load();
  return set;
}

ReadSheet::ReadSheet(std::string text, const ValueSet& set)
    : sheet_(read_sheet({{"reeds.sheet", std::move(text)}})) {
  if (!sheet_.ok()) throw std::runtime_error(to_string(sheet_.messages()));
  understand(sheet_, set);
}

const Routine& ReadSheet::routine() const {
  if (!sheet_.routine()) throw std::runtime_error(to_string(sheet_.messages()));
  return *sheet_.routine();
}

std::string ReadSheet::complaints() const {
  std::string text;
  for (const Diagnostic& one : sheet_.messages().list()) {
    text += std::to_string(one.at.line) + ":" + std::to_string(one.at.column) + " found " + one.found +
            "; expected " + one.expected + " [" + std::string(code_of(one.problem)) + "]";
    if (!one.hint.empty()) text += " hint: " + one.hint;
    text += "\n";
  }
  return text;
}

std::string complaints(const std::string& text) {
  return ReadSheet(text, pond()).complaints();
}

std::string expected_total(const Routine& routine, const Wish& wish) {
  const Score result = score(routine, expected(routine, wish));
  return result.total ? result.total->text() : "";
}

std::string recorded_total(const Routine& routine, std::size_t panel, const Wish& wish) {
  const Score result = score(routine, recorded(routine, routine.panels.at(panel), wish));
  return result.total ? result.total->text() : "";
}

}  // namespace landdrill::kit
