#include "engine/panel_view.h"

#include <gtest/gtest.h>
