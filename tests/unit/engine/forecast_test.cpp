#include "engine/forecast.h"

#include <gtest/gtest.h>
