"""The bus from the written trace of both axes: power, its integrals, and the voltage by explicit
steps of energy with hundreds of substeps a row (the program takes implicit ones)."""

import math

import numpy as np
from scipy.integrate import trapezoid

from _rig_text import value

COPPER = 1e-6 / 58  # ohm.m at 20 degC, IEC 60028
# Figures of the duty, and those of the search, which the trace does not show.
DUTY = ("average_power", "average_current", "rms_current", "returned_average")
SEARCHED = ("worst_current", "worst_voltage", "worst_returned_power", "capacitance_needed",
            "brake_resistor_most", "brake_peak_power", "fuse_peak")
DETAILS = ("sag", "lead_drop", "lead_rating", "fuse_load", "brake_energy", "brake_average_power")
# Order 1 in steps of 31 us on both sides; the voltages are seen against the supply's.
TOLERANCES = {"peak_power": 1e-9, "returned_power": 1e-9, "peak_current": 4e-3,
              "peak_voltage": 5e-4, "stored_energy": 1e-3, "returned_energy": 4e-3, "sag": 4e-3,
              "lead_drop": 4e-3, "lead_rating": 1e-9, "brake_energy": 2e-2,
              "brake_average_power": 2e-2, "fuse_load": 5e-3, "rms_current": 5e-3,
              "average_power": 2e-3, "average_current": 5e-3, "returned_average": 2e-3}


class Source:
    def __init__(self, rig):
        s = rig["supply"]
        get = lambda key, default: value(s[key]) if key in s else default
        self.V, self.C = value(s["voltage"]), get("bus_capacitance", None)
        self.absorbs, self.fuse = get("absorbs", 0.0), get("fuse", None)
        self.trip = get("trip_voltage", None)
        self.chopper = get("brake_voltage", None if self.trip is None else 0.9 * self.trip)
        self.resistor = get("brake_resistor", math.inf)
        self.has_resistor = math.isfinite(self.resistor) and self.chopper > self.V
        self.conductor, length = get("lead_conductor", None), get("lead_length", None)
        temperature = value(rig.get("surroundings", {}).get("temperature", "25 degC")) + 273.15
        self.leads = None
        if self.conductor and length is not None:
            warm = COPPER * (1 + 0.00393 * (temperature - 293.15))
            self.leads = 2 * length * warm / (math.pi / 4 * self.conductor**2)
        self.inside = get("source_resistance", None)
        self.R = (self.inside or 0.0) + (self.leads or 0.0)
        self.idle = sum(value(rig[a]["drive"].get("idle_power", "0 W")) for a in ("pan", "tilt"))

    def run(self, power, dt):
        """Rows of voltage and source current, least voltage, energy into the resistor."""
        V, current, burnt, least = self.V, [], 0.0, self.V
        if self.R:
            V = (self.V + math.sqrt(max(self.V**2 - 4 * self.R * power[0], 0.0))) / 2
        volts = [V]
        current.append((self.V - V) / self.R if self.R else power[0] / V)
        parts = 40 if not self.R else min(2000, max(40, math.ceil(8 * dt / (self.R * self.C))))
        h = dt / parts
        for k in range(1, len(power)):
            drawn = 0.0
            for j in range(parts):
                P = power[k - 1] + (j + 0.5) / parts * (power[k] - power[k - 1])
                if self.R:
                    I = max((self.V - V) / self.R, -self.absorbs)
                else:  # the source gives what keeps the voltage, or takes what it absorbs
                    I = max(P / V, -self.absorbs) if V <= self.V * (1 + 1e-12) else -self.absorbs
                W = self.C / 2 * V * V + h * (V * I - P)
                if self.has_resistor:
                    over = W - self.C / 2 * self.chopper**2
                    heat = min(max(over, 0.0), h * V * V / self.resistor)
                    W, burnt = W - heat, burnt + heat
                V = math.sqrt(max(2 * W / self.C, 1e-12))
                if not self.R and V < self.V:
                    V = self.V
                drawn = I
                least = min(least, V)
            volts.append(V)
            if self.R:
                drawn = max((self.V - V) / self.R, -self.absorbs)
            elif V <= self.V * (1 + 1e-12):
                drawn = max(power[k] / V, -self.absorbs)
            current.append(drawn)
        return np.array(volts), np.array(current), least, burnt


