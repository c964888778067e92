#include "engine/risk.h"

#include <gtest/gtest.h>
