"""Two axes at once, from mechanics: bodies as point clouds and balls, and one supply for both."""

import math

import numpy as np

from _rig import AXIS_AT, G, Envelope


class Bodies:
    """Balls on pan and tilt. Everything from positions as functions of pan and tilt angle."""

    def __init__(self, rig):
        self.lean = rig.lean
        self.pan = [(m, np.array(c), 0.1 * m * d * d) for _, m, c, d in rig.on_pan]
        self.tilt = [(m, np.array(c), 0.1 * m * d * d) for _, m, c, d in rig.on_tilt]

    @staticmethod
    def place(c, tilt):
        """Of a point on tilt in axes of pan, and its slope by the tilt angle."""
        s, k = math.sin(tilt), math.cos(tilt)
        x, y, z = c
        return (np.array([k * x - s * z, y, s * x + k * z]) + AXIS_AT,
                np.array([-s * x - k * z, 0.0, k * x - s * z]))

    def mass(self, tilt):
        """M from the velocities of the centres, and the balls' own inertia about both axes."""
        M = np.zeros((2, 2))
        for m, c, own in self.pan:
            M[0, 0] += m * (c[0] ** 2 + c[1] ** 2) + own
        for m, c, own in self.tilt:
            p, by_tilt = self.place(c, tilt)
            by_pan = np.array([-p[1], p[0], 0.0])
            M += m * np.array([[by_pan @ by_pan, by_pan @ by_tilt],
                               [by_pan @ by_tilt, by_tilt @ by_tilt]]) + own * np.eye(2)
        return M

    def velocity_torque(self, tilt, rate):
        """Christoffel's symbols of M by central differences; M is a wave of two per turn."""
        h = 1e-3  # extrapolated: the error goes with h to the fourth
        d = lambda h: (self.mass(tilt + h) - self.mass(tilt - h)) / (2 * h)
        slope = (4 * d(h / 2) - d(h)) / 3
        u, v = rate
        return np.array([slope[0, 0] * u * v + slope[0, 1] * v * v, -slope[0, 0] * u * u / 2])

    def gravity(self, pan, tilt):
        """Torque along pan and tilt: each body's weight times the slope of its height."""
        # World up in axes of the stand, which leans forwards about y.
        up = np.array([-math.sin(self.lean), 0.0, math.cos(self.lean)])
        s, k = math.sin(pan), math.cos(pan)
        turned = lambda p: np.array([k * p[0] - s * p[1], s * p[0] + k * p[1], p[2]])
        across = lambda p: np.array([-s * p[0] - k * p[1], k * p[0] - s * p[1], 0.0])
        torque = np.zeros(2)
        for m, c, _ in self.pan:
            torque[0] -= m * G * (up @ across(c))
        for m, c, _ in self.tilt:
            p, by_tilt = self.place(c, tilt)
            torque -= m * G * np.array([up @ across(p), up @ turned(by_tilt)])
        return torque


class Supply:
    """Both drives within their envelopes; drives that draw get the same part of the power they
    want, and what a braking one returns is there to be drawn."""

    def __init__(self, axes):
        self.axes = axes
        self.limit_W = axes[0]["V"] * axes[0]["supply_A"]
        self.envelopes = [Envelope(dict(a, supply_A=math.inf)) for a in axes]

    def power(self, a, torque, w):
        i = torque / a["Kt"]
        return 1.5 * a["R"] * i * i + torque * w

    def torques(self, wanted, speeds):
        torque = [e.clamp(T, w) for e, T, w in zip(self.envelopes, wanted, speeds)]
        power = [self.power(a, T, w) for a, T, w in zip(self.axes, torque, speeds)]
        drawn = sum(p for p in power if p > 0)
        there = self.limit_W - sum(p for p in power if p < 0)
        if drawn <= there:
            return torque
        for i, a in enumerate(self.axes):
            if power[i] <= 0:
                continue
            P, e = power[i] * there / drawn, a["Kt"] * speeds[i] * math.copysign(1, torque[i])
            # 1.5·R·i² + e·i − P = 0
            current = (-e + math.sqrt(e * e + 6 * a["R"] * P)) / (3 * a["R"])
            torque[i] = math.copysign(a["Kt"] * current, torque[i])
        return torque

    def bus_A(self, torque, speeds):
        return sum(self.power(a, T, w) for a, T, w in zip(self.axes, torque, speeds)) / self.axes[0]["V"]
