// Marks that are added to the book while the process is killed, or while another process adds some too.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <optional>
#include <random>
#include <thread>

#include "scene.h"
#include "tables/store/book.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using What = Block::What;
using Clock = std::chrono::steady_clock;

constexpr int kills = 200;
constexpr int panels_at_once = 300;

Block reed_song() {
  return {What::routine, "Reed Song", "duet-free", "", "", "routine \"Reed Song\"\n", 0};
}
Block panel(const std::string& meet, const std::string& mark) {
  return {What::panel,
          "Reed Song",
          "duet-free",
          "2026-05-09",
          meet,
          "panel 2026-05-09 \"" + meet + "\"\n  element 1: " + mark + "\n",
          0};
}
std::vector<Block> many_panels() {
  std::vector<Block> panels;
  for (int i = 0; i < panels_at_once; ++i)
    panels.push_back(panel("Evening " + std::to_string(i), "7.25 7.50 7.25 7.00 7.75"));
  return panels;
}

class BookCrash : public SeasonTest {
 protected:
  BookCrash() {
    Season season = open(Mode::create);
    EXPECT_EQ(trouble_in(Book(season).add({reed_song()}, {odd_set()})), "");
  }
};

void tell(int to, char what) {
  if (write(to, &what, 1) != 1) _exit(3);
}

// Tells when it starts, and when all has been acknowledged.
[[noreturn]] void add_until_killed(const std::filesystem::path& file, int to) {
  Result<Season> season = Season::open(file, Mode::write);
  if (!season) _exit(4);
  const std::vector<Block> panels = many_panels();
  tell(to, 'b');
  if (!Book(*season).add(panels, {odd_set()})) _exit(2);
  tell(to, 'e');
  _exit(0);
}

struct Killed {
  bool began = false, acknowledged = false;
  int status = 0;
};
// Killed so long after it began; without a delay, once it has acknowledged.
Killed kill_after(const std::filesystem::path& file, std::optional<std::chrono::microseconds> delay) {
  int ends[2];
  if (pipe(ends) != 0) std::abort();
  const pid_t child = fork();
  if (child == 0) add_until_killed(file, ends[1]);
  close(ends[1]);
  Killed killed;
  char told = 0;
  killed.began = read(ends[0], &told, 1) == 1;
  if (delay) {
    std::this_thread::sleep_for(*delay);
  } else {
    killed.acknowledged = read(ends[0], &told, 1) == 1;
  }
  kill(child, SIGKILL);
  killed.acknowledged = killed.acknowledged || read(ends[0], &told, 1) == 1;
  close(ends[0]);
  waitpid(child, &killed.status, 0);
  return killed;
}

int panels_in(const Season& season) {
  BookWish panels;
  panels.what = What::panel;
  return static_cast<int>(Book(const_cast<Season&>(season)).find(panels).value().size());
}

std::chrono::microseconds time_of_one_add(const std::filesystem::path& file) {
  const auto start = Clock::now();
  kill_after(file, std::chrono::seconds(0));
  Result<Season> season = Season::open(file, Mode::write);
  EXPECT_EQ(trouble_in(Book(*season).add(many_panels(), {odd_set()})), "");
  return std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - start);
}

TEST_F(BookCrash, KilledTwoHundredTimesTheBookHasAllOfAnAddOrNothing) {
  const std::string before = bytes_on_disk();
  std::mt19937 random(std::random_device{}());
  std::uniform_int_distribution<long> delay(0, time_of_one_add(file).count() * 3 / 2);
  int all = 0, nothing = 0;
  for (int round = 0; round < kills && !HasFailure(); ++round) {
    std::filesystem::remove(file.string() + "-journal");
    write_file(before);
    // Mostly at any moment; now and then at once, and when all is done, however uneven the machine is.
    std::optional<std::chrono::microseconds> moment(delay(random));
    if (round % 20 == 0) moment = std::chrono::microseconds(0);
    if (round % 20 == 1) moment = std::nullopt;
    const Killed killed = kill_after(file, moment);
    ASSERT_TRUE(killed.began);
    ASSERT_TRUE(WIFSIGNALED(killed.status) || WEXITSTATUS(killed.status) == 0) << killed.status;
    const Season season = open(round % 2 == 0 ? Mode::read : Mode::write);
    const int kept = panels_in(season);
    EXPECT_TRUE(kept == 0 || kept == panels_at_once) << kept;
    if (killed.acknowledged) {
      EXPECT_EQ(kept, panels_at_once);
    }
    EXPECT_EQ(trouble_in(season.check()), "");
    ++(kept == 0 ? nothing : all);
  }
  EXPECT_GT(nothing, 0) << "no process was killed in the middle of adding, so nothing was tried";
  EXPECT_GT(all, 0) << "every process was killed before it was done, so half is untried";
}

constexpr int adds_each = 30;

// Everyone adds panels of their own and, in turn, another wording of one that all share.
std::string add_alongside(const std::filesystem::path& file, const std::string& who) {
  Result<Season> season = Season::open(file, Mode::write);
  if (!season) return trouble_in(season);
  Book book(*season);
  for (int i = 0; i < adds_each; ++i) {
    const std::string number = std::to_string(i);
    const auto added =
        book.add({panel(who + " " + number, "7.25"), panel("Shared", who + "." + number)}, {odd_set()});
    if (!added) return trouble_in(added);
    if ((*added)[1].did == AddedBlock::Did::already_there) return "took another's wording for its own";
  }
  return {};
}

TEST_F(BookCrash, TwoProcessesThatAddAtOnceLoseNothing) {
  std::string first, second;
  std::thread one([&] { first = in_child([&] { return add_alongside(file, "3"); }); });
  std::thread two([&] { second = in_child([&] { return add_alongside(file, "4"); }); });
  one.join();
  two.join();
  EXPECT_EQ(first, "");
  EXPECT_EQ(second, "");
  Season season = open(Mode::write);
  EXPECT_EQ(panels_in(season), 2 * adds_each + 1);
  BookWish shared;
  shared.words = "shared";
  shared.all_versions = true;
  const auto versions = Book(season).find(shared).value();
  ASSERT_EQ(versions.size(), 2u * adds_each);
  for (std::size_t i = 0; i < versions.size(); ++i) EXPECT_EQ(versions[i].version, static_cast<int>(i) + 1);
  EXPECT_EQ(trouble_in(season.check()), "");
}

}  // namespace
}  // namespace landdrill
