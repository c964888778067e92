// Counts to seconds. Arithmetic: a beat lasts 60 s / beats a minute. Secondary: a national grade test uses
// 160 beats a minute.
#include "engine/routine/timing.h"
#include "tests/outside/published.h"

namespace landdrill {
namespace {

std::string eight_at(const std::string& tempo) {
  const kit::ReadSheet sheet(published::head("solo-free", "kingfisher-2026") + "tempo " + tempo +
                                 "\npassage \"Eight\"\ncounts 8 arms\n",
                             kit::shipped("kingfisher-2026"));
  const Timing result = timing(sheet.routine(), {});
  return round(seconds_of(result.counts, *sheet.routine().tempo), 3, Rounding::half_up).text(3);
}

TEST(Counts, OfEightLastAsLongAsTheTempoSays) {
  EXPECT_EQ(eight_at("120"), "4.000");
  EXPECT_EQ(eight_at("150"), "3.200");
  EXPECT_EQ(eight_at("160"), "3.000");
}

}  // namespace
}  // namespace landdrill
