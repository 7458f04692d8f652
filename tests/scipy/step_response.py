"""The step response of `gazewright-batch trace` against LSODA (SciPy's odeint) on section 5.

Between control samples the equations are integrated with rtol 1e-10 and steps of at most a quarter
sample; LSODA restarts at each sample and shortens its steps by itself at kinks and contacts. The
angle must agree within 0.02 % of the move at every sample. Tighter tolerances change the reference
itself by less than 5e-4 % of the move.

  python3 step_response.py BATCH_PROGRAM PROJECT_DIR"""

import math
import pathlib
import subprocess
import sys
import tempfile
import warnings

import numpy as np
from scipy.integrate import odeint

from _rig import DEG, Envelope, Rig

TOLERANCE = 2e-4  # of the move
warnings.simplefilter("error")  # odeint only warns where it gives up


def sat(x):
    return -1.0 if x < -1 else 1.0 if x > 1 else x


def equations(a, move, lag, friction=None, cogging=lambda motor: 0.0):
    """dy/dt of (φ_m, ω_m, φ, ω); `lag` holds the command and T_e's distance to it at t = 0.
    `friction` of the load's speed replaces Coulomb's, `cogging` pulls at the rotor."""
    rubs = friction or (lambda w: a["coulomb"] * sat(w / 0.01))
    envelope, N, half = Envelope(a), a["N"], a["backlash"] / 2
    rate = 2 * math.pi * a["current_bw"]

    def dydt(y, t):
        motor, w_m, angle, w = y
        T = envelope.clamp(lag[0] + lag[1] * math.exp(-rate * t), w_m)
        twist = motor / N - angle
        e = twist - max(-half, min(half, twist))
        tau = 0.0
        if e != 0:
            tau = a["k"] * e + a["d"] * (w_m / N - w)
            if tau * e < 0:
                tau = 0.0
        share = 1 / a["eta"] - 1 if tau * w_m >= 0 else 1 - a["back_eta"]
        loss = abs(tau) / N * share
        q = angle - move / 2
        pull = (a["g_cos"] * math.cos(q) + a["g_sin"] * math.sin(q)
                - a["cable_k"] * (q - a["cable_centre"]))
        return [w_m,
                (T - (a["drag"] + loss) * sat(w_m / 0.5) - a["viscous"] * w_m - tau / N
                 + cogging(motor)) / a["Jm"],
                w,
                (tau - rubs(w) - a["load_viscous"] * w + pull) / a["J"]]

    return dydt, envelope, rate


def reference(a, move, seconds, path=None, hmax=0.25, **slow):
    """Rows (angle, motor angle, current, speed) at the control samples. `path` of the time is what
    to follow, (angle, speed, acceleration); none: a step. `slow`: see equations."""
    lag = [0.0, 0.0]
    dydt, envelope, rate = equations(a, move, lag, **slow)
    inertia = a["J"] + a["N"]**2 * a["Jm"]
    N, dt = a["N"], 1 / a["rate"]
    count = 2 * math.pi / 2 ** a["bits"]
    most = N * min(a["Kt"] * a["i_max"], a["peak_Nm"] / (a["eta"] * N))
    blend = 1 - math.exp(-2 * math.pi * a["estimator_bw"] * dt)
    atol = 1e-13 * np.array([N, 100 * N, 1, 100])
    y, T_e, acting, integral, w_meas, last = np.zeros(4), 0.0, 0.0, 0.0, 0.0, None
    rows = []
    for k in range(int(seconds * a["rate"] + 0.5) + 1):
        rows.append((y[2], y[0], envelope.clamp(T_e, y[1]) / a["Kt"], y[3]))
        target, w_ref, acceleration = path(k * dt) if path else (move, 0.0, 0.0)
        shaft = y[2] if a["at"] == "output" else y[0]
        measured = math.floor(shaft / count) * count / (1 if a["at"] == "output" else N)
        if last is not None:
            w_meas += blend * ((measured - last) / dt - w_meas)
        last = measured
        wanted = max(-a["speed_limit"], min(a["speed_limit"], a["kp"] * (target - measured)
                                            + a["ff_speed"] * w_ref))
        error = wanted - w_meas
        u = a["ks"] * error + integral + a["ff_acceleration"] * inertia * acceleration
        T_out = max(-most, min(most, u))
        if u == T_out or u * error < 0:
            integral += a["ki"] * error * dt
        lag[0], lag[1] = acting, T_e - acting
        y = odeint(dydt, y, [0, dt], rtol=1e-10, atol=atol, hmax=dt * hmax, mxstep=200000)[1]
        T_e = acting + lag[1] * math.exp(-rate * dt)
        acting = T_out / N  # one sample late
    return np.array(rows)


