"""Every figure of section 6 from mass to eye, computed anew and compared with `gazewright-batch`.

The three sample rigs and seeded variations of them. Nothing here knows our code: own reader, point
clouds for the masses, SciPy's integrators, scans, and the sampled loops as matrices.

  python3 figures_reference.py BATCH_PROGRAM PROJECT_DIR"""

import concurrent.futures
import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile

import numpy as np

import _rig_text as text
from _closed_loops import advice_faults, swing_faults
from _heat import KEYS as HEAT, heat_figures, horizon
from _limits import NAMES as LIMITS, step_shares
from _loads import TOLERANCES as LOADS, with_bearings
from _loops import Loops
from _mass import Masses
from _pointing import with_errors
from _profiles import NAMES as PROFILES
from _reach import reach_figures
from _reference import all_figures, best_time_ratio, gear_figures, scan_times, step_figures, travel, usable_range
from _rig_text import value
from _structure import sway_faults, with_structure, worst_angle_faults
from _supply import known_supply_figures, supply_faults
from _tracking import with_something_to_follow

# Relative tolerances. Closed forms: a few dozen operations in double precision and, for masses,
# sums
# of some hundred terms of like size, so 1e-9 leaves five digits. Else:
TOLERANCES = {
    # The scan's last grid is 1e-9 rad wide, and the error goes with its square; the turned sums
    # cancel for a balanced load.
    "gravity.torque_max": 1e-8, "balance.offset": 1e-8,
    "homing.current_least": 1e-8,
    # A scan of poses, as gravity.torque_max, once and squared; eigenvalues of six by six.
    "balance.hold_current": 1e-8, "balance.hold_heat": 2e-8, "balance.friction_share": 1e-6,
    **{f"{k}first_mode": 1e-8 for k in ("", "side.", "fork.")}, "arm.speed_gain_ceiling": 1e-8,
    "arm.crossover_ceiling": 1e-8, "arm.mode": 1e-8,
    # The program looks at 48 angles of a turn and five directions of the tilt: of a wave of two per
    # turn the peak is missed by up to 1 - cos(7.5 deg).
    "encoder.magnet_error": 9e-3,
    # A flat top: the search cannot tell below the root of 1e-16.
    "ratio.best_acceleration": 1e-7,
    # LSODA works across the kinks of friction and envelope; at rtol 1e-8 that costs up to 3e-6.
    "move.shortest_time": 1e-5,
    # The program takes Gauss's rule in 128 parts of the speed: across a kink of the envelope, and
    # across the knee where the brake fades and friction is left, narrower than a part.
    "travel.braking_angle": 3e-4, "travel.braking_angle_limit": 3e-4, "travel.least_inset": 3e-4,
    "power_off.shorted_angle": 3e-4, "power_off.coast_angle": 1e-5,
    # Its Runge-Kutta rule takes 16 or 32 steps over the inset, across the same kinks.
    "travel.speed_at_stop": 1e-4, "power_off.stop_speed": 1e-6, "power_off.limited_stop_speed": 1e-6,
    "stop.energy_soft_load": 2e-4, "stop.energy_soft_rotor": 2e-4,  # with the square of that
    # Rosenbrock's steps at 1e-6 against LSODA across the kink of the envelope.
    "stop.runaway_speed": 1e-5, "stop.runaway_energy": 2e-5,
    "stop.torque_soft_pushing": 1e-4, "stop.torque_soft_dead": 1e-4,
    # Its steps of 1/20 of a radian of the fastest swing may miss 3e-4 at the peak, its order is 4.
    "stop.gear_torque_sprung": 1e-3,
    # Its path has 400 points with straight pieces of speed between them, and lies about the rest
    # pose; ours about the middle of the travel, where cables are untwisted.
    "travel.long_way_time": 2e-4,
    # The paths of SciPy's integrator, as above; the smoothness as the loops below.
    "profile.minimum_time.planned_time": 1e-5, "smooth.lowest_speed": 2e-3,
    "smooth.lowest_speed_cogging": 2e-3, "smooth.lowest_speed_encoder": 2e-3,
    "smooth.lowest_speed_friction": 1e-4,  # twenty halvings, where the fall is steepest flat
    "smooth.cogging_frequency": 2e-3, "smooth.ripple_px": 4e-3, "smooth.worst_ripple_px": 2e-3,
    "smooth.worst_speed": 5e-3,  # a flat top
    # The program has the hold as a factor, the reference is sampled: images of the train beyond
    # half the sample rate are left out. They are 1e-4 of |L| far below that, more at high gains.
    "loop.crossover": 1e-4, "loop.position_crossover": 1e-4,
    "loop.phase_margin": 1e-3, "loop.position_phase_margin": 1e-3,
    "loop.delay_margin": 1e-3, "loop.position_delay_margin": 1e-3,
    "loop.bandwidth": 1e-4, "loop.position_peak": 1e-3,
    "loop.gain_margin": 2e-3, "loop.position_gain_margin": 2e-3,
    # Where a sample counts as held by the envelope, its current is straight: 1e-6 of the limit decides here, 1e-9
    # there. The gear's loss is a rest of the trace's energies, good to 1e-3 of the whole, speeds by differences.
    # Temperatures count from absolute zero: 1e-4 is 0.03 K.
    "heat.rms_current": 1e-3,
    "heat.gear_loss": 1e-2, "heat.winding_temperature": 1e-4, "heat.housing_temperature": 1e-4,
    "heat.mount_temperature": 1e-4, "heat.magnet_temperature": 1e-4, "heat.hold_temperature": 1e-7,
    "heat.hold_current": 1e-7, "heat.time_to_limit": 1e-7, "heat.time_at_1_5": 1e-7, "heat.time_at_2": 1e-7,
    "heat.time_at_3": 1e-7, "heat.stall_current": 1e-8,
    # The lag of the axis is one over the crossover, which agrees to 1e-4; a run goes with it, and
    # with pieces of 1/20 of 1/gain where the loop acts on the angle (5e-4 of an error).
    **{f"tracking.{k}": 1e-4 for k in ("dead_time", "gain", "gain_ceiling", "ramp_lag")},
    **{f"tracking.{k}": 1e-3 for k in ("error_rms", "error_rms_unfed", "error_rms_fed", "error_px",
                                       "blur_px", "skew_px")},
    **LOADS,
    # Looked for on a grid of 20 000 steps, by differences.
    "tracking.target_speed": 1e-7, "blur_px": 1e-3, "skew_px": 1e-3,
    # Pulls by scans, as gravity.torque_max; the ripple is the cogging's, as smooth.worst_ripple_px,
    # and is in the sums.
    **{f"pointing.{k}": 1e-8 for k in ("windup", "droop", "flex", "teeth_torque", "bias_needed")},
    **{f"pointing.{k}": 2e-3 for k in ("ripple", "rss", "worst", "rss_px", "worst_px", "rss_at_target",
                                       "rss_motor_side", "rss_output_side", "rss_held")},
    # From n = 400 000 draws: a deviation scatters by sqrt((kappa - 1)/4n) = 1.1e-3 of it at most
    # (kappa 3, normal); the largest of some fifty by four times that.
    **{f"pointing.{k}": 5e-3 for k in ("deviation", "expanded", "expanded_px")},
}
ABSOLUTE = {
    # A load that is nearly balanced: what its turned sums leave at the end of a travel, which is
    # good to 1e-7 of a turn. Far below what anybody sees, in N.m, A, W and pixels.
    "gravity.torque_max": 1e-8, "homing.current_least": 1e-5, "heat.hold_current": 1e-5, "balance.hold_current": 1e-6,
    "balance.hold_heat": 1e-8, "skew_px": 1e-3,
    # The program steps by 0.05 deg where it nearly touches, the reference by 0.01 deg.
    "travel.collision_least": math.radians(0.06), "travel.collision_most": math.radians(0.06),
    # The program says 0.003; the reference's grid of 0.25 deg is good to 0.001.
    "view_share": 0.004,
    # Beyond half the sample rate, where the models differ, the ripple is next to nothing.
    "smooth.ripple_px": 1e-6,
    # A balanced axis: rounding, in rad.
    **{f"pointing.{k}": 1e-14 for k in ("windup", "droop", "flex")},
    # A row of a thousand may fall on the other side of the edge.
    "in_middle": 0.003, "tracking.at_limit": 0.003,
}
# What may be next to nothing is held against the figure that it is a rest of.
# Seen at 4000 places of either way, the program at 400 with straight pieces between: a place each.
ABSOLUTE.update({f"limits.shortest_{name}": 6e-4 for name in LIMITS})
AS_LARGE_AS = {"travel.speed_at_stop": "output.speed_top", "power_off.stop_speed": "output.speed_top",
               "power_off.limited_stop_speed": "output.speed_top",
               **{f"stop.{a}_soft_{b}": f"stop.{a}_{b}"
                  for a, b in (("energy", "load"), ("energy", "rotor"), ("torque", "pushing"), ("torque", "dead"))}}
