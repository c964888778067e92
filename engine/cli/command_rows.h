// What the rows of the command table share, and the groups of commands that it is put together from.
#pragma once

#include <vector>

#include "engine/cli/call.h"

namespace landdrill::cli {

inline constexpr OptionRow values_option = {
    "--values", "FOLDER", "look for value sets in this folder first", {}, Offers::folders, true};
inline constexpr OptionRow set_option = {
    "--set", "NAME", "price from this value set, whatever the sheet says", {}, Offers::sets};
inline constexpr OptionRow season_option = {
    "--season", "FILE", "take the value sets from this season file, not from folders", {}, Offers::files};
inline constexpr OptionRow colour_option = {"--colour",
                                            "auto|always|never",
                                            "colour the report (auto: on a terminal only)",
                                            "auto always never",
                                            Offers::nothing,
                                            false,
                                            "--color"};
inline constexpr OptionRow runs_option = {
    "--runs", "latest|mean|none|DATE",
    "the run-throughs that the estimate rests on: the latest, the mean of all, none, or one day's"};
inline constexpr OptionRow option_option = {
    "--option", "NUMBER=TITLE", "swim an element by one of its options", {}, Offers::nothing, true};
inline constexpr OptionRow panel_option = {
    "--panel", "NAME|DATE|none",
    "the recorded panel to lay beside the estimate (otherwise the last of the sheet)"};
inline constexpr OptionRow format_option = {"--format", "text|json|csv", "how to print", "text json csv"};
inline constexpr OptionRow text_or_json = {"--format", "text|json", "how to print", "text json"};

inline constexpr OptionRow full_option = {
    "--full", "", "the whole build-up below, and every value that is not published by name"};

inline constexpr OptionRow event_option = {"--event", "CODE", "only routines of this event"};
inline constexpr OptionRow from_option = {"--from", "DATE", "only what was swum on this day or later"};
inline constexpr OptionRow until_option = {"--until", "DATE", "only what was swum on this day or earlier"};

inline constexpr OperandRow sheet_operand = {"FILE", "a sheet with one routine; - is standard input", 1, 1,
                                             Offers::files};
inline constexpr OperandRow sheets_operand = {"FILE", "a sheet; - is standard input", 1, any_number,
                                              Offers::files};
inline constexpr OperandRow set_operand = {"SET", "a value set: its name, or its folder", 1, 1, Offers::sets};
inline constexpr OperandRow book_operand = {"BOOK", "the season book: a season file", 1, 1, Offers::files};
inline constexpr OperandRow words_operand = {"WORDS", "words of the title of a routine or a meet", 0,
                                             any_number};

// rows_of_sheets.cpp: one sheet or many as they are; what to swim, with which odds, and what to train.
extern const std::vector<Command> sheet_commands;
// rows_of_sets.cpp: value sets in folders, and in a season file.
extern const std::vector<Command> set_commands;
// rows_of_book.cpp: what the club swam, kept in the season file, and practice for officials.
extern const std::vector<Command> book_commands;

}  // namespace landdrill::cli
