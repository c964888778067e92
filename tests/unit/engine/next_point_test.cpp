#include "engine/next_point.h"

#include <gtest/gtest.h>
