// How the routines of the season book went over time.
#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/page.h"
#include "engine/cli/with_swum.h"
#include "engine/report/pages/progress.h"
#include "engine/season/swum_versions.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {

Exit book_progress(Call& call) {
  SwumVersions seasons;
  const auto take = [&](const KeptBlock& version, std::vector<SwumVersion> parts) {
    seasons.add(version, std::move(parts));
  };
  return with_swum(call, version_swum, take, [&](const Book& book, const BookWish& wish, Exit worst) {
    // What came after the days that are asked for is not.
    if (wish.until.empty()) {
      if (const auto added = seasons.add_latest(book); !added) return refuse(call, added.error());
    }
    print_page(call, report::progress_page(seasons.all()));
    return worst;
  });
}

}  // namespace landdrill::cli
