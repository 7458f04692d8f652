"""One axis with its train rigid, from section 5: envelope, rest-to-rest move.

ODEs by SciPy's LSODA; the scan over ratios by Runge-Kutta on a grid of its own."""

import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, minimize_scalar


def sat(x):
    return np.clip(x, -1, 1)


class Drive:
    """Numbers of one axis in SI and what its motor can give."""

    def __init__(self, numbers, inertia, gravity):
        self.__dict__.update(numbers)
        self.inertia, self.gravity = inertia, gravity  # gravity(φ) at the angle from the rest pose
        self.Kt = math.sqrt(3) / 2 / self.speed_constant
        self.motor_inertia = self.rotor_inertia + self.gear_inertia
        self.phase_V = self.modulation_limit * self.voltage / math.sqrt(3)
        self.largest_A = min(self.drive_current_limit, self.peak_current)

    def pull(self, angle):
        """Gravity and cables."""
        return self.gravity(angle) - self.cable_stiffness * (angle - self.cable_centre)

    def _terms(self, w_m):
        """Back-EMF, reactance and resistance of a phase."""
        return self.Kt * w_m / 1.5, self.pole_pairs * w_m * self.phase_inductance, self.phase_resistance

    def driving_A(self, w_m):
        e, X, R = self._terms(w_m)
        Z2 = R * R + X * X
        room = self.phase_V**2 - e * e
        root = np.sqrt(np.maximum(R * R * e * e + Z2 * room, 0))
        bus = np.where(room > 0, (root - R * e) / Z2, 0.0)
        power = self.voltage * self.supply_current_limit
        supply = np.inf if math.isinf(power) else (np.sqrt(e * e + 4 * R * power / 1.5) - e) / (2 * R)
        return np.minimum(np.minimum(bus, supply), self.largest_A)

    def braking_A(self, w_m):
        e, X, R = self._terms(w_m)
        Z2 = R * R + X * X
        under = R * R * e * e + Z2 * (self.phase_V**2 - e * e)
        root = (R * e + np.sqrt(np.maximum(under, 0))) / Z2
        return np.where(under >= 0, np.minimum(root, self.largest_A), 0.0)

    def meets_envelope(self, i, w_m):
        """Section 5's three inequalities as they stand, driving."""
        e, X, R = self._terms(w_m)
        return (i <= self.largest_A and (R * i + e)**2 + (X * i)**2 <= self.phase_V**2
                and 1.5 * i * (R * i + e) <= self.voltage * self.supply_current_limit)

    def stall_A(self):
        """By bisection on the inequalities."""
        low, high = 0.0, self.largest_A
        if self.meets_envelope(high, 0.0):
            return high
        for _ in range(100):
            i = (low + high) / 2
            low, high = (i, high) if self.meets_envelope(i, 0.0) else (low, i)
        return low

    def torque_stall(self):
        return min(self.efficiency * self.ratio * self.Kt * self.stall_A(), self.peak_torque)

    def speed_top(self):
        zero = brentq(lambda w: self.phase_V - self.Kt * w / 1.5, 0, 10 * self.phase_V / self.Kt,
                      xtol=1e-13, rtol=1e-14)
        return min(zero / self.ratio, self.input_speed_limit / self.ratio, self.drive_speed_limit)

    def load_and_rotor(self):
        return self.inertia + self.ratio**2 * self.motor_inertia

    def peak_acceleration(self, ratio, capped=True):
        T = self.efficiency * ratio * self.Kt * self.stall_A()
        T = min(T, self.peak_torque) if capped else T
        return ((T - self.coulomb - abs(self.gravity(0.0)))
                / (self.inertia + self.efficiency * ratio**2 * self.motor_inertia))

    def best_acceleration_ratio(self):
        x = np.linspace(math.log(1e-2), math.log(1e4), 2001)
        a = [self.peak_acceleration(math.exp(v), False) for v in x]
        k = int(np.argmax(a))
        best = minimize_scalar(lambda v: -self.peak_acceleration(math.exp(v), False),
                               bounds=(x[k - 1], x[k + 1]), method="bounded",
                               options=dict(xatol=1e-12))
        return math.exp(best.x)

    def acceleration(self, N, T_m, w, angle, full=False):
        """dω/dt of the rigid train at motor torque T_m and w >= 0: motor and load with τ between
        them. `full`: friction does not fade towards rest.

        Driving (τ >= 0) and driven back are tried; τ's sign must be the one that was assumed."""
        w_m = N * w
        slow, rubs = (1.0, 1.0) if full else (sat(w_m / 0.5), sat(w / 0.01))
        # τ = J·a + load
        load = self.coulomb * rubs + self.load_viscous * w - self.pull(angle)
        motor = T_m - self.drag * slow - self.gear_viscous * w_m
        result = []
        for share in (1 + (1 / self.efficiency - 1) * slow, 1 - (1 - self.back_efficiency) * slow):
            inertia = self.motor_inertia * N + share * self.inertia / N
            result.append((motor - share * load / N) / inertia)
        return np.where(self.inertia * result[0] + load >= 0, result[0], result[1])

    def torque(self, N, w, way):
        """The end of the envelope that drives (way +1) or brakes (-1) at w >= 0."""
        i = self.driving_A(N * w) if way > 0 else self.braking_A(N * w)
        return way * np.minimum(self.Kt * i, self.peak_torque / (self.efficiency * N))


