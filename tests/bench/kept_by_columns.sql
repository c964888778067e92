SELECT sheet, line,
       CASE WHEN a + b + c + d + e IS NOT NULL THEN a + b + c + d + e - min(a, b, c, d, e) - max(a, b, c, d, e)
       ELSE ifnull(a, 0) + ifnull(b, 0) + ifnull(c, 0) + ifnull(d, 0) + ifnull(e, 0)
            - min(ifnull(a, 9999), ifnull(b, 9999), ifnull(c, 9999), ifnull(d, 9999), ifnull(e, 9999))
            - max(ifnull(a, 0), ifnull(b, 0), ifnull(c, 0), ifnull(d, 0), ifnull(e, 0))
            + (2 * (ifnull(a, 0) + ifnull(b, 0) + ifnull(c, 0) + ifnull(d, 0) + ifnull(e, 0)) + 100) / 200 * 25 END
FROM marks
