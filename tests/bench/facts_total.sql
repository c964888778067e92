-- Every sheet's estimate and recorded total, in ten-thousandths of a point. KEPT stands for how the kept marks of a
-- line are found (tests/bench/run puts in one of two ways).
CREATE TEMP TABLE total AS
WITH
-- One highest and one lowest mark dropped; a missing judge gets the mean of the others, to the nearest 0.25.
kept(sheet, line, sum) AS (KEPT),
-- What the faults of an element took in one run: each fault no more than its cap.
taken(sheet, run, element, mark) AS (
  SELECT sheet, run, element, sum(mark) FROM
    (SELECT u.sheet, u.run, u.element, min(sum(f.taken * u.times), max(f.cap)) AS mark
     FROM fault_use u JOIN fault f ON f.fault = u.fault AND f.size = u.size GROUP BY u.sheet, u.run, u.element, u.fault)
  GROUP BY sheet, run, element),
-- The latest run that saw the element.
latest(sheet, element, run, base) AS (
  SELECT sheet, element, max(run), base FROM run_element GROUP BY sheet, element),
marked(sheet, element, run) AS (
  SELECT sheet, element, max(run) FROM fault_use GROUP BY sheet, element),
part_sum(sheet, element, parts, flights, families) AS (
  SELECT u.sheet, u.element, sum(p.value * u.times), sum(p.value * u.times * p.flight), count(DISTINCT p.family)
  FROM part_use u JOIN part p USING (part) GROUP BY u.sheet, u.element),
declared(sheet, element, weight, base, difficulty, expect) AS (
  SELECT e.sheet, e.element, w.weight, k.base,
         CASE k.formula WHEN 0 THEN s.parts
                        WHEN 1 THEN k.base + s.parts + 10 * max(0, s.families - 2)
                        WHEN 2 THEN k.base + s.parts + 15 * max(0, s.families - 3)
                        WHEN 3 THEN min(500, k.base + s.parts + s.flights / 2) END,
         e.expect
  FROM part_sum s JOIN element e USING (sheet, element) JOIN routine r USING (sheet) JOIN kind k USING (kind)
       JOIN element_weight w ON w.event = r.event AND w.kind = e.kind),
element_points(sheet, expected, recorded) AS (
  SELECT d.sheet,
         sum((iif(m.run IS NULL, d.expect, max(0, 1000 - t.mark))
              * iif(l.base, d.base, d.difficulty) * d.weight + 5) / 10),
         sum((k.sum * iif(re.base, d.base, d.difficulty) * d.weight + 15) / 30)
  FROM declared d
       LEFT JOIN latest l ON l.sheet = d.sheet AND l.element = d.element
       LEFT JOIN marked m ON m.sheet = d.sheet AND m.element = d.element
       LEFT JOIN taken t ON t.sheet = d.sheet AND t.run = m.run AND t.element = d.element
       LEFT JOIN recorded_element re ON re.sheet = d.sheet AND re.element = d.element
       LEFT JOIN kept k ON k.sheet = d.sheet AND k.line = d.element
  GROUP BY d.sheet),
last_aspect(sheet, aspect, run, mark) AS (SELECT sheet, aspect, max(run), mark FROM run_aspect GROUP BY sheet, aspect),
aspect_points(sheet, expected, recorded) AS (
  SELECT i.sheet, sum(coalesce(l.mark, i.mark) * w.weight * 10), sum((20 * k.sum * w.weight + 3) / 6)
  FROM impression i JOIN routine r USING (sheet) JOIN aspect_weight w ON w.event = r.event AND w.aspect = i.aspect
       LEFT JOIN last_aspect l ON l.sheet = i.sheet AND l.aspect = i.aspect
       LEFT JOIN kept k ON k.sheet = i.sheet AND k.line = 1000 + i.aspect
  GROUP BY i.sheet),
-- Of the run-throughs, the latest that spoke of sync errors, and the latest that spoke of penalties.
last_run(sheet, sync, penalties) AS (
  SELECT sheet, max(iif(says_sync, run, NULL)), max(iif(says_penalties, run, NULL)) FROM run GROUP BY sheet),
sync_off(sheet, run, points) AS (
  SELECT u.sheet, u.run, sum(u.times * s.points) FROM sync_use u JOIN sync s USING (sync) GROUP BY u.sheet, u.run),
penalty_off(sheet, run, points) AS (
  SELECT u.sheet, u.run, sum(min(u.times, p.most) * p.points) FROM penalty_use u JOIN penalty p USING (penalty)
  GROUP BY u.sheet, u.run)
SELECT r.sheet,
       e.expected + a.expected - coalesce(s.points, 0) - coalesce(p.points, 0) AS estimate,
       iif(r.marked, e.recorded + a.recorded - coalesce(rs.points, 0) - coalesce(rp.points, 0), NULL) AS recorded
FROM routine r JOIN element_points e ON e.sheet = r.sheet JOIN aspect_points a ON a.sheet = r.sheet
     LEFT JOIN last_run l ON l.sheet = r.sheet
     LEFT JOIN sync_off s ON s.sheet = r.sheet AND s.run = l.sync
     LEFT JOIN penalty_off p ON p.sheet = r.sheet AND p.run = l.penalties
     LEFT JOIN sync_off rs ON rs.sheet = r.sheet AND rs.run = 0
     LEFT JOIN penalty_off rp ON rp.sheet = r.sheet AND rp.run = 0;
