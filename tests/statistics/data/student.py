"""Writes student.json and one-sided.json: Student's factors to 30 digits by mpmath 1.3, one-sided tolerance factors by
the noncentral t of SciPy 1.17. Run once, by hand; the tests only read the data."""

import json
from fractions import Fraction
from pathlib import Path

import numpy as np
import scipy.stats as st
from mpmath import betainc, findroot, log, mp, mpf

mp.dps = 40
here = Path(__file__).parent


def tail(t, freedom):
    half = mpf(freedom) / 2
    return betainc(half, mpf(1) / 2, 0, mpf(freedom) / (mpf(freedom) + mpf(t) ** 2), regularized=True) / 2


factors = []
for freedom in (1, 1.5, 2, 4, 10, 16.7, 30, 200, 1000, 25000):
    for level in (0.5, 0.9, 0.95, 0.99, 0.9973, 0.9999):
        exact = Fraction(str(level))
        above = (1 - mpf(exact.numerator) / exact.denominator) / 2
        near = mpf(st.t.ppf(1 - float(above), freedom))
        point = findroot(lambda t: log(tail(t, freedom)) - log(above), near)
        factors.append([freedom, level, float(point)])
(here / "student.json").write_text(json.dumps(factors))

one_sided = []
for count in (2, 3, 8, 25, 120):
    for share in (0.9, 0.99):
        for confidence in (0.5, 0.95, 0.99):
            shift = st.norm.ppf(share) * np.sqrt(count)
            factor = st.nct.ppf(confidence, count - 1, shift) / np.sqrt(count)
            one_sided.append([count, share, confidence, float(factor)])
(here / "one-sided.json").write_text(json.dumps(one_sided))