CLOSED_FORM = 1e-9
BEST_TIME = 1e-5  # the time at our best ratio may exceed the least of the scan by this
STEP = 1e-4  # from a trace of one row a sample: peaks between samples are missed
GEAR = 2e-2  # the motor's speed is not in the trace: by differences over two samples, across the blow of the teeth
RANDOM_RIGS, SEED = 8, 20240607


def factor(rng, spread):
    return math.exp(rng.uniform(-math.log(spread), math.log(spread)))


def vary(rig, rng):
    """The rig with most numbers off by up to a factor of two; what then makes sense is left
    alone."""
    rig = {**json.loads(json.dumps(rig)), "notes": "varied at random"}
    rig.pop("variants", None)  # no figure depends on them
    spread = {"motor": 1.6, "drive": 1.3, "gearbox": 1.5, "friction": 2, "stops": 1.05,
              "cable": 1.5,
              "loop": 1.2}
    fixed = {"name", "pole_pairs", "modulation_limit", "control_rate", "efficiency",
             "back_efficiency", "at", "bits", "routing", "count", "centre", "stiffness",
             "kind", "material", "insulation", "mount_material", "trailers", "rebound", "conductors", "ring_circuits"}
    for axis in ("pan", "tilt"):
        for part, s in spread.items():
            if "name" in rig[axis][part]:
                rig[axis][part]["name"] = part  # the samples' have commas
            if rig[axis][part].get("routing") in ("coil", "loop"):
                s = 1.05  # what still fits and reaches
            for key in rig[axis][part]:
                if key not in fixed and rig[axis][part][key] != "none":
                    rig[axis][part][key] = text.scaled(rig[axis][part][key], factor(rng, s))
        rig[axis]["gearbox"]["efficiency"] = repr(rng.uniform(0.6, 1))
        rig[axis]["gearbox"]["back_efficiency"] = repr(rng.uniform(0.3, 1))
        rig[axis]["stops"]["centre"] = f"{rng.uniform(-30, 30)!r} deg"
        rig[axis]["encoder"]["at"] = rng.choice(["motor", "motor", "output"])
        if rng.random() < 0.2:
            rig[axis]["stops"] = "none"
        if rng.random() < 0.2:
            rig[axis]["cable"] = "none"
        if rng.random() < 0.3:
            rig[axis]["drive"]["speed_limit"] = "none"
        rig["task"][axis + "_move"] = text.scaled(rig["task"][axis + "_move"], factor(rng, 1.5))
    rig["tilt"]["axis_at"] = [f"{rng.uniform(-40, 40)!r} mm" for _ in range(3)]
    rig["stand"]["lean"] = f"{rng.uniform(-60, 60)!r} deg"
    rig["supply"]["voltage"] = text.scaled(rig["supply"]["voltage"], factor(rng, 1.5))
    rig["supply"]["current_limit"] = rng.choice(["none", f"{rng.uniform(0.5, 20)!r} A"])
    for group in ("on_pan", "on_tilt"):
        for body in rig[group]:
            body["mass"] = text.scaled(body["mass"], factor(rng, 1.5))
            body["centre"] = [f"{value(c) * 1e3 + rng.uniform(-5, 5)!r} mm" for c in body["centre"]]
    tensor = (90.0, 70.0, 60.0, 12.0, -8.0, 5.0)
    rig["on_tilt"].append({"name": "odd part", "mass": "30 g", "centre": ["9 mm", "-7 mm", "5 mm"],
                           "shape": {"inertia": [f"{v!r} g.cm2" for v in tensor]}})
    rig["on_pan"].append({"name": "knob", "mass": "25 g", "centre": ["20 mm", "4 mm", "9 mm"],
                          "shape": {"ball": {"diameter": "18 mm"}}})
    return rig


