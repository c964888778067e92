# Every sheet's estimate and recorded total from the tables of make_sheets --tables, in ten-thousandths of a point.
# usage: Rscript facts_total.R FOLDER WAY OUT     WAY: whole-columns | group-by-group
# Prints the seconds of the sum alone, the best of three; reading the tables is not part of it. Whole numbers in
# doubles, far below 2^53: exact.
arguments <- commandArgs(TRUE)
folder <- arguments[1]
way <- arguments[2]

read_table <- function(name, columns) {
  file <- file.path(folder, paste0(name, ".csv"))
  values <- scan(file, what = rep(list(integer()), length(columns)), sep = ",", quiet = TRUE)
  names(values) <- columns
  values
}
part <- read_table("part", c("part", "family", "flight", "value"))
kind <- read_table("kind", c("kind", "formula", "base"))
element_weight <- read_table("element_weight", c("event", "kind", "weight"))
aspect_weight <- read_table("aspect_weight", c("event", "aspect", "weight"))
fault <- read_table("fault", c("fault", "size", "taken", "cap"))
sync <- read_table("sync", c("sync", "points"))
penalty <- read_table("penalty", c("penalty", "points", "most"))
routine <- read_table("routine", c("sheet", "event", "marked"))
element <- read_table("element", c("sheet", "element", "kind", "expect"))
part_use <- read_table("part_use", c("sheet", "element", "part", "times"))
impression <- read_table("impression", c("sheet", "aspect", "mark"))
run <- read_table("run", c("sheet", "run", "says_sync", "says_penalties"))
run_element <- read_table("run_element", c("sheet", "run", "element", "base"))
fault_use <- read_table("fault_use", c("sheet", "run", "element", "fault", "size", "times"))
run_aspect <- read_table("run_aspect", c("sheet", "run", "aspect", "mark"))
recorded_element <- read_table("recorded_element", c("sheet", "element", "base"))
mark <- read_table("mark", c("sheet", "line", "judge", "mark"))
sync_use <- read_table("sync_use", c("sheet", "run", "sync", "times"))
penalty_use <- read_table("penalty_use", c("sheet", "run", "penalty", "times"))

half_up <- function(numerator, denominator) (2 * numerator + denominator) %/% (2 * denominator)

# Sums of `values` by group 1..groups; groups without any are 0.
sums <- function(values, group, groups) {
  result <- numeric(groups)
  summed <- rowsum(as.numeric(values), group, reorder = FALSE)
  result[as.integer(rownames(summed))] <- summed
  result
}

# The kept marks of each line: highest and lowest dropped; a missing judge gets the mean of the others to 0.25.
kept_in_columns <- function(line, lines) {
  judged <- matrix(NA_real_, lines, 5)
  judged[cbind(line, mark$judge + 1L)] <- mark$mark
  columns <- list(judged[, 1], judged[, 2], judged[, 3], judged[, 4], judged[, 5])
  total <- rowSums(judged, na.rm = TRUE)
  given <- 5 - rowSums(is.na(judged))
  filled <- ifelse(given == 4, half_up(total, 100) * 25, 0)
  total + filled - do.call(pmin, c(columns, na.rm = TRUE)) - do.call(pmax, c(columns, na.rm = TRUE))
}
kept_group_by_group <- function(line, lines) {
  one_line <- function(marks) {
    if (length(marks) == 4) marks <- c(marks, half_up(sum(marks), 100) * 25)
    sum(sort(marks)[2:4])
  }
  result <- numeric(lines)
  kept <- tapply(mark$mark, line, one_line)
  result[as.integer(names(kept))] <- kept
  result
}

