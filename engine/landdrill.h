// The public door: what another program may include. A whole one:
//
//   std::string told(const TableFiles& tables, const std::string& text) {
//     const Loaded values = load(tables);  // {"pond-2026", "", {{"parts.csv", "code,family,value..."}, ...}}
//     if (!values.set) return to_string(values.diagnostics);
//     Sheet sheet = read_sheet({{"reeds.sheet", text}});
//     understand(sheet, *values.set);
//     if (!sheet.routine()) return to_string(sheet.messages());
//     const report::Answer page = report::score(report::Asked("score"), *sheet.routine(), sheet.messages());
//     return page ? render_text(*page, {}) : page.error();
//   }
//
// A question is asked in the words of the command line (`asked.add("--panel", {"tarn"})`) and answered by a page, which
// is rendered as text, JSON or CSV. Whoever wants numbers asks account(), forecast(), compare() and plan(). Nothing of
// this reads a file, looks at a clock or keeps anything: the value set outlives the sheet, and that is all.
#pragma once

#include "engine/chances/forecast.h"
#include "engine/choosing/compare.h"
#include "engine/choosing/plan.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/compare.h"
#include "engine/report/pages/forecast.h"
#include "engine/report/pages/plan.h"
#include "engine/report/pages/score.h"
#include "engine/report/pages/sheet.h"
#include "engine/report/pages/values.h"
#include "engine/report/render.h"
#include "engine/routine/sheet.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "engine/score/objections.h"
#include "grammar/print.h"
#include "tables/edit_cell.h"
#include "tables/load.h"