def stiffen(rig, rng):
    """Some axes get a cable that springs back and rubs."""
    for axis in ("pan", "tilt"):
        stiff, friction = rng.uniform(-4, -0.3), rng.uniform(0, 30)
        if rng.random() < 0.5 and rig[axis]["cable"] != "none":
            rig[axis]["cable"]["torsion_stiffness"] = f"{10**stiff!r} N.m2/rad"
            rig[axis]["cable"]["friction"] = f"{friction!r} mN.m"
    return rig


def furnish(rig, rng):
    """What the samples do not have: bumpers, loose tabs, tabs of all sizes, keep-outs."""
    for axis in ("pan", "tilt"):
        s = rig[axis]["stops"]
        if s != "none" and rng.random() < 0.5:
            s["bumper_travel"] = f"{factor(rng, 3) * 5!r} deg"
            s["hard_stiffness"] = text.scaled(s["stiffness"], 10**rng.uniform(-0.5, 2))
            s["rebound"] = repr(rng.random())
            s["tab_thickness"] = f"{rng.uniform(4, 12)!r} mm"
            s["tab_height"] = f"{rng.uniform(4, 15)!r} mm"
            s["material"] = rng.choice(["pla", "nylon", "polycarbonate", "aluminium", "steel"])
            if rng.random() < 0.5:
                s["tab_strength"] = {"value": f"{rng.uniform(20, 60)!r} MPa",
                                     "spread": rng.choice(["20 %", "5 MPa"])}
        if s != "none" and s.get("kind", "tab") == "tab" and rng.random() < 0.3:
            s["kind"], s["trailers"] = "trailing", str(rng.randint(1, 2))
            s["trailer_width"] = f"{rng.uniform(4, 20)!r} mm"
    ends = lambda: sorted(rng.uniform(-150, 150) for _ in range(2))
    rig["keep_outs"] = [{"name": "lamp", **{a: [f"{e!r} deg" for e in ends()] for a in ("pan", "tilt")}}
                        for _ in range(rng.randint(0, 2))]
    if not rig["keep_outs"]:
        del rig["keep_outs"]
    return rig


