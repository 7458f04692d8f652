"""Heat of the motors anew: the step's trace for the losses, solve_ivp for the temperatures over the duty
and the times to the limit, matrices for what is steady. Without a list of moves: the task's pace."""

import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from _mass import scan_max
from _reference import TAU, travel
from _rig_text import value

KEYS = ("rms_current cyclic_duration_factor gear_loss winding_temperature housing_temperature mount_temperature "
        "magnet_temperature hold_current hold_temperature continuous_current stall_current intermittent_current "
        "short_time_current runaway_current time_to_limit time_at_1_5 time_at_2 time_at_3").split()
ALPHA, ICE, TWENTY = 1 / 255, 273.15, 293.15
CLASSES = {"A": 105, "E": 120, "B": 130, "F": 155, "H": 180, "N": 200}


class Motor:
    """Thermal numbers of one motor; `R` of a phase at 20 degC."""

    def __init__(self, rig, axis):
        m, air = rig[axis]["motor"], rig.get("surroundings", {}).get("temperature", "25 degC")
        self.R, self.all = value(m["phase_resistance"]), value(m["thermal_resistance"])
        self.tau, self.air = value(m["thermal_time"]), value(air) + ICE
        self.entered = "winding_to_housing" in m
        self.Rwh = value(m["winding_to_housing"]) if self.entered else 0.0
        self.tau_w = value(m.get("winding_time", "5 s"))
        self.mount = value(m["housing_to_mount"]) if "housing_to_mount" in m else 0.0
        self.limit = (value(m["winding_limit"]) if "winding_limit" in m else CLASSES[m["insulation"]]) + ICE
        self.has_magnets = "magnet_limit" in m

    def split(self):
        """Resistances and capacities with two nodes in any case."""
        Rwh = self.Rwh if self.entered else 0.4 * self.all
        Rha = self.all - Rwh
        return Rwh, Rha, self.tau_w / Rwh, self.tau / Rha

    def over_duty(self, pieces):
        """Hottest winding and housing once the duty repeats itself; None: it never does. Shooting: a cycle
        is an affine map, found from three beginnings."""
        Rwh, Rha = self.Rwh, self.all - self.Rwh
        Ch = self.tau / Rha

        def rate(t, x, copper, gear):
            warm = copper * (1 + ALPHA * (x[0] - TWENTY))
            if not self.entered:
                w = (warm + gear - (x[0] - self.air) / Rha) / Ch
                return [w, w]
            flow = (x[0] - x[1]) / Rwh
            return [(warm - flow) / (self.tau_w / Rwh), (flow + gear - (x[1] - self.air) / Rha) / Ch]

        def cycle(x, seen=None):
            for time, copper, gear in pieces:
                run = solve_ivp(rate, (0, time), x, args=(copper, gear), method="Radau", rtol=1e-10, atol=1e-8,
                                dense_output=seen is not None)
                if seen is not None:
                    seen.append(run.sol(np.linspace(0, time, 200)))
                x = run.y[:, -1]
            return x

        base = np.full(2, self.air)
        if self.entered:
            start = cycle(base)
            map_ = np.array([(cycle(base + 50 * e) - start) / 50 for e in np.eye(2)]).T
            if np.abs(np.linalg.eigvals(map_)).max() >= 1:
                return None
            x = base + np.linalg.solve(np.eye(2) - map_, start - base)
        else:  # both are one
            start, other = cycle(base)[0], cycle(base + 50)[0]
            gain = (other - start) / 50
            if gain >= 1:
                return None
            x = base + (start - self.air) / (1 - gain)
        seen = []
        cycle(x, seen)
        most = np.max(np.hstack(seen), axis=1)
        return most[0], most[1]

    def windings(self, worst, other):
        """Matrix and constant of worst winding, the others, housing, over 20 degC, with losses at 20 degC."""
        Rwh, Rha, Cw, Ch = self.split()
        R3, C3 = 3 * Rwh, Cw / 3
        A = np.array([[(worst * ALPHA - 1 / R3) / C3, 0, 1 / R3 / C3],
                      [0, (other * ALPHA - 1 / R3) / C3, 1 / R3 / C3],
                      [1 / R3 / Ch, 2 / R3 / Ch, -(3 / R3 + 1 / Rha) / Ch]])
        return A, np.array([worst / C3, other / C3, (self.air - TWENTY) / Rha / Ch])

    def steady(self, worst, other):
        A, b = self.windings(worst, other)
        if np.linalg.eigvals(A).real.max() >= 0:
            return None
        return np.linalg.solve(A, -b) + TWENTY

    def lasting(self):
        """By the balance at the limit: what leaves is what comes."""
        if self.limit <= self.air:
            return None
        heat = (self.limit - self.air) / self.all
        return math.sqrt(heat / (1.5 * self.R * (1 + ALPHA * (self.limit - TWENTY))))

    def stall(self):
        if self.limit <= self.air:
            return None

        def over(i):
            at = self.steady(self.R * i * i, self.R * i * i / 4)
            return 1.0 if at is None else min(at[0] - self.limit, 1.0)

        return brentq(over, 0, self.lasting() * 1.01, xtol=1e-14, rtol=1e-13)

    def bears(self, on, off, lasting, largest):
        """Largest turning current that keeps the winding to its limit: once from cold (off None), or again and
        again. Over the air, by eigenvectors: the program has a series."""
        Rwh, Rha, Cw, Ch = self.split()

        def flow(i, time):
            loss = 1.5 * self.R * i * i
            A = np.array([[(loss * ALPHA - 1 / Rwh) / Cw, 1 / Rwh / Cw], [1 / Rwh / Ch, -(1 / Rwh + 1 / Rha) / Ch]])
            rest = np.linalg.solve(A, [-loss * (1 + ALPHA * (self.air - TWENTY)) / Cw, 0])
            rates, V = np.linalg.eig(A)
            gain = (V * np.exp(np.minimum(rates * time, 600))) @ np.linalg.inv(V)
            return gain, rest - gain @ rest

        def over(i):
            gain, hottest = flow(i, on)
            if off is not None:
                gain = gain @ flow(0, off)[0]
                if np.abs(np.linalg.eigvals(gain)).max() >= 1:
                    return 1.0
                hottest = np.linalg.solve(np.eye(2) - gain, hottest)
            return min(hottest[0] - (self.limit - self.air), 1.0)

        if lasting >= largest or over(largest) <= 0:
            return largest
        return brentq(over, lasting * (1 - 1e-9), largest, xtol=1e-14, rtol=1e-13)

    def time_to_limit(self, worst, other):
        at = self.steady(worst, other)
        if at is not None and at[0] <= self.limit:
            return None
        A, b = self.windings(worst, other)
        event = lambda t, x: x[0] - (self.limit - TWENTY)
        event.terminal = True
        run = solve_ivp(lambda t, x: A @ x + b, (0, 1e7), np.full(3, self.air - TWENTY), method="Radau", jac=A,
                        rtol=1e-10, atol=1e-8, events=event)
        return run.t_events[0][0]


