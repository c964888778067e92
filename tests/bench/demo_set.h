// What every measurement starts from: the shipped set and the shipped examples.
//
//   const ValueSet& set = demo_set();      // kingfisher-2026
//   demo_sheet()                           // the text of examples/harbour-lights.sheet
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "tables/load.h"

namespace landdrill::bench {

std::filesystem::path source_folder();
std::string whole_text(const std::filesystem::path& file);

const TableFiles& demo_tables();
const ValueSet& demo_set();
std::string demo_sheet();

// The sheets of a folder, and of the folders in it, in the order of their names.
std::vector<std::filesystem::path> sheets_in(const std::filesystem::path& folder);

// `count` sheets as SheetMaker makes them, one text each.
std::vector<std::string> made_texts(std::size_t count);

}  // namespace landdrill::bench
