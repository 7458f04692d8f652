"""Both axes at once, `gazewright-batch trace --both`, against LSODA (SciPy's solve_ivp).

Between control samples the eight equations (two motors, two loads on the rigid two-axis rig) are
integrated with rtol 1e-10; LSODA restarts at each sample. Mass matrix, velocity torques and gravity
come from the positions of the bodies and their slopes by differences, not from our formulas. The
angles must agree within 0.02 % of the move at every sample, and the supply's sum within its limit.

  python3 coupled_response.py BATCH_PROGRAM PROJECT_DIR"""

import math
import pathlib
import subprocess
import sys
import tempfile

import numpy as np
from scipy.integrate import odeint

from _coupled import Bodies, Supply
from _rig import DEG, Rig
from step_response import sat

TOLERANCE = 2e-4  # of the move
AXES = ("pan", "tilt")


class Control:
    """The sampled controller of section 5."""

    def __init__(self, a, target):
        self.a, self.target, self.N, self.dt = a, target, a["N"], 1 / a["rate"]
        self.count = 2 * math.pi / 2 ** a["bits"]
        self.most = a["N"] * min(a["Kt"] * a["i_max"], a["peak_Nm"] / (a["eta"] * a["N"]))
        self.blend = 1 - math.exp(-2 * math.pi * a["estimator_bw"] * self.dt)
        self.integral, self.speed, self.last = 0.0, 0.0, None

    def reading(self, motor, angle):
        at_output = self.a["at"] == "output"
        return (math.floor((angle if at_output else motor) / self.count) * self.count
                / (1 if at_output else self.N))

    def hold(self, motor, torque):
        self.target = self.last = self.reading(motor, 0.0)
        self.integral = torque

    def command(self, motor, angle):
        measured = self.reading(motor, angle)
        if self.last is not None:
            self.speed += self.blend * ((measured - self.last) / self.dt - self.speed)
        self.last = measured
        limit = self.a["speed_limit"]
        wanted = max(-limit, min(limit, self.a["kp"] * (self.target - measured)))
        error = wanted - self.speed
        u = self.a["ks"] * error + self.integral
        torque = max(-self.most, min(self.most, u))
        if u == torque or u * error < 0:
            self.integral += self.a["ki"] * error * self.dt
        return torque / self.N


def train(a, motor, w_m, angle, w):
    """Torque of the teeth, and of all else on motor and load but the motor's own and the bodies'."""
    N, half = a["N"], a["backlash"] / 2
    twist = motor / N - angle
    e = twist - max(-half, min(half, twist))
    tau = 0.0
    if e != 0:
        tau = a["k"] * e + a["d"] * (w_m / N - w)
        if tau * e < 0:
            tau = 0.0
    share = 1 / a["eta"] - 1 if tau * w_m >= 0 else 1 - a["back_eta"]
    loss = abs(tau) / N * share
    on_motor = -(a["drag"] + loss) * sat(w_m / 0.5) - a["viscous"] * w_m - tau / N
    return on_motor, tau - a["coulomb"] * sat(w / 0.01) - a["load_viscous"] * w


def reference(rig, moves, seconds):
    """Rows (pan angle, tilt angle, pan motor, tilt motor, bus current) at the control samples."""
    axes = [rig.axis(name) for name in AXES]
    bodies, supply = Bodies(rig), Supply(axes)
    dt = 1 / axes[0]["rate"]
    rates = [2 * math.pi * a["current_bw"] for a in axes]
    controls = [Control(a, move) for a, move in zip(axes, moves)]
    y, lag = np.zeros(8), [[0.0, 0.0], [0.0, 0.0]]  # motor, speed, load, speed of pan; of tilt
    T_e, acting, waiting = [0.0, 0.0], [0.0, 0.0], [0.0, 0.0]
    q_of = lambda y: (y[2] - moves[0] / 2, y[6] - moves[1] / 2)

    def pull(y):
        weight = bodies.gravity(*q_of(y))
        return [weight[i] - axes[i]["cable_k"] * (q_of(y)[i] - axes[i]["cable_centre"])
                for i in range(2)]

    for i in range(2):
        if moves[i] == 0:
            load, a = pull(y)[i], axes[i]
            twist = 0.0 if load == 0 else -load / a["k"] - math.copysign(a["backlash"] / 2, load)
            y[4 * i] = a["N"] * twist
            T_e[i] = acting[i] = waiting[i] = -load / a["N"]
            controls[i].hold(y[4 * i], -load)

    def dydt(y, t):
        wanted = [lag[i][0] + lag[i][1] * math.exp(-rates[i] * t) for i in range(2)]
        torque = supply.torques(wanted, (y[1], y[5]))
        out, on_load = np.zeros(8), [0.0, 0.0]
        for i in range(2):
            on_motor, on_load[i] = train(axes[i], *y[4 * i:4 * i + 4])
            out[4 * i] = y[4 * i + 1]
            out[4 * i + 1] = (torque[i] + on_motor) / axes[i]["Jm"]
            out[4 * i + 2] = y[4 * i + 3]
        both = np.array(on_load) + pull(y) - bodies.velocity_torque(q_of(y)[1], (y[3], y[7]))
        out[3], out[7] = np.linalg.solve(bodies.mass(q_of(y)[1]), both)
        return out

    scale = np.array([axes[0]["N"], 100 * axes[0]["N"], 1, 100,
                      axes[1]["N"], 100 * axes[1]["N"], 1, 100])
    rows = []
    for _ in range(int(seconds / dt + 0.5) + 1):
        current = supply.bus_A(supply.torques(T_e, (y[1], y[5])), (y[1], y[5]))
        rows.append((y[2], y[6], y[0], y[4], current))
        for i in range(2):
            acting[i] = waiting[i]
            waiting[i] = controls[i].command(y[4 * i], y[4 * i + 2])
            lag[i][0], lag[i][1] = acting[i], T_e[i] - acting[i]
        y = odeint(dydt, y, [0, dt], rtol=1e-10, atol=1e-13 * scale, hmax=dt / 2, mxstep=100000)[1]
        for i in range(2):
            T_e[i] = acting[i] + lag[i][1] * math.exp(-rates[i] * dt)
    return np.array(rows)


