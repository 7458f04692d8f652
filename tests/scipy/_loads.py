"""Bearings, the gearbox's output, screws and the shaft's hold. SI.

Loads from point clouds: accelerations of every point by cross products, forces and moments as sums
over points. Tables are written down anew."""

import copy
import math

import numpy as np
from scipy.optimize import brentq

import _rig_text
from _mass import G, _turn_y
from _rig_text import value
from _structure import largest_acceleration

_rig_text.UNITS.update({"N": 1, "um": 1e-6, "hour": 3600})

TAU = 2 * math.pi
X, Y, Z = np.eye(3)

# ISO 281:2007 table 3 and ISO 76:2006; the sources of the rows are in the handbook.
DEEP = np.array([[.172, .19, 2.30], [.345, .22, 1.99], [.689, .26, 1.71], [1.03, .28, 1.55],
                 [1.38, .30, 1.45], [2.07, .34, 1.31], [3.45, .38, 1.15], [5.17, .42, 1.04],
                 [6.89, .44, 1.00]]).T
FIFTEEN = np.array([[.178, .38, 1.47], [.357, .40, 1.40], [.714, .43, 1.30], [1.07, .46, 1.23],
                    [1.43, .47, 1.19], [2.14, .50, 1.12], [3.57, .55, 1.02], [5.35, .56, 1.00],
                    [7.14, .56, 1.00]]).T
ANGLES = np.array([20, 25, 30, 35, 40, 45])
STEEP = np.array([[.57, .43, 1.00], [.68, .41, .87], [.80, .39, .76], [.95, .37, .66],
                  [1.14, .35, .57], [1.34, .33, .50]])
STATIC_AT = np.array([0, 15, 20, 25, 30, 35, 40, 45])
X0, Y0 = np.array([.6, .5, .5, .5, .5, .5, .5, .5]), np.array([.5, .46, .42, .38, .33, .29, .26, .22])
# d, P and the mean diameter under the head in mm; proof stress in MPa.
THREADS = {"M2": (2, .4, 3.1), "M2.5": (2.5, .45, 3.7), "M3": (3, .5, 4.45), "M4": (4, .7, 5.75),
           "M5": (5, .8, 7.0), "M6": (6, 1.0, 8.3), "M8": (8, 1.25, 11.0)}
PROOF = {"4.8": 310, "5.8": 380, "8.8": 580, "10.9": 830, "12.9": 970, "A2-50": 210, "A2-70": 450,
         "A4-80": 600}

KEYS = ("bearing.radial_load bearing.axial_load bearing.moment_load bearing.weight_radial "
        "bearing.weight_moment bearing.mean_speed bearing.stop_force bearing.near_load "
        "bearing.far_load bearing.moment_at_bearing bearing.equivalent_load bearing.life "
        "bearing.static_load bearing.static_safety bearing.stop_safety bearing.play "
        "bearing.play_lens bearing.output_radial joint.torque joint.preload joint.preload_least "
        "joint.preload_most joint.screw_stress joint.slip_torque joint.advised_torque "
        "joint.engagement joint.screw_pull joint.shaft_torque").split()

# The program looks at 33 angles of the tilt's travel, the reference at 181: a peak is missed by up
# to 1 - cos(5.7 deg). What follows from the loads follows with them, life with their power of 10/3.
POSES = 6e-3
TOLERANCES = {f"bearing.{k}": POSES for k in (
    "radial_load", "axial_load", "moment_load", "weight_radial", "weight_moment", "near_load",
    "far_load", "moment_at_bearing", "static_load", "static_safety", "stop_safety", "output_radial")}
TOLERANCES.update({"joint.screw_pull": POSES, "joint.torque": 1e-3,
                   # Where e lies between both loads' ratios P jumps by what the table's rows miss.
                   "bearing.equivalent_load": 2e-2, "bearing.life": 6e-2,
                   # An angle of up to 10 mrad, ours its tangent: x²/12.
                   "bearing.play": 1e-5, "bearing.play_lens": 1e-5})


def _given(part, key, default=None):
    return value(part[key]) if key in part else default


