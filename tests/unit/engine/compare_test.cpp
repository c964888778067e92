#include "engine/compare.h"

#include <gtest/gtest.h>
