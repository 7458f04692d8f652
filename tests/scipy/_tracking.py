"""Tracking: closed forms, and the outer loop integrated between its events by SciPy."""

import math

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from _rig_text import DEG, value

AXES = ("pan", "tilt")
PATIENCE, MEMORY = 0.25, 0.15
MASK = (1 << 64) - 1


def uniform(seed, count):
    """SplitMix64, output number `count`."""
    z = (seed + (count + 1) * 0x9E3779B97F4A7C15) & MASK
    z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
    z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
    z ^= z >> 31
    return ((z >> 11) + 1) / 2**53


def normal(seed, count):
    return math.sqrt(-2 * math.log(uniform(seed, count))) * math.cos(2 * math.pi * uniform(seed, count + 1))


class Target:
    def __init__(self, rig):
        t = rig.get("tracking", {})
        number = lambda key, default: value(t[key]) if key in t else default
        self.kind = t.get("target", "walk")
        self.v, self.d = number("speed", 1.4), number("passing_distance", value(rig["task"]["target_distance"]))
        self.h, self.A, self.f = number("height", 0.0), number("amplitude", 20 * DEG), number("frequency", 0.5)
        self.jump = [number("jump", value(rig["task"][a + "_move"])) for a in AXES]
        self.path = np.array([[value(x) for x in p] for p in t.get("path", [])])
        self.duration = {"walk": lambda: min(2 * math.tan(math.pi / 3) * self.d / self.v, 12),
                         "sine": lambda: min(max(4 / self.f, 1), 12), "jump": lambda: 2.0,
                         "path": lambda: min(self.path[-1, 0], 120)}[self.kind]()

    def at(self, t):
        if self.kind == "walk":
            x = self.v * (t - self.duration / 2)
            return np.array([math.atan2(x, self.d), math.atan2(self.h, math.hypot(self.d, x))])
        if self.kind == "sine":
            return np.full(2, self.A * math.sin(2 * math.pi * self.f * t))
        if self.kind == "jump":
            return np.array(self.jump) * (t >= 0.1)
        return np.array([np.interp(t, self.path[:, 0], self.path[:, i]) for i in (1, 2)])

    def peak_speeds(self):
        """By looking: central differences on a fine grid."""
        if self.kind == "jump":
            return np.zeros(2)
        if self.kind == "path":
            return np.abs(np.diff(self.path[:, 1:], axis=0) / np.diff(self.path[:, :1], axis=0)).max(axis=0)
        if self.kind == "sine":
            return np.full(2, 2 * math.pi * self.f * self.A)
        grid = np.linspace(0, self.duration, 20001)
        h = 1e-6 * self.duration
        return np.max([np.abs(self.at(t + h) - self.at(t - h)) / (2 * h) for t in grid], axis=0)


def row_times(duration):
    step = next((s for s in (1e-3, 2e-3, 5e-3, 10e-3, 20e-3, 50e-3) if duration <= 2000 * s), 0.1)
    return np.arange(math.floor(duration / step + 1e-9) + 1) * step


class Chain:
    """One detector: when it looks, when it answers, what it says."""

    def __init__(self, rig, index):
        all_of_them, c = rig.get("detectors", []), rig["camera"]
        d = all_of_them[index] if all_of_them else {}
        number = lambda key, default: value(d[key]) if key in d else default
        self.interval = max(1 / number("frame_rate", value(c["frame_rate"])), 0.5e-3)
        self.delay, self.noise = number("delay", value(c["delay"])), number("noise", 0.0)
        self.drop_outs, self.seed = number("drop_outs", 0.0), index + 1
        p = self.drop_outs
        # Held until the next answer: gaps are geometric, a moment falls into long ones more often.
        self.hold = self.interval * (1 + p) / (2 * (1 - p))


class Picture:
    def __init__(self, c):
        self.half = np.array([value(c["columns"]) / 2, value(c["rows"]) / 2])
        self.scale = self.half[0] / math.tan(value(c["horizontal_view"]) / 2)
        self.exposure = value(c["exposure"])

    def place(self, error, tilt):
        return self.scale * np.tan(np.clip([error[0] * np.cos(tilt), error[1]], -1.5, 1.5))


