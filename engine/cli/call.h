// One call of the program: which command, with what, and where its answer goes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/cli/command_table.h"
#include "engine/cli/exit.h"
#include "engine/cli/output.h"
#include "engine/report/pages/asked.h"

namespace landdrill::cli {

struct Call {
  const Command& command;
  report::Asked given;
  Streams& streams;
};

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
Exit help(Call& call);
Exit man(Call& call);
Exit completions(Call& call);

// A command line that cannot be followed: says so on standard error.

// Prints a mistake of the command line; Exit::usage.
Exit misused(Call& call, const std::string& mistake);

}  // namespace landdrill::cli
