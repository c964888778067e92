// The mean of the kept marks against another program: GNU datamash, `trimmean` (GNU datamash manual,
// "Statistical Grouping operations": the trimmed mean of the values, PERCENT between 0 and 0.5).
#include <gtest/gtest.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <sstream>

#include "engine/score/panel.h"

namespace landdrill {
namespace {

// How many judges, and how many marks are dropped at each end.
struct Size {
  int judges, dropped;
  friend auto operator<=>(const Size&, const Size&) = default;
};

struct RandomPanel {
  Size size;
  JudgeMarks marks;
};

std::vector<RandomPanel> random_panels(int count) {
  std::mt19937 random(20261126);
  const auto up_to = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
  std::vector<RandomPanel> panels;
  for (int i = 0; i < count; ++i) {
    RandomPanel panel;
    panel.size.judges = 5 + up_to(4);
    panel.size.dropped = up_to((panel.size.judges - 1) / 2);
    const int step = std::array{10, 25, 50}[static_cast<std::size_t>(up_to(2))];
    for (int judge = 0; judge < panel.size.judges; ++judge) {
      panel.marks.push_back(Mark(Decimal::from_units(std::int64_t{10'000} * step * up_to(1000 / step))));
    }
    panels.push_back(std::move(panel));
  }
  return panels;
}

// A share that trims exactly `dropped` marks at each end, away from where a rounding error could decide.
std::string share(const Size& size) {
  char text[32];
  std::snprintf(text, sizeof text, "%.4f", size.dropped == 0 ? 0.0 : (size.dropped + 0.4) / size.judges);
  return text;
}

// What a shell command writes; its exit status is `ok`.
std::string output_of(const std::string& command, bool& ok) {
  std::string text;
  FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return text;
  std::array<char, 4096> piece;
  for (std::size_t read; (read = fread(piece.data(), 1, piece.size(), pipe)) > 0;)
    text.append(piece.data(), read);
  ok = pclose(pipe) == 0;
  return text;
}

std::string engine_mean(const RandomPanel& panel) {
  PanelRule rule;
  rule.judges = panel.size.judges;
  rule.drop_high = rule.drop_low = panel.size.dropped;
  return round(combined(rule, keep(rule, panel.marks)), 6, Rounding::half_up).text(6);
}

TEST(Datamash, TrimsToTheSameMeanAsAPanelThatDropsHighAndLow) {
  bool installed = false;
  output_of("command -v datamash", installed);
  if (!installed) GTEST_SKIP() << "datamash is not installed: apt-get install datamash";

  const std::vector<RandomPanel> panels = random_panels(4'000);
  std::map<Size, std::size_t> column;  // of the answer: one for each size of panel
  for (const RandomPanel& panel : panels) column.emplace(panel.size, 0);
  std::string operations;
  for (auto& [size, place] : column) {
    place = static_cast<std::size_t>(std::distance(column.begin(), column.find(size))) + 1;
    operations += " trimmean:" + share(size) + " 2";
  }
  const std::filesystem::path file =
      std::filesystem::temp_directory_path() / ("landdrill-marks-" + std::to_string(getpid()));
  std::ofstream out(file);
  for (std::size_t i = 0; i < panels.size(); ++i) {
    for (const std::optional<Mark>& mark : panels[i].marks) out << i << "," << mark->text() << "\n";
  }
  out.close();
  bool ok = false;
  std::istringstream answer(
      output_of("LC_ALL=C datamash -t, -g1 --format %.6f" + operations + " < '" + file.string() + "'", ok));
  std::filesystem::remove(file);
  ASSERT_TRUE(ok);

  std::size_t compared = 0;
  for (std::string line; std::getline(answer, line); ++compared) {
    std::vector<std::string> cells;
    std::istringstream words(line);
    for (std::string cell; std::getline(words, cell, ',');) cells.push_back(cell);
    ASSERT_EQ(cells.at(0), std::to_string(compared));
    ASSERT_EQ(engine_mean(panels[compared]), cells.at(column.at(panels[compared].size)))
        << "panel " << compared;
  }
  EXPECT_EQ(compared, panels.size());
}

}  // namespace
}  // namespace landdrill
