// What stands on the face of every report about one routine: its title and values, what the rules object to, the
// cautions, and which of its values are from no rule book. Each puts what it has to say at the end of a page.
//
//   Face face{account(routine, wish, std::nullopt), objections_with(routine, wish, sheet.diagnostics)};
//
//   Page page("train");
//   put_title(page, face);
//   ...
//   put_notes(page, face);
#pragma once

#include <string>
#include <vector>

#include "engine/report/page.h"
#include "engine/score/account.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// The account of the routine as it is, and what the rules would object to with the options that are chosen.
struct Face : Account {
  Diagnostics objections;
};

// Where the values are from, which the account does not know.
struct ValuesPlace {
  std::string name;                      // of the set
  std::string folder, season;            // its own folder, or the season file that it is in
  std::vector<std::string> hidden = {};  // folders of further sets of that name, which do not count
};

void put_title(PageParts& page, const Account& account);
// "2026-05-09 Tarn Open", or empty.
std::string panel_name(const Account& account);
// What the rules would object to: with a heading, or nothing for people.
void put_objections(PageParts& page, const Diagnostics& objections);
void put_cautions(PageParts& page, const Account& account);
// Which of the values used are invented or remembered.
void put_doubtful_values(PageParts& page, const Account& account);
// The last words of a report: a coach who has two sets of one name sees which of them it was.
void put_values_place(PageParts& page, const ValuesPlace& place);
// The whole build-up of what there is, for who asks for everything.
void put_build_up(PageParts& page, Account account);
// The last three of a report of choosing: objections, cautions, values.
void put_notes(PageParts& page, const Face& face);

// Messages, each under a key of its own: "errors", "warnings", "messages".
void put_messages(PageParts& page, const Diagnostics& diagnostics);

}  // namespace landdrill::report
