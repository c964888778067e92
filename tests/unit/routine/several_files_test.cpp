// Several files in one call: whatever stands in them and wherever one of them starts, every message is about
// one of them and shows a line that stands there.
#include <gtest/gtest.h>

#include <algorithm>
#include <deque>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "engine/score/objections.h"
#include "tables/folder.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;

struct File {
  std::string name, text;
};

std::vector<File> known_sheets() {
  std::vector<File> files;
  for (const char* folder : {LANDDRILL_EXAMPLES, LANDDRILL_BAD_SHEETS}) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
      if (entry.path().extension() != ".sheet" || entry.file_size() > 8'000) continue;
      std::ifstream in(entry.path(), std::ios::binary);
      files.push_back({entry.path().filename().string(), {std::istreambuf_iterator<char>(in), {}}});
    }
  }
  std::sort(files.begin(), files.end(), [](const File& a, const File& b) { return a.name < b.name; });
  return files;
}

// Where the lines of a text start.
std::vector<std::size_t> line_starts(std::string_view text) {
  std::vector<std::size_t> starts = {0};
  for (std::size_t at = 0; at < text.size(); ++at)
    if (text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.size() || text[at + 1] != '\n')))
      starts.push_back(at + 1);
  return starts;
}

// The same file from one of its lines on.
File cut_off(const File& file, std::mt19937& draw) {
  const std::vector<std::size_t> starts = line_starts(file.text);
  const std::size_t line = draw() % starts.size();
  return {file.name + " from line " + std::to_string(line + 1), file.text.substr(starts[line])};
}

bool is_shown_in(const File& file, const Diagnostic& one) {
  if (one.at.line == 0) return true;  // about the file as a whole
  const std::vector<std::size_t> starts = line_starts(file.text);
  if (one.at.line > starts.size()) return false;
  const std::size_t start = starts[one.at.line - 1];
  const std::size_t end = one.at.line < starts.size() ? starts[one.at.line] : file.text.size();
  const std::string_view line = std::string_view(file.text).substr(start, end - start);
  std::string_view shown = one.line;
  if (line.find(shown) == line.npos && shown.ends_with("...")) shown.remove_suffix(3);
  return line.find(shown) != line.npos;
}

// How many messages there are, and those that are about no file of the call, or show what does not stand
// there.
struct Heard {
  std::size_t messages = 0;
  std::string misplaced;
};

void look_at(const Diagnostics& diagnostics, const std::vector<File>& files, Heard& heard) {
  for (const Diagnostic& one : diagnostics.list()) {
    const auto file =
        std::find_if(files.begin(), files.end(), [&](const File& each) { return each.name == one.file; });
    ++heard.messages;
    if (file == files.end() || !is_shown_in(*file, one)) heard.misplaced += to_string(one);
  }
}

Heard read_together(const std::vector<File>& files) {
  std::deque<Source> sources;
  Assembled assembled;
  for (const File& file : files) assemble(sources.emplace_back(Source{file.name, file.text}), assembled);
  Heard heard;
  look_at(assembled.diagnostics, files, heard);
  static const Loaded pond = load(*read_folder(LANDDRILL_BAD_SHEETS "/meaning/values/pond-2026"));
  for (const ast::Sheet& sheet : assembled.sheets)
    for (const ValueSet* set : {&*pond.set, &kit::shipped("kingfisher-2026")})
      look_at(understood(sheet, *set).diagnostics, files, heard);
  return heard;
}

void expect_all_in_place(std::size_t how_many, int draws, std::uint32_t seed) {
  const std::vector<File> known = known_sheets();
  ASSERT_GE(known.size(), 300u);
  std::mt19937 draw(seed);
  std::size_t messages = 0;
  for (int i = 0; i < draws; ++i) {
    std::vector<File> files;
    for (std::size_t file = 0; file < how_many; ++file) {
      files.push_back(known[draw() % known.size()]);
      if (file > 0 && draw() % 4 != 0) files.back() = cut_off(files.back(), draw);
    }
    for (std::size_t turn = 0; turn < how_many; ++turn) {
      std::rotate(files.begin(), files.begin() + 1, files.end());
      const Heard heard = read_together(files);
      messages += heard.messages;
      ASSERT_EQ(heard.misplaced, "") << files[0].name << ", " << files[1].name << ", " << files.back().name;
    }
  }
  EXPECT_GE(messages, static_cast<std::size_t>(draws));
}

TEST(SeveralFiles, HaveEveryMessageInItsPlaceWhenTheyAreTwo) {
  expect_all_in_place(2, 6'000, 20260509);
}
TEST(SeveralFiles, HaveEveryMessageInItsPlaceWhenTheyAreThree) {
  expect_all_in_place(3, 2'000, 20260414);
}

// The messages about `texts` as files called a, b ...: file, line and code of each.
std::string codes_of(const std::vector<std::string>& texts) {
  std::deque<Source> sources;
  Assembled all;
  for (const std::string& text : texts)
    assemble(sources.emplace_back(Source{std::string(1, static_cast<char>('a' + sources.size())), text}),
             all);
  for (const ast::Sheet& sheet : all.sheets)
    all.diagnostics.append(understood(sheet, kit::pond()).diagnostics);
  std::string told;
  for (const Diagnostic& one : all.diagnostics.list())
    told += one.file + std::to_string(one.at.line) + " " + std::string(code_of(one.problem)) + "\n";
  return told;
}

TEST(SeveralFiles, KeepAnElementBelowOneInErrorOutOfTheRoutineOfTheFileBefore) {
  const std::string routine = "routine \"Sedge\"\nevent mixed\nelement 1 lift\n  difficulty 2\n";
  ASSERT_EQ(codes_of({routine}), "");
  EXPECT_EQ(codes_of({routine, "element x lift \"A\"\nelement 1 lift \"B\"\n  parts no-such-part\n"}),
            "b1 syntax\n");
  EXPECT_EQ(codes_of({routine, "passage no-title\nelement 7 lift \"B\"\n  parts no-such-part\n"}),
            "b1 syntax\n");
}
TEST(SeveralFiles, AreEachNamedForTheirOwnMistakes) {
  EXPECT_EQ(codes_of({"routine \"Sedge\"\nevent mixed\nelement 1 lift\n  parts no-such-part\n",
                      "run 2026-04-14\n  element 9: clean\n", "\npanel 2026-05-09\n  element 8: 7 7 7\n"}),
            "a4 unknown-part\nb2 unknown-element\nc3 unknown-element\n");
}

}  // namespace
}  // namespace landdrill
