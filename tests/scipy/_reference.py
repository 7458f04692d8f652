"""Every figure of section 6 from mass to eye for one rig, from the design alone. SI, None if
empty."""

import math

import numpy as np

from _cables import cable_figures, cable_travel
from _closed_loops import closed_figures
from _collide import collision_figures
from _homing import commutation_figures, encoder_figures, homing_figures
from _limits import fastest_shares
from _loads import load_figures
from _loops import Loops
from _mass import Masses, scan_max
from _pointing import picture_figures, pointing_figures
from _profiles import NAMES, limits, path_of
from _reach import long_way_time
from _rig_text import value
from _rigid import Drive, fastest_move, scan_times
from _slowing import slowing_figures
from _smooth import Slow
from _stops import stop_figures
from _structure import structure_figures
from _tracking import tracking_figures

TAU = 2 * math.pi


def axis_numbers(rig, axis):
    a, n = rig[axis], {}
    for part, keys in (("motor", "speed_constant phase_resistance phase_inductance pole_pairs "
                                 "rotor_inertia peak_current"),
                       ("drive", "control_rate current_bandwidth modulation_limit"),
                       ("gearbox",
                        "ratio efficiency back_efficiency backlash stiffness damping drag "
                                   "peak_torque input_speed_limit"),
                       ("friction", "coulomb"),
                       ("loop",
                        "position_gain speed_gain speed_integral_gain estimator_bandwidth")):
        n.update({key: value(a[part][key]) for key in keys.split()})
    n.update(drive_current_limit=value(a["drive"]["current_limit"]),
             drive_speed_limit=value(a["drive"]["speed_limit"]),
             gear_inertia=value(a["gearbox"]["inertia"]), gear_viscous=value(a["gearbox"]["viscous"]),
             load_viscous=value(a["friction"]["viscous"]), voltage=value(rig["supply"]["voltage"]),
             supply_current_limit=value(rig["supply"]["current_limit"]), at=a["encoder"]["at"],
             bits=value(a["encoder"]["bits"]))
    n["cable_stiffness"], cable_friction = cable_torque(a["cable"])
    n["cable_centre"] = 0.0 if a["stops"] == "none" else value(a["stops"]["centre"])
    n["coulomb"] += cable_friction
    return n


def between_stops(s):
    """Tab and post, loose tabs between them, or a window."""
    def taken(key):
        return 2 * math.asin(value(s[key]) / 2 / value(s["radius"]))

    kind = s.get("kind", "tab")
    if kind == "window":
        return value(s["window"]) - taken("tab_width")
    loose = value(s.get("trailers", "1")) if kind == "trailing" else 0
    gaps = loose * (TAU - 2 * taken("trailer_width")) if loose else 0
    return TAU - taken("tab_width") - taken("post_width") + gaps


def cable_torque(cable):
    """Stiffness against turning and friction of all cables: GJ/L or EI/L of each, side by side."""
    if cable == "none":
        return 0.0, 0.0
    per_length = {"twist": "torsion_stiffness", "coil": "bending_stiffness"}.get(cable["routing"])
    each = value(cable.get(per_length, "0")) if per_length else 0.0
    all_of_them = value(cable.get("count", "1")) * each
    return (all_of_them / value(cable["free_length"]) if each else 0.0,
            value(cable.get("friction", "0")))


def travel(a):
    """(between stops, soft, cable, usable) of one axis; inf where there is no limit."""
    stops = soft = cable = math.inf
    if a["stops"] != "none":
        stops = between_stops(a["stops"])
        soft = max(stops - 2 * value(a["stops"]["soft_inset"]), 0)
    if a["cable"] != "none":
        cable = cable_travel(a["cable"])
    return stops, soft, cable, min(soft, cable)


def usable_range(a):
    usable = min(travel(a)[3], TAU)
    centre = 0.0 if a["stops"] == "none" else value(a["stops"]["centre"])
    return centre - usable / 2, centre + usable / 2


def mass_figures(rig, masses):
    ranges = [usable_range(rig[a]) for a in ("pan", "tilt")]
    f = {"mass.on_pan": masses.total("on_pan"), "mass.on_tilt": masses.total("on_tilt"),
         "pan.inertia.load": float(masses.pan_inertia(0.0)), "tilt.inertia.load": masses.tilt_inertia(),
         "tilt.balance.offset": masses.balance_offset()}
    f["mass.total"] = f["mass.on_pan"] + f["mass.on_tilt"]
    f["pan.inertia.load_max"] = scan_max(masses.pan_inertia, ranges[1:], 201)
    f["pan.inertia.load_min"] = -scan_max(lambda t: -masses.pan_inertia(t), ranges[1:], 201)
    for axis in ("pan", "tilt"):
        f[f"{axis}.gravity.torque_max"] = masses.gravity_max(axis, ranges)
    return f