def shake(rig, rng):
    """Details of control and of slow turning."""
    for axis in ("pan", "tilt"):
        a = rig[axis]
        if rng.random() < 0.5:
            a["motor"]["cogging_torque"] = f"{10**rng.uniform(0, 1.3)!r} mN.m"
            a["motor"]["cogging_per_turn"] = str(rng.choice([36, 84, 168]))
        if rng.random() < 0.5:
            a["friction"]["breakaway"] = text.scaled(a["friction"]["coulomb"], rng.uniform(1, 3))
            a["friction"]["stribeck_speed"] = f"{10**rng.uniform(-0.5, 1)!r} deg/s"
        a["bracket"] = {"stiffness": f"{10**rng.uniform(1, 3)!r} N.m/rad", "damping_ratio": "0.05"}
        if rng.random() < 0.7:
            a["loop"]["speed_feed_forward"] = repr(rng.choice([0.5, 1.0]))
            a["loop"]["acceleration_feed_forward"] = repr(rng.uniform(0, 1))
        if rng.random() < 0.3:
            a["loop"]["acceleration_limit"] = f"{10**rng.uniform(1.5, 3)!r} rad/s2"
            a["loop"]["jerk_limit"] = f"{10**rng.uniform(3, 5)!r} rad/s3"
    return rig