class Motion:
    """The fastest turning, and speeding up or slowing down, of both axes."""

    def __init__(self, rig, drives):
        self.speed = {a: min(d.speed_top(), value(rig[a]["loop"]["speed_limit"]))
                      for a, d in drives.items()}
        self.tilting, self.pan = largest_acceleration(drives["tilt"]), drives["pan"]

    def accelerations(self, pan_inertia):
        """Of both axes; pan's follows from what it turns at that tilt angle."""
        pan = copy.copy(self.pan)
        pan.inertia = pan_inertia
        return {"pan": largest_acceleration(pan), "tilt": self.tilting}


class Loads:
    def __init__(self, rig, masses, drives, tilt_range):
        self.masses, self.motion = masses, Motion(rig, drives)
        self.lean = value(rig["stand"]["lean"])
        self.tilts = np.linspace(*tilt_range, 181)

    def _parts(self, axis, tilt):
        """Places, masses and the accelerations of each motion, from the origin of P."""
        m, w = self.masses, self.motion.speed
        a = self.motion.accelerations(float(m.pan_inertia(tilt)))
        own = m.at["on_tilt"] @ _turn_y(np.asarray(-tilt)).T
        moving, mass = m.axis_at + own, m.mass["on_tilt"]
        fixed = m.at["on_pan"] if axis == "pan" else np.zeros((0, 3))
        at = np.vstack([fixed, moving])
        mass = np.concatenate([m.mass["on_pan"] if axis == "pan" else np.zeros(0), mass])
        own = np.vstack([np.zeros_like(fixed), own])
        by_pan = lambda sign: (sign * a["pan"] * np.cross(Z, at)
                               + w["pan"]**2 * np.cross(Z, np.cross(Z, at)))
        by_tilt = lambda sign: (sign * a["tilt"] * np.cross(-Y, own)
                                + w["tilt"]**2 * np.cross(Y, np.cross(Y, own)))
        cross = lambda sign: sign * 2 * w["pan"] * w["tilt"] * np.cross(Z, np.cross(-Y, own))
        return at, mass, by_pan, by_tilt, cross

    def at(self, axis, tilt):
        """(radial, axial, moment) of weight, and of weight and motion, at one tilt angle."""
        at, mass, by_pan, by_tilt, cross = self._parts(axis, tilt)
        along, origin = (Z, np.zeros(3)) if axis == "pan" else (Y, self.masses.axis_at)
        beside = origin + along * (along @ (mass @ at / mass.sum() - origin))

        def push(acceleration):
            force = mass[:, None] * acceleration
            moment = np.cross(at - beside, force).sum(axis=0)
            force = force.sum(axis=0)
            return np.array([np.linalg.norm(force - along * (along @ force)), abs(along @ force),
                             np.linalg.norm(moment - along * (along @ moment))])

        weight = np.zeros(3)
        for pan in np.arange(4) * math.pi / 2:
            c, s = math.cos(pan), math.sin(pan)
            g = G * np.array([math.sin(self.lean) * c, -math.sin(self.lean) * s, -math.cos(self.lean)])
            weight = np.maximum(weight, push(np.broadcast_to(g, at.shape)))
        alone, other = (by_pan, by_tilt) if axis == "pan" else (by_tilt, by_pan)
        signs = [(i, k) for i in (-1, 1) for k in (-1, 1)]
        moving = push(alone(1)) + np.max([push(other(i) + cross(k)) for i, k in signs], axis=0)
        return weight, weight + moving

    def largest(self, axis):
        pairs = np.array([self.at(axis, t) for t in self.tilts])
        return pairs[:, 0].max(axis=0), pairs[:, 1].max(axis=0)


def ball_factors(degrees, load):
    """e, X, Y by plain interpolation: over the load, then over the angle."""
    deep = np.array([np.interp(load, DEEP[0], DEEP[1]), 0.56, np.interp(load, DEEP[0], DEEP[2])])
    fifteen = np.array([np.interp(load, FIFTEEN[0], FIFTEEN[1]), 0.44,
                        np.interp(load, FIFTEEN[0], FIFTEEN[2])])
    rows = np.vstack([deep, fifteen, STEEP])
    return [np.interp(degrees, [0, 15, *ANGLES], rows[:, i]) for i in range(3)]