def trace(batch, path, hold, seconds):
    command = [batch, "trace", str(path), "--both", "--for", f"{seconds} s"]
    done = subprocess.run(command + (["--hold", hold] if hold else []), capture_output=True, text=True)
    if done.returncode != 0:
        raise SystemExit(f"trace {path} failed: {done.stderr}")
    lines = done.stdout.split()
    names = lines[0].split(",")
    table = np.array([[float(x) for x in line.split(",")] for line in lines[1:]])
    return {name: table[:, k] for k, name in enumerate(names)}


OFFSET = [("camera", 0.09, (0.03, 0.02, 0.02), 0.03), ("slug", 0.05, (-0.02, 0.01, 0.025), 0.02)]
RUNS = [  # rig, axis that holds, seconds
    (Rig("tied by an offset camera", on_tilt=OFFSET, tilt=dict(N=9, ks=0.2, ki=3, limit_A=25)), None, 0.12),
    (Rig("leaning, weak supply", lean=25 * DEG, supply_A=1.2, on_tilt=OFFSET,
         tilt=dict(N=9, ks=0.2, ki=3), pan=dict(R=0.2)), None, 0.12),
    (Rig("tilt holds while pan moves", on_tilt=OFFSET, tilt=dict(N=9, ks=0.2, ki=3)), "tilt", 0.1),
    (Rig("pan holds, leaning, cable", lean=-15 * DEG, on_tilt=OFFSET,
         pan=dict(cable="twist", cable_k=0.4, cable_centre=0.3)), "pan", 0.1),
    (Rig("stiff gears", on_tilt=OFFSET, pan=dict(k=1e5, d=4), tilt=dict(k=1e5, d=2, ks=0.3)), None, 0.05),
]


def main():
    batch, worst = sys.argv[1], 0.0
    with tempfile.TemporaryDirectory() as folder:
        for rig, hold, seconds in RUNS:
            ours = trace(batch, rig.write(pathlib.Path(folder)), hold, seconds)
            moves = [0.0 if name == hold else rig.move[name] for name in AXES]
            theirs = reference(rig, moves, seconds)
            assert len(ours["bus_A"]) == len(theirs), (rig.name, len(ours["bus_A"]), len(theirs))
            larger = max(moves)
            off = []
            for i, name in enumerate(AXES):
                size = moves[i] or larger
                off += [np.abs(ours[f"{name}_angle_rad"] - theirs[:, i]).max() / size,
                        np.abs(ours[f"{name}_motor_angle_rad"] - theirs[:, 2 + i]).max()
                        / rig.parts[name]["N"] / size]
            bus = np.abs(ours["bus_A"] - theirs[:, 4]).max()
            assert ours["bus_A"].max() <= rig.supply_A * (1 + 1e-12), f"{rig.name}: over the supply's limit"
            print(f"{rig.name}: {len(theirs)} samples, angles {max(off):.1e} of the move, bus current "
                  f"{bus:.1e} A (peak {ours['bus_A'].max():.3g} A)", flush=True)
            worst = max([worst, *off])
    print(f"worst {worst:.1e} of the move; allowed {TOLERANCE:.1e}")
    return 0 if worst <= TOLERANCE else 1


if __name__ == "__main__":
    sys.exit(main())
