#include "engine/odds.h"

#include <gtest/gtest.h>
