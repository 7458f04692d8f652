"""The blow into a stop: roots of the energy balance, the gear's spring step by step. SI."""

import copy
import math

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq

from _rig_text import value

# Tensile strength in MPa, the least of the handbook's table.
LEAST_MPA = {"pla": 40, "petg": 35, "asa": 32, "nylon": 35, "polycarbonate": 45, "aluminium": 140,
             "steel": 235}
# The program gives the gear's swing up where it would take more than 5000 steps, 20 a radian over
# three quarters of the slow swing.
FAST_OVER_SLOW = 5000 / 20 / (1.5 * math.pi)


class Spring:
    def __init__(self, soft, travel, hard):
        self.soft, self.travel, self.hard = soft, travel, hard

    def torque(self, x):
        x = max(x, 0.0)
        return self.soft * min(x, self.travel) + (self.hard * (x - self.travel)
                                                  if x > self.travel else 0.0)

    def energy(self, x):
        ends = [0.0] + [e for e in (self.travel,) if e < x] + [x]
        return sum(quad(self.torque, a, b, epsrel=1e-12)[0] for a, b in zip(ends, ends[1:]))

    def press(self, inertia, speed, push):
        """How deep it goes until the energy is in the spring; a deeper one than that is tried
        first."""
        if speed <= 0:
            return 0.0
        left = lambda x: inertia * speed * speed / 2 + push * x - self.energy(x)
        deep = 1e-6
        while left(deep) > 0:
            deep *= 2
        return brentq(left, deep / 2, deep, xtol=1e-16, rtol=1e-13)


def _rates(k, g, J_L, J_R):
    """Rates of both swings of the pressed train."""
    return np.sqrt(np.sort(np.linalg.eigvals([[(k + g) / J_L, -g / J_L], [-g / J_R, g / J_R]])))


def sprung_gear_torque(spring, J_L, J_R, g, speed, push, rebound):
    """Peak in the gear over three quarters of the slow swing; None where it is given up.

    What the stop bears jumps as the load turns round, so each way is integrated on its own: in,
    out, clear of the stop, and stuck between what the stop presses and what it gives back."""
    hard = spring.soft if math.isinf(spring.travel) else max(spring.soft, spring.hard)
    slow = _rates(spring.soft, g, J_L, J_R)[0]
    if _rates(hard, g, J_L, J_R)[1] / slow > FAST_OVER_SLOW:
        return None
    end = 1.5 * math.pi / slow
    back = rebound**2
    gear = lambda y: g * (y[1] - y[0])
    give = {"in": 1.0, "out": back, "clear": 0.0}

    def rate(way):
        def f(t, y):
            load = 0.0 if way == "stuck" else gear(y) - give[way] * spring.torque(y[0])
            return [y[2], y[3], load / J_L, (push - gear(y)) / J_R]
        return f

    def event(f, direction):
        g = lambda t, y: f(y)
        g.terminal, g.direction = True, direction
        return g

    events = {"in": [event(lambda y: y[2], -1)],
              "out": [event(lambda y: y[2], 1), event(lambda y: y[0], -1)],
              "clear": [event(lambda y: y[0], 1)],
              "stuck": [event(lambda y: gear(y) - spring.torque(y[0]), 1),
                        event(lambda y: gear(y) - back * spring.torque(y[0]), -1)]}
    t, way, peak = 0.0, "in", -math.inf
    y = np.array([0.0, push * J_L / (J_L + J_R) / g, speed, speed])
    for _ in range(1000):
        done = solve_ivp(rate(way), (t, end), y, events=events[way], method="DOP853", rtol=1e-10,
                         atol=1e-13, dense_output=True)
        times = np.linspace(t, done.t[-1], 4001)
        peak = max(peak, gear(done.sol(times)).max())
        if done.status != 1:
            return peak
        t, y = done.t[-1], done.y[:, -1].copy()
        if way == "out" and len(done.t_events[1]):
            y[0], way = 0.0, "clear"
        elif way == "clear":
            y[0], way = 0.0, "in"
        else:  # at rest: it goes on where what pulls is more than the stop bears
            y[2] = 0.0
            stop = spring.torque(y[0])
            pushed_in = way == "stuck" and len(done.t_events[0]) or gear(y) > stop
            sprung_out = way == "stuck" and len(done.t_events[1]) or gear(y) < back * stop
            way = "in" if pushed_in else "out" if sprung_out else "stuck"
    raise AssertionError("it goes to and fro without end")


