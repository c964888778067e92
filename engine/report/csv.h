// For reports that are no pages yet.
#pragma once

#include "engine/report/render_csv.h"
