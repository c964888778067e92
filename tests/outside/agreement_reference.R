# What R and its packages psych and vcd say about the agreement of judges: on random panels with and without ties and
# missing marks, and on a published final. Kept in agreement_reference.csv, so that the tests need no R.
#
#   Rscript agreement_reference.R > agreement_reference.csv
#
# One line a fact: case,what,numbers. Numbers are parted by blanks: marks judge by judge, or value, low, high. `-`
# is a missing mark, or a number that there is none of.
#
# From R: cor (Spearman, Kendall), friedman.test (Kendall's W and its chance), t.test (mean difference). From psych:
# ICC, cohen.kappa, r.con (Fisher's z). From vcd: the interval of a weighted kappa, since psych 2.2.9 takes the wrong
# margin of one judge's weights and so differs from Fleiss, Cohen & Everitt (1969). None has Krippendorff's alpha (here
# by the coincidence matrix of Krippendorff 2011) nor the intervals of the limits of agreement (here by the formula of
# Bland & Altman 1986).
suppressPackageStartupMessages(library(psych))
suppressPackageStartupMessages(library(vcd))
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

say <- function(case, what, numbers) {
  text <- ifelse(is.finite(numbers), formatC(numbers, digits = 15, format = "g", width = 1), "-")
  cat(case, ",", what, ",", paste(text, collapse = " "), "\n", sep = "")
}

# The six forms. psych goes on where a denominator of the mean's form, or of stepping up a bound, has lost its sign;
# such numbers mean nothing and are left out. So are the mean's forms where all rows have the same mean, and bounds
# where the judges differ by constants alone: both would divide by what rounding leaves.
say_icc <- function(case, marks, confidence) {
  marks <- na.omit(marks)
  found <- suppressMessages(suppressWarnings(ICC(marks, lmer = FALSE, alpha = 1 - confidence)))
  results <- found$results
  n <- nrow(marks)
  k <- ncol(marks)
  bms <- found$stats[3, 1]
  jms <- found$stats[3, 2]
  ems <- found$stats[3, 3]
  for (form in 1:6) {
    numbers <- unlist(results[form, c("ICC", "lower bound", "upper bound")])
    if (form %in% c(4, 6) && bms < 1e-20) numbers[] <- NA
    if (form == 5 && bms + (jms - ems) / n <= 0) numbers[] <- NA
    if (form == 5 && 1 + (k - 1) * results[2, "lower bound"] <= 0) numbers[2:3] <- NA
    if (found$MSW < 1e-20) numbers[2:3] <- NA
    if (ems < 1e-20 && form %in% c(2, 3, 5, 6)) numbers[2:3] <- NA
    say(case, paste0("icc", form), numbers)
  }
}

alpha <- function(marks, level) {
  marks <- marks[rowSums(!is.na(marks)) >= 2, , drop = FALSE]
  values <- sort(unique(as.vector(marks[!is.na(marks)])))
  coincidences <- matrix(0, length(values), length(values))
  for (row in seq_len(nrow(marks))) {
    given <- match(marks[row, !is.na(marks[row, ])], values)
    for (i in seq_along(given)) for (j in seq_along(given)) {
      if (i == j) next
      coincidences[given[i], given[j]] <- coincidences[given[i], given[j]] + 1 / (length(given) - 1)
    }
  }
  n <- rowSums(coincidences)
  difference <- function(c, k) {
    if (c == k) return(0)
    switch(level, nominal = 1, interval = (values[c] - values[k])^2, ordinal = {
      between <- min(c, k):max(c, k)
      (sum(n[between]) - (n[c] + n[k]) / 2)^2
    })
  }
  d <- outer(seq_along(values), seq_along(values), Vectorize(difference))
  1 - (sum(n) - 1) * sum(coincidences * d) / sum(outer(n, n) * d)
}

say_w <- function(case, marks) {
  marks <- na.omit(marks)
  test <- friedman.test(unname(t(as.matrix(marks))))
  w <- test$statistic / (ncol(marks) * (nrow(marks) - 1))
  say(case, "w", c(w, test$p.value))
}

# Intervals end at -1 and 1; full agreement has none.
cut_off <- function(bounds) pmin(pmax(bounds, -1), 1)

say_weighted_kappa <- function(case, x, y, confidence) {
  values <- sort(unique(c(x, y)))
  d <- outer(values, values, function(a, b) abs(a - b))
  w <- 1 - d / max(d)
  value <- suppressMessages(suppressWarnings(cohen.kappa(cbind(x, y), w = w)))$weighted.kappa
  by_vcd <- suppressWarnings(Kappa(table(factor(x, values), factor(y, values)), weights = w))
  error <- by_vcd$Weighted["ASE"]
  bounds <- if (!is.finite(error) || error < 1e-7) c(NA, NA) else confint(by_vcd, level = confidence)[2, ]
  say(case, "kappa", c(value, cut_off(bounds)))
}