class Follower:
    def __init__(self, gain, lag, speed, acceleration, limits):
        self.gain, self.lag, self.speed, self.acceleration, self.limits = gain, lag, speed, acceleration, limits

    def begin(self, angle):
        return np.array([min(max(angle, self.limits[0]), self.limits[1]), 0.0])

    def leaves(self, command, begin, end):
        """From when on a command leads back from the limit it stands at; it is linear in time."""
        limit, out = self.held
        back = lambda t: -out * command(t, limit)
        if back(begin) > 0:
            return begin
        return min(brentq(back, begin, end, xtol=1e-12) + 1e-9, end) if back(end) > 0 else end

    def run(self, state, command, begin, end, rows):
        """Integrates (angle, speed) with command(t, angle); states at `rows` and at the end. At the end
        of its travel the axis stops dead."""
        def slope(t, y):
            wanted = min(max(command(t, y[0]), -self.speed), self.speed)
            pull = (wanted - y[1]) / self.lag
            return y[1], min(max(pull, -self.acceleration), self.acceleration)

        ends = [lambda t, y, e=e: y[0] - e for e in self.limits]
        for event, out in zip(ends, (-1, 1)):
            event.terminal, event.direction = True, out
        angles, rows, state = [], np.asarray(rows), np.array(state)
        while begin < end:
            for limit, out in zip(self.limits, (-1, 1)):
                if out * (state[0] - limit) >= 0 and state[1] == 0.0:
                    self.held, state = (limit, out), np.array([limit, 0.0])
                    begin = self.leaves(command, begin, end)
                    angles.extend([limit] * int((rows < begin).sum()))
                    rows = rows[rows >= begin]
            if begin >= end:
                break
            done = solve_ivp(slope, (begin, end), state, rtol=1e-8, atol=1e-11, dense_output=True, events=ends,
                             max_step=(end - begin) / 4)
            inside = rows < done.t[-1] if done.status == 1 else rows <= end
            if inside.any():
                angles.extend(done.sol(rows[inside])[0])
            rows, begin = rows[~inside], done.t[-1]
            state = done.y[:, -1]
            if done.status == 1:
                state = np.array([self.limits[0 if len(done.t_events[0]) else 1], 0.0])
        return state, angles


def follow(target, chain, picture, axes, on_angle, fed):
    """Rows of the two angles and, at each exposure, of the two speeds and slips."""
    rows = row_times(target.duration)
    frames = np.arange(int(math.floor(target.duration / chain.interval + 1e-12)) + 1) * chain.interval
    # Answers come before a picture of the same instant, but after their own.
    events = sorted([(t, 1, k) for k, t in enumerate(frames)] +
                    [(t + chain.delay, 0 if chain.delay > 0 else 2, k) for k, t in enumerate(frames)])
    events = [e for e in events if e[0] <= target.duration] + [(target.duration, 3, -1)]
    states = [axis.begin(a) for axis, a in zip(axes, target.at(0))]
    angles, row = [[], []], 0
    speed, place, estimate = np.zeros(2), target.at(0), np.zeros(2)
    seen, last, answered, now, seen_speeds, slips = 0.0, None, 0.0, 0.0, [], []
    sights = {}
    patience = max(PATIENCE, 2 * chain.interval)
    for at, what, k in events:
        for end in sorted({min(max(answered + patience, now), at), at}):
            inside = row + int(np.searchsorted(rows[row:], end, side="left"))
            lost = now >= answered + patience
            for i, axis in enumerate(axes):
                push = 0.0 if lost else fed * estimate[i]
                if on_angle:
                    command = lambda t, y, i=i, push=push: axes[i].gain * (place[i] + push * (t - seen) - y) + push
                else:
                    command = lambda t, y, i=i: 0.0 if lost else speed[i]
                if end > now:
                    states[i], some = axis.run(states[i], command, now, end, rows[row:inside])
                    angles[i].extend(some)
            row, now = (inside, end) if end > now else (row, now)
        if what == 1:  # a picture
            here, angle = target.at(at), np.array([s[0] for s in states])
            slip = (target.at(at + picture.exposure / 2) - target.at(at - picture.exposure / 2)) / picture.exposure
            seen_speeds.append([s[1] for s in states])
            slips.append(np.array([(slip[0] - states[0][1]) * math.cos(here[1]), slip[1] - states[1][1]]))
            error = here - angle
            if (np.abs(picture.place(error, here[1])) <= picture.half).all() and uniform(
                    chain.seed, 5 * k) > chain.drop_outs:
                if chain.noise > 0:
                    per = chain.noise / picture.scale
                    error = error + np.array([per / max(math.cos(here[1]), 0.1), per]) * [
                        normal(chain.seed, 5 * k + 1), normal(chain.seed, 5 * k + 3)]
                sights[k] = (at, error, angle + error)
        elif what in (0, 2) and k in sights:  # an answer
            when, error, found = sights.pop(k)
            if last is not None:
                blend = 1 - math.exp(-(when - last[0]) / MEMORY)
                estimate = estimate + blend * ((found - last[1]) / (when - last[0]) - estimate)
            place, seen, last, answered = found, when, (when, found), at
            speed = np.array([a.gain for a in axes]) * error + fed * estimate
    for i in range(2):
        angles[i].extend([states[i][0]] * (len(rows) - len(angles[i])))
    return rows, np.array(angles).T, np.array(seen_speeds), np.array(slips)


