"""Crossovers and margins of `gazewright-batch figures` against state-space models of NumPy and SciPy.

First the same linear model as ours (hold as its factor), from state-space matrices on a dense grid:
must agree closely. Then the sampled train exactly (scipy.signal.cont2discrete, no factor for the
hold): shows what the factor leaves out, small well below half the sample rate.

  python3 loop_margins.py BATCH_PROGRAM PROJECT_DIR"""

import math
import pathlib
import sys
import tempfile

import numpy as np
from scipy.signal import cont2discrete

from _rig import Rig, figures


def train(a):
    """States (φ_m, ω_m, φ, ω, T_e), command in, measured angle at the output out."""
    N, k, d = a["N"], a["k"], a["d"]
    A = np.zeros((5, 5))
    A[0, 1] = A[2, 3] = 1
    A[1] = np.array([-k / N**2, -d / N**2 - a["viscous"], k / N, d / N, 1]) / a["Jm"]
    A[3] = np.array([k / N, d / N, -k - a["cable_k"], -d - a["load_viscous"], 0]) / a["J"]
    A[4, 4] = -2 * math.pi * a["current_bw"]
    B = np.array([[0], [0], [0], [0], [2 * math.pi * a["current_bw"]]])
    C = np.array([[0, 0, 1.0, 0, 0]]) if a["at"] == "output" else np.array([[1 / N, 0, 0, 0, 0]])
    return A, B, C


def response(A, B, C, points):
    I = np.eye(len(A))
    return np.array([(C @ np.linalg.solve(p * I - A, B))[0, 0] for p in points])


def open_loops(a, w, exact):
    T = 1 / a["rate"]
    z = np.exp(1j * w * T)
    A, B, C = train(a)
    if exact:
        Ad, Bd, Cd, _, _ = cont2discrete((A, B, C, np.zeros((1, 1))), T)
        angle = response(Ad, Bd, Cd, z) / z
    else:
        angle = response(A, B, C, 1j * w) * (1 - 1 / z) / (1j * w * T) / z
    keep = math.exp(-2 * math.pi * a["estimator_bw"] * T)
    estimator = (1 - keep) * (1 - 1 / z) / T / (1 - keep / z)
    controller = (a["ks"] + a["ki"] * T / (z - 1)) / a["N"]
    speed = controller * angle * estimator
    return speed, a["kp"] * controller * angle / (1 + speed)


def margins(loop, w):
    """Crossover, least phase margin, least gain margin, least delay margin; linear between points of the grid."""
    gain, phase = np.log(np.abs(loop)), np.unwrap(np.angle(loop))
    phase -= 2 * math.pi * (phase[0] > math.pi / 2)
    def zeros(f):
        at = np.nonzero(np.sign(f[:-1]) != np.sign(f[1:]))[0]
        return at, f[at] / (f[at] - f[at + 1])
    at, part = zeros(gain)
    crossover = w[at[0]] + part[0] * (w[at[0] + 1] - w[at[0]])
    margins_at = math.pi + phase[at] + part * (phase[at + 1] - phase[at])
    phase_margin, delay_margin = min(margins_at), min(margins_at / (w[at] + part * (w[at + 1] - w[at])))
    at, part = zeros(np.mod(phase, 2 * math.pi) - math.pi)
    real = np.cos(phase[at]) < 0  # not the jump of the modulus
    passing = gain[at] + part * (gain[at + 1] - gain[at])
    return crossover, phase_margin, math.exp(-max(passing[real])), delay_margin


RIGS = [
    Rig("everyday", tilt=dict(N=9, ks=0.2, ki=3)),
    Rig("encoders at the output", pan=dict(at="output"), tilt=dict(at="output", N=9, ks=0.2, ki=3)),
    Rig("slow and heavy", pan=dict(rate=2000.0, kp=8, estimator_bw=200.0), tilt=dict(d=4, N=30),
        on_tilt=[("head", 1.4, (0.0, 0.0, 0.0), 0.16)]),
    Rig("no damping at all", pan=dict(d=0.0, viscous=0.0, load_viscous=0.0),
        tilt=dict(N=9, ks=0.2, ki=3, d=0.0, viscous=0.0, load_viscous=0.0)),
    Rig("stiff cables", pan=dict(cable="coil", cable_k=2.0),
        tilt=dict(N=9, ks=0.2, ki=3, cable="twist", cable_k=4.0)),
]


def main():
    batch, bad = sys.argv[1], 0
    with tempfile.TemporaryDirectory() as folder:
        for rig in RIGS:
            found = figures(batch, rig.write(pathlib.Path(folder)))
            for axis in ("pan", "tilt"):
                a = rig.axis(axis)
                w = np.geomspace(1e-4, 1, 30001) * math.pi * a["rate"] * (1 - 1e-9)
                if a["d"] == 0:  # the limit of little damping, its peak resolved
                    a["d"] = 1e-10 * a["k"]
                    rotor = a["N"]**2 * a["Jm"]
                    near = np.concatenate([-np.geomspace(0.05, 1e-9, 4000), np.geomspace(1e-9, 0.05, 4000)])
                    for peak in (a["k"] / a["J"], a["k"] / a["J"] + a["k"] / rotor):
                        w = np.concatenate([w, math.sqrt(peak) * (1 + near)])
                    w = np.unique(w[w < math.pi * a["rate"]])
                # Sampled exactly, so little damping is lost in rounding.
                for exact, allowed in ((False, (1e-4, 1e-4, 1e-4, 1e-4)), (True, (1e-4, 1e-4, 2e-3, 1e-4))):
                    if exact and rig.parts[axis]["d"] == 0:
                        continue
                    for prefix, loop in zip(("", "position_"), open_loops(a, w, exact)):
                        theirs = margins(loop, w)
                        ours = [found[f"{axis}.loop.{prefix}{name}"]
                                for name in ("crossover", "phase_margin", "gain_margin",
                                             "delay_margin")]
                        off = (abs(ours[0] / theirs[0] - 1), abs(ours[1] - theirs[1]),
                               abs(ours[2] / theirs[2] - 1),
                               abs(ours[3] - theirs[3]) * theirs[0])
                        if a["d"] < 1e-6:  # the reference is linear between points of a narrow peak
                            allowed = (1e-4, 1e-4, 1e-3, 1e-4)
                        fine = all(o <= t for o, t in zip(off, allowed))
                        bad += not fine
                        print(f"{rig.name}, {axis} {prefix or 'speed_'}loop{' sampled exactly' if exact else ''}: "
                              f"{theirs[0]:.2f} rad/s, {theirs[1]:.4f} rad, {theirs[2]:.4f}; off "
                              + ", ".join(f"{o:.1e}" for o in off) + ("" if fine else "  TOO FAR"),
                              flush=True)
    return 0 if bad == 0 else 1


if __name__ == "__main__":
    sys.exit(main())