say_pair <- function(case, marks, confidence) {
  marks <- na.omit(marks[, 1:2])
  x <- marks[, 1]
  y <- marks[, 2]
  n <- length(x)
  rho <- suppressWarnings(cor(x, y, method = "spearman"))
  full <- is.na(rho) || abs(rho) > 1 - 1e-12
  say(case, "spearman", c(rho, if (full) c(NA, NA) else r.con(rho, n, p = confidence)))
  say(case, "kendall", suppressWarnings(cor(x, y, method = "kendall")))
  say_weighted_kappa(case, x, y, confidence)
  s <- sd(x - y)
  bounds <- if (s < 1e-10) c(NA, NA) else t.test(x, y, paired = TRUE, conf.level = confidence)$conf.int
  say(case, "bias", c(mean(x - y), bounds))
  reach <- if (s < 1e-10) NA else qt((1 + confidence) / 2, n - 1) * sqrt(3 * s^2 / n)
  for (side in c(-1, 1)) {
    limit <- mean(x - y) + side * 1.96 * s
    say(case, if (side < 0) "lower" else "upper", c(limit, limit - reach, limit + reach))
  }
}

say_all <- function(case, marks, confidence) {
  say(case, "confidence", confidence)
  for (row in seq_len(nrow(marks))) say(case, "marks", marks[row, ])
  say_icc(case, marks, confidence)
  for (level in c("nominal", "ordinal", "interval")) say(case, level, alpha(marks, level))
  say_w(case, marks)
  say_pair(case, marks, confidence)
}

# Marks of a panel: what was shown, judges who are high or low, who scatter, on a scale of steps.
random_panel <- function(rows, judges, step, shown, leaning, scatter, missing) {
  truth <- rnorm(rows, 7, shown)
  lean <- rnorm(judges, 0, leaning)
  marks <- outer(truth, lean, "+") + matrix(rnorm(rows * judges, 0, scatter), rows)
  marks <- pmin(pmax(round(round(marks / step) * step, 6), 0), 10)
  marks[matrix(runif(rows * judges) < missing, rows)] <- NA
  marks
}

# Enough is left for every statistic: rows that all marked, and no judge who gives one mark only.
usable <- function(marks) {
  all <- na.omit(marks)
  nrow(all) >= 4 && all(apply(all, 2, function(one) length(unique(one))) > 1)
}

set.seed(20261125)
number <- 0
for (rows in c(6, 11, 40)) for (judges in c(2, 3, 5, 7)) for (step in c(0.000001, 0.25, 1)) for (missing in c(0, 0.08)) {
  repeat {
    shown <- sample(c(0, 0.3, 1, 2), 1)
    marks <- random_panel(rows, judges, step, shown, sample(c(0, 0.2, 0.7), 1), sample(c(0.2, 0.6, 1.5), 1), missing)
    if (usable(marks)) break
  }
  number <- number + 1
  say_all(sprintf("random-%02d", number), marks, c(0.9, 0.95, 0.99)[number %% 3 + 1])
}

# Corners: judges who agree fully, who differ by a constant, who order the rows the other way round.
say_all("same", cbind(c(6, 7, 7, 8, 9), c(6, 7, 7, 8, 9)), 0.95)
say_all("constant-apart", cbind(c(6, 7, 7, 8, 9), c(6.5, 7.5, 7.5, 8.5, 9.5), c(7, 8, 8, 9, 10)), 0.95)
say_all("upside-down", cbind(c(6, 7, 7.5, 8, 9), c(9, 8, 7.5, 7, 6)), 0.95)

# Men's 3 m springboard, Olympic Games 2000, semi-final and final: marks from the open data set Diving2000.csv.
springboard <- matrix(c(
  8, 8.5, 7.5, 7.5, 8, 7.5, 8,  8, 8, 7, 8.5, 8, 7.5, 7,  8.5, 8.5, 8, 9, 8, 8.5, 8.5,
  8.5, 8, 8, 8, 8.5, 8, 8,  8.5, 8, 8.5, 8.5, 9, 8, 8.5,  8, 9, 8.5, 8.5, 8.5, 8.5, 8.5,
  8.5, 8, 8, 9, 8, 8, 8,  9, 9, 9, 9, 9.5, 9, 9,  8, 8, 8, 8.5, 8, 8, 8,
  8.5, 8, 8, 9, 8.5, 8.5, 8,  7.5, 8.5, 8, 9, 8, 8, 7.5), ncol = 7, byrow = TRUE)
say_all("springboard", springboard, 0.95)
for (judge in 1:7) {
  others <- rowMeans(springboard[, -judge])
  test <- t.test(springboard[, judge] - others)
  rank <- suppressWarnings(cor(springboard[, judge], others, method = "spearman"))
  say("springboard", paste0("judge", judge, "-bias"), c(test$estimate, test$conf.int))
  say("springboard", paste0("judge", judge, "-spread"), sd(springboard[, judge] - others))
  say("springboard", paste0("judge", judge, "-mean"), mean(springboard[, judge]))
  say("springboard", paste0("judge", judge, "-order"), c(rank, r.con(rank, 11)))
}