def loops(rig, chain, crossovers):
    """Dead time and gain of each axis."""
    t = rig.get("tracking", {})
    on_angle = t.get("acts_on", "error") == "angle"
    late = chain.delay + chain.hold
    for axis in AXES:
        dead = 1 / crossovers[axis] + (0 if on_angle else late)
        usual = value(rig[axis]["loop"]["position_gain"]) if on_angle else 0.5 / dead
        yield dead, value(t["gain"]) if "gain" in t else usual, late if on_angle else 0.0


def run_figures(rig, chain, drives, limits, f):
    """Rows against the target for this detector: (root mean squares, places, blur, speeds, parts of the
    time at a limit). `limits`: least and most angle of each axis."""
    t, picture, target = rig.get("tracking", {}), Picture(rig["camera"]), Target(rig)
    crossovers = {a: f[f"{a}.loop.crossover"] for a in AXES}
    axes = []
    for axis, (_, gain, _) in zip(AXES, loops(rig, chain, crossovers)):
        d = drives[axis]
        speed = min(d.speed_top(), value(rig[axis]["loop"].get("speed_limit", "none")))
        axes.append(Follower(gain, 1 / crossovers[axis], speed, d.peak_acceleration(d.ratio), limits[axis]))

    def run(fed):
        rows, angles, speeds, slips = follow(target, chain, picture, axes,
                                             t.get("acts_on", "error") == "angle", fed)
        at = np.array([target.at(x) for x in rows])
        errors = at - angles
        places = np.array([picture.place(e, b) for e, b in zip(errors, at[:, 1])])
        held = [np.mean((a <= axis.limits[0]) | (a >= axis.limits[1])) for a, axis in zip(angles.T, axes)]
        return np.sqrt((errors**2).mean(axis=0)), places, speeds, slips, held

    return run, picture


def cannot(rig, drives, f):
    return any(f[f"{a}.loop.crossover"] is None or f[f"{a}.loop.phase_margin"] <= 0
               or drives[a].peak_acceleration(drives[a].ratio) <= 0 for a in AXES)