def run(*command):
    done = subprocess.run([str(c) for c in command], capture_output=True, text=True)
    if done.returncode != 0:
        raise SystemExit(f"{' '.join(map(str, command))} failed: {done.stderr}")
    return done.stdout


def is_close(ours, theirs, tolerance, size, absolute=0):
    """`size` is what a value that cancels is summed from."""
    if ours is None or theirs is None or math.isinf(theirs):
        return ours is None and (theirs is None or math.isinf(theirs))
    return abs(ours - theirs) <= max(tolerance * max(abs(theirs), size), absolute)


def compare_step(batch, path, axis, ours, rig, masses, per_rad, drive):
    """The step's figures against those of its own trace."""
    move, band = value(rig["task"][axis + "_move"]), value(rig["task"]["settle_band"]) / per_rad
    settle = ours[f"{axis}.step.settle_time"]
    seconds = "6 s" if settle is None or settle > 0.4 else "0.6 s"
    rows = run(batch, "trace", path, "--axis", axis, "--for", seconds)
    trace = np.array([[float(x) for x in row.split(",")] for row in rows.split()[1:]])
    for key, theirs in step_figures(trace, move, band).items():
        mine = ours[f"{axis}.{key}"]
        if key == "step.settle_time":
            good = (mine is None if theirs is None else
                    mine is not None and theirs[0] - 1e-9 <= mine <= theirs[1] + 1e-9)
        else:
            good = is_close(mine, theirs, STEP, 1e-3 if key == "step.overshoot" else 0)
        if not good:
            yield f"{axis}.{key} is {mine}, its trace has {theirs}"
    for key, theirs in gear_figures(drive, trace, settle).items():
        is_listed = key.startswith("duty.") and ("duty" in rig or settle is None)  # other moves, other rests
        if not is_listed and not is_close(ours[f"{axis}.{key}"], theirs, GEAR, 0):
            yield f"{axis}.{key} is {ours[f'{axis}.{key}']}, its trace has {theirs}"
    yield from sway_faults(ours, rig, masses, axis, drive, trace, per_rad)
    limit = min(value(rig[axis][part]["speed_limit"]) for part in ("loop", "drive"))
    for key, theirs in step_shares(drive, limit, trace, move, settle).items():
        if not is_close(ours[f"{axis}.{key}"], theirs, CLOSED_FORM, 1):
            yield f"{axis}.{key} is {ours[f'{axis}.{key}']}, its trace has {theirs}"
    peak = 551 * text.DEG * -math.expm1(-move / (14 * text.DEG))
    ratio = ours[f"{axis}.step.peak_speed"] / peak
    if not is_close(ours[f"{axis}.eye.speed_ratio"], ratio, CLOSED_FORM, 0):
        yield f"{axis}.eye.speed_ratio is {ours[f'{axis}.eye.speed_ratio']}, should be {ratio}"
    if axis == "pan" and settle is not None:
        human = 2.2e-3 * move / text.DEG + 21e-3
        if not is_close(ours["eye.duration_ratio"], settle / human, CLOSED_FORM, 0):
            yield f"eye.duration_ratio is {ours['eye.duration_ratio']}, should be {settle / human}"


def both_trace(batch, path, hold, seconds):
    rows = run(batch, "trace", path, "--both", "--for", f"{seconds} s", *(["--hold", hold] if hold else [])).split()
    return dict(zip(rows[0].split(","), np.array([[float(x) for x in row.split(",")] for row in rows[1:]]).T))


