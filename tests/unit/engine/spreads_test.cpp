#include "engine/spreads.h"

#include <gtest/gtest.h>
