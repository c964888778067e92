# What R says a made-up season teaches: biases with their intervals, drawn together when lessons are few, and the
# back-test. Kept in lessons_reference.csv, so that the tests need no R.
#
#   Rscript lessons_reference.R > lessons_reference.csv
#
# One line a fact, fields parted by commas, the last of numbers parted by blanks; `-` is a number that there is none of.
#   case,lesson,date,kind,families,faults,expected given          families and faults parted by semicolons
#   case,kinds,within between
#   case,days,between wider
#   case,<sort>,<code>,lessons bias spread low high towards shrunk low high
#   case,clustered,<sort>,<code>,days low high low high
#   case,back-test,tested days before after low high
#
# Only what comes with R, and by other roads than the program: intervals by t.test, the spread within groups by lm, the
# variance between them from the weights 1 / variance (DerSimonian & Laird 1986), drawn biases and their errors by
# solving Henderson's mixed model equations over the single lessons (Henderson, Biometrics 31, 1975, 423-447), the
# back-test by taking the season apart anew for each day, its interval by the cluster-robust variance of lm's mean.
#
# Lows and highs of `clustered` (of the plain and of the drawn bias) are the program's: days are the sample, by Bell &
# McCaffrey, Survey Methodology 28 (2002), 169-181, for the plain ones with whole matrices. Those of <sort>, as if lessons
# were independent, and `days`, by how much that makes them too narrow, are no longer compared: they show the difference.
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

text_of <- function(numbers) {
  paste(ifelse(is.finite(numbers), formatC(numbers, digits = 15, format = "g", width = 1), "-"), collapse = " ")
}
say <- function(...) cat(paste(..., sep = ","), "\n", sep = "")

# ---- a season made up ----

some_of <- function(codes, most) paste(sort(sample(codes, sample(0:most, 1))), collapse = ";")

season <- function(seed, kinds, panels, elements, bias, spread, middle = 7.5, mood = 0) {
  set.seed(seed)
  days <- sort(sample(seq(as.Date("2026-01-10"), by = 7, length.out = 3 * panels), panels, replace = TRUE))
  date <- rep(as.character(days), each = elements)
  kind <- sample(kinds, length(date), replace = TRUE, prob = rev(seq_along(kinds))^2)
  expected <- pmin(10, round((middle + rnorm(length(date))) * 4) / 4)
  given <- expected + bias[match(kind, kinds)] + rnorm(length(date), sd = spread)
  if (mood > 0) given <- given + rnorm(panels, sd = mood)[match(date, unique(date))]
  data.frame(date, kind, families = replicate(length(date), some_of(c("spins", "holds", "thrusts"), 2)),
             faults = replicate(length(date), some_of(c("bent-knee", "splash", "travel", "low-height"), 2)),
             expected, given = pmax(0, pmin(10, round(given * 12) / 12)))[sample(length(date)), ]
}

# ---- what it teaches ----

plain <- function(off) {
  if (length(off) < 2) return(c(length(off), mean(off), NA, NA, NA))
  c(length(off), mean(off), sd(off), t.test(off)$conf.int)
}

# off, group, lesson: of each lesson in each of its groups. `rows` has for each group: towards, shrunk, low, high. A
# lesson in several groups counts once in the degrees of freedom and in the variance of the common mean; with no more
# lessons than groups all are drawn to the common mean.
together <- function(off, group, lesson = seq_along(off)) {
  group <- factor(group)
  count <- as.numeric(table(group))
  means <- as.numeric(tapply(off, group, mean))
  lessons <- length(unique(lesson))
  freedom <- lessons - nlevels(group)
  pooled <- freedom <= 0
  fitted <- if (nlevels(group) > 1) lm(off ~ 0 + group) else lm(off ~ 1)
  sigma2 <- if (pooled) var(off[!duplicated(lesson)]) else sum(resid(fitted)^2) / (length(off) - nlevels(group))
  if (pooled) freedom <- lessons - 1
  tau2 <- 0
  if (nlevels(group) > 1 && !pooled) {
    w <- count / sigma2
    q <- sum(w * (means - sum(w * means) / sum(w))^2)
    tau2 <- max(0, (q - (nlevels(group) - 1)) / (sum(w) - sum(w^2) / sum(w)))
  }
  if (tau2 > 0) {
    design <- cbind(1, model.matrix(~ 0 + group))
    left <- crossprod(design) / sigma2 + diag(c(0, rep(1 / tau2, nlevels(group))))
    inverse <- solve(left)
    solved <- inverse %*% crossprod(design, off) / sigma2
    pick <- cbind(1, diag(nlevels(group)))
    shrunk <- as.numeric(pick %*% solved)
    weights <- pick %*% inverse %*% t(design) / sigma2
    towards <- solved[1]
    common <- (sigma2 / count) / (tau2 + sigma2 / count)
    again <- (length(off) / lessons - 1) * inverse[1, 1] * common^2
    error <- sqrt(diag(pick %*% inverse %*% t(pick)) + again)
  } else {
    towards <- mean(off)
    shrunk <- rep(towards, nlevels(group))
    weights <- matrix(1 / length(off), nlevels(group), length(off))
    error <- rep(sqrt(sigma2 / lessons), nlevels(group))
  }
  times <- if (freedom > 0) qt(0.975, freedom) else NA
  rownames(weights) <- levels(group)
  list(weights = weights, tau2 = tau2, rows = data.frame(row.names = levels(group), towards, shrunk, low = shrunk - times * error,
                         high = shrunk + times * error),
       within = if (pooled) NA else sqrt(sigma2), between = if (pooled || nlevels(group) < 2) NA else sqrt(tau2))
}