def compare_coupling(batch, path, ours, rig, per_rad):
    """Both axes at once: the figures against those of the traces of the three moves, watched as long
    as it takes those that move to settle."""
    band = value(rig["task"]["settle_band"]) / per_rad
    for hold in (None, "pan", "tilt"):
        movers = [a for a in ("pan", "tilt") if a != hold]
        for seconds in (0.6, 2, 6):
            t = both_trace(batch, path, hold, seconds)
            settles = [step_figures(np.array([t["time_s"], t[f"{a}_angle_rad"], t[f"{a}_speed_rad_s"],
                                              t[f"{a}_motor_angle_rad"], t[f"{a}_current_A"], t["bus_A"]]).T,
                                    value(rig["task"][a + "_move"]), band)["step.settle_time"] for a in movers]
            if None not in settles or t["time_s"][-1] < seconds - 0.01:
                break
        ran_away = t["time_s"][-1] < seconds - 0.01
        if hold and ran_away:
            pairs = [(f"{hold}.coupling.disturbance", None), (f"{hold}.coupling.disturbance_px", None)]
        elif hold:
            theirs = np.abs(t[f"{hold}_angle_rad"]).max()
            pairs = [(f"{hold}.coupling.disturbance", theirs), (f"{hold}.coupling.disturbance_px", theirs * per_rad)]
        else:
            pairs = [("both.peak_bus_current", max(0.0, t["bus_A"].max()))]
            if not ran_away:
                yield from supply_faults(rig, t, ours)
            mine = ours["both.settle_time"]
            ends = None if None in settles else [max(end) for end in zip(*settles)]
            if not (mine is None if ends is None else mine is not None and ends[0] - 1e-9 <= mine <= ends[1] + 1e-9):
                yield f"both.settle_time is {mine}, its trace has {ends}"
        for key, wanted in pairs:
            if not is_close(ours[key], wanted, CLOSED_FORM, 1e-6):
                yield f"{key} is {ours[key]}, its trace has {wanted}"


def compare_profiles(axis, ours, rig):
    """The profile "step" is the step; the picture comes after a stiff bracket's settling."""
    for key in ("settle_time", "overshoot", "peak_current"):
        if ours[f"{axis}.profile.step.{key}"] != ours[f"{axis}.step.{key}"]:
            yield f"{axis}.profile.step.{key} is not the step's"
    for which in ("picture", "profile.step"):
        usable, settle = ours[f"{axis}.{which}.usable_time"], ours[f"{axis}.step.settle_time"]
        after = value(rig["camera"]["exposure"]) + value(rig["camera"]["delay"])
        stiff = "bracket" not in rig[axis]
        if stiff and not is_close(usable, settle and settle + after, CLOSED_FORM, 0):
            yield f"{axis}.{which}.usable_time is {usable}, should be {settle} + {after}"
        if not stiff and usable is not None and usable < after:
            yield f"{axis}.{which}.usable_time is {usable}"
        still = ours[f"{axis}.picture.settle_time"]
        if (still is not None) if stiff else not is_close(usable, still and still + after, CLOSED_FORM, 0):
            yield f"{axis}.picture.settle_time is {still} beside {which}.usable_time {usable}"


def compare_heat(batch, path, ours, rig, drives):
    """The motors' heat over the task's moves, from the traces of both steps; a list of moves is set aside."""
    with tempfile.TemporaryDirectory() as folder:
        if "duty" in rig:
            rig = {key: part for key, part in rig.items() if key != "duty"} | {"notes": "its duty is set aside"}
            path = pathlib.Path(folder) / path.name
            path.write_text(text.write(rig))
            ours = json.loads(run(batch, "figures", path, "--json"))["figures"]
        settles = {axis: ours[f"{axis}.step.settle_time"] for axis in drives}
        masses, traces = Masses(rig), {}
        for axis in drives:
            rows = run(batch, "trace", path, "--axis", axis, "--for", f"{horizon(settles[axis])} s").split()[1:]
            traces[axis] = np.array([[float(x) for x in row.split(",")] for row in rows])
        for axis, d in drives.items():
            for key, theirs in heat_figures(rig, masses, axis, d, traces, settles).items():
                mine, kind = ours[f"{axis}.heat.{key}"], f"heat.{key}"
                absolute = ABSOLUTE.get(kind, 0)
                if key == "gear_loss":
                    absolute = 1e-3 * (ours[f"{axis}.heat.rms_current"] or 0)**2 * d.phase_resistance
                if not is_close(mine, theirs, TOLERANCES.get(kind, CLOSED_FORM), 0, absolute):
                    yield f"{axis}.{kind} is {mine}, should be {theirs}"


