// Runs one or more programs in turn, again and again, and prints for each the median time and the most memory.
//
//   take_turns 100 -- landdrill score duet.sheet -- sqlite3 :memory: "select 1"
//   2.913 2.250 6912        milliseconds by the clock, milliseconds of processor, kilobytes: a line for each program
//   1.871 1.422 5504
//
// `--in FILE` before the first `--` is standard input; output goes nowhere. A program that fails ends it all.
#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <vector>

extern char** environ;

namespace {

struct Program {
  std::vector<char*> words;
  std::vector<double> wall, processor;
  long most_kilobytes = 0;
};

double milliseconds(const timeval& time) {
  return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
}

bool run(Program& program, const char* in) {
  posix_spawn_file_actions_t files;
  posix_spawn_file_actions_init(&files);
  posix_spawn_file_actions_addopen(&files, 0, in, O_RDONLY, 0);
  posix_spawn_file_actions_addopen(&files, 1, "/dev/null", O_WRONLY, 0);
  const auto start = std::chrono::steady_clock::now();
  pid_t child = 0;
  const int refused = posix_spawnp(&child, program.words[0], &files, nullptr, program.words.data(), environ);
  posix_spawn_file_actions_destroy(&files);
  if (refused != 0) return false;
  int status = 0;
  rusage used{};
  if (wait4(child, &status, 0, &used) != child) return false;
  const std::chrono::duration<double, std::milli> passed = std::chrono::steady_clock::now() - start;
  program.wall.push_back(passed.count());
  program.processor.push_back(milliseconds(used.ru_utime) + milliseconds(used.ru_stime));
  program.most_kilobytes = std::max(program.most_kilobytes, used.ru_maxrss);
  return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

}  // namespace

int main(int argc, char** argv) {
  std::vector<Program> programs;
  const char* in = "/dev/null";
  for (int i = 2; i < argc; ++i) {
    if (std::strcmp(argv[i], "--") == 0) {
      programs.emplace_back();
    } else if (programs.empty()) {
      if (std::strcmp(argv[i], "--in") == 0 && i + 1 < argc) in = argv[++i];
    } else {
      programs.back().words.push_back(argv[i]);
    }
  }
  const int turns = argc > 1 ? std::atoi(argv[1]) : 0;
  if (turns < 1 || programs.empty())
    return std::fputs("usage: take_turns TURNS [--in FILE] -- PROGRAM ... [-- PROGRAM ...]\n", stderr), 2;
  for (Program& program : programs) program.words.push_back(nullptr);
  for (int turn = 0; turn < turns; ++turn) {
    for (Program& program : programs)
      if (!run(program, in)) return std::fprintf(stderr, "take_turns: %s failed\n", program.words[0]), 1;
  }
  for (const Program& program : programs)
    std::printf("%.3f %.3f %ld\n", median(program.wall), median(program.processor), program.most_kilobytes);
}