def tracking_figures(rig, drives, limits, f):
    t, out = rig.get("tracking", {}), {}
    for axis in AXES:
        top = min(drives[axis].speed_top(), value(rig[axis]["loop"].get("speed_limit", "none")))
        out[f"{axis}.eye.pursuit_ratio"] = top / (100 * DEG)
    pan, target = drives["pan"], Target(rig)
    top, pull = out["pan.eye.pursuit_ratio"] * 100 * DEG, pan.peak_acceleration(pan.ratio)
    nearest = target.v * max(1 / top, math.sqrt(3 * math.sqrt(3) / 8 / pull)) if pull > 0 else None
    out["pan.tracking.blind_cone"] = None if nearest is None else math.asin(min(nearest / target.d, 1))
    of_axis = "target_speed dead_time gain gain_ceiling ramp_lag error_rms error_rms_unfed error_rms_fed error_px at_limit"
    if cannot(rig, drives, f):
        out.update({f"{a}.tracking.{k}": None for a in AXES for k in of_axis.split()})
        out.update({f"tracking.{k}": None for k in "in_middle blur_px skew_px best_detector".split()})
        return out
    fed = value(t.get("feed_forward", "0"))
    chains = [Chain(rig, i) for i in range(max(len(rig.get("detectors", [])), 1))]
    crossovers = {a: f[f"{a}.loop.crossover"] for a in AXES}
    distance = []
    for chain in chains:
        run, picture = run_figures(rig, chain, drives, limits, f)
        rms, places, speeds, slips, held = run(fed)
        distance.append((places**2).sum(axis=1).mean())
        if chain is not chains[0]:
            continue
        unfed, all_fed, peaks = run(0.0)[0], run(1.0)[0], target.peak_speeds()
        for i, (axis, (dead, gain, late)) in enumerate(zip(AXES, loops(rig, chain, crossovers))):
            lag = None if target.kind == "jump" else peaks[i] * (1 / gain + late) * (1 - fed)
            values = (peaks[i], dead, gain, math.pi / 4 / dead, lag, rms[i], unfed[i], all_fed[i],
                      np.abs(places[:, i]).max(), held[i])
            out.update({f"{axis}.tracking.{k}": v for k, v in zip(of_axis.split(), values)})
        middle = (np.abs(places) <= picture.half / 3).all(axis=1)
        blur = np.sort(np.hypot(*slips.T)) * picture.scale * picture.exposure
        out["tracking.in_middle"] = middle.mean()
        out["tracking.blur_px"] = blur[int(0.95 * (len(blur) - 1))]
        out["tracking.skew_px"] = np.abs(speeds[:, 0]).max() * picture.scale * value(
            rig["camera"].get("readout", "0 ms"))
    out["tracking.best_detector"] = int(np.argmin(distance)) + 1 if len(chains) > 1 else None
    return out


def with_something_to_follow(rig, rng):
    """Targets, gains and detectors of all kinds."""
    t = {"target": rng.choice(["walk", "walk", "sine", "jump", "path"]),
         "acts_on": rng.choice(["error", "error", "angle"]), "feed_forward": repr(rng.choice([0, 1, rng.random()])),
         "speed": f"{rng.uniform(0.5, 4)!r} m/s", "height": f"{rng.uniform(-1, 1.5)!r} m",
         "amplitude": f"{rng.uniform(3, 25)!r} deg", "frequency": f"{rng.uniform(0.3, 2)!r} Hz",
         "jump": f"{rng.uniform(3, 25)!r} deg"}
    if rng.random() < 0.4:
        t["gain"] = f"{rng.uniform(1, 9)!r} 1/s"
    if rng.random() < 0.4:
        t["passing_distance"] = f"{rng.uniform(0.8, 5)!r} m"
    if t["target"] == "path":
        t["path"] = [[f"{k * rng.uniform(0.7, 0.9)!r} s", *(f"{rng.uniform(-15, 15)!r} deg" for _ in AXES)]
                     for k in range(5)]
        times = sorted(value(p[0]) for p in t["path"])
        t["path"] = [[f"{time!r} s", *p[1:]] for time, p in zip(times, t["path"])]
    # Stops are about 158 and 75 deg off: some targets lead beyond the soft limits.
    for axis, insets in (("pan", (130, 150)), ("tilt", (50, 65))):
        if rng.random() < 0.25 and isinstance(rig[axis].get("stops"), dict):
            rig[axis]["stops"]["soft_inset"] = f"{rng.uniform(*insets)!r} deg"
    rig["tracking"] = t
    rig["camera"]["readout"] = f"{rng.uniform(0, 30)!r} ms"
    rig["detectors"] = [{"name": f"detector {i}", "frame_rate": f"{rng.uniform(10, 70)!r} Hz",
                         "delay": f"{rng.uniform(10, 140)!r} ms", "noise": repr(rng.uniform(0, 8)),
                         "drop_outs": repr(rng.uniform(0, 0.15))} for i in range(rng.randint(0, 2))]
    if not rig["detectors"]:
        del rig["detectors"]
    return rig
