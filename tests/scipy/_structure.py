"""Arm, stand and balance worked out otherwise: strain and kinetic energy of shape functions by
quadrature, the load as a cloud of points, a finer beam of many elements beside it; the stand's
swaying by SciPy's discrete system. SI."""

import copy
import math
import pathlib
import re

import numpy as np
from scipy.linalg import block_diag, eigh
from scipy.signal import cont2discrete

from _mass import G, points
from _rig_text import UNITS, value

POISSON, SWING = 0.35, 33 / 140
FINE = 0.02  # one element against many: the load's own size makes the mode, the arm's mass hardly
_U, _W = np.polynomial.legendre.leggauss(6)
_S, _WS = (_U + 1) / 2, _W / 2  # on 0...1, exact for polynomials up to the eleventh power


def materials(project=pathlib.Path(__file__).resolve().parents[2]):
    """resources/data/materials.yaml by regular expressions: {name: {key: (value, spread)}}."""
    units = {**UNITS, "K": 1}
    table, row = {}, None
    for line in (project / "resources/data/materials.yaml").read_text().splitlines():
        if head := re.match(r"^(\w+):$", line):
            row = table.setdefault(head[1], {})
        elif entry := re.match(r"^  (\w+): +\{value: ([-\d.]+) ?([^,]*?)(?:, spread: ([-\d.]+) ?([^,]*?))?, source", line):
            key, number, unit, spread, spread_unit = entry.groups()
            row[key] = (float(number) * units[unit], float(spread) * units[spread_unit] if spread else 0.0)
    return table


MATERIALS = materials()


def material_of(rig, name):
    for own in rig.get("materials", []):
        if own["name"] == name:
            return {key: (value(own[key]), 0.0) for key in ("modulus", "layer_modulus", "density")}
    return MATERIALS[name]


class Section:
    def __init__(self, arm):
        self.w, self.h = value(arm["width"]), value(arm["height"])
        fill = value(arm.get("infill", "0"))
        bar = arm.get("section", "box") == "bar"
        self.t = 0.0 if bar else value(arm["wall"])
        full = bar or 2 * self.t >= min(self.w, self.h)
        # Rectangles (width, height, part of the stiffness, part of the weight), added up.
        if full:
            part = fill if bar and fill > 0 else 1.0
            parts = [(self.w, self.h, part**2, part)]
        else:
            inside = self.w - 2 * self.t, self.h - 2 * self.t
            parts = [(self.w, self.h, 1, 1), (*inside, fill**2 - 1, fill - 1)]
        x = lambda side: (side * (_S - 0.5), side * _WS)
        self.area = sum(e * w * h for w, h, e, _ in parts)
        self.weight = sum(m * w * h for w, h, _, m in parts)
        self.wide = sum(e * h * (x(w)[1] @ x(w)[0]**2) for w, h, e, _ in parts)
        self.high = sum(e * w * (x(h)[1] @ x(h)[0]**2) for w, h, e, _ in parts)
        if full:
            self.torsion = parts[0][2] * self.roark(self.w, self.h)
        else:
            wm, hm = self.w - self.t, self.h - self.t
            tube = 4 * (wm * hm)**2 * self.t / (2 * (wm + hm))
            self.torsion = min(tube, self.roark(self.w, self.h)) + fill**2 * self.roark(*inside)
        self.full, self.part = full, parts[0][2]

    @staticmethod
    def roark(w, h):  # with half sides, table 10.1 case 4
        a, b = max(w, h) / 2, min(w, h) / 2
        return a * b**3 * (16 / 3 - 3.36 * b / a * (1 - b**4 / (12 * a**4)))

    def shear(self, torque):
        if not self.full:
            return torque / (2 * (self.w - self.t) * (self.h - self.t) * self.t)
        a, b = max(self.w, self.h) / 2, min(self.w, self.h) / 2
        r = b / a
        return 3 * torque / (8 * a * b**2) * (1 + 0.6095 * r + 0.8865 * r**2 - 1.8023 * r**3
                                              + 0.91 * r**4) / self.part