def poses_left(rig, ours):
    """Ends of pan and tilt; where a collision ends the tilt, our own (compared elsewhere)."""
    ends = []
    for axis in ("pan", "tilt"):
        centre = 0.0 if rig[axis]["stops"] == "none" else value(rig[axis]["stops"]["centre"])
        usable = travel(rig[axis])[3]
        ends.append([centre - usable / 2, centre + usable / 2])
    low, high = (ours[f"tilt.travel.collision_{end}"] for end in ("least", "most"))
    return ends[0], [max(ends[1][0], -math.inf if low is None else low),
                     min(ends[1][1], math.inf if high is None else high)]


def compare(batch, path):
    """Number of figures compared and lines for those that differ."""
    rig = text.read(path.read_text())
    ours = json.loads(run(batch, "figures", path, "--json"))["figures"]
    theirs, drives, per_rad = all_figures(rig)
    theirs.update(reach_figures(rig, *poses_left(rig, ours)))
    bad = []
    weight = 9.81 * (theirs["mass.total"]) * 0.1
    for key, wanted in theirs.items():
        kind = key.split(".", 1)[1]
        size = {"gravity.torque_max": 1e-5 * weight, "balance.offset": 1e-5,
                **{f"balance.{k}": 1e-5 * weight for k in ("forward", "left", "up")},
                "bearing.weight_moment": weight, "pointing.teeth_torque": weight, "pointing.bias_needed": weight}.get(kind, 0)
        if kind in AS_LARGE_AS:
            size = theirs[key.replace(kind, AS_LARGE_AS[kind])] or 0
        got = ours.get(key)
        if kind.endswith("gain_margin") and wanted and got:  # as gains; tiny ones are all images
            wanted, got, size = 1 / wanted, 1 / got, 1e-2
        if key not in ours or not is_close(got, wanted, TOLERANCES.get(kind, CLOSED_FORM), size,
                                           ABSOLUTE.get(kind, 0)):
            bad.append(f"{key} is {ours.get(key, 'absent')}, should be {wanted}")
    masses = Masses(rig)
    bad.extend(worst_angle_faults(ours, masses, [usable_range(rig[a]) for a in ("pan", "tilt")]))
    for axis, d in drives.items():
        move, ratio = value(rig["task"][axis + "_move"]), ours[f"{axis}.ratio.best_time"]
        best = best_time_ratio(d, move)
        times = None if ratio is None or best is None else scan_times(d, move, [ratio, best])
        good = ratio == best if times is None else times[0] <= times[1] * (1 + BEST_TIME)
        if not good:
            bad.append(f"{axis}.ratio.best_time is {ratio}, should be {best} (times {times})")
        unstable = np.abs(Loops(d).closed_loop_poles()[0]).max() > 1 + 1e-9
        shown = min(ours[f"{axis}.loop.phase_margin"], ours[f"{axis}.loop.gain_margin"] - 1) < 0
        if unstable != shown:
            where = "out" if unstable else "in"
            bad.append(f"{axis} speed loop: poles {where}side the circle, margins say otherwise")
        bad.extend(swing_faults(d, ours, axis, per_rad))
        bad.extend(advice_faults(d, ours, axis))
        end = min(d.current_bandwidth, theirs.get(f"{axis}.arm.mode") or math.inf)
        if not is_close(ours[f"{axis}.loop.model_end"], end, TOLERANCES.get("arm.mode", CLOSED_FORM), 0):
            bad.append(f"{axis}.loop.model_end is {ours[f'{axis}.loop.model_end']}, should be {end}")
        bad.extend(compare_step(batch, path, axis, ours, rig, masses, per_rad, d))
        bad.extend(compare_profiles(axis, ours, rig))
    bad.extend(compare_coupling(batch, path, ours, rig, per_rad))
    bad.extend(compare_heat(batch, path, ours, rig, drives))
    known = set(theirs) | {"both.settle_time", "both.peak_bus_current"} | {
        f"{a}.coupling.{s}" for a in ("pan", "tilt") for s in ("disturbance", "disturbance_px")}
    known |= {f"{a}.step.{s}" for a in ("pan", "tilt") for s in (
        "rise_time", "overshoot", "settle_time", "settle_time_back", "peak_current", "peak_speed", "gear_torque")}
    known |= {"pan.duty.gear_torque", "tilt.duty.gear_torque"}
    # Compared with the traces of the steps; the larger of both.
    known |= {f"{a}.{k}" for a in ("pan", "tilt") for k in ("stand.sway", "stand.sway_left_px",
                                                            "balance.worst_angle")}
    known |= {"stand.sway", "stand.sway_px"}
    for key, scale in (("stand.sway", 1), ("stand.sway_px", per_rad)):
        wanted = scale * max(ours[f"{a}.stand.sway"] for a in ("pan", "tilt"))
        if not is_close(ours[key], wanted, CLOSED_FORM, 0):
            bad.append(f"{key} is {ours[key]}, should be {wanted}")
    known |= {f"{a}.limits.{name}" for a in ("pan", "tilt") for name in LIMITS}
    known |= {f"{a}.heat.{key}" for a in ("pan", "tilt") for key in HEAT}
    known |= {f"{a}.gap.limit_cycle_{k}" for a in ("pan", "tilt")
              for k in ("amplitude", "frequency", "px")}
    known |= {f"{a}.advice.{k}" for a in ("pan", "tilt")
              for k in ("position_gain", "speed_gain", "speed_integral_gain", "crossover")}
    known |= {f"{a}.loop.model_end" for a in ("pan", "tilt")}
    # The step and the margins with the advised gains: both are compared with the gains of the file.
    known |= {f"{a}.advice.{k}" for a in ("pan", "tilt") for k in ("settle_time", "phase_margin")}
    # Simulated; a stiff bracket's are compared above, all others in profile_response.py.
    known |= {f"{a}.picture.{key}" for a in ("pan", "tilt") for key in ("settle_time", "usable_time")}
    known |= {f"{a}.profile.{name}.{key}" for a in ("pan", "tilt") for name in PROFILES for key in (
        "settle_time", "overshoot", "peak_current", "rms_current", "ringing_px", "usable_time")}
    known |= {"pan.eye.speed_ratio", "tilt.eye.speed_ratio", "eye.duration_ratio",
              "pan.ratio.best_time", "tilt.ratio.best_time"}
    known |= known_supply_figures()
    bad.extend(f"{key} is not compared" for key in set(ours) - known)
    return len(known), [f"{path.name}: {line}" for line in bad]


