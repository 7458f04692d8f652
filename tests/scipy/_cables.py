"""Cables anew: roots of lengths and areas instead of solved formulas. SI."""

import math

from scipy.optimize import brentq

from _rig_text import value

TAU = 2 * math.pi
MIL = 25.4e-6


def known(cable, key, otherwise=None):
    return value(cable[key]) if key in cable else otherwise


def _wound(inside, length, thickness):
    """Layers on a radius until their area is that of the cable."""
    area = length * thickness
    return brentq(lambda n: math.pi * ((inside + n * thickness)**2 - inside**2) - area,
                  0, length / thickness, xtol=1e-15, rtol=1e-14)


def coil_turns(cable):
    length, hub, wall = (value(cable[k]) for k in ("free_length", "hub_radius", "wall_radius"))
    thick = known(cable, "thickness", value(cable["outer_diameter"]))
    room = math.pi * (wall**2 - hub**2)
    inside = brentq(lambda r: math.pi * (wall**2 - r**2) - length * thick, hub, wall,
                    xtol=1e-16, rtol=1e-14)
    return _wound(hub, length, thick), (wall - inside) / thick, length * thick / room


def loop_travel(cable):
    length, bend, anchor, moving = (value(cable[k]) for k in ("free_length", "bend_radius",
                                                              "anchor_radius", "moving_radius"))

    def slack(angle):
        apart = abs(anchor - moving * complex(math.cos(angle), math.sin(angle)))
        return length - (math.pi * bend + apart - 2 * bend)

    return TAU if slack(math.pi) >= 0 else 2 * brentq(slack, 0, math.pi, xtol=1e-15, rtol=1e-14)


def cable_travel(cable):
    if cable == "none" or cable["routing"] == "slip_ring":
        return math.inf
    if cable["routing"] == "coil":
        hub, wall, _ = coil_turns(cable)
        return TAU * (hub - wall)
    if cable["routing"] == "loop":
        return loop_travel(cable)
    return 2 * value(cable["twist_rating"]) * value(cable["free_length"])


def _shape(cable, usable):
    """What only one routing has."""
    if cable["routing"] == "coil":
        hub, wall, fill = coil_turns(cable)
        return {"turns_on_hub": hub, "turns_at_wall": wall, "fill": fill,
                "tightest_bend": value(cable["hub_radius"])}
    if cable["routing"] == "loop":
        gap = abs(value(cable["anchor_radius"]) - value(cable["moving_radius"]))
        arc = math.pi * gap / 2
        return {"tightest_bend": gap / 2,
                "hang": (value(cable["free_length"]) - arc) / 2 + gap / 2}
    if cable["routing"] == "slip_ring":
        return {}
    count, outer = value(cable["count"]), value(cable["outer_diameter"])
    assert count <= 2
    lay, length, twist = (count - 1) * outer / 2, value(cable["free_length"]), usable / 2
    height = math.sqrt(length**2 - (lay * twist)**2)
    f = {"bundle_diameter": count * outer, "shortening": length - height,
         "strain": math.hypot(length, lay * twist) / length - 1}
    if lay > 0:
        rise = height / twist
        f["tightest_bend"] = (lay**2 + rise**2) / lay
    return f


def _wires(cable, rig):
    f, wire = {}, known(cable, "conductor")
    if "conductors" in cable:
        f["circuits"] = value(cable["count"]) * value(cable["conductors"])
    if wire is None:
        return f
    cold = 1e-6 / 58 / (math.pi * wire**2 / 4)
    warm = cold * (1 + 0.00393 * (value(rig["surroundings"]["temperature"]) - 20))
    f.update(wire_resistance=cold, wire_resistance_warm=warm, wire_rating=(wire / MIL)**2 / 700)
    if "supply_length" in cable:
        f["drop"] = 2 * value(cable["current"]) * warm * value(cable["supply_length"])
        f["drop_share"] = f["drop"] / value(rig["supply"]["voltage"])
    return f


def cable_figures(rig, axis, usable):
    """All figures of an axis' cable; None where there is none."""
    cable = rig[axis]["cable"]
    f = dict.fromkeys(("bundle_diameter", "strain", "shortening", "turns_on_hub", "turns_at_wall",
                       "fill", "hang", "tightest_bend", "bend_rule", "bend_rule_still", "circuits",
                       "wire_resistance", "wire_resistance_warm", "wire_rating", "drop",
                       "drop_share"))
    if cable != "none":
        outer = value(cable["outer_diameter"])
        thick = known(cable, "thickness", outer)
        f["bend_rule"] = 10 * min(thick, outer)
        f["bend_rule_still"] = 3 * thick if thick < outer else 6 * outer
        f.update(_shape(cable, usable), **_wires(cable, rig))
    return {f"cable.{key}": v for key, v in f.items()}