# ---- days as the sample ----

# The inverse root of a symmetric matrix.
inverse_root <- function(matrix) {
  parts <- eigen(matrix, symmetric = TRUE)
  parts$vectors %*% (t(parts$vectors) / sqrt(parts$values))
}

# The error of a plain mean and its degrees of freedom: CR2 of Bell & McCaffrey, days as clusters.
of_days <- function(off, date) {
  n <- length(off)
  rest <- diag(n) - 1 / n
  e <- rest %*% off
  sums <- NULL
  columns <- NULL
  for (day in unique(date)) {
    its <- date == day
    adjusted <- inverse_root(rest[its, its, drop = FALSE])
    sums <- c(sums, sum(adjusted %*% e[its]) / n)
    columns <- cbind(columns, rest[, its, drop = FALSE] %*% adjusted %*% rep(1 / n, sum(its)))
  }
  spread <- crossprod(columns)
  c(sqrt(sum(sums^2)), sum(diag(spread))^2 / sum(spread^2))
}

# The same of any weighted sum of lessons: `weights` add up to 1, `off` is what was fitted left over.
of_weighted_days <- function(weights, off, date) {
  share <- tapply(weights, date, sum)
  sums <- tapply(weights * off, date, sum)
  spread <- -outer(share / sqrt(1 - share), share / sqrt(1 - share))
  diag(spread) <- share
  c(sqrt(sum(sums^2 / (1 - share))), 1 / sum(spread^2))
}

# None of fewer than three days, or of days that are all alike.
interval_of <- function(middle, error, freedom, more = 0) {
  if (error < 1e-9) return(c(NA, NA))
  middle + c(-1, 1) * qt(0.975, freedom) * sqrt(error^2 + more)
}
plain_days <- function(off, date) {
  if (length(unique(date)) < 3) return(c(NA, NA))
  error <- of_days(off, date)
  interval_of(mean(off), error[1], error[2])
}
drawn_days <- function(drawn, one, off, group, date) {
  if (length(unique(date)) < 3) return(c(NA, NA))
  group <- factor(group)
  weights <- drawn$weights[one, ]
  error <- of_weighted_days(weights, off - drawn$rows[as.character(group), "shrunk"], date)
  beside <- as.numeric(tapply(weights, group, sum)) - (levels(group) == one)
  interval_of(drawn$rows[one, "shrunk"], error[1], error[2], drawn$tau2 * sum(beside^2))
}

# Each lesson once for each of its codes.
by_code <- function(lessons, column) {
  codes <- strsplit(lessons[[column]], ";")
  list(off = rep(lessons$given - lessons$expected, lengths(codes)), code = unlist(codes),
       lesson = rep(seq_len(nrow(lessons)), lengths(codes)), date = rep(lessons$date, lengths(codes)))
}

say_sort <- function(case, sort, off, code, date, lesson = seq_along(off)) {
  if (length(off) == 0) return(invisible())
  drawn <- together(off, code, lesson)
  if (sort == "kind") say(case, "kinds", text_of(c(drawn$within, drawn$between)))
  for (one in rownames(drawn$rows)) {
    say(case, sort, one, text_of(c(plain(off[code == one]), unlist(drawn$rows[one, ]))))
    its <- code == one
    say(case, "clustered", sort, one, text_of(c(length(unique(date[its])), plain_days(off[its], date[its]),
                                                drawn_days(drawn, one, off, code, date))))
  }
}

