"""Slow ramps of section 5 with Stribeck friction and cogging, by LSODA, against the figures of slow
turning: the ripple that the linear model says, and that the axis turns steadily above its lowest
speed and sticks below.

  python3 slow_ramp.py BATCH_PROGRAM PROJECT_DIR"""

import concurrent.futures
import math
import pathlib
import sys
import tempfile

import numpy as np

from _rig import DEG, Rig, figures
from step_response import reference, sat

# No gap: the linear model is wound tight. Fine counts, so that one cause shows at a time.
QUIET = dict(backlash=0.0, bits=24, drag=0.0, eta=1.0, back_eta=1.0)


def stribeck(a):
    """Friction of the load. Its slope through zero is a tenth of the Stribeck speed wide: with the
    ±0.01 rad/s of section 5 there would be nothing left to stick."""
    vs, fall = a["stribeck"] or 0.01, (a["breakaway"] or a["coulomb"]) - a["coulomb"]
    return lambda w: (a["coulomb"] + fall * math.exp(-(w / vs)**2)) * sat(10 * w / vs)


def ramp(rig, axis, speed, seconds, grows=0.2):
    """(time, speed of the output, ripple about the ramp) once it turns."""
    a = rig.axis(axis)
    n = a["cogging_per_turn"]

    def path(t):
        x = min(t / grows, 1.0)  # gently up to speed
        w = speed * x * x * (3 - 2 * x)
        angle = speed * grows * (x**3 - x**4 / 2) + speed * max(t - grows, 0.0)
        return angle, w, 0.0

    rows = reference(a, 0.0, seconds, path, 1.0, friction=stribeck(a),
                     cogging=lambda motor: a["cogging"] * math.sin(n * motor))
    time = np.arange(len(rows)) / a["rate"]
    late = time > seconds / 2
    ripple = rows[late, 0] - np.polyval(np.polyfit(time[late], rows[late, 0], 1), time[late])
    return time[late], rows[late, 3], ripple


def cogging_ripple(rig, factor, f):
    """Simulated amplitude of the cogging's ripple over that at the lowest speed."""
    speed = factor * f["pan.smooth.lowest_speed_cogging"]
    w = rig.axis("pan")["cogging_per_turn"] * rig.axis("pan")["N"] * speed
    seconds = 0.6 + 20 * 2 * math.pi / w
    time, speeds, ripple = ramp(rig, "pan", speed, seconds)
    both = np.column_stack([np.cos(w * time), np.sin(w * time)])
    amplitude = np.hypot(*np.linalg.lstsq(both, ripple, rcond=None)[0])
    return amplitude, speeds.min() / speed


COGGING = Rig("cogging", pan=dict(QUIET, cogging=0.012, ki=4.0))
STICKING = Rig("sticking", pan=dict(QUIET, breakaway=0.09, stribeck=0.02, d=4.0, ki=30.0))


def check(name, value, low, high):
    good = low <= value <= high
    print(f"{name}: {value:.4g}, should be {low:.4g} to {high:.4g}{'' if good else '  <-- differs'}",
          flush=True)
    return good


def main():
    with tempfile.TemporaryDirectory() as folder:
        f, g = (figures(sys.argv[1], rig.write(pathlib.Path(folder))) for rig in (COGGING, STICKING))
    per_rad = 640 / math.tan(31 * DEG)
    good = []
    with concurrent.futures.ProcessPoolExecutor() as pool:
        worst = f["pan.smooth.worst_speed"] / f["pan.smooth.lowest_speed_cogging"]
        factors = [0.7, 3.0, worst] if worst > 1.3 else [0.7, 3.0]
        runs = list(pool.map(cogging_ripple, [COGGING] * len(factors), factors, [f] * len(factors)))
        edge = g["pan.smooth.lowest_speed_friction"]
        slow = pool.submit(ramp, STICKING, "pan", 0.6 * edge, 1.6)
        quick = pool.submit(ramp, STICKING, "pan", 1.4 * edge, 1.6)
        for factor, (amplitude, least) in zip(factors, runs):
            if factor < 1:
                good.append(check("cogging, least speed below the lowest", least, -9, 0.05))
            else:
                good.append(check(f"cogging, least speed at {factor:.2f} of it", least, 0.02, 1))
            if factor == worst:
                ratio = amplitude * per_rad / f["pan.smooth.worst_ripple_px"]
                # The ripple of the speed bends the sine that makes it: to the first order in
                # amplitude times periods per radian, which is 1/factor here at most.
                good.append(check("cogging, worst ripple over the linear one", ratio, 0.85, 1.15))
        (_, below, _), (_, above, _) = slow.result(), quick.result()
        good.append(check("friction, least speed below the edge", below.min() / (0.6 * edge), -9, 0.1))
        good.append(check("friction, least speed above the edge", above.min() / (1.4 * edge), 0.9, 1))
        good.append(check("friction, swing above the edge", np.ptp(above) / (1.4 * edge), 0, 0.1))
    return 0 if all(good) else 1


if __name__ == "__main__":
    sys.exit(main())
