"""Rigs of invented data for the comparisons with SciPy: their numbers, their file, their loads.

Everything is worked out here from section 5 of the design and from mechanics, without our code:
the rig file is written from the numbers, never read."""

import json
import math
import subprocess

G = 9.80665
DEG = math.pi / 180

AXIS = dict(  # SI; torque constants and the like follow from them
    kv_rpm=410.0, R=0.062, L=28e-6, pole_pairs=7, rotor=118e-7, peak_A=45.0,
    limit_A=30.0, rate=8000.0, current_bw=1000.0, modulation=0.95,
    N=18.0, eta=0.90, back_eta=0.88, gear_inertia=12e-7, backlash=16 / 60 * DEG, k=900.0, d=0.4,
    drag=6e-3, viscous=20e-6, peak_Nm=12.0, at="motor", bits=14,
    coulomb=0.04, load_viscous=0.004,
    kp=30.0, ks=0.9, ki=12.0, speed_limit=900 * DEG, estimator_bw=400.0,
    cable="none", cable_k=0.0, cable_centre=0.0, cable_friction=0.0,  # cable: twist, coil or none
    ff_speed=0.0, ff_acceleration=0.0, bracket_k=None, bracket_damping=0.02,
    acceleration_limit=None, jerk_limit=None,  # None: left out of the file
    cogging=0.0, cogging_per_turn=84, breakaway=None, stribeck=None)

# name, mass [kg], centre [m], ball diameter [m]
ON_PAN = [("side arm", 0.21, (0.0, 0.062, 0.085), 0.05)]
ON_TILT = [("ball", 0.16, (0.0, 0.0, 0.0), 0.10), ("camera", 0.048, (0.038, 0.004, 0.012), 0.03)]
AXIS_AT = (0.005, 0.0, 0.165)


class Rig:
    """`pan` and `tilt` are changes to AXIS."""

    def __init__(self, name, pan=None, tilt=None, lean=0.0, supply_A=15.0, on_pan=None,
                 on_tilt=None, pan_move=40 * DEG, tilt_move=25 * DEG):
        self.name, self.lean, self.supply_A = name, lean, supply_A
        self.parts = {"pan": {**AXIS, **(pan or {})}, "tilt": {**AXIS, **(tilt or {})}}
        self.on_pan = ON_PAN if on_pan is None else on_pan
        self.on_tilt = ON_TILT if on_tilt is None else on_tilt
        self.move = {"pan": pan_move, "tilt": tilt_move}

    def yaml(self):
        def q(value, unit):
            return "none" if value == math.inf else f"{value!r} {unit}"

        def cable(a):
            if a["cable"] == "none":
                return "stops: none\n  cable: none"
            length, count = 0.3, 3
            key, unit = {"twist": ("torsion_stiffness", "N.m2/rad"),
                         "coil": ("bending_stiffness", "N.m2")}[a["cable"]]
            return f"""stops: {{tab_width: 8 mm, post_width: 10 mm, radius: 26 mm, soft_inset: 6 deg, stiffness: 400 N.m/rad,
          centre: {q(a['cable_centre'], 'rad')}}}
  cable: {{outer_diameter: 5 mm, count: {count}, routing: {a['cable']}, free_length: {q(length, 'm')}, twist_rating: 900 deg/m,
          {key}: {q(a['cable_k'] * length / count, unit)}, friction: {q(a['cable_friction'], 'N.m')}}}"""

        def extras(a, keys):
            """", key: value" for what is entered."""
            return "".join(f", {key}: {a[name]!r} {unit}".rstrip()
                           for key, name, unit in keys if a[name] is not None)

        def axis(a):
            cogging = extras(a, [("cogging_torque", "cogging", "N.m"),
                                 ("cogging_per_turn", "cogging_per_turn", "")])
            friction = extras(a, [("breakaway", "breakaway", "N.m"),
                                  ("stribeck_speed", "stribeck", "rad/s")])
            loop = extras(a, [("speed_feed_forward", "ff_speed", ""),
                              ("acceleration_feed_forward", "ff_acceleration", ""),
                              ("acceleration_limit", "acceleration_limit", "rad/s2"),
                              ("jerk_limit", "jerk_limit", "rad/s3")])
            bracket = "" if a["bracket_k"] is None else (
                f"\n  bracket: {{stiffness: {q(a['bracket_k'], 'N.m/rad')}, "
                f"damping_ratio: {a['bracket_damping']!r}}}")
            return f"""
  motor: {{speed_constant: {q(a['kv_rpm'], 'rpm/V')}, phase_resistance: {q(a['R'], 'ohm')}, phase_inductance: {q(a['L'], 'H')},
          pole_pairs: {a['pole_pairs']}, rotor_inertia: {q(a['rotor'], 'kg.m2')}, peak_current: {q(a['peak_A'], 'A')}{cogging}}}
  drive: {{current_limit: {q(a['limit_A'], 'A')}, control_rate: {q(a['rate'], 'Hz')}, current_bandwidth: {q(a['current_bw'], 'Hz')},
          modulation_limit: {a['modulation']!r}, speed_limit: none}}
  gearbox: {{ratio: {a['N']!r}, efficiency: {a['eta']!r}, back_efficiency: {a['back_eta']!r}, inertia: {q(a['gear_inertia'], 'kg.m2')},
            backlash: {q(a['backlash'], 'rad')}, stiffness: {q(a['k'], 'N.m/rad')}, damping: {q(a['d'], 'N.m.s/rad')},
            drag: {q(a['drag'], 'N.m')}, viscous: {q(a['viscous'], 'N.m.s/rad')}, peak_torque: {q(a['peak_Nm'], 'N.m')},
            input_speed_limit: none}}
  encoder: {{at: {a['at']}, bits: {a['bits']}}}
  friction: {{coulomb: {q(a['coulomb'], 'N.m')}, viscous: {q(a['load_viscous'], 'N.m.s/rad')}{friction}}}
  {cable(a)}
  loop: {{position_gain: {q(a['kp'], '1/s')}, speed_gain: {q(a['ks'], 'N.m.s/rad')}, speed_integral_gain: {q(a['ki'], 'N.m/rad')},
         speed_limit: {q(a['speed_limit'], 'rad/s')}, estimator_bandwidth: {q(a['estimator_bw'], 'Hz')}{loop}}}{bracket}"""

        def bodies(group):
            return "".join(
                f"\n  - {{name: {name}, mass: {m!r} kg, "
                f"centre: [{c[0]!r} m, {c[1]!r} m, {c[2]!r} m], shape: {{ball: {{diameter: {d!r} m}}}}}}"
                for name, m, c, d in group)

        x, y, z = AXIS_AT
        return f"""rig: 1
title: {self.name}
supply: {{voltage: 24 V, current_limit: {q(self.supply_A, 'A')}}}
stand: {{lean: {self.lean!r} rad}}
pan:{axis(self.parts['pan'])}
tilt:
  axis_at: [{x!r} m, {y!r} m, {z!r} m]{axis(self.parts['tilt'])}
on_pan:{bodies(self.on_pan)}
on_tilt:{bodies(self.on_tilt)}
camera: {{columns: 1280, rows: 720, horizontal_view: 62 deg, exposure: 6 ms, delay: 45 ms}}
task: {{pan_move: {self.move['pan']!r} rad, tilt_move: {self.move['tilt']!r} rad, settle_band: 4}}
"""

    def axis(self, which):
        """All numbers of one axis, with its load: inertia, gravity c·cos q + s·sin q, cables
        -k·(q - centre) and their friction."""
        a = dict(self.parts[which], V=24.0, supply_A=self.supply_A)
        a["coulomb"] += a["cable_friction"]
        a["Kt"] = math.sqrt(3) / 2 * 60 / (2 * math.pi * a["kv_rpm"])
        a["i_max"] = min(a["limit_A"], a["peak_A"])
        a["Jm"] = a["rotor"] + a["gear_inertia"]
        inertia = c = s = 0.0
        if which == "pan":  # about z; gravity has the part g·sin(lean) along x
            shifted = [(m, tuple(p + o for p, o in zip(p_T, AXIS_AT)), dia)
                       for _, m, p_T, dia in self.on_tilt]
            for m, (x, y, _), dia in [b[1:] for b in self.on_pan] + shifted:
                inertia += m * (x * x + y * y) + m * dia * dia / 10
                c -= m * G * math.sin(self.lean) * y
                s -= m * G * math.sin(self.lean) * x
        else:  # about -y: x' = x cos q - z sin q, z' = x sin q + z cos q
            for _, m, (x, _, z), dia in self.on_tilt:
                inertia += m * (x * x + z * z) + m * dia * dia / 10
                c -= m * G * (x * math.cos(self.lean) + z * math.sin(self.lean))
                s += m * G * (z * math.cos(self.lean) - x * math.sin(self.lean))
        return dict(a, J=inertia, g_cos=c, g_sin=s)

    def write(self, folder):
        path = folder / (self.name.replace(" ", "-") + ".rig.yaml")
        path.write_text(self.yaml())
        return path


