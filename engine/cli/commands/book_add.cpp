#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

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

// Runs or panels of one sheet that have one day and one title: in the book the second would be taken for
// other words of the first.
void find_called_the_same(const auto& runs_or_panels, std::string_view what, Diagnostics& diagnostics) {
  std::set<std::pair<std::string_view, std::string_view>> names;
  for (const auto& one : runs_or_panels) {
    const std::string_view title = one.head.title ? one.head.title->text : std::string_view();
    if (names.emplace(one.head.date.text, title).second) continue;
    diagnostics.add(
        diagnostic_at(*one.source, one.head.date.text,
                      {Problem::repeated,
                       fmt::format("a second {} of {}{}", what, one.head.date.text,
                                   title.empty() ? std::string() : fmt::format(" called \"{}\"", title)),
                       "one, for the book tells them apart by day and title",
                       "give it a title of its own, such as \"second\""}));
  }
}
Diagnostics called_the_same(const ReadSheet& sheet) {
  Diagnostics diagnostics;
  find_called_the_same(sheet.assembled.sheets.front().runs, "run", diagnostics);
  find_called_the_same(sheet.assembled.sheets.front().panels, "panel", diagnostics);
  return diagnostics;
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
      const Diagnostics twice = sheet.ok() ? called_the_same(sheet) : Diagnostics();
      if (sheet.ok() && twice.ok()) {
        take(sheet);
      } else {
        messages_.add(sheet.ok() ? twice : sheet.diagnostics);
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
    ListHomes homes(book);
    if (const auto known = homes.read(); !known) {
      worst_ = worse(worst_, refuse(call_, known.error()));
      return;
    }
    for (const std::string& file : lists_) read_list(file, homes);
  }

  void read_list(const std::string& file, ListHomes& homes) {
    const auto text = read_whole(file);
    if (!text) {
      worst_ = worse(worst_, refuse(call_, text.error()));
      return;
    }
    const Source list{shown(file), *text};
    Diagnostics diagnostics;
    const std::vector<ListedPanel> panels = read_marks_list(list, diagnostics);
    Imported made;
    if (diagnostics.ok()) {
      auto imported = panels_from(panels, list, homes);
      if (!imported) {
        worst_ = worse(worst_, refuse(call_, imported.error()));
        return;
      }
      made = std::move(*imported);
    }
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
    std::size_t staying = 0;
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
      const AddedBlock& one = (*added)[i];
      ++counts[static_cast<std::size_t>(one.did)];
      if (stays(one)) ++staying;
      lines.push_back(line_of(blocks_[i], one));
    }
    if (lines.size() > most_lines_ && format_of(call_) == report::Format::text) lines.clear();
    call_.streams.out.write(report::book_list(lines, format_of(call_), page_wish(call_)));
    call_.streams.say(fmt::format("landdrill: {} added, {} new version{}, {} already there\n", counts[0],
                                  counts[1], counts[1] == 1 ? "" : "s", counts[2]));
    if (staying > 0)
      call_.streams.say(
          staying == 1
              ? std::string("landdrill: the routine was changed; a panel that was kept before stays with the "
                            "version that it was swum as\n")
              : fmt::format(
                    "landdrill: the routine was changed; {} panels that were kept before stay with the "
                    "versions that they were swum as\n",
                    staying));
    return Exit::ok;
  }

  // Whether it was kept before with another version of the routine than the one beside it now.
  static bool stays(const AddedBlock& one) {
    return one.did == AddedBlock::Did::already_there && one.beside != 0 && one.of_version != one.beside;
  }

  report::BookLine line_of(const Block& block, const AddedBlock& one) const {
    constexpr std::string_view did[] = {"added", "new version", "already there"};
    return {block.routine,
            block.event,
            std::string(word_of(block.what)),
            block.date,
            block.title,
            std::to_string(one.version),
            one.of_version == 0 ? "" : std::to_string(one.of_version),
            editions_[block.edition].name,
            {},
            std::string(did[static_cast<std::size_t>(one.did)])};
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
