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


def cogging_ripple(rig, speed):
    """Amplitude of the ripple at the cogging's frequency, and the least speed over the mean."""
    w = rig.axis("pan")["cogging_per_turn"] * rig.axis("pan")["N"] * speed
    seconds = 0.6 + 20 * 2 * math.pi / w
    time, speeds, ripple = ramp(rig, "pan", speed, seconds)
    both = np.column_stack([np.cos(w * time), np.sin(w * time)])
    amplitude = np.hypot(*np.linalg.lstsq(both, ripple, rcond=None)[0])
    return amplitude, speeds.min() / speed


COGGING = Rig("cogging", pan=dict(QUIET, cogging=0.012, ki=4.0))
GENTLE = Rig("gentle cogging", pan=dict(QUIET, cogging=0.0003, ki=4.0))
STICKING = Rig("sticking", pan=dict(QUIET, breakaway=0.09, stribeck=0.02, d=4.0, ki=30.0))


def check(name, value, low, high):
    good = low <= value <= high
    print(f"{name}: {value:.4g}, should be {low:.4g} to {high:.4g}{'' if good else '  <-- differs'}",
          flush=True)
    return good


def main():
    with tempfile.TemporaryDirectory() as folder:
        f, g, h = (figures(sys.argv[1], rig.write(pathlib.Path(folder)))
                   for rig in (COGGING, STICKING, GENTLE))
    per_rad = 640 / math.tan(31 * DEG)
    good = []
    with concurrent.futures.ProcessPoolExecutor() as pool:
        lowest = f["pan.smooth.lowest_speed_cogging"]
        sticks = pool.submit(cogging_ripple, COGGING, 0.7 * lowest)
        turns = pool.submit(cogging_ripple, COGGING, 3.0 * lowest)
        worst = pool.submit(cogging_ripple, GENTLE, h["pan.smooth.worst_speed"])
        edge = g["pan.smooth.lowest_speed_friction"]
        slow = pool.submit(ramp, STICKING, "pan", 0.6 * edge, 1.6)
        quick = pool.submit(ramp, STICKING, "pan", 1.4 * edge, 1.6)
        good.append(check("cogging, least speed below the lowest", sticks.result()[1], -9, 0.05))
        good.append(check("cogging, least speed at three times it", turns.result()[1], 0.02, 1))
        ratio = worst.result()[0] * per_rad / h["pan.smooth.worst_ripple_px"]
        # The ripple bends the sine that makes it: to the second order in its amplitude times the
        # periods per radian, which is the ripple's share of the speed.
        bend = h["pan.smooth.worst_ripple_px"] / per_rad * 84 * GENTLE.parts["pan"]["N"]
        good.append(check("gentle cogging, ripple over the linear one", ratio, 1 - bend**2 - 0.01,
                          1 + bend**2 + 0.01))
        print(f"(the ripple is {bend:.2f} of the speed)")
        (_, below, _), (_, above, _) = slow.result(), quick.result()
        good.append(check("friction, least speed below the edge", below.min() / (0.6 * edge), -9, 0.1))
        good.append(check("friction, least speed above the edge", above.min() / (1.4 * edge), 0.9, 1))
        good.append(check("friction, swing above the edge", np.ptp(above) / (1.4 * edge), 0, 0.1))
    return 0 if all(good) else 1


if __name__ == "__main__":
    sys.exit(main())