# The mean squares of an analysis of variance by days, and Kish's design effect.
say_days <- function(case, off, date) {
  count <- table(date)
  if (length(count) < 2 || length(off) == length(count)) return(say(case, "days", text_of(c(NA, 1))))
  squares <- anova(lm(off ~ factor(date)))[["Mean Sq"]]
  each <- (length(off) - sum(count^2) / length(off)) / (length(count) - 1)
  tau2 <- max(0, (squares[1] - squares[2]) / each)
  together <- tau2 / (tau2 + squares[2])
  say(case, "days", text_of(c(sqrt(tau2), sqrt(1 + (sum(count^2) / length(off) - 1) * together))))
}

# ---- the back-test ----

calibrated <- function(known, lessons) {
  off <- known$given - known$expected
  shrunk <- together(off, known$kind)$rows
  add <- shrunk[lessons$kind, "shrunk"]
  add[is.na(add)] <- mean(off)
  pmin(10, pmax(0, lessons$expected + add))
}

say_back_test <- function(case, lessons) {
  gains <- NULL
  for (day in sort(unique(lessons$date))) {
    known <- lessons[lessons$date < day, ]
    if (nrow(known) < 8) next
    today <- lessons[lessons$date == day, ]
    gains <- rbind(gains, data.frame(day, before = abs(today$given - today$expected),
                                     after = abs(today$given - calibrated(known, today))))
  }
  if (is.null(gains)) return(say(case, "back-test", text_of(c(0, 0, 0, 0, NA, NA))))
  mean_gain <- lm(I(before - after) ~ 1, gains)
  days <- length(unique(gains$day))
  meat <- sum(rowsum(resid(mean_gain), gains$day)^2)
  error <- sqrt(days / (days - 1) * meat) / nrow(gains)
  interval <- if (days > 1) coef(mean_gain) + c(-1, 1) * qt(0.975, days - 1) * error else c(NA, NA)
  say(case, "back-test", text_of(c(nrow(gains), days, mean(gains$before), mean(gains$after), interval)))
}

tell <- function(case, lessons) {
  for (i in seq_len(nrow(lessons))) {
    one <- lessons[i, ]
    say(case, "lesson", one$date, one$kind, one$families, one$faults, text_of(c(one$expected, one$given)))
  }
  off <- lessons$given - lessons$expected
  alone <- plain(off)
  say(case, "all", "", text_of(c(alone, alone[2], alone[2], alone[4:5])))
  days <- plain_days(off, lessons$date)
  say(case, "clustered", "all", "", text_of(c(length(unique(lessons$date)), days, days)))
  say_sort(case, "kind", off, lessons$kind, lessons$date)
  families <- by_code(lessons, "families")
  say_sort(case, "family", families$off, families$code, families$date, families$lesson)
  faults <- by_code(lessons, "faults")
  say_sort(case, "fault", faults$off, faults$code, faults$date, faults$lesson)
  say_days(case, off, lessons$date)
  say_back_test(case, lessons)
}

kinds <- c("hybrid", "required", "lift", "throw", "figure")
tell("a season", season(1, kinds[1:4], 14, 7, c(-0.3, 0.1, 0.25, -0.6), 0.35))
tell("kinds alike", season(2, kinds[1:3], 10, 5, c(-0.2, -0.2, -0.2), 0.4))
tell("kinds far apart", season(3, kinds, 30, 9, c(-0.8, 0.7, 0.1, 1.2, -0.4), 0.2))
tell("one kind", season(4, kinds[1], 6, 4, -0.3, 0.3))
tell("near the top", season(5, kinds[1:2], 12, 4, c(0.6, 0.3), 0.3, 9.3))
tell("few", season(6, kinds[1:3], 2, 3, c(-0.3, 0.2, 0.1), 0.3))
each_once <- season(7, kinds, 5, 1, rep(-0.2, 5), 0.4)
each_once$kind <- kinds
tell("each kind once", each_once)
tell("one lesson", season(8, kinds[1], 1, 1, -0.3, 0.3))
tell("moody days", season(9, kinds[1:3], 10, 8, c(-0.3, 0, 0.2), 0.3, mood = 0.4))
