// A command of the program, and one call of it: with what, and where its answer goes.
//
//   Exit train(Call& call) {
//     if (call.given.operands.empty()) return misused(call, "FILE is missing");
//     print_page(call, page);          // as --format, --colour, --full and the terminal say
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/cli/output.h"  // IWYU pragma: export
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/render.h"
#include "tables/folder.h"

namespace landdrill::cli {

struct Call;

// What a shell can offer for a word of the command line.
enum class Offers { nothing, files, folders, sets, tables, commands };

// `--panel NAME|DATE|none`, or a flag when `value` is empty.
struct OptionRow {
  std::string_view name;
  std::string_view value;
  std::string_view help;
  std::string_view choices = {};  // blanks between them; empty: anything
  Offers offers = Offers::nothing;
  bool repeatable = false;
  std::string_view also = {};  // another spelling
};

inline constexpr std::size_t any_number = 1'000'000'000;

// An operand: least and most are how many of it there may be.
struct OperandRow {
  std::string_view name;
  std::string_view help;
  std::size_t least = 1;
  std::size_t most = 1;
  Offers offers = Offers::nothing;
};

struct Example {
  std::string_view command;
  std::string_view says;
};

struct Command {
  std::string_view words;    // "values show"
  std::string_view summary;  // one line, no full stop
  std::string_view story;    // a paragraph or more for help and man page
  std::vector<OperandRow> operands;
  std::vector<const OptionRow*> options;
  std::vector<Example> examples;
  Exit (*run)(Call&);
  bool hidden = false;
};

struct Call {
  const Command& command;
  report::Asked given;
  Streams& streams;
};

// Prints a mistake of the command line; Exit::usage.
Exit misused(Call& call, const std::string& mistake);
// Prints a trouble; Exit::environment.
Exit refuse(Call& call, const Trouble& trouble);
// The first `most` of them, and how many more there are.
void say_notes(Call& call, const std::vector<std::string>& notes, std::size_t most);

report::TextWish page_wish(const Call& call);
// Of a command with --format.
report::Format format_of(const Call& call);
// As it is asked for. As JSON, one of many stands in one line.
void print_page(Call& call, const report::Page& page, bool one_of_many = false);

// "text json", " " -> {"text", "json"}; none of an empty text.
std::vector<std::string> pieces(std::string_view text, std::string_view between);

// The functions of the command table, one file each in commands/.
Exit score(Call& call);
Exit check(Call& call);
Exit tidy(Call& call);
Exit explain(Call& call);
Exit compare(Call& call);
Exit forecast(Call& call);
Exit plan(Call& call);
Exit train(Call& call);
Exit values_list(Call& call);
Exit values_show(Call& call);
Exit values_check(Call& call);
Exit values_missing(Call& call);
Exit values_fill(Call& call);
Exit values_compare(Call& call);
Exit values_copy(Call& call);
Exit values_edit(Call& call);
Exit values_import(Call& call);
Exit values_export(Call& call);
Exit values_undo(Call& call);
Exit values_redo(Call& call);
Exit values_history(Call& call);
Exit values_remove(Call& call);
Exit book_add(Call& call);
Exit book_swum_as(Call& call);
Exit book_list(Call& call);
Exit book_editions(Call& call);
Exit book_export(Call& call);
Exit book_score(Call& call);
Exit judges(Call& call);
Exit book_judges(Call& call);
Exit book_lessons(Call& call);
Exit book_progress(Call& call);
Exit book_backup(Call& call);
Exit book_restore(Call& call);
Exit book_check(Call& call);
Exit practice_start(Call& call);
Exit practice_report(Call& call);
Exit practice_list(Call& call);
Exit practice_add(Call& call);
Exit practice_export(Call& call);
Exit practice_omit(Call& call);
Exit practice_include(Call& call);
Exit practice_compare(Call& call);
Exit practice_form(Call& call);
Exit help(Call& call);
Exit man(Call& call);
Exit completions(Call& call);

}  // namespace landdrill::cli
