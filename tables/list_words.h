// What the columns of a list of marks may be called, in several languages, as normal_name makes the names.
//
//   list_words::mark      // "mark", "marks", "score", "note", ...
#pragma once

#include <string_view>

namespace landdrill::list_words {

inline constexpr std::string_view date[] = {"date", "day", "datum", "fecha", "data", "дата"};
inline constexpr std::string_view meet[] = {"meet",      "competition", "title",       "panel",
                                            "wettkampf", "compétition", "competicion", "gara"};
inline constexpr std::string_view routine[] = {"routine", "programme", "program",
                                               "kür",     "rutina",    "programma"};
inline constexpr std::string_view event[] = {"event",   "category", "disziplin",
                                             "épreuve", "epreuve",  "prueba"};
inline constexpr std::string_view line[] = {"element", "line",    "what",     "aspect", "element_no",
                                            "nr",      "élément", "elemento", "элемент"};
inline constexpr std::string_view judge[] = {"judge", "seat", "richter", "juge", "juez", "giudice", "судья"};
inline constexpr std::string_view mark[] = {"mark", "marks",  "score",   "note",
                                            "nota", "punkte", "wertung", "оценка"};
// What a panel's list cannot say, for it has one row a mark.
inline constexpr std::string_view said_in_sheets[] = {
    "sync",      "sync_error",   "sync_errors", "synchronisation", "synchronization", "penalty",
    "penalties", "deduction",    "deductions",  "result",          "total",           "strafe",
    "strafen",   "abzug",        "abzüge",      "ergebnis",        "pénalité",        "pénalités",
    "résultat",  "penalización", "resultado",   "penalità",        "risultato"};
inline constexpr std::string_view base[] = {"base", "base_mark", "basis"};

}  // namespace landdrill::list_words
