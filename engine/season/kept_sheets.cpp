#include "engine/season/kept_sheets.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <set>

#include "engine/files/value_sets.h"
#include "engine/score/objections.h"
#include "grammar/ast.h"
#include "grammar/parse.h"
#include "grammar/print.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/refusal.h"

namespace landdrill {

using store::attempt;
using store::must;

namespace {

using Lines = ast::Lines;

bool starts_block(const ast::Statement& statement) {
  return std::holds_alternative<ast::DatedLine>(statement) || ast::word_of(statement) == words::Word::routine;
}

bool is_empty(const ast::Line& line) {
  return std::holds_alternative<ast::EmptyLine>(line.statement) && line.comment.empty();
}

bool is_comment(const ast::Line& line) {
  return std::holds_alternative<ast::EmptyLine>(line.statement) && !line.comment.empty();
}

// The first that starts at `at` or behind it.
std::size_t next_block(const Lines& lines, std::size_t at) {
  while (at < lines.size() && !starts_block(lines[at].statement)) ++at;
  return at;
}

// Where the block ends that starts at `from`: before the next one and the comments above it. Comments right
// below its last line, with an empty line after them, are its own.
std::size_t end_of_block(const Lines& lines, std::size_t from) {
  const std::size_t next = next_block(lines, from + 1);
  if (next == lines.size()) return next;
  std::size_t end = next;
  while (end > from + 1 && std::holds_alternative<ast::EmptyLine>(lines[end - 1].statement)) --end;
  std::size_t below = end;
  while (below < next && is_comment(lines[below])) ++below;
  return below < next ? below : end;
}

// Without empty lines above it and below, and between its last line and the comments below that: so the text
// is the same whatever stands before and after it in a sheet.
Lines alone(Lines lines) {
  const auto last_statement = std::find_if(lines.rbegin(), lines.rend(), [](const ast::Line& line) {
    return !std::holds_alternative<ast::EmptyLine>(line.statement);
  });
  lines.erase(std::remove_if(last_statement.base(), lines.end(), is_empty), lines.end());
  lines.erase(lines.begin(), std::find_if_not(lines.begin(), lines.end(), is_empty));
  return lines;
}

std::string_view text_if_any(const std::optional<ast::Name>& title) {
  return title ? title->text : std::string_view();
}

void name_block(const ast::Statement& statement, Block& block) {
  const auto* head = std::get_if<ast::DatedLine>(&statement);
  if (head == nullptr) return;
  block.what = head->word == words::Word::run ? Block::What::run : Block::What::panel;
  block.date = head->date.text;
  block.title = text_if_any(head->title);
}

// What stands above the first block of a piece belongs to that block.
void add_blocks(const Source& piece, const Block& named, std::vector<TypedBlock>& blocks) {
  const Lines lines = parse(piece).lines;
  std::size_t start = 0, head = next_block(lines, 0);
  while (head < lines.size()) {
    const std::size_t end = end_of_block(lines, head);
    const std::string_view last = lines[end - 1].text;
    const char* const from = lines[start].text.data();
    TypedBlock typed{named, &piece, {from, static_cast<std::size_t>(last.data() + last.size() - from)}};
    name_block(lines[head].statement, typed.block);
    typed.block.text = print(alone(Lines(lines.begin() + static_cast<std::ptrdiff_t>(start),
                                         lines.begin() + static_cast<std::ptrdiff_t>(end))));
    blocks.push_back(std::move(typed));
    start = end;
    head = next_block(lines, end);
  }
}

// Runs or panels of one sheet that have one day and one title: in the book the second would be taken for
// other words of the first.
void find_called_the_same(const Sources& sources, const auto& runs_or_panels, std::string_view what,
                          Diagnostics& diagnostics) {
  std::set<std::pair<std::string_view, std::string_view>> names;
  for (const auto& one : runs_or_panels) {
    const std::string_view title = text_if_any(one.head.title);
    if (names.emplace(one.head.date.text, title).second) continue;
    diagnostics.add(
        diagnostic_at(sources, one.head.date.text,
                      {Problem::repeated,
                       fmt::format("a second {} of {}{}", what, one.head.date.text,
                                   title.empty() ? std::string() : fmt::format(" called \"{}\"", title)),
                       "one, for the book tells them apart by day and title",
                       "give it a title of its own, such as \"second\""}));
  }
}
}  // namespace

Diagnostics called_the_same(const Sheet& sheet) {
  Diagnostics diagnostics;
  const ast::Sheet& typed = *sheet.tree();
  find_called_the_same(typed.sources, typed.runs, "run", diagnostics);
  find_called_the_same(typed.sources, typed.panels, "panel", diagnostics);
  return diagnostics;
}

std::vector<Block> blocks_of(const Sheet& sheet, std::size_t edition) {
  std::vector<Block> blocks;
  for (TypedBlock& typed : typed_blocks(sheet)) {
    blocks.push_back(std::move(typed.block));
    blocks.back().event = sheet.routine()->event->code;
    blocks.back().edition = edition;
  }
  return blocks;
}

std::vector<TypedBlock> typed_blocks(const Sheet& sheet) {
  Block named;
  named.routine = sheet.title();
  if (sheet.tree() != nullptr && sheet.tree()->routine.event) named.event = sheet.tree()->routine.event->text;
  std::vector<TypedBlock> blocks;
  for (const Source& piece : sheet.sources()) add_blocks(piece, named, blocks);
  return blocks;
}

const ReadSet& KeptSheets::set_of(std::int64_t edition) {
  const auto known = sets_.find(edition);
  if (known != sets_.end()) return known->second;
  TableFiles files = must(book_.edition(edition));
  Loaded loaded = load(files);
  return sets_[edition] = {std::move(files), std::move(loaded)};
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

const KeptSheet& KeptSheets::understood(const KeptBlock& routine, std::string text) {
  return sheets_.emplace_back(kept_sheet(routine, std::move(text), set_of(routine.edition)));
}

Result<const KeptSheet*> KeptSheets::read_alone(const KeptBlock& block, const KeptBlock& routine) {
  return attempt([&] {
    const std::string text = must(book_.text(routine.id));
    return &understood(routine, text + must(book_.text(block.id)));
  });
}

Versions versions_of(const Book& book, const BookWish& wish) {
  Versions versions;
  for (const KeptBlock& block : must(book.find(wish)))
    versions.insert(block.what == Block::What::routine ? block.id : block.of_routine);
  return versions;
}

namespace {

// In the order of the book.
std::vector<KeptBlock> routines_of(const Book& book, const Versions& versions) {
  BookWish every;
  every.what = Block::What::routine;
  every.all_versions = true;
  std::vector<KeptBlock> routines = must(book.find(every));
  std::erase_if(routines, [&](const KeptBlock& one) { return versions.count(one.id) == 0; });
  return routines;
}

}  // namespace

Result<std::vector<std::string>> sheets_in(const Book& book, const BookWish& wish) {
  return attempt([&] {
    std::vector<std::string> sheets;
    for (const KeptBlock& routine : routines_of(book, versions_of(book, wish))) {
      std::vector<std::string> its;
      if (wish.all_versions)
        its = must(book.sheets_of_all_words(routine.id));
      else
        its.push_back(must(book.sheet(routine.id)));
      std::move(its.begin(), its.end(), std::back_inserter(sheets));
    }
    return sheets;
  });
}

std::vector<const KeptSheet*> KeptSheets::read(const Versions& versions) {
  std::vector<const KeptSheet*> sheets;
  for (const KeptBlock& routine : routines_of(book_, versions))
    sheets.push_back(&understood(routine, must(book_.sheet(routine.id))));
  return sheets;
}

namespace {

const std::string& title_of(const auto& block) {
  return block.what == Block::What::routine ? block.routine : block.title;
}

}  // namespace

std::string bare_title(std::string_view title) {
  std::string letters;
  for (char c : title) {
    const auto byte = static_cast<unsigned char>(c);
    if (c >= 'A' && c <= 'Z') letters += static_cast<char>(c - 'A' + 'a');
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80) letters += c;
  }
  return letters;
}

template <class SomeBlock>
Titles::Name Titles::name_of(const SomeBlock& block) {
  return {block.what, block.what == Block::What::routine ? "" : block.routine, block.event, block.date,
          bare_title(title_of(block))};
}

void Titles::know(const KeptBlock& block) {
  known_[name_of(block)].push_back(title_of(block));
}

std::string Titles::take(const Block& block) {
  const std::string& title = title_of(block);
  const Name name = name_of(block);
  if (std::get<4>(name).empty()) return {};
  std::vector<std::string>& spellings = known_[name];
  if (std::find(spellings.begin(), spellings.end(), title) != spellings.end()) return {};
  if (!spellings.empty()) return spellings.front();
  spellings.push_back(title);
  return {};
}

}  // namespace landdrill