def mean_over(values, dt, period):
    """Over a move and the rest until the next one, which goes on as the last 50 ms did."""
    rest = float(np.mean(values[-int(0.05 / dt) - 1:]))
    values = np.append(values[:-1], rest)
    if math.isinf(period):
        return rest
    end = (len(values) - 1) * dt
    if period >= end:
        return (trapezoid(values, dx=dt) + rest * (period - end)) / period
    times = np.arange(len(values)) * dt
    kept = times <= period
    return trapezoid(values[kept], times[kept]) / period


def above_zero(values):
    """Sum over the intervals of the part of straight pieces that lies above zero."""
    a, b = values[:-1], values[1:]
    span = np.where(a * b < 0, np.abs(a) + np.abs(b), 1)
    crossing = np.maximum(a, b)**2 / (2 * span)
    return np.where(a * b < 0, crossing, np.maximum(a + b, 0) / 2).sum()


def supply_figures(rig, trace):
    """From the trace of the task's moves, both begun together."""
    source = Source(rig)
    dt = trace["time_s"][1] - trace["time_s"][0]
    power = trace["bus_A"] * source.V + source.idle
    back = np.maximum(-power, 0)
    f = {"peak_power": max(power.max(), 0.0), "returned_power": back.max(),
         "returned_energy": above_zero(-power) * dt}
    volts, current, least, burnt = source.run(power, dt)
    f["peak_current"], f["peak_voltage"] = current.max(), volts.max()
    f["stored_energy"] = source.C / 2 * volts.max()**2
    f["sag"] = None if source.inside is None else source.V - least
    f["lead_drop"] = None if source.leads is None else current.max() * source.leads
    f["lead_rating"] = (None if source.conductor is None
                        else (source.conductor / 25.4e-6)**2 / 700)
    f["brake_energy"] = burnt if source.has_resistor else None
    rate = value(rig["task"]["duty"]["moves_per_minute"])
    period = 60 / rate if rate else math.inf
    if not rig.get("duty"):
        f["average_power"] = mean_over(power, dt, period)
        f["average_current"] = mean_over(current, dt, period)
        f["rms_current"] = math.sqrt(mean_over(current**2, dt, period))
        f["returned_average"] = mean_over(back, dt, period)
        f["fuse_load"] = None if source.fuse is None else f["rms_current"] / source.fuse
        f["brake_average_power"] = (burnt / period if source.has_resistor else None)
    return f, source


def supply_faults(rig, trace, ours):
    """Lines for those that differ. Sizes: what a small figure is a rest of."""
    f, source = supply_figures(rig, trace)
    dt = trace["time_s"][1] - trace["time_s"][0]
    small = {"returned_energy": f["peak_power"] * dt, "peak_voltage": source.V,
             "stored_energy": 1e-6, "sag": 1e-3 * source.V, "average_current": 1e-3,
             "brake_energy": f["peak_power"] * dt, "brake_average_power": 1e-2,
             "returned_average": f["peak_power"] * dt, "rms_current": 1e-3, "peak_current": 1e-3}
    for key, theirs in f.items():
        mine = ours[f"supply.{key}"]
        if theirs is None or mine is None:
            if mine is not theirs:
                yield f"supply.{key} is {mine}, should be {theirs}"
        elif abs(mine - theirs) > TOLERANCES[key] * abs(theirs) + small.get(key, 0) * 1e-3 + 1e-12:
            yield f"supply.{key} is {mine}, should be {theirs}"
    for worst, task in (("worst_current", "peak_current"), ("worst_voltage", "peak_voltage"),
                        ("worst_returned_power", "returned_power")):
        mine, least = ours[f"supply.{worst}"], ours[f"supply.{task}"]
        if mine is None or least is None:
            if mine is not least:
                yield f"supply.{worst} is {mine} where that of the task is {least}"
        elif mine < least * (1 - 1e-9):
            yield f"supply.{worst} is less than the task's moves take"
    if ours["supply.worst_returned_power"] is None:
        return
    back = ours["supply.worst_returned_power"] / source.chopper - source.absorbs
    resistor = source.chopper / back if source.chopper > source.V and back > 0 else None
    if resistor is not None and abs(ours["supply.brake_resistor_most"] / resistor - 1) > 1e-9:
        yield f"supply.brake_resistor_most is {ours['supply.brake_resistor_most']}, should be {resistor}"


def known_supply_figures():
    keys = ("peak_power", "peak_current", "returned_energy", "returned_power", "peak_voltage",
            "stored_energy")
    return {f"supply.{key}" for key in keys + DUTY + SEARCHED + DETAILS}
