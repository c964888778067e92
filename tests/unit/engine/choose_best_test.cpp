#include "engine/choose_best.h"

#include <gtest/gtest.h>