def main():
    batch, project = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
    samples = sorted((project / "sample-rigs").glob("*.rig.yaml"))
    assert len(samples) >= 3, "the sample rigs are missing"
    rng, paths, bad, count = random.Random(SEED), list(samples), [], 0
    cables, more = random.Random(SEED + 1), random.Random(SEED + 2)
    details, targets = random.Random(SEED + 3), random.Random(SEED + 4)
    bearings = random.Random(SEED + 5)
    arms, errors = random.Random(SEED + 6), random.Random(SEED + 7)
    with tempfile.TemporaryDirectory() as folder:
        for i in range(RANDOM_RIGS):
            rig = stiffen(vary(text.read(samples[i % len(samples)].read_text()), rng), cables)
            rig = with_something_to_follow(shake(furnish(rig, more), details), targets)
            rig = with_bearings(rig, bearings)
            rig = with_structure(rig, arms)
            rig = with_errors(rig, errors)
            paths.append(pathlib.Path(folder) / f"variation-{i}-of-{samples[i % len(samples)].name}")
            paths[-1].write_text(text.write(rig))
        with concurrent.futures.ProcessPoolExecutor() as pool:
            for done, lines in pool.map(compare, [batch] * len(paths), paths):
                count += done
                bad.extend(lines)
    print("\n".join(bad + [f"{len(paths)} rigs, {count} figures, {len(bad)} differ"]))
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
