// The formats that a report is printed in.
#pragma once

#include "engine/report/text.h"

namespace landdrill::report {

enum class Format { text, csv, json };

}  // namespace landdrill::report
