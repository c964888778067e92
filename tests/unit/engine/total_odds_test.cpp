#include "engine/total_odds.h"

#include <gtest/gtest.h>
