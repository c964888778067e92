# The agreement of judges and the season's totals from the list that make_season writes, as `book judges` and `book
# score` tell them: what those are measured against. Base R alone.
# usage: Rscript season.R MARKS OUT     OUT: a folder for what it found
# Prints seconds: reading the list, the agreement by meet, the totals group by group, the totals in whole columns.
arguments <- commandArgs(TRUE)
seconds <- function(work) {
  start <- proc.time()[["elapsed"]]
  force(work)
  proc.time()[["elapsed"]] - start
}

reading <- seconds({
  raw <- scan(arguments[1], what = list("", "", "", "", 0L, ""), sep = ",", skip = 1, quiet = TRUE)
  names(raw) <- c("date", "meet", "routine", "element", "judge", "mark")
  mark <- suppressWarnings(as.numeric(raw$mark))
  judges <- max(raw$judge)
  first <- raw$judge == 1
  marks <- matrix(mark, ncol = judges, byrow = TRUE)  # a row a line of a panel
  line <- raw$element[first]
  date <- raw$date[first]
  meet <- raw$meet[first]
  routine <- raw$routine[first]
})

t_mean <- function(x) {
  n <- length(x)
  if (n < 2) return(c(if (n) x else NA, NA, NA))
  reach <- qt(0.975, n - 1) * sd(x) / sqrt(n)
  c(mean(x), mean(x) - reach, mean(x) + reach)
}
fisher <- function(rho, n) tanh(atanh(rho) + c(-1, 1) * qnorm(0.975) / sqrt(n - 3))

judge_view <- function(marks, judge, kinds, low, high) {
  own <- marks[, judge]
  others <- rowMeans(marks[, -judge, drop = FALSE], na.rm = TRUE)
  difference <- own - others
  there <- !is.na(difference)
  rho <- suppressWarnings(cor(own[there], others[there], method = "spearman"))
  by_kind <- if (is.null(kinds)) NULL else tapply(difference[there], kinds[there], t_mean)
  list(t_mean(difference[there]), sd(difference[there]), mean(own, na.rm = TRUE), rho, fisher(rho, sum(there)), by_kind,
       sum(own == low, na.rm = TRUE), sum(own == high, na.rm = TRUE))
}

weighted_kappa <- function(x, y) {
  values <- sort(unique(c(x, y)))
  shares <- unclass(table(factor(x, values), factor(y, values))) / length(x)
  d <- abs(outer(values, values, "-"))
  w <- 1 - d / max(d)
  rows <- rowSums(shares)
  columns <- colSums(shares)
  observed <- sum(w * shares)
  chance <- sum(w * outer(rows, columns))
  kappa <- (observed - chance) / (1 - chance)
  margin <- outer(as.vector(w %*% columns), as.vector(rows %*% w), "+")
  squares <- sum(shares * (w * (1 - chance) - margin * (1 - observed))^2)
  variance <- (squares - (observed * chance - 2 * chance + observed)^2) / (length(x) * (1 - chance)^4)
  kappa + c(0, -1, 1) * qnorm(0.975) * sqrt(max(variance, 0))
}

pair_view <- function(x, y, kinds) {
  there <- !is.na(x) & !is.na(y)
  x <- x[there]
  y <- y[there]
  n <- length(x)
  rho <- suppressWarnings(cor(x, y, method = "spearman"))
  difference <- x - y
  s <- sd(difference)
  reach <- qt(0.975, n - 1) * sqrt(3 * s^2 / n)
  limits <- mean(difference) + c(-1.96, 1.96) * s
  by_kind <- if (is.null(kinds)) NULL else tapply(difference, kinds[there], t_mean)
  list(rho, fisher(rho, n), suppressWarnings(cor(x, y, method = "kendall")), weighted_kappa(x, y), t_mean(difference),
       limits, limits - reach, limits + reach, by_kind)
}

intraclass <- function(m) {
  n <- nrow(m)
  k <- ncol(m)
  grand <- mean(m)
  rows <- rowMeans(m)
  columns <- colMeans(m)
  bms <- k * sum((rows - grand)^2) / (n - 1)
  jms <- n * sum((columns - grand)^2) / (k - 1)
  wms <- sum((m - rows)^2) / (n * (k - 1))
  ems <- sum((m - outer(rows, columns, "+") + grand)^2) / ((n - 1) * (k - 1))
  values <- c((bms - wms) / (bms + (k - 1) * wms), (bms - ems) / (bms + (k - 1) * ems + k * (jms - ems) / n),
              (bms - ems) / (bms + (k - 1) * ems), (bms - wms) / bms, (bms - ems) / (bms + (jms - ems) / n),
              (bms - ems) / bms)
  q <- 0.975
  one <- bms / wms / c(qf(q, n - 1, n * (k - 1)), 1 / qf(q, n * (k - 1), n - 1))
  three <- bms / ems / c(qf(q, n - 1, (n - 1) * (k - 1)), 1 / qf(q, (n - 1) * (k - 1), n - 1))
  fj <- jms / ems
  v <- (k - 1) * (n - 1) * (k * values[2] * fj + n * (1 + (k - 1) * values[2]) - k * values[2])^2 /
    ((n - 1) * k^2 * values[2]^2 * fj^2 + (n * (1 + (k - 1) * values[2]) - k * values[2])^2)
  f2 <- qf(q, n - 1, v)
  f1 <- qf(q, v, n - 1)
  two <- c(n * (bms - f2 * ems) / (f2 * (k * jms + (k * n - k - n) * ems) + n * bms),
           n * (f1 * bms - ems) / (k * jms + (k * n - k - n) * ems + n * f1 * bms))
  list(values, (one - 1) / (one + k - 1), two, (three - 1) / (three + k - 1), 1 - 1 / one,
       two * k / (1 + two * (k - 1)), 1 - 1 / three)
}