def hold_pull(rig, masses, axis, d):
    """Largest torque of gravity and cables: between the own stops, without stops over the cables' travel and
    at least a turn; the other axis anywhere between its stops."""
    def between(name):
        stops, _, cable, _ = travel(rig[name])
        span = stops
        if math.isinf(stops):
            span = max(TAU, cable) if name == axis and not math.isinf(cable) else TAU
        centre = 0.0 if rig[name]["stops"] == "none" else value(rig[name]["stops"]["centre"])
        return centre - span / 2, centre + span / 2

    def pull(pan, tilt):
        own = pan if axis == "pan" else tilt
        return np.abs(masses.gravity(axis, pan, tilt) - d.cable_stiffness * (own - d.cable_centre))

    return scan_max(pull, [between("pan"), between("tilt")], 401)


def horizon(settle):
    return 6 if settle is None or settle > 1.4 else 2 if settle > 0.42 else 0.6


def current_means(d, time, i, w):
    """The integrals of i^2 and of torque times speed. Within a sample the current is exponential, by the lag
    of section 5, and straight where the envelope holds both its ends."""
    h, rate = time[1] - time[0], d.current_bandwidth * TAU
    most = np.where(i * w >= 0, d.driving_A(np.abs(w)), d.braking_A(np.abs(w)))
    held = np.abs(i) >= most * (1 - 1e-6)
    held = held[:-1] & held[1:]
    # Gauss's rule of order 8 over the sample.
    nodes, weights = np.polynomial.legendre.leggauss(8)
    part = ((nodes + 1) / 2)[:, None]
    r = math.exp(-rate * h)
    command = (i[1:] - i[:-1] * r) / (1 - r)
    bent = command + (i[:-1] - command) * np.exp(-rate * h * part)
    current = np.where(held, i[:-1] + (i[1:] - i[:-1]) * part, bent)
    speed = w[:-1] + (w[1:] - w[:-1]) * part
    mean = lambda y: h * float((weights[:, None] / 2 * y).sum())
    return mean(current**2), d.Kt * mean(current * speed)