def hermite(length, EI, per_m):
    """Stiffness and mass of one element in (v0, slope0, v1, slope1), by quadrature of its cubics."""
    s = _S
    shape = np.array([1 - 3 * s**2 + 2 * s**3, length * (s - 2 * s**2 + s**3), 3 * s**2 - 2 * s**3,
                      length * (s**3 - s**2)])
    bend = np.array([-6 + 12 * s, length * (-4 + 6 * s), 6 - 12 * s, length * (6 * s - 2)]) / length**2
    return (EI * length * (bend * _WS) @ bend.T, per_m * length * (shape * _WS) @ shape.T)


def rod(length, EA, per_m):
    return (EA / length * np.array([[1, -1], [-1, 1]]), per_m * length * np.array([[2, 1], [1, 2]]) / 6)


def chain(element, n, per_node):
    """n equal elements, the first end held: matrices of the free degrees of freedom."""
    K, M = np.zeros((2, per_node * (n + 1), per_node * (n + 1)))
    for i in range(n):
        at = slice(per_node * i, per_node * (i + 2))
        K[at, at] += element[0]
        M[at, at] += element[1]
    return K[per_node:, per_node:], M[per_node:, per_node:]


def static_end(K, M, keep):
    """The degrees of freedom not kept follow as they would at rest."""
    rest = [i for i in range(len(K)) if i not in keep]
    if not rest:
        return K, M
    follow = -np.linalg.solve(K[np.ix_(rest, rest)], K[np.ix_(rest, keep)])
    T = np.zeros((len(K), len(keep)))
    T[keep, range(len(keep))] = 1
    T[rest] = follow
    return T.T @ K @ T, T.T @ M @ T


def arm_matrices(section, arm, clamps, n, offset):
    """One arm: matrices in the six motions of E and those of its inner nodes. Motions of its end from
    those of E, `offset` along y."""
    L, E = arm["L"], arm["E"]
    rho_A = arm["density"] * section.weight
    polar = rho_A * (section.w**2 + section.h**2) / 12
    to_end = np.eye(6)
    to_end[0, 5], to_end[2, 3] = -offset, offset
    blocks = []
    for EI, along, about, sign, clamped in ((E * section.wide, 0, 4, 1, clamps["pitch"]),
                                            (E * section.high, 1, 3, -1, clamps["roll"])):
        K, M = chain(hermite(L / n, EI, rho_A), n, 2)
        end = np.array([to_end[along], sign * to_end[about]])
        if not clamped:
            keep = [i for i in range(2 * n) if i != 2 * n - 1]
            K, M = static_end(K, M, keep) if n == 1 else (K, M)
            end = end[:1] if n == 1 else end
        blocks.append((K, M, end, clamped or n == 1))
    K, M = chain(rod(L / n, E * section.area, rho_A), n, 1)
    blocks.append((K, M, to_end[2:3], True))
    if clamps["yaw"]:
        K, M = chain(rod(L / n, arm["Gm"] * section.torsion, polar), n, 1)
        blocks.append((K, M, to_end[5:6], True))
    return blocks


def assembled(parts, load_M):
    """All arms on the six motions of E."""
    K, M = np.zeros((6, 6)), load_M.copy()
    for K1, M1, end, tied in parts:
        tie = end if tied else end[:1]
        ends = list(range(len(K1) - len(end), len(K1) - len(end) + len(tie)))
        inner = [i for i in range(len(K1)) if i not in ends]
        size = len(K)
        T = np.zeros((len(K1), size + len(inner)))
        T[ends, :6] = tie
        T[inner, range(size, size + len(inner))] = 1
        K = block_diag(K, np.zeros((len(inner),) * 2)) + T.T @ K1 @ T
        M = block_diag(M, np.zeros((len(inner),) * 2)) + T.T @ M1 @ T
    return K, M