def trace(batch, path, axis, seconds):
    done = subprocess.run([batch, "trace", str(path), "--axis", axis, "--for", f"{seconds} s"],
                          capture_output=True, text=True)
    if done.returncode != 0:
        raise SystemExit(f"trace {path} failed: {done.stderr}")
    lines = done.stdout.split()
    assert lines[0] == "time_s,angle_rad,speed_rad_s,motor_angle_rad,current_A,bus_A", lines[0]
    return np.array([[float(x) for x in line.split(",")] for line in lines[1:]])


LIGHT = [("camera", 0.02, (0.0, 0.0, 0.0), 0.03)]
RUNS = [  # rig, axis, seconds
    (Rig("everyday"), "pan", 0.6),
    (Rig("everyday", tilt=dict(N=9, ks=0.2, ki=3, limit_A=25)), "tilt", 0.6),
    (Rig("leaning, encoders at the output", lean=8 * DEG, pan=dict(at="output", ki=5),
         tilt=dict(at="output", bits=16, ki=5)), "pan", 0.4),
    (Rig("leaning, encoders at the output", lean=8 * DEG, tilt=dict(at="output", bits=16, ki=5)),
     "tilt", 0.4),
    (Rig("stiff gear, light load", tilt=dict(k=1e6, d=0.4, rotor=8e-7, gear_inertia=2e-7, ks=0.05,
                                             ki=1), on_tilt=LIGHT), "tilt", 0.12),
    (Rig("stiff gear, heavy load", pan=dict(k=1e6, d=20), supply_A=math.inf), "pan", 0.15),
    (Rig("tiny inertia, much friction", tilt=dict(coulomb=0.2, N=30),
         on_tilt=[("mirror", 0.002, (0.0, 0.0, 0.0), 0.01)]), "tilt", 0.12),
    (Rig("heavy damping", tilt=dict(d=300.0), on_tilt=LIGHT), "tilt", 0.12),
    (Rig("no gap, slow control, weak supply", pan=dict(backlash=0.0, rate=500.0, ks=0.25, ki=2,
                                                       estimator_bw=80.0, kp=12),
         supply_A=1.5), "pan", 0.6),
    (Rig("stiff cable", tilt=dict(N=9, ks=0.2, ki=3, cable="twist", cable_k=0.6, cable_centre=0.2,
                                  cable_friction=0.02)), "tilt", 0.6),
    (Rig("coil on a light load", tilt=dict(k=1e5, d=0.4, rotor=8e-7, gear_inertia=2e-7, ks=0.1, ki=2,
                                           cable="coil", cable_k=1.5, cable_centre=-0.1),
         on_tilt=LIGHT), "tilt", 0.3),
    (Rig("cable behind heavy damping", tilt=dict(d=300.0, cable="twist", cable_k=2.0), on_tilt=LIGHT),
     "tilt", 0.12),
]


def main():
    batch = sys.argv[1]
    worst = 0.0
    with tempfile.TemporaryDirectory() as folder:
        for rig, axis, seconds in RUNS:
            ours = trace(batch, rig.write(pathlib.Path(folder)), axis, seconds)
            a, move = rig.axis(axis), rig.move[axis]
            theirs = reference(a, move, seconds)
            assert len(ours) == len(theirs), (rig.name, len(ours), len(theirs))
            assert theirs[-1, 0] > 0.2 * move, f"{rig.name}: the reference hardly moves"
            angle = np.abs(ours[:, 1] - theirs[:, 0]).max() / move
            motor = np.abs(ours[:, 3] - theirs[:, 1]).max() / a["N"] / move
            current = np.abs(ours[:, 4] - theirs[:, 2]).max()
            print(f"{rig.name}, {axis}: {len(ours)} samples, angle {angle:.1e} and motor angle "
                  f"{motor:.1e} of the move, current {current:.1e} A", flush=True)
            worst = max(worst, angle, motor)
    print(f"worst {worst:.1e} of the move; allowed {TOLERANCE:.1e}")
    return 0 if worst <= TOLERANCE else 1


if __name__ == "__main__":
    sys.exit(main())
