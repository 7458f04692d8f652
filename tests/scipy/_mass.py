"""Mass properties and gravity by brute force: each body becomes a cloud of point masses.

The points are those of Gauss' and the trapezium rule over the shape, with as many nodes as it takes
for moments up to the second to be exact; a body given by its tensor becomes six points on its
principal axes. All that follows is sums over points turned by rotation matrices, and slopes of the
potential energy, taken by the complex step Im V(q + ih)/h, which has no cancellation."""

import math

import numpy as np

from _rig_text import value

G = 9.80665  # standard gravity, 3rd General Conference on Weights and Measures, 1901


def _gauss(a, b, n):
    x, w = np.polynomial.legendre.leggauss(n)
    return (a + b) / 2 + (b - a) / 2 * x, w * (b - a) / 2


def _cloud(axes, place, density):
    """Points place(u, v, w) with weights density(u, v, w)·(weights of the three rules)."""
    (u, wu), (v, wv), (w, ww) = axes
    U, V, W = np.meshgrid(u, v, w, indexing="ij")
    weights = np.einsum("i,j,k->ijk", wu, wv, ww) * density(U, V, W)
    return np.stack([c.ravel() for c in place(U, V, W)], axis=1), weights.ravel() / weights.sum()


_ROUND = (np.arange(8) * math.pi / 4, np.full(8, math.pi / 4))


def _ball(r, R):
    return _cloud((_gauss(r, R, 3), _gauss(-1, 1, 2), _ROUND),
                  lambda s, c, a: (s * np.sqrt(1 - c * c) * np.cos(a),
                                   s * np.sqrt(1 - c * c) * np.sin(a), s * c),
                  lambda s, c, a: s * s)


def _tube(along, r, R, length):
    points, weights = _cloud((_gauss(r, R, 2), _ROUND, _gauss(-length / 2, length / 2, 2)),
                             lambda s, a, h: (h, s * np.cos(a), s * np.sin(a)), lambda s, a, h: s)
    return np.roll(points, "xyz".index(along), axis=1), weights


def _tensor(elements, mass):
    xx, yy, zz, xy, xz, yz = elements
    principal, axes = np.linalg.eigh([[xx, xy, xz], [xy, yy, yz], [xz, yz, zz]])
    # mean x², y², z² on principal axes
    second = np.maximum(principal.sum() / 2 - principal, 0) / mass
    arms = axes * np.sqrt(3 * second)
    return np.vstack([arms.T, -arms.T]), np.full(6, 1 / 6)


def points(body):
    """(n, 3) places and n masses of a body in its carrier's frame."""
    mass, centre = value(body["mass"]), np.array([value(c) for c in body["centre"]])
    shape = body["shape"]
    if shape == "point":
        return centre[None, :], np.array([mass])
    (kind, s), = shape.items()
    if kind == "ball":
        at, share = _ball(0, value(s["diameter"]) / 2)
    elif kind == "shell":
        R = value(s["diameter"]) / 2
        at, share = _ball(R - value(s["wall"]), R)
    elif kind == "tube":
        at, share = _tube(s.get("along", "x"), value(s["bore"]) / 2, value(s["diameter"]) / 2,
                          value(s["length"]))
    elif kind == "box":
        at, share = _cloud([_gauss(-value(side) / 2, value(side) / 2, 2) for side in s],
                           lambda x, y, z: (x, y, z), lambda x, y, z: np.ones_like(x))
    else:
        at, share = _tensor([value(e) for e in s], mass)
    return centre + at, mass * share


def _turn_z(a):
    """Rotation matrices about z, one for each angle of an array."""
    c, s, o = np.cos(a), np.sin(a), np.zeros_like(a)
    return np.moveaxis(np.array([[c, -s, o], [s, c, o], [o, o, o + 1]]), (0, 1), (-2, -1))