def modes(section, arm, fork, end, at, mass, n):
    moves = np.zeros((len(mass), 3, 6))  # of each point: u + ω × r
    moves[:, :, :3] = np.eye(3)
    for k in range(3):
        moves[:, :, 3 + k] = np.cross(np.eye(3)[k], at)
    load_M = np.einsum("p,pij,pik->jk", mass, moves, moves)
    clamps = lambda roll, pitch, yaw: {"roll": roll, "pitch": pitch, "yaw": yaw}
    if fork:
        parts = (arm_matrices(section, arm, clamps(False, True, False), n, arm["aside"])
                 + arm_matrices(section, arm, clamps(False, False, False), n, -arm["aside"]))
    else:
        parts = arm_matrices(section, arm, clamps(True, True, True), n, 0.0)
    K, M = assembled(parts, load_M)
    if n > 1:
        return {"first_mode": math.sqrt(eigh(K, M, eigvals_only=True)[0]) / (2 * math.pi)}
    w2, shapes = eigh(K, M)  # shapes of modal mass 1
    Hz = np.sqrt(w2) / (2 * math.pi)
    turns = {"pan": np.concatenate([np.cross([0, 0, 1], end), [0, 0, 1]]), "tilt": np.array([0, 0, 0, 0, 1, 0])}
    found = {"first_mode": Hz[0]}
    for axis, turn in turns.items():
        share = (shapes.T @ M @ turn)**2 / (turn @ M @ turn)
        assert abs(share.sum() - 1) < 1e-9
        found[axis] = Hz[np.argmax(share >= 0.05)]
    return found


def extent_y(body):
    """Half of a body's size along y."""
    shape = body["shape"]
    if shape == "point" or "inertia" in shape:
        return 0.0
    (kind, s), = shape.items()
    if kind == "box":
        return value(s[1]) / 2
    along_y = kind == "tube" and s.get("along", "x") == "y"
    return value(s["length" if along_y else "diameter"]) / 2


def largest_acceleration(d):
    """Starting, or braking from next to no speed with gravity's help."""
    still = copy.copy(d)
    pull = -abs(d.gravity(0.0))
    still.gravity, still.cable_stiffness = lambda _: pull, 0.0
    braking = -float(still.acceleration(d.ratio, still.torque(d.ratio, 0.0, -1), 1e-12, 0.0, full=True))
    return max(0.0, d.peak_acceleration(d.ratio), braking)


def arm_case(rig, fork, arm, section, drives, acceleration):
    """Figures of one support."""
    axis_at = np.array([value(c) for c in rig["tilt"]["axis_at"]])
    low = axis_at[2] - arm["L"] / 4
    on_pan = [points(b) for b in rig.get("on_pan", []) if value(b["centre"][2]) > low]
    on_tilt = [points(b) for b in rig["on_tilt"]]
    tilting = np.vstack([at for at, _ in on_tilt]) + axis_at, np.concatenate([m for _, m in on_tilt])
    at = np.vstack([p for p, _ in on_pan] + [tilting[0]])
    mass = np.concatenate([m for _, m in on_pan] + [tilting[1]])
    centre = mass @ at / mass.sum()
    aside = arm["aside"] if fork or centre[1] >= axis_at[1] else -arm["aside"]
    end = axis_at + np.array([0, 0 if fork else aside, 0])
    lean, L, EI, EA = value(rig["stand"]["lean"]), arm["L"], arm["E"] * section.high, arm["E"] * section.area
    total, e = mass.sum(), abs(centre[1] - end[1])
    down, across = total * G * math.cos(lean), total * G * abs(math.sin(lean))
    own = arm["density"] * section.weight * G * abs(math.sin(lean))
    arms = 2 if fork else 1
    z, w = L * _S, L * _WS
    moment = (0 if fork else down * e) + across / arms * (L - z) + own * (L - z)**2 / 2
    slope, sideways = w @ moment / EI, w @ (moment * (L - z)) / EI
    if fork:
        slope = down * e * L / EA / (2 * arm["aside"]**2)
    sink = slope * e + down * L / EA / arms
    one, many = (modes(section, {**arm, "aside": aside}, fork, end, at - end, mass, n) for n in (1, 8))
    first, fine = one["first_mode"], many["first_mode"]
    assert abs(first / fine - 1) < FINE, f"one element {first} Hz, eight {fine} Hz"
    m1 = arm["density"] * section.weight * L
    inertia = sum(m1 * (axis_at[0]**2 + (axis_at[1] + y)**2 + (section.w**2 + section.h**2) / 12)
                  for y in ([aside, -aside] if fork else [aside]))
    # Forces of inertia, point by point; magnitudes add up.
    force, turn = np.zeros(3), np.zeros(3)
    for (p, m), alpha, about in (((at, mass), [0, 0, acceleration["pan"]], np.zeros(3)),
                                 (tilting, [0, acceleration["tilt"], 0], axis_at)):
        f = m[:, None] * np.cross(np.array(alpha), p - about)
        force += np.abs(f.sum(axis=0))
        turn += np.abs(np.cross(p - end, f).sum(axis=0))
    c = np.abs(centre - end)
    force += [across, across, down]
    turn += [down * c[1] + across * c[2], down * c[0] + across * c[2], across * math.hypot(c[0], c[1])]
    if fork:
        wide = L * (force[0] / 2 + turn[2] / (2 * arm["aside"])) + turn[1]
        high, pull, twist = L * force[1] / 2, force[2] / 2 + turn[0] / (2 * arm["aside"]), 0.0
    else:
        wide, high, pull, twist = force[0] * L + turn[1], force[1] * L + turn[0], force[2], turn[2]
    along = wide * section.w / 2 / section.wide + high * section.h / 2 / section.high + pull / section.area
    x, y, _ = (at - end).T
    return {"carried": total, "mass": arms * m1, "overhang": e, "droop": sink, "droop_angle": slope,
            "sideways": sideways, **one, "inertia": inertia, "I_z": mass @ (x * x + y * y),
            "stress": math.sqrt(along**2 + 3 * section.shear(twist)**2)}


