"""The pointing budget anew: pulls by scanning the poses, the terms from statics and geometry, and
the standard deviation of what they add up to by drawing errors."""

import math

import numpy as np

from _mass import scan_max
from _rig_text import value

DRAWS, SEED = 400_000, 20240611
SAME_WEIGHT = ("windup", "droop", "flex")


def given(part, key):
    return value(part[key]) if key in part else None


def pull_ends(masses, axis, d, ranges):
    """Least and largest torque of gravity and cables over the poses."""
    def pull(sign):
        own = lambda pan, tilt: pan if axis == "pan" else tilt
        return lambda pan, tilt: sign * (masses.gravity(axis, pan, tilt)
                                         - d.cable_stiffness * (own(pan, tilt) - d.cable_centre))
    # By parts, so that the finer grids also see the peaks that the first one takes for lower.
    cuts = [np.linspace(*r, 6) for r in ranges]
    tiles = [[(p, q), (t, u)] for p, q in zip(cuts[0], cuts[0][1:]) for t, u in zip(cuts[1], cuts[1][1:])]
    return (-max(scan_max(pull(-1), tile, 41) for tile in tiles),
            max(scan_max(pull(1), tile, 41) for tile in tiles))


def bearing_tilt(bearing):
    kind = bearing.get("kind", "pair")
    if kind == "gearbox":
        return None
    play, base = ("radial_play", "spacing") if kind == "pair" else ("axial_play", "pitch_diameter")
    play, base = given(bearing, play), given(bearing, base)
    return None if None in (play, base) else math.atan2(play, base)


def reading_parts(a, d, magnet_error, at_output):
    """The encoder's error and half a count, each at the output."""
    through = 1.0 if at_output else d.ratio
    error = max(value(a["encoder"]["error"]), magnet_error or 0.0)
    return error / through, math.pi / 2**value(a["encoder"]["bits"]) / through


def terms_of(rig, axis, d, parts, per_rad, pull, at_output, held):
    """Largest size each way by name; what is left out is not there."""
    a, pointing, torque = rig[axis], rig.get("pointing", {}), max(abs(p) for p in pull)
    friction, loop = a["friction"], a["loop"]
    kv_kp = value(loop["speed_gain"]) * value(loop["position_gain"])
    integral, stiffness = value(loop["speed_integral_gain"]), value(a["gearbox"]["stiffness"])
    t = {} if at_output or held else {"backlash": value(a["gearbox"]["backlash"]) / 2}
    t["encoder"] = sum(reading_parts(a, d, parts["encoder.magnet_error"], at_output))
    if not at_output:
        t["windup"] = torque / stiffness
    if integral == 0:
        t["droop"] = torque / kv_kp
    if integral == 0 or "breakaway" in friction:
        falling = max(0.0, (given(friction, "breakaway") or 0.0) - value(friction["coulomb"]))
        sticks = d.coulomb + falling
        t["friction"] = ((falling * (1 / (kv_kp + integral) + 1 / stiffness) if integral else sticks / kv_kp)
                         + (0.0 if at_output else sticks / stiffness))
    bracket = given(a.get("bracket", {}), "stiffness")
    if bracket is not None:
        t["flex"] = torque / bracket
    t["bearing"] = bearing_tilt(a.get("bearing", {}))
    if parts["smooth.worst_ripple_px"] is not None:
        t["ripple"] = parts["smooth.worst_ripple_px"] / per_rad
    t["mount"], t["calibration"] = given(pointing, "mount_error"), given(pointing, "calibration_error")
    if "vision_noise" in pointing:
        t["vision"] = 3 * value(pointing["vision_noise"]) / per_rad
    return {name: size for name, size in t.items() if size is not None}


def root_sum_square(t):
    weight = sum(t.get(name, 0.0) for name in SAME_WEIGHT)
    return math.sqrt(weight**2 + sum(v * v for name, v in t.items() if name not in SAME_WEIGHT))


def drawn_deviation(t, error, half_count):
    """Standard deviation of the sum of errors drawn at random; what bends under the same weight does
    so together."""
    rng = np.random.default_rng(SEED)
    even = lambda: rng.uniform(-1, 1, DRAWS)
    wave = lambda: np.sin(rng.uniform(0, 2 * math.pi, DRAWS))
    total = error * wave() + half_count * even()
    total += even() * sum(t.get(name, 0.0) for name in SAME_WEIGHT)
    for name, size in t.items():
        if name == "ripple":
            total += size * wave()
        elif name == "vision":
            total += size / 3 * rng.standard_normal(DRAWS)
        elif name != "encoder" and name not in SAME_WEIGHT:
            total += size * even()
    return float(np.sqrt((total**2).mean()))


