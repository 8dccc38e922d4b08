"""Writes dew-points.json: dew points over liquid water by IAPWS-95, below 0.01 °C by Murphy and Koop (2005).

Run once, by hand, with Debian's python3-iapws (1.5.3-1 packages iapws 1.5.2); the tests only read the data.
"""

import json
from math import exp, log, tanh
from pathlib import Path

from iapws import IAPWS95

TRIPLE = 273.16


def murphy_koop(T):
    cold = 54.842763 - 6763.22 / T - 4.210 * log(T) + 0.000367 * T
    warm = 53.878 - 1331.22 / T - 9.44523 * log(T) + 0.014025 * T
    return exp(cold + tanh(0.0415 * (T - 218.8)) * warm)


def saturation(T):
    return IAPWS95(T=T, x=0).P * 1e6 if T >= TRIPLE else murphy_koop(T)


def dew_point(p):
    """By bisection on the curve, which is independent of any formula's own inverse."""
    low, high = 180.0, 334.0
    if p >= saturation(TRIPLE):
        low = TRIPLE
    else:
        high = TRIPLE
        if p >= murphy_koop(TRIPLE):
            return TRIPLE
    while high - low > 1e-7:
        middle = (low + high) / 2
        low, high = (middle, high) if saturation(middle) < p else (low, middle)
    return (low + high) / 2


air = list(range(-20, 61))
humidity = list(range(5, 101, 5))
points = [
    [round(dew_point(rh / 100 * saturation(t + 273.15)) - 273.15, 6) for rh in humidity]
    for t in air
]
rows = ",\n".join("    " + json.dumps(row) for row in points)
Path(__file__).with_name("dew-points.json").write_text(
    f'{{\n  "air_C": {json.dumps(air)},\n  "relativeHumidity_percent": {json.dumps(humidity)},\n'
    f'  "dewPoint_C": [\n{rows}\n  ]\n}}\n'
)
