// How many marks are enough to say something of them: one table for the room.
//
//   if (view.lines.size() < least_marks) ...    // nothing is said about the judges
//
// Common practice, no source, and no rule of a league: a row of a value set would let an edition change what its panels
// may be told. How uncertain a number is, its interval says itself.
#pragma once

#include <cstddef>

namespace landdrill {

// Of a judge, of a pair, of a panel: with fewer nothing is said at all.
inline constexpr std::size_t least_marks = 5;
// Kendall's W has a chi-square from so many rows on; intervals of agreement hold from so many on.
inline constexpr std::size_t rows_for_chi_square = 8, rows_for_intervals = 30;
// With fewer lessons in all, expected marks are left as they are; of fewer days nothing is claimed, as a strict or a kind
// day would look the same.
inline constexpr std::size_t least_lessons = 8, least_days = 3;
// Of a trainee's practice, and of one kind or panel within it.
inline constexpr std::size_t least_tasks = 5, least_in_a_group = 3;
// Of those who mark as the judges do, no larger share is told any fault, over the four things that are looked at: how high
// she marks, where she is off, how she ranks, how much of the scale she uses (Bonferroni).
inline constexpr double told_by_chance = 0.05, told_by_chance_of_each = told_by_chance / 4;

}  // namespace landdrill
