// The account of a routine as text for people: the sheet that a coach pins on the wall.
//
//   Harbour Lights
//   Duet, free, by Kingfisher club league 2026
//      no  element                 difficulty    mark   points     left
//   >   2  Undertow, hybrid              5.25    7.25  38.0625  14.4375
//
// Computes nothing: every amount is taken as it stands. No line is wider than the wish, nothing rests on
// colour alone.
#pragma once

#include <string>

#include "engine/score/account.h"
#include "engine/report/render_text.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// `objections`: the warnings about this sheet, what the rules of the event would object to.
std::string text(const Account& account, const TextWish& wish, const Diagnostics& objections = {});

}  // namespace landdrill::report