def _turn_y(a):
    c, s, o = np.cos(a), np.sin(a), np.zeros_like(a)
    return np.moveaxis(np.array([[c, o, s], [o, o + 1, o], [-s, o, c]]), (0, 1), (-2, -1))


class Masses:
    def __init__(self, rig):
        clouds = {group: [points(b) for b in rig.get(group, [])] for group in ("on_pan", "on_tilt")}
        self.at, self.mass = {}, {}
        for group, bodies in clouds.items():
            self.at[group] = np.vstack([np.zeros((0, 3))] + [b[0] for b in bodies])
            self.mass[group] = np.concatenate([np.zeros(0)] + [b[1] for b in bodies])
        self.axis_at = np.array([value(c) for c in rig["tilt"]["axis_at"]])
        lean = value(rig["stand"]["lean"])
        # B leans by +lean about y
        self.gravity_B = _turn_y(np.asarray(lean)).T @ np.array([0, 0, -G])
        self.first = {g: self.mass[g] @ self.at[g] for g in clouds}

    def total(self, group):
        return self.mass[group].sum()

    def balance_offset(self):
        x, _, z = self.first["on_tilt"] / self.total("on_tilt")
        return math.hypot(x, z)

    def tilt_inertia(self):
        x, _, z = self.at["on_tilt"].T
        return self.mass["on_tilt"] @ (x * x + z * z)

    def pan_inertia(self, tilt):
        """About the pan axis, at each tilt angle of an array."""
        turned = self.axis_at + self.at["on_tilt"] @ np.swapaxes(_turn_y(-np.asarray(tilt, float)),
                                                                 -1, -2)
        total = 0.0
        for at, mass in ((self.at["on_pan"], self.mass["on_pan"]), (turned, self.mass["on_tilt"])):
            total = total + (at[..., 0]**2 + at[..., 1]**2) @ mass
        return total

    def energy(self, pan, tilt):
        """Potential energy in the tilt and pan angles given (which may be complex)."""
        on_tilt = self.total("on_tilt") * self.axis_at + _turn_y(-tilt) @ self.first["on_tilt"]
        in_B = _turn_z(pan) @ (self.first["on_pan"] + on_tilt)[..., None]
        return -(in_B[..., 0] @ self.gravity_B)

    def gravity(self, axis, pan, tilt, h=1e-30):
        """Gravity's torque along +pan or +tilt; angles may be arrays of one shape."""
        pan, tilt = np.asarray(pan, complex), np.asarray(tilt, complex)
        turned = self.energy(pan + 1j * h, tilt) if axis == "pan" else self.energy(pan,
                                                                                   tilt + 1j * h)
        return -turned.imag / h

    def gravity_at_rest(self, axis):
        """The torque against the axis' own angle, the other at 0: a sinusoid, told by two poses."""
        poses = (0.0, 0.0), ((math.pi / 2, 0.0) if axis == "pan" else (0.0, math.pi / 2))
        c, s = (float(self.gravity(axis, *pose)) for pose in poses)
        return lambda q: c * np.cos(q) + s * np.sin(q)

    def gravity_max(self, axis, ranges):
        """Largest magnitude over a rectangle of poses (pan and tilt range)."""
        return scan_max(lambda p, t: np.abs(self.gravity(axis, p, t)), ranges, 401)


def scan_max(f, ranges, n=201):
    """Largest value over a rectangle: a dense grid, then ever finer ones around its best point."""
    boxes, best = [list(r) for r in ranges], -math.inf
    for _ in range(9):
        grid = np.meshgrid(*(np.linspace(*b, n) for b in boxes), indexing="ij")
        values = f(*grid)
        i = np.unravel_index(values.argmax(), values.shape)
        best = max(best, values[i])
        for k, r in enumerate(ranges):
            half = 2 * (boxes[k][1] - boxes[k][0]) / (n - 1)
            boxes[k] = [max(grid[k][i] - half, r[0]), min(grid[k][i] + half, r[1])]
        n = 21
    return best