def _tab(s, force):
    """Stresses in the tab: bending from the moment over the section's second moment."""
    f = {"stop.tab_bending": None, "stop.tab_shear": None}
    if "tab_thickness" not in s:
        return f
    width, thick = value(s["tab_width"]), value(s["tab_thickness"])
    if s.get("kind") == "trailing":
        width = min(width, value(s["trailer_width"]))
    f["stop.tab_shear"] = force / (width * thick)
    if "tab_height" in s:
        second = quad(lambda y: thick * y * y, -width / 2, width / 2)[0]
        f["stop.tab_bending"] = force * value(s["tab_height"]) * (width / 2) / second
    return f


def _strength(s):
    if "tab_strength" not in s:
        return LEAST_MPA[s["material"]] * 1e6 if "material" in s else None
    given = s["tab_strength"]
    spread = given.get("spread", "0 %") if isinstance(given, dict) else "0 %"
    part = value(spread)
    return value(given) * (1 - part) if spread.endswith("%") else value(given) - part


KEYS = ("energy energy_load energy_rotor energy_soft_load energy_soft_rotor torque torque_pushing "
        "torque_dead torque_soft_pushing torque_soft_dead press bumper_needed gear_torque "
        "gear_torque_sprung gear_torque_hard rebound_speed rebound_energy tab_bending tab_shear "
        "tab_strength runaway_speed runaway_energy").split()


def runaway_speed(d, way):
    """From rest under the full driving torque, neither gravity nor cables nor a speed limit."""
    loose = copy.copy(d)
    loose.pull = lambda angle: 0.0
    gains = lambda w, full=False: float(loose.acceleration(d.ratio, float(loose.torque(d.ratio, w, +1)), w, 0.0, full))
    if gains(0.0, True) <= 0:
        return 0.0
    arrived = lambda t, y: y[0] - way
    arrived.terminal = True
    out = solve_ivp(lambda t, y: [y[1], gains(max(y[1], 0.0))], (0, 1e4), [0.0, 0.0], events=arrived, rtol=1e-9,
                    atol=1e-12, method="LSODA", first_step=1e-7)
    return out.y[1, -1]


def stop_figures(s, d, soft_speed, stops, soft):
    """`soft_speed`: what is left of the speed past the soft limit."""
    f = {f"stop.{key}": None for key in KEYS}
    if s == "none":
        return f
    top, push, J_L = d.speed_top(), d.torque_stall(), d.inertia
    J_R, k, rebound = d.ratio**2 * d.motor_inertia, value(s["stiffness"]), float(s.get("rebound", 0.5))
    J = J_L + J_R
    spring = Spring(k, value(s.get("bumper_travel", "none")), value(s.get("hard_stiffness", "0 N.m/rad")))
    for name, speed in (("energy", top), ("energy_soft", soft_speed)):
        f[f"stop.{name}_load"], f[f"stop.{name}_rotor"] = J_L * speed**2 / 2, J_R * speed**2 / 2
    f["stop.energy"] = J * top**2 / 2
    f["stop.runaway_speed"] = runaway_speed(d, (stops + soft) / 2)
    f["stop.runaway_energy"] = J * f["stop.runaway_speed"]**2 / 2
    f["stop.torque"] = Spring(k, math.inf, 0).press(J, top, 0) * k + push
    f["stop.press"] = spring.press(J, top, push)
    for name, speed in (("", top), ("soft_", soft_speed)):
        f[f"stop.torque_{name}pushing"] = spring.torque(spring.press(J, speed, push))
        f[f"stop.torque_{name}dead"] = spring.torque(spring.press(J, speed, 0))
    if math.isfinite(spring.travel):
        f["stop.bumper_needed"] = Spring(k, math.inf, 0).press(J, top, push)
    # Gear torque G and the slowing of both: J_L·a = G - stop, J_R·a = T - G.
    pushing = f["stop.torque_pushing"]
    f["stop.gear_torque"] = np.linalg.solve([[J_L, -1], [J_R, 1]], [-pushing, push])[1]
    f["stop.gear_torque_sprung"] = sprung_gear_torque(spring, J_L, J_R, d.stiffness, top, push,
                                                      rebound)
    # All that the rotor brings and the load got back is in the gear's spring.
    f["stop.gear_torque_hard"] = d.stiffness * Spring(d.stiffness, math.inf, 0).press(
        J_R + rebound**2 * J_L, top, 0)
    f["stop.rebound_speed"] = rebound * top
    f["stop.rebound_energy"] = J * (rebound * top)**2 / 2
    f.update(_tab(s, pushing / value(s["radius"])))
    f["stop.tab_strength"] = _strength(s)
    return f