def fastest_move(d, move, N):
    """From the start forwards and from the end backwards until speeds meet: both ways' (angle,
    speed) against time, and the times that they take; None where it cannot."""

    def run(way, place, most=math.inf):
        """Way and speed against time from the start, or back from the end, up to speed `most`."""
        def rate(t, y):
            w = max(y[1], 0.0)
            return [w, way * float(d.acceleration(N, float(d.torque(N, w, way)), w, place(y[0])))]

        arrived = lambda t, y: y[0] - move
        too_fast = lambda t, y: y[1] - min(most, 1e9)
        arrived.terminal = too_fast.terminal = True
        if rate(0, [0.0, 0.0])[1] <= 0:
            return None
        guess = 10 * math.sqrt(2 * move / rate(0, [0.0, 0.0])[1]) + 100 * move / d.speed_top()
        return solve_ivp(rate, (0, guess), [0.0, 0.0], events=(arrived, too_fast), rtol=1e-8,
                         atol=1e-11, dense_output=True, method="LSODA", first_step=1e-7,
                         max_step=guess / 50)

    out = run(+1, lambda x: x - move / 2)
    back = out and run(-1, lambda x: move / 2 - x, 1.001 * out.y[1].max())
    if out is None or back is None:
        return None

    def time_back(rest):
        return brentq(lambda t: back.sol(t)[0] - rest, 0, back.t[-1], xtol=1e-13)

    def gap(t):
        x, w = out.sol(t)
        rest = move - x
        return w - (back.sol(time_back(max(rest, 0.0)))[1] if rest < back.y[0, -1] else math.inf)

    t = brentq(gap, 0, out.t[-1], xtol=1e-12)
    return (out.sol, t), (back.sol, time_back(move - out.sol(t)[0]))


def scan_times(d, move, ratios, steps=300):
    """Shortest times for many ratios at once: u = ω²/2 against s with way = move·s², regular at
    rest."""
    N = np.asarray(ratios, float)
    s = np.linspace(0, 1, steps + 1)

    def run(way):
        def slope(at, u):
            w, x = np.sqrt(2 * np.maximum(u, 0)), move * at * at
            place = x - move / 2 if way > 0 else move / 2 - x
            a = way * d.acceleration(N, d.torque(N, w, way), w, place)
            return np.where((u <= 0) & (a < 0), 0.0, a) * 2 * move * at

        u, rows = np.zeros_like(N), [np.zeros_like(N)]
        for a, b in zip(s, s[1:]):
            h = b - a
            k1 = slope(a, u)
            k2 = slope(a + h / 2, u + h / 2 * k1)
            k3 = slope(a + h / 2, u + h / 2 * k2)
            k4 = slope(b, u + h * k3)
            u = np.maximum(u + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4), 0)
            rows.append(u)
        return np.array(rows)

    out, back, times = run(+1), run(-1), []
    for k in range(len(N)):
        v_out, v_back = (np.sqrt(2 * u[1:, k]) / s[1:] for u in (out, back))
        if not (v_out.min() > 0 and v_back.min() > 0):
            times.append(math.inf)
            continue
        # dt = dx/ω; x = move·s² and ω = s·v with v smooth, so dt = 2·move/v ds
        ways = []
        for v in (v_out, v_back):
            time = np.concatenate([[0], np.cumsum(2 * move * np.diff(s) / _middle(v))])
            speed = np.concatenate([[0], s[1:] * v])
            ways.append((time, speed))

        def at(p, k):
            """Time and speed of both ways at way p from the start (k = 0, 1)."""
            places = math.sqrt(p / move), math.sqrt((move - p) / move)
            return [np.interp(place, s, way[k]) for place, way in zip(places, ways)]

        p = brentq(lambda p: at(p, 1)[0] - at(p, 1)[1], 0, move)
        times.append(sum(at(p, 0)))
    return np.array(times)


def _middle(v):
    """v half-way between grid points; the value at rest is taken from the first one."""
    full = np.concatenate([[v[0]], v])
    return (full[1:] + full[:-1]) / 2
