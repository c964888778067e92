// The formats that a report is printed in.
#pragma once

namespace landdrill::report {

enum class Format { text, csv, json };

}  // namespace landdrill::report
