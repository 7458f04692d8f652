"""Planned moves from their definitions, as piecewise polynomials of SciPy. Nothing here knows our
code: the speed that is reached is found by root finding on the distance, angle and speed by
integrating the acceleration."""

import math

import numpy as np
from scipy.interpolate import CubicHermiteSpline, PPoly
from scipy.optimize import brentq

from _rigid import fastest_move

QUICKEST_POINTS = 400  # the plan is by definition the cubic through so many points of the path
NAMES = ("step", "trapezoid", "jerk_limited", "minimum_jerk", "minimum_time")


def limits(d, move, speed_limit, acceleration=None, jerk=None):
    """(v, a, j) of an axis, with the defaults."""
    v = min(speed_limit, d.speed_top())
    a = 0.8 * d.peak_acceleration(d.ratio) if acceleration is None else acceleration
    if a > 0 and jerk is None:
        jerk = 4 * a / min(v / a, math.sqrt(move / a))
    return v, a, jerk


def speeding_up(v, a, j):
    """Times of the ramp of acceleration and of all, to the speed v."""
    ramp = min(a / j, math.sqrt(v / j))
    return ramp, v / (j * ramp) + ramp


def symmetric(move, v, a, j):
    """Acceleration as corners (time, value) of a move that speeds up, cruises and slows down."""
    distance = lambda u: u * speeding_up(u, a, j)[1]
    if distance(v) > move:
        v = brentq(lambda u: distance(u) - move, 1e-12 * v, v, xtol=1e-300, rtol=1e-15)
    ramp, up = speeding_up(v, a, j)
    peak, end = j * ramp, move / v + up
    times = np.array([0, ramp, up - ramp, up])
    return (np.concatenate([times, end - up + times]),
            np.array([0, peak, peak, 0, 0, -peak, -peak, 0]), end)


def path_of(name, move, v, a, j, d=None):
    """(planned time, angle/speed/acceleration of the time)."""
    if name == "step":
        return 0.0, None
    if name == "minimum_time":
        ways = fastest_move(d, move, d.ratio)
        if ways is None:
            return None, None
        (up, t_up), (down, t_down) = ways
        T = t_up + t_down
        points = []
        for t in np.linspace(0, T, QUICKEST_POINTS):
            x, w = up(t) if t <= t_up else down(T - t)
            points.append((t, x if t <= t_up else move - x, w))
        angle = CubicHermiteSpline(*np.array(points).T)
        speed, acceleration = angle.derivative(), angle.derivative(2)
    elif name == "minimum_jerk":
        peak_acceleration = 10 / math.sqrt(3)
        T = max(1.875 * move / v, math.sqrt(peak_acceleration * move / a), (60 * move / j)**(1 / 3))
        angle = PPoly(move * np.array([[6 / T**5, -15 / T**4, 10 / T**3, 0, 0, 0]]).T, [0, T])
        speed, acceleration = angle.derivative(), angle.derivative(2)
    else:
        if name == "trapezoid":
            v = min(v, math.sqrt(move * a))
            T = move / v + v / a
            times, starts, ends = np.array([0, v / a, T - v / a, T]), [a, 0, -a], [a, 0, -a]
        else:
            times, values, T = symmetric(move, v, a, j)
            starts, ends = values[:-1], values[1:]
        pieces = np.diff(times) > 1e-12 * T
        starts, slopes = np.array(starts)[pieces], (np.array(ends) - starts)[pieces] / np.diff(
            times)[pieces]
        acceleration = PPoly(np.array([slopes, starts]), np.append(times[:-1][pieces], T))
        speed = acceleration.antiderivative()
        angle = speed.antiderivative()

    def at(t):
        if t >= T:
            return move, 0.0, 0.0
        return float(angle(t)), float(speed(t)), float(acceleration(t))

    return T, at
