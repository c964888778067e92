// Writes a made-up season: routines as sheets, and the marks of their panels as a list, the same every time.
//
//   make_season 20 1000 /tmp/season     // routines.sheet, and marks.csv with 20 x 1000 panels of 50 marks each
//
// The panels lie over ten years, so that no two of a routine have one day and one meet. A mark is what the swim was
// worth and how the judge leans, in quarters; one in two hundred is missing.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "tests/bench/sheet_maker.h"

namespace {

using landdrill::bench::Dice;

constexpr int judges = 5;
constexpr int evenings = 10 * 12 * 28;
constexpr const char* lines[] = {"1",           "2",          "3", "4", "5", "6", "7", "choreography",
                                 "performance", "transitions"};
constexpr const char* meets[] = {"Tarn Open", "Heron Cup", "Kingfisher Evening", "Reed Day"};
constexpr const char* elements =
    "element 1 lift \"Lantern\"\n  parts  stand-feet, rise-high, half-turn\n  expect 7.50\n"
    "element 2 hybrid \"Undertow\"\n  parts  thrust-high, spin-720, split-hold x2, join-foot\n  expect 7.25\n"
    "element 3 hybrid \"Weathervane\"\n  parts  twist-full, leg-hold-8, spin-360, split-open\n  expect 7.50\n"
    "element 4 hybrid \"Anchor chain\"\n  parts  legs-hold-4, legs-lower, split-walk, join-foot, twist-half "
    "x2\n"
    "  expect 7.00\n"
    "element 5 hybrid \"Slack Water\"\n  parts  arch-knee, side-hold, leg-switch, spin-180\n  expect 7.75\n"
    "element 6 hybrid \"Beacon\"\n  parts  thrust-top, twist-fast, spin-1080\n  expect 6.75\n"
    "element 7 lift \"Mooring\"\n  parts  stand-shoulders, rise-mid, grip-one, shape-arch\n  expect 7.75\n"
    "impression choreography 7.50, performance 7.75, transitions 7.25\n\n";

std::string title(int routine) {
  return "Slack Water " + std::to_string(100 + routine);
}

std::string routines(int count) {
  std::string text;
  for (int i = 0; i < count; ++i)
    text += "routine \"" + title(i) + "\"\nevent    duet-free\nvalues   kingfisher-2026\n" + elements;
  return text;
}

std::string mark(Dice& dice, int worth, int judge) {
  if (dice.below(200) == 0) return "-";
  const int quarters =
      std::clamp(worth + dice.from_to(-1, 1) + (judge == 2 && dice.percent(30) ? 1 : 0), 0, 40);
  constexpr const char* rest[] = {".00", ".25", ".50", ".75"};
  return std::to_string(quarters / 4) + rest[quarters % 4];
}

// `evening` counts the days of ten years of 12 months of 28 days, and goes round.
std::string panel(Dice& dice, int routine, int evening) {
  char date[16];
  std::snprintf(date, sizeof date, "%04d-%02d-%02d", 2016 + evening / 336 % 10, 1 + evening / 28 % 12,
                1 + evening % 28);
  const std::string head =
      std::string(date) + "," + meets[(evening + evening / evenings) % 4] + "," + title(routine) + ",";
  const int day = dice.from_to(-2, 2);
  std::string rows;
  for (const char* line : lines) {
    const int worth = 29 + day + dice.from_to(-2, 2);
    for (int judge = 0; judge < judges; ++judge)
      rows += head + line + "," + std::to_string(judge + 1) + "," + mark(dice, worth, judge) + "\n";
  }
  return rows;
}

bool write(const std::filesystem::path& file, const std::string& text) {
  std::FILE* out = std::fopen(file.c_str(), "w");
  if (out == nullptr) return false;
  const bool whole = std::fwrite(text.data(), 1, text.size(), out) == text.size();
  return std::fclose(out) == 0 && whole;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4)
    return std::fputs("usage: make_season ROUTINES PANELS FOLDER     PANELS: of each routine\n", stderr), 2;
  const int count = std::atoi(argv[1]), panels = std::atoi(argv[2]);
  const std::filesystem::path folder = argv[3];
  std::filesystem::create_directories(folder);
  Dice dice(2026);
  std::string rows = "date,meet,routine,element,judge,mark\n";
  const int apart = std::max(1, evenings / panels);
  for (int number = 0; number < panels; ++number)
    for (int routine = 0; routine < count; ++routine) rows += panel(dice, routine, number * apart);
  if (write(folder / "routines.sheet", routines(count)) && write(folder / "marks.csv", rows)) return 0;
  return std::perror("make_season"), 3;
}
