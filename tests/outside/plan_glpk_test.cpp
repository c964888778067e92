// The best programme against another program: glpsol of GLPK (GNU Linear Programming Kit), branch and bound
// over linear programmes, on a model that the test writes from the numbers of the sheet.
#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "engine/choosing/plan.h"
#include "tests/outside/plan_model.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;

struct Solved {
  bool feasible = false;
  std::int64_t thousandths = 0;
};

class Folder {
 public:
  Folder() : path_(fs::temp_directory_path() / ("landdrill-plan-" + std::to_string(getpid()))) {
    fs::create_directories(path_);
  }
  ~Folder() { fs::remove_all(path_); }
  fs::path file(const char* name) const { return path_ / name; }

 private:
  fs::path path_;
};

std::string text_of(const fs::path& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

// Throws when glpsol says neither that it found the optimum nor that there is none.
Solved solved_by_glpsol(const std::string& lp, const Folder& folder) {
  std::ofstream(folder.file("model.lp")) << lp;
  const std::string command = "glpsol --lp " + folder.file("model.lp").string() + " --cuts --tmlim 120 -w " +
                              folder.file("answer").string() + " > " + folder.file("told").string();
  if (std::system(command.c_str()) != 0)
    throw std::runtime_error("glpsol failed:\n" + text_of(folder.file("told")));
  const std::string told = text_of(folder.file("told"));
  if (told.find("NO PRIMAL FEASIBLE SOLUTION") != std::string::npos ||
      told.find("NO INTEGER FEASIBLE SOLUTION") != std::string::npos) {
    return {};
  }
  // "s mip 18 96 o 1234567": rows, columns, status (o: optimal), value.
  std::istringstream answer(text_of(folder.file("answer")));
  for (std::string line; std::getline(answer, line);) {
    std::istringstream words(line);
    std::string s, mip, status;
    int rows = 0, columns = 0;
    double value = 0;
    if (words >> s >> mip >> rows >> columns >> status >> value && s == "s" && mip == "mip" &&
        status == "o") {
      return {true, std::llround(value)};
    }
  }
  throw std::runtime_error("glpsol did not prove anything:\n" + told);
}

TEST(PlanBesideGlpk, HasTheSameOptimumAndFindsTheSameInfeasible) {
  const Folder folder;
  int feasible = 0;
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const PlanModel model(seed, {12, 8, 4, seed % 2 == 1});
    const kit::ReadSheet sheet(model.sheet, kit::shipped("kingfisher-2026"));
    PlanWish how;
    how.event_limits = false;
    const Plan found = plan(sheet.routine(), {}, how);
    const Solved solved = solved_by_glpsol(model.lp, folder);
    ASSERT_TRUE(found.proved);
    ASSERT_TRUE(found.obstacles.empty());
    ASSERT_EQ(!found.choices.empty(), solved.feasible);
    EXPECT_EQ(found.conflict.empty(), solved.feasible);
    if (!solved.feasible) continue;
    ++feasible;
    EXPECT_EQ(found.choices[0].total.value(), Decimal::from_units(solved.thousandths * 1000));
  }
  EXPECT_GT(feasible, 50);
  EXPECT_LT(feasible, 95);
}

}  // namespace
}  // namespace landdrill
