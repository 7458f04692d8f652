"""What limits the move: shares of the step from the rows of its trace alone, with the controller run
over its angles, and of the fastest move from its own integration."""

import math

import numpy as np

NAMES = "current motor_current gear_torque voltage supply speed loop gap".split()


def current_name(d):
    return "motor_current" if d.peak_current < d.drive_current_limit else "current"


def cut_by(d, w_m, driving):
    """What keeps the current from being more, by the inequalities of section 5: the one that i is
    nearest to breaking."""
    i = float(d.driving_A(w_m) if driving else d.braking_A(w_m))
    if d.Kt * i > d.peak_torque / (d.efficiency * d.ratio):
        return "gear_torque"
    e, X, R = d._terms(w_m)
    if i >= d.largest_A * (1 - 1e-12):
        return current_name(d)
    if not driving:
        return "voltage"
    volts = math.hypot(R * i + e, X * i) / d.phase_V
    power = 1.5 * i * (R * i + e) / (d.voltage * d.supply_current_limit)
    return "voltage" if volts >= power else "supply"


def step_limits(d, loop_speed_limit, trace, move):
    """Name of the limit at each row (time, angle, speed, motor angle, current, bus current)."""
    N, dt = d.ratio, 1 / d.control_rate
    count = 2 * math.pi / 2**d.bits
    most = min(N * d.Kt * d.largest_A, d.peak_torque / d.efficiency)
    command_limit = "gear_torque" if d.peak_torque / d.efficiency < N * d.Kt * d.largest_A else current_name(d)
    blend = 1 - math.exp(-2 * math.pi * d.estimator_bandwidth * dt)
    left = math.exp(-2 * math.pi * d.current_bandwidth * dt)
    acting = T_e = integral = w_meas = 0.0
    last, cut, fast, names = None, False, False, []
    for _, angle, _, motor, current, bus in trace:
        if abs(T_e) > abs(current * d.Kt) * (1 + 1e-7) + 1e-12:
            # The bus gives 1.5·R·i² + Kt·i·ω_m.
            w_m = ((bus * d.voltage - 1.5 * d.phase_resistance * current**2) / (d.Kt * current)
                   if current else math.inf)
            names.append(cut_by(d, abs(w_m), T_e * w_m >= 0) if current else "voltage")
        else:
            apart = abs(motor / N - angle) < d.backlash / 2
            names.append(command_limit if cut else "speed" if fast else "gap" if apart else "loop")
        shaft = angle if d.at == "output" else motor
        measured = math.floor(shaft / count) * count / (1 if d.at == "output" else N)
        if last is not None:
            w_meas += blend * ((measured - last) / dt - w_meas)
        last = measured
        asked = d.position_gain * (move - measured)
        wanted = max(-loop_speed_limit, min(loop_speed_limit, asked))
        error = wanted - w_meas
        u = d.speed_gain * error + integral
        T_out = max(-most, min(most, u))
        if u == T_out or u * error < 0:
            integral += d.speed_integral_gain * error * dt
        T_e = acting + (T_e - acting) * left
        acting, cut, fast = T_out / N, u != T_out, wanted != asked
    return names


def step_shares(d, loop_speed_limit, trace, move, settle):
    """Parts of the time until `settle`; None where it never settles."""
    if settle is None:
        return {f"limits.{name}": None for name in NAMES}
    rows = trace[trace[:, 0] < settle]
    names = np.array(step_limits(d, loop_speed_limit, rows, move))
    time = np.diff(np.append(rows[:, 0], settle))
    return {f"limits.{name}": time[names == name].sum() / settle for name in NAMES}


def fastest_shares(d, ways):
    """Of both ways of the fastest move, as fastest_move gives them, on a fine grid."""
    names = NAMES[:5]
    if ways is None:
        return {f"limits.shortest_{name}": None for name in names}
    times = dict.fromkeys(names, 0.0)
    for (sol, end), driving in zip(ways, (True, False)):
        edges = np.linspace(0, end, 4001)
        for t in (edges[1:] + edges[:-1]) / 2:
            times[cut_by(d, d.ratio * max(sol(t)[1], 0.0), driving)] += edges[1]
    whole = sum(end for _, end in ways)
    return {f"limits.shortest_{name}": times[name] / whole for name in names}
