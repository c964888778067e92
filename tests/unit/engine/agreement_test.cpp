#include "engine/agreement.h"

#include <gtest/gtest.h>
