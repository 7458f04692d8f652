"""How an axis slows down: braked, with open and with shorted phases. Against time, by SciPy. SI."""

import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from _mass import scan_max
from _rig_text import value
from _rigid import Drive

TAU = 2 * math.pi
EXACT = dict(rtol=1e-10, atol=1e-12, method="DOP853")


class Slowing:
    """The rigid train going one way under a motor torque -brake(ω) and a torque that pushes on."""

    def __init__(self, d, brake):
        self.train = Drive.__new__(Drive)
        self.train.__dict__.update(d.__dict__, pull=lambda push: push)
        self.brake, self.N = brake, d.ratio

    def rate(self, w, push):
        """dω/dt at w >= 0; at rest as just turning, friction in full."""
        return self.train.acceleration(self.N, -self.brake(w), w, push, full=True)

    def angle(self, speed, push):
        """Way until rest; None where some speed is never left."""
        slowest = self.rate(np.linspace(0, speed, 20001), push).max()
        if slowest >= 0:
            return None

        stopped = lambda t, y: y[1]
        stopped.terminal, stopped.direction = True, -1
        done = solve_ivp(lambda t, y: [y[1], float(self.rate(max(y[1], 0.0), push))],
                         (0, 1.01 * speed / -slowest), [0.0, speed], events=stopped, **EXACT)
        assert done.status == 1
        return done.y[0, -1]

    def speed_after(self, room, speed, push):
        """What is left of the speed after `room`; 0 where it stands before."""
        if room == 0:
            return speed
        stopped, through = lambda t, y: y[1], lambda t, y: y[0] - room
        stopped.terminal = through.terminal = True
        stopped.direction = -1
        done = solve_ivp(lambda t, y: [y[1], float(self.rate(max(y[1], 0.0), push))],
                         (0, 1e4 * room / speed), [0.0, speed], events=(stopped, through), **EXACT)
        assert done.status == 1
        return done.y[1, -1] if len(done.t_events[1]) else 0.0


def braking(d):
    return Slowing(d, lambda w: -d.torque(d.ratio, w, -1))


def coasting(d):
    return Slowing(d, lambda w: 0 * w)


def shorted(d):
    """The current that the back-EMF drives through R + jX: its part in step makes the torque."""
    def brake(w):
        e, X, R = d._terms(d.ratio * w)
        return d.Kt * np.real(e / (R + 1j * X))

    return Slowing(d, brake)


def worst_pull(d, centre, stops, cable):
    """Gravity and cables between the stops; without stops as far as the cables go, at least a turn."""
    span = stops if math.isfinite(stops) else max(TAU, cable if math.isfinite(cable) else 0)
    return scan_max(lambda q: np.abs(d.pull(q)), [(centre - span / 2, centre + span / 2)], 801)


def coast_into_stop(d, centre, stops, soft, top):
    """Largest speed into either stop, power dropped at the speed `top` at many places between the soft
    limits, those about the worst looked at more closely. Along the way, 2·ω·dω = 2·rate·dφ."""
    free = coasting(d)

    def arrive(starts, way):
        """`starts`: ways before the stop."""
        def slope(s, u):
            at = centre + way * (stops / 2 - starts * (1 - s))
            rate = free.rate(np.sqrt(np.maximum(u, 0)), way * d.pull(at))
            return np.where((u <= 0) & (rate < 0), 0.0, 2 * rate * starts)

        # Where one comes to rest the slope has a jump, which the error control has to find.
        done = solve_ivp(slope, (0, 1), np.full(len(starts), top * top), method="RK45", rtol=1e-8,
                         atol=1e-10 * top * top)
        return np.sqrt(np.maximum(done.y[:, -1], 0))

    worst, room = 0.0, (stops - soft) / 2
    for way in (1, -1):
        least, most = room, room + soft
        for n in (65, 17, 17):
            starts = np.linspace(least, most, n)
            speeds = arrive(starts, way)
            k = int(speeds.argmax())
            worst = max(worst, speeds[k])
            step = starts[1] - starts[0]
            least, most = max(starts[k] - step, room), min(starts[k] + step, room + soft)
    return worst


def holding_torque(d):
    """The push at which an open axis that just turns neither gains nor loses speed."""
    free = coasting(d)
    return brentq(lambda push: float(free.rate(0.0, push)), 0, 1e4, xtol=1e-14, rtol=1e-14)


def slowing_figures(a, d, stops, soft, cable):
    """`stops`, `soft`, `cable`: travel, inf for none."""
    none = math.isinf(stops)
    centre = 0.0 if none else value(a["stops"]["centre"])
    worst, top = worst_pull(d, centre, stops, cable), d.speed_top()
    asked = min(top, value(a["loop"]["speed_limit"]))
    limit = braking(d).angle(asked, worst)
    late = asked * (2 / d.control_rate + 1 / (TAU * d.current_bandwidth))
    f = {"travel.braking_angle": braking(d).angle(top, worst),
         "travel.braking_angle_limit": limit,
         "travel.least_inset": None if limit is None else limit + late,
         "travel.speed_at_stop": None, "power_off.stop_speed": None,
         "power_off.limited_stop_speed": None,
         "power_off.coast_angle": coasting(d).angle(top, worst),
         "power_off.shorted_angle": shorted(d).angle(top, worst),
         "power_off.holding_torque": holding_torque(d)}
    if not none:
        inset = value(a["stops"]["soft_inset"])
        f["travel.speed_at_stop"] = braking(d).speed_after(inset, asked, worst)
        f["power_off.stop_speed"] = coast_into_stop(d, centre, stops, soft, top)
        f["power_off.limited_stop_speed"] = coast_into_stop(d, centre, stops, soft, asked)
    return f