totals <- function(kept_of) {
  sheets <- length(routine$sheet)
  at <- function(sheet, element) sheet * 32 + element + 1    # a place for every element a sheet can have
  places <- sheets * 32
  key <- at(element$sheet, element$element)

  # difficulty
  used <- part_use$part + 1L
  key_used <- at(part_use$sheet, part_use$element)
  worth <- part$value[used] * part_use$times
  parts <- sums(worth, key_used, places)[key]
  flights <- sums(worth * part$flight[used], key_used, places)[key]
  first <- !duplicated(key_used * 32 + part$family[used])
  families <- tabulate(key_used[first], places)[key]
  base <- kind$base[element$kind + 1]
  formula <- kind$formula[element$kind + 1]
  difficulty <- ifelse(formula == 0, parts,
                ifelse(formula == 1, base + parts + 10 * pmax(0, families - 2),
                ifelse(formula == 2, base + parts + 15 * pmax(0, families - 3),
                       pmin(500, base + parts + flights %/% 2))))
  weight <- element_weight$weight[match(routine$event[element$sheet + 1] * 32 + element$kind,
                                        element_weight$event * 32 + element_weight$kind)]

  # the mark of each run, then the latest
  key_run <- (at(fault_use$sheet, fault_use$element)) * 4 + fault_use$run
  row <- match(fault_use$fault * 4 + fault_use$size, fault$fault * 4 + fault$size)
  each <- key_run * 32 + fault_use$fault
  taken_each <- rowsum(as.numeric(fault$taken[row] * fault_use$times), each, reorder = FALSE)
  once <- !duplicated(each)
  taken_run <- rowsum(pmin(taken_each[, 1], fault$cap[row[once]]), key_run[once], reorder = FALSE)
  taken_keys <- key_run[!duplicated(key_run)]
  latest <- integer(places)
  latest_marked <- integer(places)  # without a fault a run says nothing of the mark
  latest_base <- integer(places)
  key_seen <- at(run_element$sheet, run_element$element)
  latest[key_seen] <- run_element$run                        # later runs stand below earlier ones
  latest_base[key_seen] <- run_element$base
  latest_marked[at(fault_use$sheet, fault_use$element)] <- fault_use$run
  seen <- latest[key]
  marked <- latest_marked[key]
  taken <- taken_run[match(key * 4 + marked, taken_keys), 1]
  expected_mark <- ifelse(marked == 0, element$expect, pmax(0, 1000 - taken))
  expected_difficulty <- ifelse(seen > 0 & latest_base[key] == 1, base, difficulty)
  expected <- half_up(expected_mark * expected_difficulty * weight, 10)

  # the panel
  line <- mark$sheet * 32L + ifelse(mark$line >= 1000L, mark$line - 1000L + 24L, mark$line) + 1L
  kept <- kept_of(line, places)
  recorded_base <- integer(places)
  recorded_base[at(recorded_element$sheet, recorded_element$element)] <- recorded_element$base
  recorded <- half_up(kept[key] * ifelse(recorded_base[key] == 1, base, difficulty) * weight, 30)

  # marks for the whole routine
  aspect_w <- aspect_weight$weight[match(routine$event[impression$sheet + 1] * 32 + impression$aspect,
                                         aspect_weight$event * 32 + aspect_weight$aspect)]
  in_run <- integer(places)
  in_run[at(run_aspect$sheet, run_aspect$aspect)] <- run_aspect$mark    # later runs stand below earlier ones
  in_run <- in_run[at(impression$sheet, impression$aspect)]
  aspect_expected <- ifelse(in_run == 0, impression$mark, in_run) * aspect_w * 10
  aspect_recorded <- half_up(kept[at(impression$sheet, impression$aspect + 24)] * aspect_w * 10, 3)

  # sync errors and penalties: those of the panel are those of run 0
  sync_off <- sums(sync_use$times * sync$points[sync_use$sync + 1], sync_use$sheet * 4 + sync_use$run + 1, sheets * 4)
  penalty_off <- sums(pmin(penalty_use$times, penalty$most[penalty_use$penalty + 1]) * penalty$points[penalty_use$penalty + 1],
                      penalty_use$sheet * 4 + penalty_use$run + 1, sheets * 4)
  last_that <- function(says) {
    last <- integer(sheets)
    last[run$sheet[says == 1] + 1] <- run$run[says == 1]
    last
  }
  off_in_run <- function(off, last) ifelse(last > 0, off[routine$sheet * 4 + last + 1], 0)

  sheet <- routine$sheet + 1
  estimate <- sums(c(expected, aspect_expected), c(element$sheet, impression$sheet) + 1, sheets) -
    off_in_run(sync_off, last_that(run$says_sync)) - off_in_run(penalty_off, last_that(run$says_penalties))
  marked <- sums(c(recorded, aspect_recorded), c(element$sheet, impression$sheet) + 1, sheets) -
    sync_off[routine$sheet * 4 + 1] - penalty_off[routine$sheet * 4 + 1]
  marked[routine$marked == 0] <- NA
  list(estimate = estimate[sheet], recorded = marked[sheet])
}

kept_of <- if (way == "whole-columns") kept_in_columns else kept_group_by_group
seconds <- Inf
for (time in 1:3) seconds <- min(seconds, system.time(result <- totals(kept_of))[["elapsed"]])
cat(sprintf("%.6f\n", seconds))
whole <- function(values) ifelse(is.na(values), "", format(values, scientific = FALSE, trim = TRUE))
writeLines(paste(routine$sheet, whole(result$estimate), whole(result$recorded), sep = ","), arguments[3])
