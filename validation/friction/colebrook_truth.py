#!/usr/bin/env python3
"""Makes colebrook-truth.csv: Colebrook's friction factor and its slope in Re to 30 digits.

Standard library only. Newton's method at 60 digits on y = 1/sqrt f of the equation itself,
    g(y) = y + (2/ln 10) ln(a + b y),  a = (e/D)/3.7,  b = 2.51/Re,
until the correction is below 1e-50; no closed form is used, so that the file is an independent check of one.
Re and e/D are the exact values of the doubles printed, not of the decimal text.
"""
import decimal
import os
from decimal import Decimal

decimal.getcontext().prec = 60
C = 2 / Decimal(10).ln()


def truth(reynolds, roughness):
    re, rough = Decimal(reynolds), Decimal(roughness)
    a = rough / Decimal("3.7")
    b = Decimal("2.51") / re
    y = Decimal("1e-30")  # g is rising and concave: from the left of the root Newton converges without overshoot
    for _ in range(500):
        v = a + b * y
        step = (y + C * v.ln()) / (1 + C * b / v)
        y -= step
        if abs(step) < abs(y) * Decimal("1e-50"):
            break
    else:
        raise SystemExit("no convergence at %r %r" % (reynolds, roughness))
    v = a + b * y
    dy = C * b * y / (re * v) / (1 + C * b / v)
    return 1 / (y * y), -2 * dy / (y * y * y)


def main():
    name = os.path.join(os.path.dirname(os.path.abspath(__file__)), "colebrook-truth.csv")
    numbers = [m * 10.0 ** k for k in range(-3, 12) for m in (1.0, 1.7, 3.1, 5.9)] + [
        2000.0, 2300.0, 2301.0, 3000.0, 4000.0, 1e12]
    roughnesses = [0.0, 1e-7, 1e-6, 1.1e-5, 1e-4, 3e-4, 1e-3, 4.7e-3, 0.013, 0.03, 0.05, 0.1, 0.3, 1.0]
    with open(name, "w", newline="\n") as out:
        out.write("reynolds,relative_roughness,friction_factor,slope_in_reynolds\n")
        for re in sorted(numbers):
            for rough in roughnesses:
                f, slope = truth(re, rough)
                out.write("%r,%r,%s,%s\n" % (re, rough, format(f, ".29e"), format(slope, ".29e")))


if __name__ == "__main__":
    main()