def equivalent(b, radial, axial):
    angle = _given(b, "contact_angle", 0.0)
    degrees = math.degrees(angle)
    if b.get("rolling", "ball") == "ball":
        e, X_, Y_ = ball_factors(degrees, _given(b, "calculation_factor", 14) * axial
                                 / value(b["static_rating"]))
        static = np.interp(degrees, STATIC_AT, X0) * radial + np.interp(degrees, STATIC_AT, Y0) * axial
    elif angle == 0:
        return (None, None) if axial > 0 else (radial, radial)
    else:
        e, X_, Y_ = 1.5 * math.tan(angle), 0.4, 0.4 / math.tan(angle)
        static = 0.5 * radial + 0.22 / math.tan(angle) * axial
    dynamic = radial if axial <= e * radial else X_ * radial + Y_ * axial
    return dynamic, max(radial, static)


def carrier(b):
    kind = b.get("kind", "pair")
    filled = any(k in b for k in ("dynamic_rating", "static_rating", "moment_rating", "spacing"))
    return kind if filled else "gearbox"


def _own_bearing(b, load, f):
    """Fills in near, far or moment; gives (radial more) -> (P, P0)."""
    radial, axial, moment = load
    overhang = _given(b, "overhang")
    if carrier(b) == "pair":
        # Reactions by solving force and moment balance, of the force and of the moment by itself.
        span = value(b["spacing"])
        balance = [[1, 1], [0, -span]]
        push = np.abs(np.linalg.solve(balance, [radial, radial * overhang]))
        couple = np.abs(np.linalg.solve(balance, [0, moment]))
        f["bearing.near_load"], f["bearing.far_load"] = push + couple
        worst = max(push + couple)
        thrust = (1.216 if b.get("rolling", "ball") == "ball" else 1.260) * worst * math.tan(
            _given(b, "contact_angle", 0.0))
        axial += _given(b, "preload", 0.0) + thrust
        return lambda more: equivalent(b, worst + more, axial)
    f["bearing.moment_at_bearing"] = tilting = radial * abs(overhang) + moment

    def alone(more):
        F = radial + more + 2 * tilting / value(b["pitch_diameter"])
        if b.get("rolling", "ball") == "ball":
            return equivalent(b, F, axial)
        return (F + 0.45 * axial if axial / F <= 1.5 else 0.67 * F + 0.67 * axial), F + 0.44 * axial
    return alone


def play(b, arm):
    pair, preload = carrier(b) == "pair", _given(b, "preload", 0.0)
    rest = 0.0 if pair and preload > 0 else None
    radial, axial = _given(b, "radial_play", rest), _given(b, "axial_play", rest)
    if radial is None or (not pair and axial is None):
        return None, None
    if not pair:
        tip = 2 * math.atan(axial / value(b["pitch_diameter"]))  # so small that it is its tangent
        return tip, radial + tip * abs(arm)
    span = value(b["spacing"])
    ends = [(n, r) for n in (-radial / 2, radial / 2) for r in (-radial / 2, radial / 2)]
    return (max(n - r for n, r in ends) / span * 2,
            2 * max(abs(n + (n - r) / span * arm) for n, r in ends))


def mean_speed(rig, axis, motion):
    moves = rig.get("duty")
    if not isinstance(moves, list) or not moves:
        return abs(value(rig["task"][axis + "_move"])) * value(rig["task"]["duty"]["moves_per_minute"]) / 60
    way = time = 0.0
    for before, move in zip([moves[-1]] + moves[:-1], moves):
        turned = {a: abs(value(move[a]) - value(before[a])) for a in ("pan", "tilt")}
        way += turned[axis]
        time += value(move["dwell"]) + max(turned[a] / motion.speed[a] for a in turned)
    return way / time if way else 0.0