def pointing_figures(rig, axis, masses, d, parts, per_rad, ranges):
    a = rig[axis]
    pull = pull_ends(masses, axis, d, ranges)
    sticks = d.coulomb + max(0.0, (given(a["friction"], "breakaway") or 0.0) - value(a["friction"]["coulomb"]))
    held = max(pull[0], -pull[1]) > sticks
    at_output = a["encoder"].get("at", "motor") == "output"
    terms = lambda at, tight: terms_of(rig, axis, d, parts, per_rad, pull, at, tight)
    t = terms(at_output, held)
    f = {name: t.get(name) for name in ("encoder", "droop", "friction", "flex", "bearing", "ripple")}
    f["windup"] = max(abs(p) for p in pull) / value(a["gearbox"]["stiffness"])
    f["rss"], f["worst"] = root_sum_square(t), sum(t.values())
    f["rss_px"], f["worst_px"] = f["rss"] * per_rad, f["worst"] * per_rad
    f["rss_at_target"] = f["rss"] * value(rig["task"]["target_distance"])
    f["deviation"] = drawn_deviation(t, *reading_parts(a, d, parts["encoder.magnet_error"], at_output))
    f["expanded"] = 2 * f["deviation"]
    f["expanded_px"] = f["expanded"] * per_rad
    f["rss_motor_side"] = root_sum_square(terms(False, held))
    f["rss_output_side"] = root_sum_square(terms(True, held))
    f["rss_held"] = root_sum_square(terms(at_output, True))
    f["teeth_torque"] = max(0.0, pull[0], -pull[1])
    f["bias_needed"] = max(0.0, sticks - max(pull[0], -pull[1]))
    bracket, peak = given(a.get("bracket", {}), "stiffness"), parts["output.acceleration_peak"]
    f["flex_accelerating_px"] = (None if bracket is None or peak <= 0
                                 else d.inertia * peak / bracket * per_rad)
    f["backlash"], f["gap_px"] = d.backlash / 2, d.backlash * per_rad
    return {f"pointing.{name}": v for name, v in f.items()}


def picture_figures(rig, top_speed, per_rad):
    """Smear and skew. `top_speed` by axis."""
    exposure, readout = value(rig["camera"]["exposure"]), given(rig["camera"], "readout") or 0.0
    f = {"camera.blur_px": per_rad * top_speed["pan"] * exposure,
         "camera.blur_tilt_px": per_rad * top_speed["tilt"] * exposure,
         "camera.sharp_speed": 1 / per_rad / exposure,
         "camera.sharp_exposure": 1 / per_rad / top_speed["pan"]}
    rolling = readout > 0
    f["camera.skew_px"] = per_rad * top_speed["pan"] * readout if rolling else None
    f["camera.skew_tilt_px"] = per_rad * top_speed["tilt"] * readout if rolling else None
    f["camera.straight_speed"] = 1 / per_rad / readout if rolling else None
    return f


def with_errors(rig, rng):
    """What makes some rigs point amiss: bearings, mounts, noise, loops without an integral."""
    for axis in ("pan", "tilt"):
        a, kind = rig[axis], rng.choice(["pair", "pair", "single", "gearbox"])
        a["bearing"] = {**a.get("bearing", {}), "kind": kind}
        if rng.random() < 0.7:
            a["bearing"].update(radial_play=f"{rng.uniform(0, 0.03)!r} mm", spacing=f"{rng.uniform(10, 90)!r} mm",
                                axial_play=f"{rng.uniform(0, 0.1)!r} mm",
                                pitch_diameter=f"{rng.uniform(15, 90)!r} mm")
        # Without an integral the cogging's ripple is as large at any low speed: worst_speed is none.
        if rng.random() < 0.4 and "cogging_torque" not in a["motor"]:
            a["loop"]["speed_integral_gain"] = "0 N.m/rad"
    keys = {"mount_error": f"{rng.uniform(0, 2)!r} deg", "calibration_error": f"{rng.uniform(0, 0.5)!r} deg",
            "vision_noise": repr(rng.uniform(0, 6))}
    rig["pointing"] = {key: text for key, text in keys.items() if rng.random() < 0.7}
    if not rig["pointing"]:
        del rig["pointing"]
    return rig
