"""First collision of what tilts: distances of convex solids by farthest points and non-negative
least squares, the tilt moved on by no more than the distance allows. SI."""

import math

import numpy as np
from scipy.optimize import nnls

from _rig_text import value

TOUCHING, FINE = 1e-4, math.radians(0.01)


class Solid:
    """`half`: half extents along its own axes; its round ones are equal, round `along`."""

    def __init__(self, kind, half, centre, along=None):
        self.kind, self.half, self.along = kind, np.array(half, float), along
        self.centre = np.array(centre, float)
        self.radius = self.half[0] if kind == "ball" else (
            np.linalg.norm(self.half) if kind == "box" else
            math.hypot(self.half[along], self.half[along - 1]))

    def farthest(self, n):
        """Its point farthest along n, from its centre, not turned."""
        if self.kind == "ball":
            return self.half[0] * n / np.linalg.norm(n)
        if self.kind == "box":
            return np.where(n >= 0, self.half, -self.half)
        k, across = self.along, n.copy()
        across[k] = 0
        size = np.linalg.norm(across)
        p = across * (self.half[k - 1] / size) if size > 0 else across
        p[k] = math.copysign(self.half[k], n[k])
        return p

    def lever(self):
        """How far a radian about y moves its surface at most; round about y it turns on the spot."""
        off = math.hypot(self.centre[0], self.centre[2])
        turns_alike = self.kind == "ball" or self.kind == "rod" and self.along == 1
        return off if turns_alike else off + self.radius


def solid(body):
    shape, centre = body["shape"], [value(c) for c in body["centre"]]
    if shape == "point":
        return None
    (kind, s), = shape.items()
    if kind in ("ball", "shell"):
        return Solid("ball", [value(s["diameter"]) / 2] * 3, centre)
    if kind == "box":
        return Solid("box", [value(side) / 2 for side in s], centre)
    if kind == "tube":
        along = "xyz".index(s.get("along", "x"))
        half = [value(s["diameter"]) / 2] * 3
        half[along] = value(s["length"]) / 2
        return Solid("rod", half, centre, along)
    return None


def distance(a, b, place, tilt):
    """Lower and upper bound of the distance of b from a, which is tilted about -y at `place`.

    The point of the hull of differences nearest to 0, its corners added one by one as they are
    found farthest (Wolfe); least squares of [P; 1]·λ = [0; 1] with λ >= 0 point to it."""
    c, s = math.cos(tilt), math.sin(tilt)
    turn = np.array([[c, 0, -s], [0, 1, 0], [s, 0, c]])
    apart = b.centre - place - turn @ a.centre
    scale = np.linalg.norm(apart) + a.radius + b.radius
    corner = lambda n: (apart - turn @ a.farthest(turn.T @ n) + b.farthest(-n)) / scale
    v = apart / scale if apart.any() else np.array([1.0, 0, 0])
    corners, low, high = [], -math.inf, math.inf
    for _ in range(100):
        p = corner(v)
        size = np.linalg.norm(v)
        low = max(low, v @ p / size)
        if high - low <= max(1e-7 / scale, 1e-3 * low):
            break
        corners.append(p)
        share = nnls(np.vstack([np.array(corners).T, np.ones(len(corners))]),
                     np.array([0, 0, 0, 1.0]))[0]
        v = np.array(corners).T @ share / share.sum()
        high = np.linalg.norm(v)
        if high < 1e-9:
            return 0.0, 0.0
        corners = [q for q, x in zip(corners, share) if x > 0]
    return max(low, 0.0) * scale, high * scale


def first_contact(a, b, place, way, end):
    lever, tilt = a.lever(), 0.0
    while tilt < end:
        low, high = distance(a, b, place, way * tilt)
        if high <= TOUCHING:
            return way * tilt
        tilt += max((low - TOUCHING) / lever, FINE) if lever > 0 else math.inf
    return None


def collision_figures(rig):
    place = np.array([value(c) for c in rig["tilt"]["axis_at"]])
    width, height = value(rig["stand"]["half_width"]), value(rig["stand"]["height"])
    tilting = [s for s in map(solid, rig["on_tilt"]) if s]
    still = [s for s in map(solid, rig.get("on_pan", [])) if s]
    radius = math.sqrt(2) * width
    still.append(Solid("rod", [radius, radius, height / 2], [0, 0, -height / 2], 2))
    first = {1: None, -1: None}
    for a in tilting:
        for b in still:
            if distance(a, b, place, 0)[1] <= TOUCHING:
                continue
            for way in first:
                end = abs(first[way]) if first[way] else math.pi
                first[way] = first_contact(a, b, place, way, end) or first[way]
    return {"tilt.travel.collision_least": first[-1], "tilt.travel.collision_most": first[1]}
