"""Reads samples as JSON from standard input and writes what SciPy says of each: an independent judge of the trend statistics.

SciPy is BSD-licensed; Debian's package python3-scipy.
"""
import json
import sys

from scipy import stats


def judge(sample):
    x, y = sample["x"], sample["y"]
    line = stats.linregress(x, y)
    robust = stats.theilslopes(y, x, alpha=0.95, method="separate")
    has_ties = len(set(y)) < len(y)
    exact = None if has_ties or len(y) > 60 else stats.kendalltau(range(len(y)), y, method="exact").pvalue
    return {
        "slope": line.slope,
        "intercept": line.intercept,
        "slopeError": line.stderr,
        "interceptError": line.intercept_stderr,
        "slopeP": line.pvalue,
        "rSquared": line.rvalue ** 2,
        "robustSlope": robust[0],
        "robustLow": robust[2],
        "robustHigh": robust[3],
        "trendP": exact,
        "t95": stats.t.ppf(0.975, len(x) - 2),
        "t99": stats.t.ppf(0.995, len(x) - 2),
        "tailOfThree": 2 * stats.t.sf(3, len(x) - 2),
    }


json.dump([judge(sample) for sample in json.load(sys.stdin)], sys.stdout)