def screw_figures(j, f):
    if j.get("thread", "unstated") not in THREADS:
        return
    d, P, head = (x * 1e-3 for x in THREADS[j["thread"]])
    mu, proof = _given(j, "thread_friction", 0.14), PROOF[j.get("property_class", "8.8")] * 1e6
    d2, core = d - 0.6495 * P, d - (0.6495 + 1.22687) / 2 * P
    area = math.pi / 4 * (d - 0.9382 * P)**2
    plastic = j.get("holds_in", "nut") in ("insert", "print")
    torque_of = lambda F: F * (0.159 * P + 0.578 * d2 * mu + head / 2 * mu)

    def stress(F):
        twist = F * (0.159 * P + 0.578 * d2 * mu) / (math.pi * core**3 / 16)
        return math.hypot(F / area, math.sqrt(3) * twist)

    advised = torque_of(brentq(lambda F: stress(F) - 0.8 * proof, 0, proof * area, rtol=1e-14))
    pull_out = _given(j, "pull_out")
    f["joint.advised_torque"] = (advised if not plastic else
                                 None if pull_out is None else min(advised, torque_of(pull_out / 2)))
    if j.get("holds_in", "nut") == "metal":
        f["joint.engagement"] = 2 * area / (math.pi / 2 * d2)
    if "tightening_torque" not in j:
        return
    preload = value(j["tightening_torque"]) / torque_of(1.0)
    least = preload * 0.65 * (0.5 if plastic else 1)
    f.update({"joint.preload": preload, "joint.preload_least": least,
              "joint.preload_most": 1.35 * preload, "joint.screw_stress": stress(preload)})
    if "screws" in j and "circle_diameter" in j:
        f["joint.slip_torque"] = sum(
            _given(j, "face_friction", 0.12) * least * value(j["circle_diameter"]) / 2
            for _ in range(round(value(j["screws"]))))


def shaft_torque(j):
    kind, mu = j.get("shaft", "none"), _given(j, "face_friction", 0.12)
    d, length, p = (_given(j, k) for k in ("shaft_diameter", "shaft_length", "shaft_pressure"))
    if kind == "none" or d is None:
        return None
    if kind == "clamp":
        return 2 * mu * value(j["clamp_force"]) * d / 2 if "clamp_force" in j else None
    if length is None or p is None:
        return None
    width = 2 * math.sqrt((d / 2)**2 - (0.4 * d)**2)
    return p * length * width**2 / 12 if kind == "flat" else p * length * d / 8 * d / 2


def _axis_figures(rig, axis, loads, done, d):
    f = {key: None for key in KEYS}
    b, j, gear = rig[axis].get("bearing", {}), rig[axis].get("joint", {}), rig[axis]["gearbox"]
    weight, load = loads.largest(axis)
    f.update({"bearing.radial_load": load[0], "bearing.axial_load": load[1],
              "bearing.moment_load": load[2], "bearing.weight_radial": weight[0],
              "bearing.weight_moment": weight[2], "bearing.mean_speed": mean_speed(rig, axis, loads.motion)})
    stops = rig[axis]["stops"]
    blow = done[f"{axis}.stop.torque_pushing"]
    if stops != "none":
        f["bearing.stop_force"] = blow / value(stops["radius"])
    if carrier(b) != "gearbox":
        bears = _own_bearing(b, load, f)
        P, P0 = bears(0.0)
        f["bearing.equivalent_load"], f["bearing.static_load"] = P, P0
        if P is not None:
            p = 3 if b.get("rolling", "ball") == "ball" else 10 / 3
            C0 = value(b["static_rating"])
            f["bearing.static_safety"] = C0 / P0
            if "dynamic_rating" in b and f["bearing.mean_speed"] > 0:
                f["bearing.life"] = 1e6 * (value(b["dynamic_rating"]) / P)**p * TAU / f["bearing.mean_speed"]
            if stops != "none":
                f["bearing.stop_safety"] = C0 / bears(f["bearing.stop_force"])[1]
        f["bearing.play"], f["bearing.play_lens"] = play(b, loads_arm(rig, axis, loads, b))
    elif "load_at" in gear:
        moment = load[0] * value(gear["load_at"]) + load[2]
        if "overhung_load" in gear and "overhung_at" in gear:
            f["bearing.output_radial"] = max(load[0], moment / value(gear["overhung_at"]))
        if "screws" in j:
            f["joint.screw_pull"] = (4 * moment / (value(j["screws"]) * value(j["circle_diameter"]))
                                     + load[1] / value(j["screws"]))
    stall = d.torque_stall()
    through = [stall]
    if stops != "none":
        share = d.inertia / (d.inertia + d.ratio**2 * d.motor_inertia)
        through += [done[f"{axis}.stop.gear_torque"], share * (blow - stall),
                    done[f"{axis}.stop.gear_torque_sprung"] or 0.0]
    f["joint.torque"] = max(through)
    screw_figures(j, f)
    f["joint.shaft_torque"] = shaft_torque(j)
    return {f"{axis}.{key}": v for key, v in f.items()}


