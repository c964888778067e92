#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "engine/cli/book_blocks.h"
#include "engine/cli/book_file.h"
#include "engine/cli/marks_import.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/cli/price.h"
#include "engine/cli/read_sheets.h"
#include "engine/cli/sheet_reader.h"
#include "engine/report/book.h"

namespace landdrill::cli {
namespace {

bool is_list(const std::string& file) {
  return file.ends_with(".csv") || file.ends_with(".CSV") || file.ends_with(".tsv");
}

// The letters and digits alone, in lower case: two titles that are the same so are one title spelled in two
// ways.
std::string bare(std::string_view title) {
  std::string letters;
  for (char c : title) {
    const auto byte = static_cast<unsigned char>(c);
    if (c >= 'A' && c <= 'Z') letters += static_cast<char>(c - 'A' + 'a');
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || byte >= 0x80) letters += c;
  }
  return letters;
}

class Adding {
 public:
  explicit Adding(Call& call) : call_(call), messages_(call.streams) {
    for (std::size_t i = 1; i < call.given.operands.size(); ++i)
      (is_list(call.given.operands[i]) ? lists_ : sheets_).push_back(call.given.operands[i]);
  }

  Exit add() {
    std::vector<std::string> files = sheets_;
    files.insert(files.end(), lists_.begin(), lists_.end());
    if (!all_readable(call_, files)) return Exit::environment;
    if (!sheets_.empty()) read_sheets();
    if (worst_ != Exit::ok) return refuse_all();
    auto season = open_book(call_, Season::Mode::create);
    if (!season) return refuse(call_, season.error());
    Book book(*season);
    if (const Exit spelled = check_spelling(book); spelled != Exit::ok) return spelled;
    if (!lists_.empty() && !blocks_.empty()) {
      call_.streams.say("landdrill: nothing was added: add the sheets first, then the lists of marks\n");
      return Exit::usage;
    }
    if (!lists_.empty()) read_lists(book);
    return worst_ == Exit::ok ? keep(book) : refuse_all();
  }

 private:
  Exit refuse_all() {
    messages_.finish();
    call_.streams.say("landdrill: nothing was added to the book\n");
    return worst_;
  }

  void read_sheets() {
    SheetReader reader(call_, sheets_);
    while (reader.next()) {
      const ReadSheet& sheet = reader.sheet();
      if (sheet.ok()) {
        take(sheet);
      } else {
        messages_.add(sheet.diagnostics);
        worst_ = worse(worst_, Exit::errors);
      }
    }
    worst_ = worse(worst_, reader.worst());
  }

  void take(const ReadSheet& sheet) {
    const TableFiles& set = sheet.set->files;
    const auto known = std::find_if(editions_.begin(), editions_.end(), [&](const TableFiles& one) {
      return one.name == set.name && one.place == set.place;
    });
    const auto edition = static_cast<std::size_t>(known - editions_.begin());
    if (known == editions_.end()) editions_.push_back(set);
    std::vector<Block> blocks = blocks_of(sheet, edition);
    std::move(blocks.begin(), blocks.end(), std::back_inserter(blocks_));
  }

  // A title that differs from one of the book in nothing but case, blanks or signs is that one, misspelled.
  Exit check_spelling(const Book& book) {
    BookWish routines;
    routines.what = Block::What::routine;
    const auto kept = book.find(routines);
    if (!kept) return refuse(call_, kept.error());
    Exit result = Exit::ok;
    for (const Block& block : blocks_) {
      if (block.what != Block::What::routine) continue;
      for (const KeptBlock& one : *kept) {
        if (one.event != block.event || one.routine == block.routine ||
            bare(one.routine) != bare(block.routine))
          continue;
        call_.streams.say(
            fmt::format("landdrill: found the routine \"{}\"; the book has it as \"{}\"\n  hint: write the "
                        "title in one way\nlanddrill: nothing was added to the book\n",
                        block.routine, one.routine));
        result = Exit::errors;
      }
    }
    return result;
  }

  void read_lists(const Book& book) {
    KeptSheets kept(book);
    BookWish latest;
    latest.what = Block::What::routine;
    const auto routines = kept.read(latest);
    if (!routines) {
      worst_ = worse(worst_, refuse(call_, routines.error()));
      return;
    }
    for (const std::string& file : lists_) read_list(file, *routines);
  }

  void read_list(const std::string& file, const std::vector<const KeptSheet*>& routines) {
    const auto text = read_whole(file);
    if (!text) {
      worst_ = worse(worst_, refuse(call_, text.error()));
      return;
    }
    const Source list{shown(file), *text};
    Diagnostics diagnostics;
    const std::vector<ListedPanel> panels = read_marks_list(list, diagnostics);
    Imported made;
    if (diagnostics.ok()) made = panels_from(panels, list, routines);
    diagnostics.append(std::move(made.diagnostics));
    messages_.add(diagnostics);
    if (!diagnostics.ok()) worst_ = worse(worst_, Exit::errors);
    for (Block& block : made.blocks) {
      block.edition += editions_.size();
      blocks_.push_back(std::move(block));
    }
    std::move(made.editions.begin(), made.editions.end(), std::back_inserter(editions_));
  }

  Exit keep(Book& book) {
    const auto added = book.add(blocks_, editions_);
    if (!added) return refuse(call_, added.error());
    std::vector<report::BookLine> lines;
    std::array<std::size_t, 3> counts{};
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
      constexpr std::string_view did[] = {"added", "new version", "already there"};
      const auto which = static_cast<std::size_t>((*added)[i].did);
      ++counts[which];
      const Block& block = blocks_[i];
      lines.push_back({block.routine,
                       block.event,
                       std::string(word_of(block.what)),
                       block.date,
                       block.title,
                       std::to_string((*added)[i].version),
                       editions_[block.edition].name,
                       {},
                       std::string(did[which])});
    }
    if (lines.size() > most_lines_ && format_of(call_) == report::Format::text) lines.clear();
    call_.streams.out.write(report::book_list(lines, format_of(call_), page_wish(call_)));
    call_.streams.say(fmt::format("landdrill: {} added, {} new versions, {} already there\n", counts[0],
                                  counts[1], counts[2]));
    return Exit::ok;
  }

  static constexpr std::size_t most_lines_ = 200;
  Call& call_;
  Messages messages_;
  std::vector<std::string> sheets_, lists_;
  std::vector<Block> blocks_;
  std::vector<TableFiles> editions_;
  Exit worst_ = Exit::ok;
};

}  // namespace

Exit book_add(Call& call) {
  return Adding(call).add();
}

}  // namespace landdrill::cli