def figures(batch, path):
    done = subprocess.run([batch, "figures", "--json", str(path)], capture_output=True, text=True)
    if done.returncode != 0:
        raise SystemExit(f"figures {path} failed: {done.stderr}")
    return json.loads(done.stdout)["figures"]


class Envelope:
    """Largest current amplitudes, from the inequalities of section 5."""

    def __init__(self, a):
        self.a, self.Vp = a, a["modulation"] * a["V"] / math.sqrt(3)
        self.gear_Nm = a["peak_Nm"] / (a["eta"] * a["N"])

    def _terms(self, w):
        return self.a["R"], self.a["pole_pairs"] * w * self.a["L"], self.a["Kt"] * w / 1.5

    def driving_A(self, w):
        R, X, e = self._terms(w)
        if e >= self.Vp:
            return 0.0
        A, B, C = R * R + X * X, 2 * R * e, e * e - self.Vp**2
        i = min(self.a["i_max"], (-B + math.sqrt(B * B - 4 * A * C)) / (2 * A))
        P = self.a["V"] * self.a["supply_A"]
        return i if P == math.inf else min(i, (-1.5 * e + math.sqrt(2.25 * e * e + 6 * R * P)) / (3 * R))

    def braking_A(self, w):
        R, X, e = self._terms(w)
        A, B, C = R * R + X * X, -2 * R * e, e * e - self.Vp**2
        D = B * B - 4 * A * C
        return 0.0 if D < 0 else min(self.a["i_max"], (-B + math.sqrt(D)) / (2 * A))

    def clamp(self, T, w_m):
        w = abs(w_m)
        i = self.driving_A(w) if T * w_m >= 0 else self.braking_A(w)
        most = min(self.a["Kt"] * i, self.gear_Nm)
        return max(-most, min(most, T))