def loads_arm(rig, axis, loads, b):
    """From the nearer bearing to the lens, at the origin of T."""
    m, overhang = loads.masses, value(b["overhang"])
    if axis == "tilt":
        return overhang + abs(m.first["on_tilt"][1] / m.total("on_tilt"))
    at = np.vstack([m.at["on_pan"], m.axis_at + m.at["on_tilt"]])
    mass = np.concatenate([m.mass["on_pan"], m.mass["on_tilt"]])
    return overhang + m.axis_at[2] - mass @ at[:, 2] / mass.sum()


def load_figures(rig, masses, drives, tilt_range, done):
    """`done`: the figures of stops."""
    loads = Loads(rig, masses, drives, tilt_range)
    return {k: v for axis, d in drives.items()
            for k, v in _axis_figures(rig, axis, loads, done, d).items()}


def with_bearings(rig, rng):
    """Bearings, screws and shafts of all kinds."""
    for axis in ("pan", "tilt"):
        b = {"kind": rng.choice(["pair", "pair", "single", "gearbox"]),
             "rolling": rng.choice(["ball", "ball", "roller"]),
             "dynamic_rating": f"{10**rng.uniform(2.5, 4)!r} N",
             "static_rating": f"{10**rng.uniform(2.3, 4)!r} N",
             "moment_rating": f"{10**rng.uniform(0, 2)!r} N.m",
             "spacing": f"{rng.uniform(8, 90)!r} mm", "overhang": f"{rng.uniform(-40, 80)!r} mm",
             "pitch_diameter": f"{rng.uniform(15, 90)!r} mm",
             "contact_angle": f"{rng.choice([0, 0, rng.uniform(1, 45)])!r} deg",
             "radial_play": f"{rng.uniform(0, 30)!r} um", "axial_play": f"{rng.uniform(0, 100)!r} um"}
        if rng.random() < 0.5:
            b["preload"] = f"{rng.uniform(0, 60)!r} N"
        if rng.random() < 0.3:
            del b["radial_play"]
        j = {"thread": rng.choice(list(THREADS)), "property_class": rng.choice(list(PROOF)),
             "holds_in": rng.choice(["nut", "metal", "insert", "print"]),
             "screws": str(rng.randint(2, 10)), "circle_diameter": f"{rng.uniform(12, 80)!r} mm",
             "tightening_torque": f"{10**rng.uniform(-1, 0.8)!r} N.m",
             "thread_friction": repr(rng.uniform(0.05, 0.3)), "face_friction": repr(rng.uniform(0.05, 0.5)),
             "pull_out": f"{10**rng.uniform(2, 3.3)!r} N",
             "shaft": rng.choice(["none", "clamp", "flat", "key"]),
             "shaft_diameter": f"{rng.uniform(4, 20)!r} mm", "shaft_length": f"{rng.uniform(5, 30)!r} mm",
             "clamp_force": f"{10**rng.uniform(2.5, 4)!r} N",
             "shaft_pressure": f"{rng.uniform(10, 120)!r} MPa"}
        rig[axis]["bearing"], rig[axis]["joint"] = b, j
        rig[axis]["gearbox"].update({"overhung_load": "120 N", "axial_load": "80 N",
                                     "overhung_at": f"{rng.uniform(5, 30)!r} mm",
                                     "load_at": f"{rng.uniform(0, 90)!r} mm"})
    return rig