def arm_figures(rig, drives, acceleration):
    names = ("carried", "mass", "overhang", "droop", "droop_angle", "sideways", "first_mode", "stress",
             "bending_mode", "torsion_mode", "side.droop", "fork.droop",
             "side.first_mode", "fork.first_mode", "side.inertia", "fork.inertia")
    if "arm" not in rig:
        return {**{f"arm.{n}": None for n in names},
                **{f"{a}.arm.{n}": None for a in drives for n in ("speed_gain_ceiling", "mode", "crossover_ceiling")}}
    a = rig["arm"]
    section, material = Section(a), material_of(rig, a["material"])
    across = a.get("layers", "along") == "across"
    E = value(a["modulus"]) if "modulus" in a else material["layer_modulus" if across else "modulus"][0]
    reach = max(abs(value(b["centre"][1])) + extent_y(b) for b in rig["on_tilt"])
    arm = {"L": value(a["length"]), "E": E, "Gm": E / (2 * (1 + POISSON)), "density": material["density"][0],
           "aside": reach + section.h / 2}
    cases = {kind: arm_case(rig, kind == "fork", arm, section, drives, acceleration) for kind in ("side", "fork")}
    used = cases[a.get("support", "side")]
    f = {f"arm.{n}": used[n] for n in names[:8]}
    for kind, case in cases.items():
        f.update({f"arm.{kind}.{n}": case[n] for n in ("droop", "first_mode", "inertia")})
    fork = used is cases["fork"]
    root = lambda k, m: math.sqrt(k / m) / (2 * math.pi)
    f["arm.bending_mode"] = root((2 if fork else 1) * 3 * E * min(section.wide, section.high) / arm["L"]**3,
                                 used["carried"] + SWING * used["mass"])
    f["arm.torsion_mode"] = None if fork else root(
        arm["Gm"] * section.torsion / arm["L"], used["I_z"] + used["mass"] * (section.w**2 + section.h**2) / 36)
    for axis, d in drives.items():
        f.update({f"{axis}.arm.mode": used[axis], f"{axis}.arm.crossover_ceiling": used[axis] / 3,
                  f"{axis}.arm.speed_gain_ceiling": d.load_and_rotor() * 2 * math.pi * used[axis] / 3})
    return f


def reaction(d):
    return d.inertia + d.ratio * d.motor_inertia


