#include "engine/plan.h"

#include <gtest/gtest.h>