def pieces_of(rig, d, traces, settles, axis, move, hold):
    """(time, copper loss at 20 degC, gear loss) of moving and resting, RMS current, time in motion, cycle."""
    time, angle, speed, motor, current, bus = traces[axis].T
    pace = value(rig["task"]["duty"]["moves_per_minute"])
    # A move's own length is that of nine tenths of its way; settling is not waited for.
    come = {a: next((t for t, x in traces[a][:, :2] if x >= 0.9 * value(rig["task"][a + "_move"])), 0.0)
            for a in settles}
    cycle = max(60 / pace, *come.values())
    both = min(max(s if s is not None else come[a] for a, s in settles.items()), cycle)
    rest = cycle - both
    seen = min(max(time[-1], both), both + rest)
    rows = time <= min(seen, time[-1]) * (1 + 1e-12)
    over = lambda y: np.trapezoid(y[rows], time[rows]) if hasattr(np, "trapezoid") else np.trapz(y[rows], time[rows])
    motor_speed = np.gradient(motor, time)
    i2, shaft = current_means(d, time[rows], current[rows], motor_speed[rows])
    copper = 1.5 * d.phase_resistance * i2
    # The gear has what the bus gave and nothing else took.
    friction = over(np.abs(speed) * d.coulomb * np.minimum(np.abs(speed) / 0.01, 1) + d.load_viscous * speed**2)
    lifted = over(-d.pull(angle - move / 2) * speed)
    twist = motor / d.ratio - angle
    spring = d.stiffness / 2 * np.maximum(np.abs(twist) - d.backlash / 2, 0)**2
    stored = (d.motor_inertia * motor_speed**2 + d.inertia * speed**2) / 2 + spring
    gear = shaft - friction - lifted - stored[rows][-1]
    if settles[axis] is None:
        hold = max(hold, math.sqrt(np.mean(current[int(0.7 * len(current)):]**2)))
    i2 += hold**2 * max(seen - time[-1], 0)
    pieces = [(seen, 1.5 * d.phase_resistance * i2 / seen, max(gear, 0) / seen)]
    left = both + rest - seen
    if left > 0:
        pieces.append((left, 1.5 * d.phase_resistance * hold**2, 0.0))
    moving = cycle if settles[axis] is None else min(settles[axis], cycle)
    return pieces, math.sqrt((i2 + hold**2 * left) / cycle), moving, cycle


def heat_figures(rig, masses, axis, d, traces, settles):
    """All of KEYS; None where there is no value."""
    m, f = Motor(rig, axis), dict.fromkeys(KEYS)
    move = value(rig["task"][axis + "_move"])
    current_of = lambda torque: min(abs(torque) / (d.ratio * d.Kt), d.largest_A)
    f["hold_current"] = current_of(hold_pull(rig, masses, axis, d))
    loss = m.R * f["hold_current"]**2
    held = m.steady(loss, loss / 4)
    f["hold_temperature"] = None if held is None else held[0]
    f["continuous_current"], f["stall_current"] = m.lasting(), m.stall()
    f["runaway_current"] = math.sqrt(255 / m.all / 1.5 / m.R)
    loss = m.R * d.largest_A**2
    f["time_to_limit"] = m.time_to_limit(loss, loss / 4)
    if f["continuous_current"]:
        f["short_time_current"] = m.bears(600, None, f["continuous_current"], d.largest_A)
        for key, k in (("time_at_1_5", 1.5), ("time_at_2", 2), ("time_at_3", 3)):
            loss = m.R * (k * f["continuous_current"])**2 / 2
            f[key] = m.time_to_limit(loss, loss)
    if abs(traces[axis][-1, 1]) > 100 * move:
        return f
    rests = max(current_of(d.pull(move / 2)), current_of(d.pull(-move / 2)))
    pieces, f["rms_current"], moving, cycle = pieces_of(rig, d, traces, settles, axis, move, rests)
    f["cyclic_duration_factor"] = moving / cycle
    f["gear_loss"] = sum(t * g for t, _, g in pieces) / cycle
    if f["continuous_current"]:
        f["intermittent_current"] = m.bears(moving, cycle - moving, f["continuous_current"], d.largest_A)
    at = m.over_duty(pieces)
    if at is not None:
        f["winding_temperature"], housing = at
        f["mount_temperature"] = max(housing - m.mount * 0.5 * (housing - m.air) / (m.all - m.Rwh), m.air)
        if m.entered:
            f["housing_temperature"] = housing
            if m.has_magnets:
                f["magnet_temperature"] = (at[0] + housing) / 2
    return f
