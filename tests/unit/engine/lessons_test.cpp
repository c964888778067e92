#include "engine/lessons.h"

#include <gtest/gtest.h>
