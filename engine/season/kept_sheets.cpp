#include "engine/season/kept_sheets.h"

#include <iterator>

#include "engine/files/read_set.h"
#include "engine/score/objections.h"
#include "tables/folder.h"

namespace landdrill {
namespace {

bool is_routine(const KeptBlock& block) {
  return block.what == Block::What::routine;
}

}  // namespace

Result<const ReadSet*> KeptSheets::set_of(std::int64_t edition) {
  auto& known = sets_[edition];
  if (known) return known.get();
  auto files = book_.edition(edition);
  if (!files) return tl::unexpected(files.error());
  known = std::make_unique<ReadSet>();
  known->files = std::move(*files);
  known->loaded = load(known->files);
  return known.get();
}

KeptSheet kept_sheet(const KeptBlock& routine, std::string text, const ReadSet& set) {
  KeptSheet kept{routine, read_sheet({{routine.routine, std::move(text)}}), &set};
  if (set.loaded.set && kept.sheet.tree() != nullptr) {
    understand(kept.sheet, *set.loaded.set);
  } else {
    kept.sheet.add(set.loaded.diagnostics);
  }
  return kept;
}

Result<const KeptSheet*> KeptSheets::understood(const KeptBlock& routine, std::string text) {
  auto set = set_of(routine.edition);
  if (!set) return tl::unexpected(set.error());
  return &sheets_.emplace_back(kept_sheet(routine, std::move(text), **set));
}

Result<const KeptSheet*> KeptSheets::read_alone(const KeptBlock& block, const KeptBlock& routine) {
  auto text = book_.text(routine.id);
  if (!text) return tl::unexpected(text.error());
  const auto alone = book_.text(block.id);
  if (!alone) return tl::unexpected(alone.error());
  return understood(routine, *text + *alone);
}

Result<Versions> versions_of(const Book& book, const BookWish& wish) {
  const auto found = book.find(wish);
  if (!found) return tl::unexpected(found.error());
  Versions versions;
  for (const KeptBlock& block : *found) versions.insert(is_routine(block) ? block.id : block.of_routine);
  return versions;
}

Result<std::vector<KeptText>> kept_texts(const Book& book, const Versions& versions) {
  BookWish every;
  every.what = Block::What::routine;
  every.all_versions = true;
  const auto routines = book.find(every);
  if (!routines) return tl::unexpected(routines.error());
  std::vector<KeptText> texts;
  for (const KeptBlock& routine : *routines) {
    if (versions.count(routine.id) == 0) continue;
    auto text = book.sheet(routine.id);
    if (!text) return tl::unexpected(text.error());
    texts.push_back({routine, std::move(*text)});
  }
  return texts;
}

Result<std::vector<std::string>> sheets_in(const Book& book, const BookWish& wish) {
  const auto versions = versions_of(book, wish);
  if (!versions) return tl::unexpected(versions.error());
  auto texts = kept_texts(book, *versions);
  if (!texts) return tl::unexpected(texts.error());
  std::vector<std::string> sheets;
  for (KeptText& one : *texts) {
    if (!wish.all_versions) {
      sheets.push_back(std::move(one.text));
      continue;
    }
    auto all_words = book.sheets_of_all_words(one.routine.id);
    if (!all_words) return tl::unexpected(all_words.error());
    std::move(all_words->begin(), all_words->end(), std::back_inserter(sheets));
  }
  return sheets;
}

Result<std::vector<const KeptSheet*>> KeptSheets::read(const Versions& versions) {
  auto texts = kept_texts(book_, versions);
  if (!texts) return tl::unexpected(texts.error());
  std::vector<const KeptSheet*> sheets;
  for (KeptText& one : *texts) {
    const auto kept = understood(one.routine, std::move(one.text));
    if (!kept) return tl::unexpected(kept.error());
    sheets.push_back(*kept);
  }
  return sheets;
}

}  // namespace landdrill
