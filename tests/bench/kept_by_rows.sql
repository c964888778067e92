SELECT sheet, line, sum(mark) - min(mark) - max(mark) + iif(count(*) = 4, (2 * sum(mark) + 100) / 200 * 25, 0)
FROM mark GROUP BY sheet, line
