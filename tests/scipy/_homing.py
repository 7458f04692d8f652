"""Homing and the encoder's magnet for one axis, from the handbook's words alone. SI, None if empty."""

import math
from fractions import Fraction

import numpy as np
from scipy import integrate

from _rig_text import value

TAU = 2 * math.pi
USUAL_SPEED, STALL_TIME = TAU / 12, 0.2


def _given(part, key, default=None):
    return value(part[key]) if isinstance(part, dict) and key in part else default


def _fraction(x):
    near = Fraction(x).limit_denominator(1000)
    return near if abs(float(near) - x) <= 1e-9 * x else None


def vernier_range(n, n2):
    """The least common multiple of both encoders' periods, as fractions of an output turn."""
    p, p2 = _fraction(n), _fraction(n2)
    if p is None or p2 is None:
        return TAU / abs(n - n2)
    return TAU * math.lcm(p.denominator, p2.denominator) / math.gcd(p.numerator, p2.numerator)


def vernier_room(n, n2, travel):
    k = np.arange(1, math.floor(travel / TAU * n * (1 + 1e-9)) + 1)
    if len(k) == 0:
        return None
    turns = k * n2 / n
    off = np.abs(turns - np.round(turns)).min()
    return 0.0 if off < 1e-9 * len(k) else off * TAU / 2


def homing_figures(a, d, pull, stops):
    """`stops`: travel between them, inf for none; `pull`: the most that gravity and cables hold back."""
    homing, none = a.get("homing", {}), math.isinf(stops)
    n = d.ratio if d.at == "motor" else 1.0
    by = "output" if d.at == "output" else homing.get("by", "stop")
    speed, searched = _given(homing, "speed", USUAL_SPEED), TAU if none else stops
    through = d.efficiency * d.ratio
    moving = (d.coulomb + value(a["friction"]["viscous"]) * speed  # with the cables'
              + through * (d.drag + value(a["gearbox"]["viscous"]) * d.ratio * speed)
              + pull)
    k = 0.0 if none else value(a["stops"]["stiffness"]) * d.load_and_rotor()
    blow = speed * math.sqrt(k)
    gentle = min(_given(a["gearbox"], "rated_torque", math.inf), d.peak_torque)
    limit = min(value(a["drive"]["current_limit"]), value(a["motor"]["peak_current"]))
    most = min((gentle - blow) / (through * d.Kt), limit)
    f = {"homing.current_least": moving / (through * d.Kt),
         "homing.current_most": most if most > 0 else None}
    f["homing.time"] = None
    if by == "flag" or by == "stop" and not none:
        f["homing.time"] = searched / speed + (STALL_TIME if by == "stop" else 0)
    push = through * d.Kt * _given(homing, "current", math.nan)
    f["homing.push"] = None if math.isnan(push) else push
    known = not (math.isnan(push) or none)
    f["homing.contact"] = push + blow if known else None
    f["homing.speed_most"] = (gentle - push) / math.sqrt(k) if known and gentle > push else None
    n2 = _given(homing, "second_ratio")
    f["homing.vernier_range"] = None if n2 is None else vernier_range(n, n2)
    f["homing.vernier_room"] = None if n2 is None else vernier_room(n, n2, searched)
    return f


def _field(magnet, x, y, z):
    """Coulomb's law for the charge Br·cosφ on the rim: Gauss' rule up the rim, trapezium round it."""
    R, L, Br = magnet
    phi = np.arange(240) * TAU / 240
    at, weight = np.polynomial.legendre.leggauss(40)
    height = -L / 2 + L / 2 * at
    off = np.stack(np.broadcast_arrays(x - R * np.cos(phi)[:, None], y - R * np.sin(phi)[:, None],
                                       z - height[None, :]))
    charge = np.cos(phi)[:, None] * weight[None, :] * (L / 2) * (TAU / 240) * R
    return Br / (4 * math.pi) * (off * charge / np.linalg.norm(off, axis=0)**3).sum((1, 2))


def _magnet_error(magnet, gap, offset, tilt):
    """Half the range of reading less angle, the magnet turning before a sensor that stands still."""
    angles = np.arange(180) * TAU / 180
    c, s = np.cos(angles), np.sin(angles)
    in_magnet = np.array([_field(magnet, offset * ci, -offset * si, gap) for ci, si in zip(c, s)]).T
    x, y, z = c * in_magnet[0] - s * in_magnet[1], s * in_magnet[0] + c * in_magnet[1], in_magnet[2]
    worst = 0.0
    for way in np.arange(24) * TAU / 24:
        # The sensor's axes, tilted about the level axis a = (cos way, sin way, 0): Rodrigues.
        a, k = np.array([math.cos(way), math.sin(way), 0]), 1 - math.cos(tilt)
        axes = [math.cos(tilt) * e + math.sin(tilt) * np.cross(a, e) + k * a.dot(e) * a
                for e in np.eye(3)[:2]]
        u, v = (-(e[0] * x + e[1] * y + e[2] * z) for e in axes)
        error = np.angle(np.exp(1j * (np.arctan2(v, u) - angles)))
        worst = max(worst, (error.max() - error.min()) / 2)
    return worst


def commutation_figures(a, d):
    """The electrical angle by sums of what shifts it, and the samples of a turn of the field."""
    poles, error = value(a["motor"]["pole_pairs"]), value(a["encoder"]["error"])
    off, behind = error + math.pi / 2**value(a["encoder"]["bits"]), a["encoder"]["at"] == "output"
    if behind:
        stall = min(d.efficiency * d.ratio * d.Kt * d.stall_A(), d.peak_torque)
        off = d.ratio * (off + value(a["gearbox"]["backlash"]) / 2 + stall / d.stiffness)
    own = behind and a["encoder"].get("motor_sensor", "no") == "yes"
    turns_a_second = poles * d.ratio * d.speed_top() / TAU
    return {"encoder.commutation_error": None if own else poles * off,
            "drive.samples_per_turn": value(a["drive"]["control_rate"]) / turns_a_second}


def encoder_figures(encoder):
    offset, tilt, gap, diameter, thickness = (_given(encoder, "magnet_" + key) for key in (
        "offset", "tilt", "gap", "diameter", "thickness"))
    f = {"encoder.field": None, "encoder.magnet_error": None, "encoder.eccentricity": None}
    if offset is not None and diameter is not None:
        f["encoder.eccentricity"] = 2 * offset / diameter
    if None in (gap, diameter, thickness):
        return f
    remanence = _given(encoder, "magnet_remanence", 1.2)
    magnet, R = (diameter / 2, thickness, remanence), diameter / 2
    # On the axis: charge Br·cosφ, of whose pull cosφ counts along x, over rim and height.
    f["encoder.field"] = integrate.dblquad(
        lambda phi, h: remanence / (4 * math.pi) * R * R * math.cos(phi)**2
        / (R * R + (gap + h)**2)**1.5, 0, thickness, 0, TAU, epsrel=1e-11)[0]
    if None not in (offset, tilt) and offset <= R / 2:
        f["encoder.magnet_error"] = _magnet_error(magnet, gap, offset, tilt)
    return f