def stand_figures(rig, masses, drives, acceleration):
    s = rig["stand"]
    M, b, H = value(s["mass"]), value(s["half_width"]), value(s["height"])
    lean, a = abs(value(s["lean"])), masses.axis_at
    m = masses.total("on_pan") + masses.total("on_tilt")
    # The worst pose: the tilting centre on its circle, wherever that is worst.
    fixed = masses.first["on_pan"] + masses.total("on_tilt") * a + [0, masses.first["on_tilt"][1], 0]
    circle = np.exp(1j * np.angle(fixed[0] + 1e-300))
    swing = abs(masses.first["on_tilt"][0] + 1j * masses.first["on_tilt"][2])
    aside = abs(complex(fixed[0] + swing * circle.real, fixed[1])) / m
    up = H + (fixed[2] + swing) / m
    weight = G * (M + m)
    hold = weight * b
    speed = {k: min(d.speed_top(), value(rig[k]["loop"]["speed_limit"])) for k, d in drives.items()}
    shake = {k: abs(complex(acceleration[k], speed[k]**2)) for k in drives}
    push = m * aside * shake["pan"], swing * shake["tilt"]
    turn = {k: reaction(d) * acceleration[k] for k, d in drives.items()}
    # The spring at the foot: every point of the bodies, and a column.
    cloud = np.vstack([masses.at["on_pan"], masses.at["on_tilt"] + a]) + [0, 0, H]
    weights = np.concatenate([masses.mass["on_pan"], masses.mass["on_tilt"]])
    x, y, z = cloud.T
    level = [weights @ (y * y + z * z), weights @ (x * x + z * z)]
    J = max(level) + M * H * H / 3
    return {"stand.holding_moment": hold * math.cos(lean),
            "stand.resting_moment": G * (m * aside * math.cos(lean) + (M * H / 2 + m * up) * math.sin(lean)),
            "stand.tip_lean": math.atan2(hold - G * m * aside, G * (M * H / 2 + m * up)),
            "stand.moving_moment": turn["tilt"] + push[0] * up + push[1] * (H + a[2]),
            "stand.pan_reaction": turn["pan"],
            "stand.grip_needed": (weight * math.sin(lean) + sum(push) + turn["pan"] / b) / (weight * math.cos(lean)),
            "stand.first_mode": math.sqrt(value(s["sway_stiffness"]) / J) / (2 * math.pi)}


def sway(rig, masses, axis, d, trace, settle):
    """(largest angle, amplitude from `settle` on) of the stand under one axis' step."""
    s, a = rig["stand"], masses.axis_at
    k, zeta, H = value(s["sway_stiffness"]), value(s.get("sway_damping", "0.03")), value(s["height"])
    lever, J = reaction(d), d.inertia
    if axis == "tilt":
        cloud = np.vstack([masses.at["on_pan"], masses.at["on_tilt"] + a]) + [0, 0, H]
        weights = np.concatenate([masses.mass["on_pan"], masses.mass["on_tilt"]])
        J = weights @ (cloud[:, 0]**2 + cloud[:, 2]**2) + value(s["mass"]) * H * H / 3
        x, _, z = masses.first["on_tilt"]
        lever += (H + a[2]) * z + a[0] * x
    w = math.sqrt(k / J)
    t, speed = trace[:, 0], trace[:, 2]
    dt = (t[-1] - t[0]) / (len(t) - 1)
    A, B, *_ = cont2discrete((np.array([[0, 1], [-w * w, -2 * zeta * w]]), np.array([[0], [1 / J]]),
                              np.eye(2), np.zeros((2, 1))), dt)
    state, states = np.zeros(2), [np.zeros(2)]
    for torque in lever * np.diff(speed) / dt:
        state = A @ state + B[:, 0] * torque
        states.append(state)
    x, v = np.array(states).T
    size = np.hypot(x, (v + zeta * w * x) / (w * math.sqrt(1 - zeta * zeta)))
    after = np.searchsorted(t, settle - 1e-9)
    return np.abs(x).max(), max(size[after], np.abs(x[after:]).max())


