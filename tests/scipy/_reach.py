"""Which part of the sphere it can look at, and the long way round, by trying. SI, None if empty."""

import math

import numpy as np

from _rig_text import value
from _rigid import Drive, fastest_move

TAU = 2 * math.pi


def keep_outs(rig):
    return [[[value(end) for end in k[axis]] for axis in ("pan", "tilt")]
            for k in rig.get("keep_outs", [])]


class Poses:
    """Poses between ends of pan and tilt that are in no keep-out, which counts at each turn."""

    def __init__(self, pan, tilt, keep_outs):
        middle = sum(pan) / 2 if math.isfinite(sum(pan)) else 0.0
        half = min((pan[1] - pan[0]) / 2, math.pi)
        self.pan, self.keep_outs = (middle - half, middle + half), keep_outs
        self.tilt = max(tilt[0], -math.pi), min(tilt[1], math.pi)

    def hold(self, pan, tilt):
        """Whether a pose looking this way round (any turn of pan) is among them; arrays of one
        shape."""
        inside = (pan - self.pan[0]) % TAU <= self.pan[1] - self.pan[0]
        inside &= (tilt >= self.tilt[0]) & (tilt <= self.tilt[1])
        for (a, b), (low, high) in self.keep_outs:
            inside &= ~(((pan - a) % TAU < b - a) & (tilt > low) & (tilt < high))
        return inside

    def edges(self):
        return ([*self.pan, *(e for k in self.keep_outs for e in k[0])],
                [*self.tilt, *(e for k in self.keep_outs for e in k[1])])


def _cells(edges, least, most):
    """Middles and ends of the cells between edges within least…most."""
    ends = np.unique([least, *(e for e in edges if least < e < most), most])
    return (ends[1:] + ends[:-1]) / 2, ends


def sphere_share(poses):
    """The sphere is cut along all edges; each cell is tried in its middle, the camera upright or
    over its head."""
    pans, tilts = poses.edges()
    way, way_ends = _cells([(p + turn) % TAU for p in pans for turn in (0, math.pi)], 0, TAU)
    up, up_ends = _cells([x for t in tilts for x in (t, math.pi - t, -math.pi - t)], -math.pi / 2,
                         math.pi / 2)
    W, U = np.meshgrid(way, up, indexing="ij")
    seen = poses.hold(W, U)
    for over in (math.pi, -math.pi):
        seen |= poses.hold(W + math.pi, over - U)
    return float(np.diff(way_ends) @ seen @ np.diff(np.sin(up_ends))) / (2 * TAU)


def view_share(poses, across, upright, steps=1440, rings=720):
    """Directions of a grid that some pose of a grid has in its picture, through a pinhole. A ring
    of 0.25 deg is 0.0022 of the sphere at most: up to half of it is wrong at an edge."""
    ends = np.linspace(-math.pi / 2, math.pi / 2, rings + 1)
    up, area = (ends[1:] + ends[:-1]) / 2, np.diff(np.sin(ends)) / 2
    aside = np.arange(steps // 2 + 1) * TAU / steps  # to the left; the right is alike
    pan = (np.arange(steps) + 0.5) * TAU / steps
    tilts = np.linspace(*poses.tilt, max(2, math.ceil((poses.tilt[1] - poses.tilt[0]) * 90)))
    E, A = np.meshgrid(up, aside, indexing="ij")
    x, y, z = np.cos(E) * np.cos(A), np.cos(E) * np.sin(A), np.sin(E)
    corner, pictures = math.atan(math.hypot(across, upright)), {}  # of tilts with the same pans
    for tilt in tilts:
        near = np.nonzero(np.abs(up - math.asin(math.sin(tilt))) < corner + 0.01)[0]
        rows = slice(near[0], near[-1] + 1)
        ahead = x[rows] * math.cos(tilt) + z[rows] * math.sin(tilt)
        above = z[rows] * math.cos(tilt) - x[rows] * math.sin(tilt)
        shown = ((ahead > 0) & (y[rows] <= across * ahead) & (np.abs(above) <= upright * ahead))
        key = poses.hold(pan, np.full_like(pan, tilt)).tobytes()
        pictures.setdefault(key, np.zeros(E.shape, bool))[rows] |= shown
    seen = np.zeros((rings, steps), bool)
    for key, shown in pictures.items():  # turned by every pan
        turns = np.fft.rfft(np.frombuffer(key, bool).astype(float))
        both = np.hstack([shown, shown[:, -2:0:-1]]).astype(float)
        seen |= np.fft.irfft(np.fft.rfft(both) * turns, steps) > 0.5
    return float(seen.mean(axis=1) @ area)


def reach_figures(rig, pan, tilt):
    """`pan`, `tilt`: ends of the poses, collisions included."""
    poses = Poses(pan, tilt, keep_outs(rig))
    if poses.tilt[1] <= poses.tilt[0] or poses.pan[1] <= poses.pan[0]:
        return {"reach.sphere_share": 0.0, "reach.view_share": 0.0}
    camera = rig["camera"]
    across = math.tan(value(camera["horizontal_view"]) / 2)
    upright = across * value(camera["rows"]) / value(camera["columns"])
    return {"reach.sphere_share": sphere_share(poses),
            "reach.view_share": view_share(poses, across, upright)}


def long_way_time(d, usable, speed_limit, centre):
    """Time of the quickest move over the travel, what would be faster than the limit run at it:
    the integral of max(1, ω/limit) over time. The slower of both ways counts."""
    if usable >= TAU or usable <= 0:
        return None
    limit, times = min(d.speed_top(), speed_limit), []
    for way in (1, -1):
        there = Drive.__new__(Drive)
        there.__dict__.update(d.__dict__, gravity=lambda q: way * d.gravity(centre + way * q),
                              cable_centre=way * (d.cable_centre - centre))
        ways = fastest_move(there, usable, d.ratio)
        if ways is None:
            return None
        times.append(0.0)
        for path, t in ways:
            at = np.linspace(0, t, 20001)
            times[-1] += np.trapz(np.maximum(1, path(at)[1] / limit), at)
    return max(times)
