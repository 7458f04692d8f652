"""Slow turning anew: the sampled loops as matrices, the train as state space, scans and brentq."""

import copy
import math

import numpy as np
from scipy.optimize import brentq

from _loops import Loops


class Slow:
    """`d` the drive; cogging, periods, falling friction (breakaway less Coulomb) and its speed."""

    def __init__(self, d, cogging, periods, falling, stribeck, bits):
        self.d, self.loops = d, Loops(d)
        self.cogging, self.falling, self.stribeck = cogging, falling, stribeck
        self.per_rad = None if periods is None else periods * d.ratio
        self.count = 2 * math.pi / 2**bits / (1 if d.at == "output" else d.ratio)
        k, c, N = d.stiffness, d.damping, d.ratio
        Jr, J = d.motor_inertia * N * N, d.inertia
        # rotor and load at the output, torque on the rotor
        self.A = np.array([[0, 1, 0, 0],
                           [-k / Jr, -(c + d.gear_viscous * N * N) / Jr, k / Jr, c / Jr],
                           [0, 0, 0, 1],
                           [k / J, c / J, -(k + d.cable_stiffness) / J, -(c + d.load_viscous) / J]])
        self.B = np.array([0, N / Jr, 0, 0])

    def train(self, w):
        """Rotor and load angle per torque on the rotor."""
        w = np.atleast_1d(w)
        x = np.linalg.solve(1j * w[:, None, None] * np.eye(4) - self.A, self.B[None, :, None])
        return x[:, 0, 0], x[:, 2, 0]

    def left(self, w):
        speed, position = self.loops.responses(w)
        return 1 / ((1 + speed) * (1 + position))

    def compliance(self, w):
        return np.abs(self.train(w)[1] * self.left(w))

    def reading_gain(self, w):
        rotor, load = self.train(w)
        # The load's angle per the rotor's, driven from the rotor.
        return np.abs((1 - self.left(w)) * (1 if self.d.at == "output" else load / rotor))

    def highest(self, size, level):
        """The highest frequency at which `size` reaches the level, 0 where nowhere."""
        w = np.geomspace(1e-5, 1 - 1e-9, 20000) * math.pi / self.loops.dt
        near = [f * (1 + np.linspace(-0.06, 0.06, 2001)) for f in self.loops.peaks if f > 1e-2]
        w = np.unique(np.concatenate([w, *near]))
        w = w[w < math.pi / self.loops.dt]
        above = np.nonzero(size(w) >= level)[0]
        if len(above) == 0:
            return 0.0
        i = above[-1]
        if i == len(w) - 1:
            return w[-1]
        return brentq(lambda x: size(x)[0] - level, w[i], w[i + 1], rtol=1e-13)

    def is_steady(self, more_viscous):
        d = copy.copy(self.d)
        d.load_viscous = d.load_viscous + more_viscous
        return np.abs(Loops(d).closed_loop_poles()[1]).max() <= 1 + 1e-9

    def friction_limit(self):
        fall = lambda x: self.falling / self.stribeck * 2 * x * math.exp(-x * x)
        held, lost = 0.0, fall(math.sqrt(0.5))
        if self.is_steady(-lost):
            return 0.0
        for _ in range(40):
            middle = (held + lost) / 2
            held, lost = (middle, lost) if self.is_steady(-middle) else (held, middle)
        return self.stribeck * brentq(lambda x: fall(x) - held, math.sqrt(0.5), 10)

    def figures(self, per_rad_px):
        keys = ("lowest_speed lowest_speed_friction lowest_speed_cogging lowest_speed_encoder "
                "speed_resolution ripple_px cogging_frequency worst_speed worst_ripple_px "
                "friction_jump_px").split()
        d, f = self.d, dict.fromkeys(keys)
        if self.is_steady(0.0):
            f["lowest_speed_encoder"] = self.highest(self.reading_gain, 0.5) * self.count / 2 / math.pi
            f["speed_resolution"] = self.loops.alpha * self.count / self.loops.dt
            if self.cogging > 0:
                level = 1 / self.cogging / self.per_rad
                f["lowest_speed_cogging"] = self.highest(self.compliance, level) / self.per_rad
                w = np.geomspace(1e-5, 1, 100000) * math.pi / self.loops.dt
                # Poles of little decay make peaks narrower than that.
                poles = np.log(self.loops.closed_loop_poles()[1].astype(complex)) / self.loops.dt
                near = [p.imag + p.real * np.linspace(-5, 5, 4001) for p in poles if p.imag > w[0]]
                w = np.unique(np.concatenate([w, *near]))
                w = w[(w > 0) & (w < math.pi / self.loops.dt)]
                size = self.compliance(w)
                f["worst_speed"] = w[np.argmax(size)] / self.per_rad
                f["worst_ripple_px"] = self.cogging * size.max() * per_rad_px
            if self.falling > 0:
                f["lowest_speed_friction"] = self.friction_limit()
                loops = d.speed_gain * d.position_gain + d.speed_integral_gain
                f["friction_jump_px"] = 2 * self.falling * (1 / loops + 1 / d.stiffness) * per_rad_px
            lowest = max(f[f"lowest_speed{s}"] or 0 for s in ("_friction", "_cogging", "_encoder"))
            ripple = self.count / math.pi * self.reading_gain(2 * math.pi * lowest / self.count)[0]
            if self.cogging > 0:
                f["cogging_frequency"] = self.per_rad * lowest
                ripple += self.cogging * self.compliance(self.per_rad * lowest)[0]
            f["lowest_speed"], f["ripple_px"] = lowest, ripple * per_rad_px
        return {f"smooth.{key}": value for key, value in f.items()}