alpha <- function(marks, level) {
  given <- rowSums(!is.na(marks)) >= 2
  marks <- marks[given, , drop = FALSE]
  if (level == "ordinal") marks[] <- rank(marks, na.last = "keep")
  count <- rowSums(!is.na(marks))
  pairs <- if (level == "nominal") {
    values <- sort(unique(as.vector(marks)))
    by_value <- sapply(values, function(value) rowSums(marks == value, na.rm = TRUE))
    total <- colSums(by_value)
    list(count^2 - rowSums(by_value^2), sum(total)^2 - sum(total^2))
  } else {
    squares <- function(x) 2 * sum(!is.na(x)) * sum((x - mean(x, na.rm = TRUE))^2, na.rm = TRUE)
    list(2 * count * rowSums((marks - rowMeans(marks, na.rm = TRUE))^2, na.rm = TRUE), squares(as.vector(marks)))
  }
  1 - sum(pairs[[1]] / (count - 1)) / (pairs[[2]] / (sum(count) - 1))
}

kendall_w <- function(m) {
  ranks <- apply(m, 2, rank)
  n <- nrow(m)
  k <- ncol(m)
  ties <- sum(apply(ranks, 2, function(one) {
    t <- tabulate(match(one, unique(one)))
    sum(t^3 - t)
  }))
  w <- 12 * sum((rowSums(ranks) - k * (n + 1) / 2)^2) / (k^2 * (n^3 - n) - k * ties)
  c(w, pchisq(k * (n - 1) * w, n - 1, lower.tail = FALSE))
}

filled <- function(marks) {
  missing <- is.na(marks)
  if (any(missing)) marks[missing] <- (floor(rowMeans(marks, na.rm = TRUE) * 4 + 0.5) / 4)[row(marks)[missing]]
  marks
}

panel_view <- function(marks, kinds) {
  whole <- filled(marks)
  k <- ncol(marks)
  pairs <- list()
  for (i in seq_len(k - 1)) for (j in (i + 1):k) pairs <- c(pairs, list(pair_view(marks[, i], marks[, j], kinds)))
  low <- apply(marks, 1, min, na.rm = TRUE)
  high <- apply(marks, 1, max, na.rm = TRUE)
  list(lapply(seq_len(k), function(judge) judge_view(marks, judge, kinds, low, high)), pairs, intraclass(whole),
       sapply(c("nominal", "ordinal", "interval"), function(level) alpha(marks, level)), kendall_w(whole))
}

aspects <- c("choreography", "performance", "transitions")
lifts <- c("1", "7")
agreement <- seconds({
  of_meet <- split(seq_along(date), paste(date, meet))
  views <- lapply(of_meet, function(rows) {
    whole <- line[rows] %in% aspects
    list(panel_view(marks[rows[!whole], , drop = FALSE], ifelse(line[rows[!whole]] %in% lifts, "lift", "hybrid")),
         panel_view(marks[rows[whole], , drop = FALSE], NULL))
  })
})

# What a panel gives: marks filled in and trimmed, an element's times its difficulty, an aspect's times its weight.
# The difficulties are the sheet's, rounded: R gets them for nothing.
worth <- c("1" = 2.3, "2" = 2.9, "3" = 2.85, "4" = 2.6, "5" = 2.4, "6" = 3.1, "7" = 2.5, choreography = 4,
           performance = 3, transitions = 3)
line_total <- function(m) {
  m <- filled(m)
  (rowSums(m) - apply(m, 1, min) - apply(m, 1, max)) / (ncol(m) - 2)
}
by_group <- seconds({
  of_panel <- split(seq_along(date), paste(routine, date, meet))
  totals <- sapply(of_panel, function(rows) sum(round(line_total(marks[rows, , drop = FALSE]) * worth[line[rows]], 4)))
})
by_columns <- seconds({
  whole <- filled(marks)
  most <- do.call(pmax, as.data.frame(whole))
  least <- do.call(pmin, as.data.frame(whole))
  points <- round((rowSums(whole) - most - least) / 3 * worth[line], 4)
  sums <- rowsum(points, paste(routine, date, meet))
})
cat(reading, agreement, by_group, by_columns, "\n")

# One line a sheet of marks, to lay beside ours: alpha by intervals, ICC(2,1), W, the first pair's rank correlations and
# kappa, the first judge's bias.
told <- t(sapply(views, function(two) sapply(two, function(view) {
  pair <- view[[2]][[1]]
  c(view[[4]][[3]], view[[3]][[1]][2], view[[5]][1], pair[[1]], pair[[3]], pair[[4]][1], view[[1]][[1]][[1]][1])
})))
write.csv(round(told, 6), file.path(arguments[2], "agreement.csv"), quote = FALSE)
