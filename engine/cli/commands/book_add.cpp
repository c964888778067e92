#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/files/sheet_reader.h"
#include "engine/season/kept_sheets.h"
#include "engine/season/marks_import.h"
#include "engine/season/placing.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/marks_list.h"

namespace landdrill::cli {
namespace {

bool is_list(const std::string& file) {
  return file.ends_with(".csv") || file.ends_with(".CSV") || file.ends_with(".tsv");
}

class Adding {
 public:
  explicit Adding(Call& call) : call_(call), messages_(call.streams) {
    for (std::size_t i = 1; i < call.given.operands.size(); ++i)
      (is_list(call.given.operands[i]) ? lists_ : sheets_).push_back(call.given.operands[i]);
  }

  Exit add() {
    if (const std::string mistake = misuse(); !mistake.empty()) return misused(call_, mistake);
    std::vector<std::string> files = sheets_;
    files.insert(files.end(), lists_.begin(), lists_.end());
    if (!all_readable(call_, files)) return Exit::environment;
    if (!sheets_.empty()) read_sheets();
    if (worst_ != Exit::ok) return refuse_all();
    // No file is made for sheets that are refused, and the routines of a list are in the book already.
    const bool is_new = !std::filesystem::exists(call_.given.operands.front());
    if (is_new && !spelled_well({})) return Exit::errors;
    auto season = open_book(call_, lists_.empty() ? Season::Mode::create : Season::Mode::write);
    if (!season) return refuse(call_, season.error());
    Book book(*season);
    auto hold = book.hold();
    if (!hold) return refuse(call_, hold.error());
    if (!sheets_.empty()) {
      const auto kept = book.find({});
      if (!kept) return refuse(call_, kept.error());
      if (!spelled_well(*kept)) return Exit::errors;
    }
    if (!lists_.empty()) read_lists(book);
    return worst_ == Exit::ok ? keep(book, *hold) : refuse_all();
  }

 private:
  // The number that --swum-as says is put down; what is wrong with the command line is given back.
  std::string misuse() {
    if (!lists_.empty() && !sheets_.empty()) return "add the sheets first, then the lists of marks";
    const std::string number(call_.given.value("--swum-as"));
    if (number.empty()) return {};
    if (lists_.empty())
      return "--swum-as says it of the panels of a list; `landdrill book swum-as` says it of a panel that is "
             "kept";
    swum_as_ = version_number(number);
    return swum_as_ != 0
               ? std::string()
               : fmt::format("found --swum-as {}; expected the number of a version, such as 1", number);
  }

  Exit refuse_all() {
    messages_.finish();
    call_.streams.say("landdrill: nothing was added to the book\n");
    return worst_;
  }

  void read_sheets() {
    CallSheets sheets(call_, sheets_);
    SheetReader& reader = sheets.reader();
    while (reader.next()) {
      const StreamSheet& sheet = reader.sheet();
      if (sheet.ok()) {
        take(sheet);
      } else if (!take_rest(sheet)) {
        messages_.add(sheet.messages());
        worst_ = worse(worst_, Exit::errors);
      }
    }
    worst_ = worse(worst_, sheets.worst());
  }

  void take(const StreamSheet& sheet) {
    const Diagnostics twice = called_the_same(sheet);
    if (!twice.ok()) {
      messages_.add(twice);
      worst_ = worse(worst_, Exit::errors);
      return;
    }
    const TableFiles& set = sheet.set->files;
    const auto known = std::find_if(editions_.begin(), editions_.end(), [&](const TableFiles& one) {
      return one.name == set.name && one.place == set.place;
    });
    const auto edition = static_cast<std::size_t>(known - editions_.begin());
    if (known == editions_.end()) editions_.push_back(set);
    std::vector<Block> blocks = blocks_of(sheet, edition);
    std::move(blocks.begin(), blocks.end(), std::back_inserter(blocks_));
  }

