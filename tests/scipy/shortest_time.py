"""move.shortest_time and ratio.best_time of `gazewright-batch figures` against DOP853.

The rigid train of section 5 is solved for the tooth torque by Brent's method at every call, both
ramps are integrated with rtol 1e-9, and the switch is where their speeds are equal at one angle.

  python3 shortest_time.py BATCH_PROGRAM PROJECT_DIR"""

import math
import pathlib
import sys
import tempfile

from scipy.integrate import solve_ivp
from scipy.optimize import brentq, minimize_scalar

from _rig import DEG, Envelope, Rig, figures

TOLERANCE = 1e-4


def sat(x):
    return max(-1.0, min(1.0, x))


def acceleration(a, T, w, pull):
    """dω/dt of the train with φ_m = Nφ: the τ for which motor and load accelerate alike."""
    N, w_m = a["N"], a["N"] * w

    def of_load(tau):
        return (tau - a["coulomb"] * sat(w / 0.01) - a["load_viscous"] * w + pull) / a["J"]

    def of_motor(tau):
        share = 1 / a["eta"] - 1 if tau * w_m >= 0 else 1 - a["back_eta"]
        loss = abs(tau) / N * share
        return (T - (a["drag"] + loss) * sat(w_m / 0.5) - a["viscous"] * w_m - tau / N) / a["Jm"]

    return of_load(brentq(lambda tau: of_load(tau) - of_motor(tau) / N, -1e5, 1e5, xtol=1e-13))


def ramp(a, move, rising):
    """Speed and angle over time, from rest; braking is run backwards from the target."""
    envelope = Envelope(a)

    def slope(_, y):
        w_m = a["N"] * y[1]
        i = envelope.driving_A(w_m) if rising else -envelope.braking_A(w_m)
        T = max(-envelope.gear_Nm, min(envelope.gear_Nm, a["Kt"] * i))
        q = y[0] - move / 2 if rising else move / 2 - y[0]
        pull = (a["g_cos"] * math.cos(q) + a["g_sin"] * math.sin(q)
                - a["cable_k"] * (q - a["cable_centre"]))
        alpha = acceleration(a, T, y[1], pull)
        return [y[1], alpha if rising else -alpha]

    def done(_, y):
        return y[0] - move

    done.terminal = True
    solved = solve_ivp(slope, (0, 100), [0.0, 0.0], method="DOP853", rtol=1e-9, atol=1e-12,
                       events=done, dense_output=True, max_step=0.02)
    assert solved.status == 1, solved.message
    return solved


def shortest_time(a, move):
    up, down = ramp(a, move, True), ramp(a, move, False)

    def at_angle(run, angle):
        t = brentq(lambda t: run.sol(t)[0] - angle, 0, run.t[-1], xtol=1e-14)
        return t, run.sol(t)[1]

    switch = brentq(lambda angle: at_angle(up, angle)[1] - at_angle(down, move - angle)[1],
                    1e-9 * move, (1 - 1e-9) * move, xtol=1e-11)
    return at_angle(up, switch)[0] + at_angle(down, move - switch)[0]


RIGS = [
    Rig("everyday", tilt=dict(N=9, limit_A=25)),
    Rig("weak supply, leaning", supply_A=1.5, lean=10 * DEG, pan=dict(N=40)),
    Rig("heavy head, long move", tilt_move=120 * DEG, pan_move=170 * DEG, supply_A=math.inf,
        on_tilt=[("head", 1.4, (0.02, 0.0, 0.03), 0.16)], pan=dict(R=0.015, N=60),
        tilt=dict(eta=0.7, back_eta=0.55, peak_Nm=5.0)),
    Rig("stiff cables", pan=dict(cable="coil", cable_k=1.5, cable_centre=-0.4, cable_friction=0.03),
        tilt=dict(N=9, cable="twist", cable_k=4.0, cable_centre=0.1)),
]


def main():
    batch, worst = sys.argv[1], 0.0
    with tempfile.TemporaryDirectory() as folder:
        for rig in RIGS:
            ours = figures(batch, rig.write(pathlib.Path(folder)))
            for axis in ("pan", "tilt"):
                a, move = rig.axis(axis), rig.move[axis]
                theirs = shortest_time(a, move)
                off = abs(ours[f"{axis}.move.shortest_time"] / theirs - 1)
                print(f"{rig.name}, {axis}: {theirs:.6f} s, off {off:.1e}", flush=True)
                worst = max(worst, off)
        a, move = RIGS[0].axis("pan"), RIGS[0].move["pan"]
        ratio = figures(batch, RIGS[0].write(pathlib.Path(folder)))["pan.ratio.best_time"]
        best = minimize_scalar(lambda x: shortest_time(dict(a, N=math.exp(x)), move),
                               bounds=(math.log(ratio / 2), math.log(ratio * 2)), method="bounded",
                               options=dict(xatol=1e-4))
        lost = shortest_time(dict(a, N=ratio), move) / best.fun - 1
        print(f"best ratio {math.exp(best.x):.3f}, ours {ratio:.3f}: {lost:.1e} slower")
        assert abs(ratio / math.exp(best.x) - 1) < 0.01
        worst = max(worst, lost)
    print(f"worst {worst:.1e}; allowed {TOLERANCE:.1e}")
    return 0 if worst <= TOLERANCE else 1


if __name__ == "__main__":
    sys.exit(main())
