#include "engine/mark_odds.h"

#include <gtest/gtest.h>