def balance_figures(rig, axis, masses, d, ranges):
    first = masses.first["on_tilt"]
    if axis == "pan":
        first = masses.first["on_pan"] + masses.total("on_tilt") * masses.axis_at + first
        off = first[:2]
        f = {"balance.offset": np.hypot(*off) / (masses.total("on_pan") + masses.total("on_tilt")),
             "balance.forward": off[0], "balance.left": off[1]}
    else:
        off = first[[0, 2]]
        f = {"balance.forward": off[0], "balance.up": off[1]}
    most = masses.gravity_max(axis, ranges)
    current = most / d.ratio / d.Kt
    f["balance.hold_current"] = current
    f["balance.hold_heat"] = 1.5 * d.phase_resistance * current**2
    hold = d.coulomb + (d.ratio * d.drag / d.back_efficiency if d.back_efficiency > 0 else math.inf)
    f["balance.friction_share"] = hold / most if most > 1e-12 else None
    weight = ("mass", "diameter", "inertia", "share")
    balance = rig[axis].get("balance", {})
    f.update({f"balance.counterweight_{k}": None for k in weight})
    if "counterweight_arm" not in balance:
        return f
    arm, density = value(balance["counterweight_arm"]), value(balance.get("counterweight_density", "7850"))
    exact = np.hypot(*off) / arm
    if exact < 1e-4:
        return f
    tidy = lambda v: 1e-4 * round(v / 1e-4)  # a scale's and a ruler's digits
    mass, diameter = tidy(exact), tidy((6 * exact / (math.pi * density))**(1 / 3))
    place = [tidy(v) for v in -off / np.hypot(*off) * arm]
    inertia = mass * (np.hypot(*place)**2 + diameter**2 / 10)
    f.update(zip((f"balance.counterweight_{k}" for k in weight),
                 (mass, diameter, inertia, inertia / d.load_and_rotor())))
    return f


def structure_figures(rig, masses, drives, ranges):
    acceleration = {axis: largest_acceleration(d) for axis, d in drives.items()}
    f = {**arm_figures(rig, drives, acceleration), **stand_figures(rig, masses, drives, acceleration)}
    for axis, d in drives.items():
        f.update({f"{axis}.{k}": v for k, v in balance_figures(rig, axis, masses, d, ranges).items()})
    return f


def worst_angle_faults(ours, masses, ranges):
    """At the worst angle gravity is as large as it gets anywhere."""
    for k, axis in enumerate(("pan", "tilt")):
        angle, most = ours[f"{axis}.balance.worst_angle"], ours[f"{axis}.gravity.torque_max"]
        if angle is None:
            if most > 1e-11:
                yield f"{axis}.balance.worst_angle is not there, gravity is {most}"
            continue
        other = np.linspace(*ranges[1 - k], 20001)
        there = (np.full_like(other, angle), other)
        found = np.abs(masses.gravity(axis, *(there if k == 0 else there[::-1]))).max()
        if not ranges[k][0] - 1e-9 <= angle <= ranges[k][1] + 1e-9 or found < most * (1 - 1e-6) - 1e-13:
            yield f"{axis}.balance.worst_angle is {angle}: gravity {found} there, {most} at most"


def sway_faults(ours, rig, masses, axis, d, trace, per_rad):
    settle = ours[f"{axis}.step.settle_time"]
    if settle is None:
        return
    largest, left = sway(rig, masses, axis, d, trace, settle)
    for key, mine, theirs in ((f"{axis}.stand.sway", ours[f"{axis}.stand.sway"], largest),
                              (f"{axis}.stand.sway_left_px", ours[f"{axis}.stand.sway_left_px"], left * per_rad)):
        if abs(mine - theirs) > 1e-3 * max(theirs, 1e-3 * largest):
            yield f"{key} is {mine}, its trace has {theirs}"


def with_structure(rig, rng):
    """Arms of all kinds, feet, counterweights."""
    if rng.random() < 0.7:
        side = rng.uniform(15, 60)
        rig["arm"] = {"material": rng.choice(sorted(MATERIALS)), "length": f"{rng.uniform(50, 250)!r} mm",
                      "width": f"{side!r} mm", "height": f"{rng.uniform(0.3, 1.5) * side!r} mm",
                      "wall": f"{rng.uniform(1, 0.6 * side)!r} mm",
                      "infill": repr(rng.choice([0, 0.2, 1, rng.random()])),
                      "support": rng.choice(["side", "fork"]), "section": rng.choice(["box", "box", "bar"]),
                      "layers": rng.choice(["along", "across"])}
        if rng.random() < 0.3:
            rig["arm"]["modulus"] = f"{rng.uniform(1, 5) * 1e9!r} Pa"
    elif rng.random() < 0.5:
        del rig["arm"]
    if rng.random() < 0.5:
        rig["stand"]["grip"] = repr(rng.uniform(0.1, 1))
        rig["stand"]["sway_damping"] = repr(10**rng.uniform(-3, -0.3))
    for axis in ("pan", "tilt"):
        if rng.random() < 0.6:
            rig[axis]["balance"] = {"counterweight_arm": f"{rng.uniform(10, 150)!r} mm"}
    return rig
