"""The simple YAML of the sample rigs as nested dicts of texts, their SI values, and back to text.

Only what the samples use: block maps by indentation, lists of flow maps, flow maps and lists,
`>-`."""

import math
import re

DEG = math.pi / 180
_G_FORCE = 9.80665
UNITS = {
    "": 1, "none": math.inf, "V": 1, "W": 1, "T": 1, "mT": 1e-3, "A": 1, "F": 1, "mF": 1e-3, "ohm": 1, "mohm": 1e-3, "H": 1, "uH": 1e-6,
    "deg": DEG, "arcmin": DEG / 60, "rad": 1, "kg": 1, "g": 1e-3, "m": 1, "m/s": 1, "mm": 1e-3, "s": 1, "ms": 1e-3, "min": 60,
    "kg.m2": 1, "g.cm2": 1e-7, "N.m": 1, "mN.m": 1e-3, "N.m/rad": 1, "N.m2/rad": 1, "N.m2": 1, "N.m.s/rad": 1, "mN.m.s/rad": 1e-3,
    "uN.m.s/rad": 1e-6, "K/W": 1, "kHz": 1e3, "Hz": 1, "1/s": 1, "rpm": math.pi / 30, "rpm/V": math.pi / 30,
    "deg/s": DEG, "rad/s": 1, "rad/s2": 1, "rad/s3": 1, "deg/m": DEG, "%": 1e-2, "px": 1, "kg.cm": _G_FORCE * 1e-2, "degC": 1, "MHz": 1e6, "Pa": 1, "MPa": 1e6, "GPa": 1e9, "g/cm3": 1e3,
}
_NUMBER = re.compile(r"^([-+]?[0-9.]+(?:e[-+]?[0-9]+)?) ?(.*)$")


def _split(text):
    """The parts of a flow map or list between its commas of the first level."""
    parts, depth, part = [], 0, ""
    for c in text:
        depth += (c in "{[") - (c in "}]")
        if c == "," and depth == 0:
            parts.append(part)
            part = ""
        else:
            part += c
    return [p.strip() for p in parts + [part] if p.strip()]


def _flow(text):
    text = text.strip()
    if text.startswith("{"):
        pairs = (p.split(":", 1) for p in _split(text[1:-1]))
        return {key.strip(): _flow(value) for key, value in pairs}
    if text.startswith("["):
        return [_flow(p) for p in _split(text[1:-1])]
    return text


def _block(lines, indent):
    """Takes the lines of one block from the front of `lines`, pairs (indent, text)."""
    if lines[0][1].startswith("- "):
        items = []
        while lines and lines[0][0] == indent and lines[0][1].startswith("- "):
            items.append(_flow(lines.pop(0)[1][2:]))
        return items
    block = {}
    while lines and lines[0][0] == indent:
        key, value = lines.pop(0)[1].split(":", 1)
        if value.strip() == ">-":
            folded = []
            while lines and lines[0][0] > indent:
                folded.append(lines.pop(0)[1])
            block[key] = " ".join(folded)
        elif value.strip():
            block[key] = _flow(value)
        else:
            block[key] = _block(lines, lines[0][0])
    return block


def read(text):
    stripped = [line.rstrip() for line in text.splitlines() if line.strip()]
    return _block([(len(s) - len(s.lstrip()), s.strip()) for s in stripped], 0)


def value(text):
    """SI value of a quantity's text or of its map {value, spread, source}; inf for `none`."""
    if isinstance(text, dict):
        text = text["value"]
    if text == "none":
        return math.inf
    number, unit = _NUMBER.match(text).groups()
    if unit == "AWG":  # ASTM B258
        return 0.127e-3 * 92**((36 - float(number)) / 39)
    return float(number) * UNITS[unit]


def scaled(text, factor):
    """The same quantity times `factor`, in the unit that it was written in."""
    if isinstance(text, dict):
        return {**text, "value": scaled(text["value"], factor)}
    number, unit = _NUMBER.match(text).groups()
    return f"{float(number) * factor!r} {unit}".strip()


def write(node, depth=0):
    """The rig as text: two levels of block maps, flow below."""
    if isinstance(node, dict):
        if depth == 0:
            return "".join(f"{k}:{_below(v)}\n" for k, v in node.items())
        return "{" + ", ".join(f"{k}: {write(v, depth + 1)}" for k, v in node.items()) + "}"
    if isinstance(node, list):
        return "[" + ", ".join(write(v, depth + 1) for v in node) + "]"
    return node


def _below(node):
    if isinstance(node, dict) and any(isinstance(v, (dict, list)) for v in node.values()):
        return "".join(f"\n  {k}: {write(v, 1)}" for k, v in node.items())
    if isinstance(node, list) and node and isinstance(node[0], dict):
        return "".join(f"\n  - {write(v, 1)}" for v in node)
    return " " + write(node, 1)
