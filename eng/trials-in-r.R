# The independent judge of src/Ashery/Trials: R fits the same open datasets, and its printed figures stand as expected values in
# tests/Ashery.Tests/Trials/RSays.cs. Not part of ./test. On Debian:
#   apt-get install r-base-core r-cran-mass r-cran-nlme r-cran-mvtnorm r-cran-multcomp
#   Rscript eng/trials-in-r.R
# InsectSprays, warpbreaks, PlantGrowth and npk come with R (package datasets), Orthodont with nlme.
suppressPackageStartupMessages({ library(MASS); library(nlme); library(mvtnorm); library(multcomp) })
options(digits = 7, width = 110, contrasts = c("contr.treatment", "contr.poly"))
say <- function(...) cat("\n##", ..., "\n")
cat(R.version.string, "\n")

say("InsectSprays: Poisson")
p <- glm(count ~ spray, poisson, InsectSprays)
print(summary(p)); cat("Pearson", sum(residuals(p, "pearson")^2), "\n")
say("InsectSprays: negative binomial")
print(summary(glm.nb(count ~ spray, InsectSprays)))
say("InsectSprays: square roots, analysis of variance")
print(summary(aov(sqrt(count) ~ spray, InsectSprays)))

say("warpbreaks: Poisson, wool + tension")
p <- glm(breaks ~ wool + tension, poisson, warpbreaks)
print(summary(p)); cat("Pearson", sum(residuals(p, "pearson")^2), "\n")
say("warpbreaks: negative binomial, wool + tension")
print(summary(glm.nb(breaks ~ wool + tension, warpbreaks)))
say("warpbreaks: wool * tension, analysis of variance")
print(summary(aov(breaks ~ wool * tension, warpbreaks)))
say("warpbreaks: tension, Tukey")
print(TukeyHSD(aov(breaks ~ wool + tension, warpbreaks), "tension"))

say("PlantGrowth: analysis of variance, Tukey, Dunnett")
g <- aov(weight ~ group, PlantGrowth)
print(summary(g)); print(TukeyHSD(g)); print(summary(lm(weight ~ group, PlantGrowth)))
set.seed(1)
d <- glht(g, mcp(group = "Dunnett"))
print(summary(d, test = adjusted(abseps = 1e-6, maxpts = 4e5))); print(confint(d, calpha = adjusted_calpha(abseps = 1e-6, maxpts = 4e5)))

say("npk: blocks, factorial")
n <- aov(yield ~ block + N * P * K, npk)
print(summary(n)); print(coef(n)); print(summary.lm(n)$coefficients)

say("Orthodont: random intercept, REML")
o <- lme(distance ~ age + Sex, random = ~1 | Subject, data = as.data.frame(Orthodont))
print(summary(o)); print(VarCorr(o))

say("Distributions")
cat("ptukey", ptukey(c(1, 3.5, 3.877676, 5), 3, 27), ptukey(3.5, 6, 10), ptukey(4, 4, Inf), "\n")
cat("qtukey", qtukey(.95, c(2, 3, 6), c(5, 27, 60)), "\n")
lam <- c(.5, .5, .5); R <- outer(sqrt(lam), sqrt(lam)); diag(R) <- 1
cat("Dunnett 3, 12 df", qmvt(.95, tail = "both.tails", df = 12, corr = R, algorithm = GenzBretz(abseps = 1e-6, maxpts = 4e5))$quantile, "\n")
cat("pt ncp", pt(2.1, 18, ncp = 2.8), pt(-1, 6, ncp = 1.5), pt(3, 4, ncp = 0.5), "\n")
print(power.t.test(n = 12, delta = 0.25, sd = 0.2)); print(power.t.test(delta = 0.3, sd = 0.25, power = .8))

say("Spending: looks at 1/5..5/5, two-sided 5 %")
bounds <- function(spent, t) {
  c0 <- numeric(0)
  for (k in seq_along(t)) {
    S <- outer(1:k, 1:k, function(i, j) sqrt(pmin(t[i], t[j]) / pmax(t[i], t[j])))
    out <- function(c) 1 - (if (k == 1) pnorm(c) - pnorm(-c) else pmvnorm(lower = -c(c0, c), upper = c(c0, c), corr = S, algorithm = GenzBretz(abseps = 1e-6, maxpts = 1e5))[1])
    c0[k] <- uniroot(function(c) out(c) - spent(t[k]), c(0.5, 9), tol = 1e-5)$root
  }
  c0
}
set.seed(1)
of <- function(t) 4 - 4 * pnorm(qnorm(0.9875) / sqrt(t)); po <- function(t) 0.05 * log(1 + (exp(1) - 1) * t)
cat("O'Brien-Fleming", bounds(of, (1:5) / 5), "\nPocock", bounds(po, (1:5) / 5), "\n")
cat("O'Brien-Fleming at .3 .7 1", bounds(of, c(.3, .7, 1)), "\n")

say("Holm"); cat(p.adjust(c(0.01, 0.04, 0.03, 0.005), "holm"), "\n")