def best_time_ratio(d, move):
    """Where a scan over 1…200 is least, then a finer one about it: steps of 0.1 %."""
    ratios = np.geomspace(1, 200, 300)
    for _ in range(2):
        times = scan_times(d, move, ratios)
        k = int(np.argmin(times))
        if math.isinf(times[k]):
            return None
        best = ratios[k]
        ratios = np.geomspace(ratios[max(k - 1, 0)], ratios[min(k + 1, len(ratios) - 1)], 41)
    return best


def drive_figures(d):
    rotor = d.ratio**2 * d.motor_inertia
    return {"inertia.rotor_reflected": rotor, "inertia.ratio": d.inertia / rotor,
            "motor.torque_constant": d.Kt,
            "motor.constant": d.Kt / math.sqrt(1.5 * d.phase_resistance), "output.torque_stall": d.torque_stall(),
            "output.speed_top": d.speed_top(), "output.acceleration_peak": d.peak_acceleration(d.ratio),
            "ratio.best_acceleration": d.best_acceleration_ratio()}


def travel_figures(a, d):
    stops, soft, cable, usable = travel(a)
    f = {"travel.stops": stops, "travel.cable": cable, "travel.soft": soft, "travel.usable": usable,
         "travel.blind": max(TAU - usable, 0)}
    f["homing.candidates"] = None
    stiffness, friction = cable_torque(a["cable"])
    entered = stiffness > 0 or friction > 0
    f["cable.stiffness"] = stiffness if entered else None
    f["cable.torque_max"] = (stiffness * usable / 2 if stiffness else 0) + friction if entered else None
    f["homing.spacing"] = TAU / (d.ratio if d.at == "motor" else 1)
    if a["stops"] != "none":
        f["homing.candidates"] = math.ceil(stops / f["homing.spacing"])
    return f


def loop_figures(d):
    """Resonances, first crossover, smallest margins."""
    loops, rotor = Loops(d), d.ratio**2 * d.motor_inertia
    f = {"loop.antiresonance": math.sqrt(d.stiffness / d.inertia),
         "loop.resonance": math.sqrt(d.stiffness / d.inertia + d.stiffness / rotor)}
    for which, name in ((0, ""), (1, "position_")):
        crossings, gains = loops.margins(which)
        f[f"loop.{name}crossover"] = next((w for w, _, falls in crossings if falls), None)
        f[f"loop.{name}phase_margin"] = min(p for _, p, _ in crossings) if crossings else None
        f[f"loop.{name}gain_margin"] = min(g for _, g in gains) if gains else None
    return f | closed_figures(d)


def optional(part, key):
    """A detail that may be left out."""
    return value(part[key]) if key in part else None


def profile_figures(a, d, move):
    """Planned times and the bracket; what is simulated is compared in profile_response.py."""
    loop = a["loop"]
    v, most, jerk = limits(d, move, value(loop["speed_limit"]), optional(loop, "acceleration_limit"),
                           optional(loop, "jerk_limit"))
    planned = {name: None if most <= 0 and name != "step" else path_of(name, move, v, most, jerk, d)[0]
               for name in NAMES}
    stiffness = optional(a.get("bracket", {}), "stiffness")
    return {"bracket.mode": None if stiffness is None else math.sqrt(stiffness / d.inertia),
            **{f"profile.{name}.planned_time": t for name, t in planned.items()}}


def smooth_figures(a, d, per_rad_px):
    friction = a["friction"]
    breakaway = optional(friction, "breakaway") or 0.0
    return Slow(d, optional(a["motor"], "cogging_torque") or 0.0,
                optional(a["motor"], "cogging_per_turn"),
                max(0.0, breakaway - value(friction["coulomb"])),
                optional(friction, "stribeck_speed") or math.radians(0.5),
                value(a["encoder"]["bits"])).figures(per_rad_px)


def drives(rig, masses):
    loads = {"pan": float(masses.pan_inertia(0.0)), "tilt": masses.tilt_inertia()}
    return {axis: Drive(axis_numbers(rig, axis), load, masses.gravity_at_rest(axis))
            for axis, load in loads.items()}


def homing_pull(rig, masses, axis, d):
    """Largest torque of gravity and cables in the search, the other axis anywhere between its
    stops."""
    def between(name):
        stops = travel(rig[name])[0]
        half = (TAU if math.isinf(stops) else stops) / 2
        centre = 0.0 if math.isinf(stops) else value(rig[name]["stops"]["centre"])
        return centre - half, centre + half

    def pull(pan, tilt):
        own = pan if axis == "pan" else tilt
        return np.abs(masses.gravity(axis, pan, tilt) - d.cable_stiffness * (own - d.cable_centre))

    return scan_max(pull, [between("pan"), between("tilt")], 401)


