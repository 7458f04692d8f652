"""Closed position loop, delay margins, the swing in the gap and advised gains, checked against the
sampled equations and against first harmonics taken numerically."""

import copy
import math

import numpy as np
from scipy.optimize import brentq, minimize_scalar

from _loops import Loops


def closed_figures(d):
    loops = Loops(d)
    f = {}
    for which, name in ((0, ""), (1, "position_")):
        crossings, _ = loops.margins(which)
        f[f"loop.{name}delay_margin"] = min(p / w for w, p, _ in crossings) if crossings else None
    if not is_stable(loops):
        return f | {"loop.bandwidth": None, "loop.position_peak": None}
    gain = lambda w: abs(1 - 1 / (1 + loops.responses(w)[1]))[0]
    half = math.pi / loops.dt
    w = np.geomspace(1e-4, 1 - 1e-9, 8000) * half  # the program looks from 1e-4 of it on
    for peak in loops.peaks[(loops.peaks > w[0]) & (loops.peaks < half)]:
        w = np.concatenate([w, peak * (1 + np.linspace(-0.02, 0.02, 801))])
    w = np.unique(w[w < half])
    gains = np.abs(1 - 1 / (1 + loops.responses(w)[1]))
    top = int(np.argmax(gains))
    best = gains[top]
    if 0 < top < len(w) - 1:
        found = minimize_scalar(lambda x: -gain(x), bounds=(w[top - 1], w[top + 1]), method="bounded",
                                options={"xatol": 1e-9 * w[top]})
        best = max(best, -found.fun)
    below = np.nonzero(gains < math.sqrt(0.5))[0]
    bandwidth = None
    if len(below) and below[0] > 0:
        bandwidth = brentq(lambda x: gain(x) - math.sqrt(0.5), w[below[0] - 1], w[below[0]])
    return f | {"loop.bandwidth": bandwidth, "loop.position_peak": float(best)}


def is_stable(loops):
    """As the program says: all margins positive."""
    for which in (0, 1):
        crossings, gains = loops.margins(which)
        if min([p for _, p, _ in crossings], default=1) <= 0 or min([g for _, g in gains], default=2) <= 1:
            return False
    return True


def first_harmonic(values, theta):
    return 2 * np.mean(values * np.exp(-1j * theta))


def swing_residual(d, amplitude, w, points=20000):
    """What is left of the motor's equation, of the order of the torques, for a sine of the load."""
    theta = 2 * math.pi * (np.arange(points) + 0.5) / points
    s, N, half = 1j * w, d.ratio, d.backlash / 2
    sine = lambda x: np.real(x * np.exp(1j * theta))
    speed = sine(s * amplitude)
    friction = d.coulomb * np.clip(speed / 0.01, -1, 1)
    load = s * (s * d.inertia + d.load_viscous) + d.cable_stiffness
    torque = load * amplitude + first_harmonic(friction, theta)
    # The twist whose dead zone lets this torque through: its phase is the torque's less that of k + d·s.
    coupling = d.stiffness + d.damping * s

    def passed(a):
        x = a * np.cos(theta)
        return abs(first_harmonic(x - np.clip(x, -half, half), theta)) - abs(torque / coupling)

    a = brentq(passed, half, 10 * half + 10 * abs(torque / coupling), xtol=1e-14 * half)
    motor = amplitude + a * (torque / coupling) / abs(torque / coupling)
    motor_speed = sine(s * N * motor)
    sat = np.clip(motor_speed / 0.5, -1, 1)
    tau = sine(torque)
    part = np.where(tau * motor_speed >= 0, 1 / d.efficiency - 1, 1 - d.back_efficiency)
    drag = first_harmonic(N * d.drag * sat, theta)
    loss = first_harmonic(np.abs(tau) * part * np.sign(motor_speed), theta)
    loss *= abs(first_harmonic(sat, theta)) / (4 / math.pi)  # fades with the drag near rest
    z, dt = np.exp(s / d.control_rate), 1 / d.control_rate
    keep = math.exp(-2 * math.pi * d.estimator_bandwidth * dt)
    lag = (1 - 1 / z) / (s * dt) / z / (1 + s / (2 * math.pi * d.current_bandwidth))
    controller = d.speed_gain + d.speed_integral_gain * dt / (z - 1)
    estimator = (1 - keep) * (1 - 1 / z) / dt / (1 - keep / z)
    measured = motor if d.at == "motor" else amplitude
    held = controller * lag * (estimator + d.position_gain) * measured
    rotor = N * N * s * (s * d.motor_inertia + d.gear_viscous) * motor
    return abs(held + rotor + drag + loss + torque) / (abs(held) + abs(rotor) + abs(torque))


def swing_faults(d, ours, axis, per_rad):
    amplitude, w, px = (ours[f"{axis}.gap.limit_cycle_{k}"] for k in ("amplitude", "frequency", "px"))
    if amplitude is None:
        return
    left = swing_residual(d, amplitude, w)
    # Harmonics are sums over 20 000 points with kinks: 1e-6 or so of the friction.
    if left > 1e-4:
        yield f"{axis}.gap.limit_cycle leaves {left:.1e} of the balance"
    if px is None or abs(px / (amplitude * per_rad) - 1) > 1e-9:
        yield f"{axis}.gap.limit_cycle_px is {px}, should be {amplitude * per_rad}"


def advice_faults(d, ours, axis):
    """The advised gains keep 45 degrees and a factor of two in the sampled loops."""
    position, speed, integral = (ours[f"{axis}.advice.{k}"] for k in
                                 ("position_gain", "speed_gain", "speed_integral_gain"))
    if speed is None:
        return
    e = copy.copy(d)
    e.position_gain, e.speed_gain, e.speed_integral_gain = position, speed, integral
    loops = Loops(e)
    for which, name in ((0, "speed"), (1, "position")):
        crossings, gains = loops.margins(which)
        phase = min([p for _, p, _ in crossings], default=9)
        gain = min([g for _, g in gains], default=9)
        if phase < math.radians(45) or gain < 2:
            yield f"{axis} advised {name} loop keeps {math.degrees(phase):.2f} deg and {gain:.3f}"
        # The program looks from 1e-4 of half the control rate on: a cable's spring may hold the gain
        # below one far under that.
        seen = [w for w, _, _ in crossings if w > 1e-4 * math.pi / loops.dt]
        if which == 0 and abs(ours[f"{axis}.advice.crossover"] / seen[0] - 1) > 2e-3:
            yield f"{axis}.advice.crossover is {ours[f'{axis}.advice.crossover']}, should be {seen[0]}"
    outside = [np.abs(p).max() for p in loops.closed_loop_poles()]
    if max(outside) > 1 + 1e-9:
        yield f"{axis} advised gains: a pole at {max(outside)}"