  // What is wrong with a sheet may be that its routine was changed and a run or a panel that is kept already
  // was not. Such a one is left where it is.
  bool take_rest(const StreamSheet& sheet) {
    if (sheet.without_set || !std::filesystem::exists(call_.given.operands.front())) return false;
    auto season = open_book(call_, Season::Mode::read);
    if (!season) return false;  // it is said when the book is opened to write
    const Book book(*season);
    Placing placing(book, editions_);
    if (!placing.read()) return false;
    const auto rest = fitting_rest(sheet, placing);
    if (!rest || !*rest) return false;
    if (!(*rest)->sheet.ok()) {
      messages_.add((*rest)->sheet.messages());
      worst_ = worse(worst_, Exit::errors);
      return true;
    }
    take((*rest)->sheet);
    std::move((*rest)->left.begin(), (*rest)->left.end(), std::back_inserter(blocks_));
    return true;
  }

  // A title that differs from one that is there in nothing but case, blanks or signs is that one, misspelled.
  bool spelled_well(const std::vector<KeptBlock>& kept) {
    Titles titles;
    for (const KeptBlock& one : kept) titles.know(one);
    bool well = true;
    for (const Block& block : blocks_) {
      const std::string otherwise = titles.take(block);
      if (otherwise.empty()) continue;
      const bool routine = block.what == Block::What::routine;
      call_.streams.say(fmt::format(
          "landdrill: found the {} \"{}\"; expected \"{}\", as it is spelled elsewhere\n  hint: write the "
          "title in one way\n",
          routine ? std::string("routine")
                  : fmt::format("{} of {}, {},", word_of(block.what), block.routine, block.date),
          routine ? block.routine : block.title, otherwise));
      well = false;
    }
    if (!well) call_.streams.say("landdrill: nothing was added to the book\n");
    return well;
  }

  void read_lists(const Book& book) {
    ListHomes homes(book, swum_as_);
    if (const auto known = homes.read(); !known) {
      worst_ = worse(worst_, refuse(call_, known.error()));
      return;
    }
    for (const std::string& list : lists_) read_list(list, homes);
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
    for (Placed& panel : made.panels) {
      panel.block.edition += editions_.size();
      listed_.push_back(std::move(panel));
    }
    std::move(made.editions.begin(), made.editions.end(), std::back_inserter(editions_));
  }

  Result<std::vector<Placed>> placed(const Book& book) {
    if (!lists_.empty()) return std::move(listed_);
    Placing placing(book, editions_);
    if (auto known = placing.read(); !known) return tl::unexpected(known.error());
    return placing.place(std::move(blocks_));
  }

  Exit keep(Book& book, Book::Hold& hold) {
    auto all = placed(book);
    if (!all) return refuse(call_, all.error());
    auto until = swum_until(book);
    if (!until) return refuse(call_, until.error());
    const AddedNotes notes(call_.given.operands.front(), std::move(*until), shell_quoted);
    std::vector<Block> blocks;
    blocks.reserve(all->size());
    for (Placed& one : *all) blocks.push_back(std::move(one.block));
    const auto added = book.add(blocks, editions_);
    if (!added) return refuse(call_, added.error());
    if (const auto kept = hold.commit(); !kept) return refuse(call_, kept.error());
    report::BookAdded told = what_was_added(call_, blocks, *added);
    for (std::size_t i = 0; i < blocks.size(); ++i) (*all)[i].block = std::move(blocks[i]);
    told.notes = notes.of(*all, *added);
    tell_added(call_, told);
    return Exit::ok;
  }

  Call& call_;
  Messages messages_;
  std::vector<std::string> sheets_, lists_;
  int swum_as_ = 0;
  std::vector<Block> blocks_;   // of sheets
  std::vector<Placed> listed_;  // of lists
  std::vector<TableFiles> editions_;
  Exit worst_ = Exit::ok;
};

}  // namespace

Exit book_add(Call& call) {
  return Adding(call).add();
}

}  // namespace landdrill::cli
