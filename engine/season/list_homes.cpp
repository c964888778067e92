#include "engine/season/list_homes.h"

#include "engine/season/titles.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

Result<void> ListHomes::read() {
  BookWish wish;
  wish.what = Block::What::routine;
  const auto newest = versions_of(book_, wish);
  if (!newest) return tl::unexpected(newest.error());
  auto sheets = sheets_.read(*newest);
  if (!sheets) return tl::unexpected(sheets.error());
  latest_ = std::move(*sheets);
  wish.all_versions = true;
  const auto routines = book_.find(wish);
  if (!routines) return tl::unexpected(routines.error());
  for (const KeptBlock& one : *routines) entries_[{one.routine, one.event, one.version}] = one.id;
  wish = {};
  wish.what = Block::What::panel;
  const auto panels = book_.find(wish);
  if (!panels) return tl::unexpected(panels.error());
  for (const KeptBlock& one : *panels)
    panels_[{one.routine, one.event, one.date, one.title}] = {one.id, one.of_version};
  return {};
}

Result<ListHomes::Home> ListHomes::of(const ListedPanel& panel, const KeptSheet& latest) {
  Home home{&latest, {}};
  const auto kept = panels_.find({latest.routine.routine, latest.routine.event, panel.date, panel.meet});
  if (kept != panels_.end() && kept->second.entry == 0) {
    home.kept = kept->second.text;
  } else if (kept != panels_.end()) {
    auto text = book_.text(kept->second.entry);
    if (!text) return tl::unexpected(text.error());
    home.kept = std::move(*text);
  }
  if (said_ == 0 && kept == panels_.end()) return home;
  const auto wanted = version(latest, said_ == 0 ? kept->second.of_version : said_);
  if (!wanted) return tl::unexpected(wanted.error());
  home.version = *wanted;
  return home;
}

std::string ListHomes::spelled_otherwise(const ListedPanel& panel, const KeptBlock& routine) const {
  const std::string bare = bare_title(panel.meet);
  if (bare.empty() || panels_.count({routine.routine, routine.event, panel.date, panel.meet}) != 0) return {};
  auto of_day = panels_.lower_bound({routine.routine, routine.event, panel.date, ""});
  for (; of_day != panels_.end(); ++of_day) {
    const auto& [title, event, date, meet] = of_day->first;
    if (title != routine.routine || event != routine.event || date != panel.date) break;
    if (bare_title(meet) == bare) return meet;
  }
  return {};
}

void ListHomes::take(const Block& panel, int of_version) {
  if (more_) panels_[{panel.routine, panel.event, panel.date, panel.title}] = {0, of_version, panel.text};
}

Result<const KeptSheet*> ListHomes::version(const KeptSheet& latest, int number) {
  if (number == latest.routine.version) return &latest;
  const auto entry = entries_.find({latest.routine.routine, latest.routine.event, number});
  if (entry == entries_.end()) return nullptr;
  const KeptSheet*& version = versions_[entry->second];
  if (version == nullptr) {
    const auto sheets = sheets_.read(Versions{entry->second});
    if (!sheets) return tl::unexpected(sheets.error());
    version = sheets->front();
  }
  return version;
}

}  // namespace landdrill