def step_figures(trace, move, band):
    """Step figures from rows (time, angle, speed, motor angle, current); settle None
    where it ends outside."""
    time, angle = trace[:, 0], trace[:, 1]

    def reaches(level):
        i = int(np.argmax(angle >= level))
        return time[i - 1] + (level - angle[i - 1]) / (angle[i] - angle[i - 1]) * (time[i] - time[i - 1])

    outside = np.nonzero(np.abs(angle - move) > band)[0]
    last = outside[-1]
    # Settled where the last 30 % of the horizon show it; an axis that swings may end inside by luck.
    settle = None if time[last] >= 0.7 * time[-1] else (time[last], time[last + 1])
    arrives = angle.max() >= 0.9 * move
    return {"step.rise_time": reaches(0.9 * move) - reaches(0.1 * move) if arrives else None,
            "step.overshoot": max(angle.max() / move - 1, 0.0),
            "step.peak_current": np.abs(trace[:, 4]).max(), "step.peak_speed": np.abs(trace[:,
                                                                                            2]).max(),
            "step.settle_time": settle}


def gear_figures(d, trace, settle):
    """Torque of the teeth from the trace's angles; the twist's speed by differences."""
    time, angle, motor = trace[:, 0], trace[:, 1], trace[:, 3]
    twist = motor / d.ratio - angle
    wound = twist - np.clip(twist, -d.backlash / 2, d.backlash / 2)
    torque = d.stiffness * wound + d.damping * (np.gradient(motor, time) / d.ratio - trace[:, 2])
    torque = np.where(torque * wound > 0, np.abs(torque), 0.0)
    seen = time <= (math.inf if settle is None else settle + 1e-12)
    turned = np.abs(trace[:, 2])
    return {"step.gear_torque": torque[seen].max(),
            "duty.gear_torque": float(np.cbrt((torque**3 * turned).sum() / turned.sum()))}


def all_figures(rig):
    """Everything but the step, and the drives (for their sizes)."""
    masses = Masses(rig)
    f, both = mass_figures(rig, masses), drives(rig, masses)
    per_rad = value(rig["camera"]["columns"]) / 2 / math.tan(value(rig["camera"]["horizontal_view"]) / 2)
    f["camera.pixels_per_radian"] = per_rad
    f.update(picture_figures(rig, {axis: d.speed_top() for axis, d in both.items()}, per_rad))
    ranges = [usable_range(rig[axis]) for axis in ("pan", "tilt")]
    for axis, d in both.items():
        move = value(rig["task"][axis + "_move"])
        parts = {**drive_figures(d), **travel_figures(rig[axis], d), **loop_figures(d),
                 **homing_figures(rig[axis], d, homing_pull(rig, masses, axis, d), travel(rig[axis])[0]),
                 **encoder_figures(rig[axis]["encoder"]), **commutation_figures(rig[axis], d),
                 **cable_figures(rig, axis, travel(rig[axis])[3])}
        stops, soft, cable, usable = travel(rig[axis])
        parts.update(slowing_figures(rig[axis], d, stops, soft, cable))
        parts.update(stop_figures(rig[axis]["stops"], d, parts["travel.speed_at_stop"], stops, soft))
        ways = fastest_move(d, move, d.ratio)
        parts["move.shortest_time"] = math.inf if ways is None else sum(t for _, t in ways)
        parts.update(fastest_shares(d, ways))
        parts.update(profile_figures(rig[axis], d, move))
        parts.update(smooth_figures(rig[axis], d, per_rad))
        parts.update(pointing_figures(rig, axis, masses, d, parts, per_rad, ranges))
        if axis == "pan":
            parts["travel.long_way_time"] = long_way_time(
                d, usable, value(rig["pan"]["loop"]["speed_limit"]), d.cable_centre)
        f.update({f"{axis}.{key}": v for key, v in parts.items()})
    f.update(structure_figures(rig, masses, both, [usable_range(rig[a]) for a in ("pan", "tilt")]))
    f.update(collision_figures(rig))
    f.update(load_figures(rig, masses, both, usable_range(rig["tilt"]), f))
    limits = {a: tuple(d.cable_centre + side * travel(rig[a])[1] / 2 for side in (-1, 1)) for a, d in both.items()}
    f.update(tracking_figures(rig, both, limits, f))
    return f, both, per_rad
