"""The same balance solved by SciPy's optimize.root (method hybr), for comparison.

Reads from stdin a JSON object {"cases": [{"machine", "load", "start"}], "share", "seconds", "rounds"}: machines in the
model's shape, SI; `start` the cold start [u, theta, z_r, z_f]; `share` the residual to reach, as a share of the weight.
Writes to stdout the versions, the tolerance used, and for each case the solution, the calls of the residual and the
solves in a second (the best of `rounds` rounds of `seconds` each).

The residual is written as a good Python programmer would write it for speed: floats and math only (NumPy is slower
on four numbers), all that a solve does not change worked out before, struts as closures without a branch that they do not need.
"""

import bisect
import json
import math
import platform
import sys
import time

import scipy
from scipy.optimize import root

GRAVITY = 9.80665
ATMOSPHERE = 101325.0


def spring_force(spring):
    """Force [N] against compression [m]; 0 where it is loose."""
    kind = spring["kind"]
    if kind == "linear":
        rate = spring["rate"]
        return lambda x: rate * x if x > 0 else 0.0
    if kind == "series":
        soft, stiff = spring["soft"], spring["stiff"]
        both = soft * stiff / (soft + stiff)
        closing = soft * spring["softStroke"]
        closes_at = closing / both

        def series(x):
            if x <= 0:
                return 0.0
            return both * x if x < closes_at else closing + stiff * (x - closes_at)

        return series
    raise ValueError(f"spring {kind}: none of the machines measured has one")


def strut_force(strut):
    """Force [N] of one strut against damper stroke [m], friction left out."""
    spring, preload = spring_force(strut["spring"]), strut["preload"]
    parts = []
    if strut["gas"]:
        gas = strut["gas"]
        area, volume, exponent = gas["area"], gas["volume"], gas["exponent"]
        pressure, outside = gas["pressure"] * area, ATMOSPHERE * area
        if exponent == 1:
            parts.append(lambda s: pressure * volume / (volume - area * s) - outside)
        else:
            parts.append(lambda s: pressure * (volume / (volume - area * s)) ** exponent - outside)
    if strut["rubber"]:
        start, rate, hardening = (strut["rubber"][key] for key in ("start", "rate", "hardening"))

        def rubber(s):
            d = s - start
            return (rate + hardening * d * d) * d if d > 0 else 0.0

        parts.append(rubber)
    if strut["topOut"]:
        squeezed, length = strut["topOut"]["rate"], strut["topOut"]["length"]
        parts.append(lambda s: squeezed * (s - length) if s < length else 0.0)
    if not parts:
        return lambda s: spring(s + preload)
    if len(parts) == 1:
        (one,) = parts
        return lambda s: spring(s + preload) + one(s)
    if len(parts) == 2:
        one, two = parts
        return lambda s: spring(s + preload) + one(s) + two(s)
    one, two, three = parts
    return lambda s: spring(s + preload) + one(s) + two(s) + three(s)


def stroke_of(kinematics, rake):
    """Damper stroke [m] and motion ratio against wheel travel [m]."""
    kind = kinematics["kind"]
    if kind in ("ratio", "fork"):
        ratio = kinematics["motionRatio"] if kind == "ratio" else 1 / math.cos(rake)
        return lambda z: (ratio * z, ratio)
    if kind == "table":
        return curve_stroke(kinematics["curve"], kinematics["scale"])
    raise ValueError(f"kinematics {kind}: none of the machines measured has it")


def curve_stroke(curve, scale):
    """Piecewise cubic through drawn points, its coefficients worked out before; straight on beyond either end."""
    x, y, slope = curve["x"], curve["y"], curve["slope"]
    pieces = []
    for i in range(len(x) - 1):
        h = x[i + 1] - x[i]
        chord = (y[i + 1] - y[i]) / h
        square = (3 * chord - 2 * slope[i] - slope[i + 1]) / h
        cube = (slope[i] + slope[i + 1] - 2 * chord) / (h * h)
        pieces.append((x[i], scale * y[i], scale * slope[i], scale * square, scale * cube))
    pieces.append((x[-1], scale * y[-1], scale * slope[-1], 0.0, 0.0))
    pieces.insert(0, (x[0], scale * y[0], scale * slope[0], 0.0, 0.0))
    bisect_right = bisect.bisect_right

    def stroke(z):
        left, value, first, square, cube = pieces[bisect_right(x, z)]
        t = z - left
        return value + t * (first + t * (square + t * cube)), first + t * (2 * square + 3 * t * cube)

    return stroke


def strut_sum(struts):
    forces = [strut_force(strut) for strut in struts]
    if len(forces) == 1:
        return forces[0]
    if len(forces) == 2:
        one, two = forces
        return lambda s: one(s) + two(s)
    return lambda s: sum(force(s) for force in forces)


def axle_path(end, axle_x, rake):
    """Place of the axle in the body: (x, height, dx/dz) against wheel travel [m]."""
    path, radius, reference = end["axlePath"], end["tyre"]["radius"], end["referenceTravel"]
    if path["kind"] == "circle":
        pivot_x, pivot_height = path["pivotX"], path["pivotHeight"]
        arm_squared = (pivot_x - axle_x) ** 2 + (radius - pivot_height) ** 2
        sqrt = math.sqrt

        def circle(z):
            height = radius + z - reference
            above = height - pivot_height
            reach = sqrt(arm_squared - above * above)
            return pivot_x - reach, height, above / reach

        return circle
    lean = -math.tan(rake) if path["kind"] == "fork" else 0.0

    def straight(z):
        rise = z - reference
        return axle_x + rise * lean, radius + rise, lean

    return straight


def residual_of(machine, load):
    """The gradient of the potential energy in [u, theta, z_r, z_f], as a function of those four."""
    geometry, sprung = machine["geometry"], machine["sprung"]
    rake = geometry["rake"]
    weight = GRAVITY * (sprung["mass"] + load["mass"])
    moment_x = GRAVITY * (sprung["mass"] * sprung["x"] + load["momentX"])
    moment_height = GRAVITY * (sprung["mass"] * sprung["height"] + load["momentHeight"])
    rear, front = machine["rear"], machine["front"]
    rear_weight, front_weight = rear["unsprung"] * GRAVITY, front["unsprung"] * GRAVITY
    rear_tyre, front_tyre = rear["tyre"]["rate"], front["tyre"]["rate"]
    rear_radius, front_radius = rear["tyre"]["radius"], front["tyre"]["radius"]
    rear_axle, front_axle = axle_path(rear, 0.0, rake), axle_path(front, geometry["wheelbase"], rake)
    rear_stroke, front_stroke = stroke_of(rear["kinematics"], rake), stroke_of(front["kinematics"], rake)
    rear_struts, front_struts = strut_sum(rear["struts"]), strut_sum(front["struts"])
    sin, cos = math.sin, math.cos

    def residual(unknowns):
        u, pitch, rear_travel, front_travel = unknowns.tolist()
        s, c = sin(pitch), cos(pitch)
        x, height, lean = rear_axle(rear_travel)
        stroke, ratio = rear_stroke(rear_travel)
        rear_unborne = rear_weight - rear_tyre * (rear_radius - u + x * s - height * c)
        rear_forward = x * c + height * s
        rear_balance = rear_unborne * (c - lean * s) + ratio * rear_struts(stroke)
        x, height, lean = front_axle(front_travel)
        stroke, ratio = front_stroke(front_travel)
        front_unborne = front_weight - front_tyre * (front_radius - u + x * s - height * c)
        front_forward = x * c + height * s
        return (
            weight + rear_unborne + front_unborne,
            -moment_x * c - moment_height * s - rear_unborne * rear_forward - front_unborne * front_forward,
            rear_balance,
            front_unborne * (c - lean * s) + ratio * front_struts(stroke),
        )

    return residual


def left_over(forces, wheelbase):
    """Largest force [N] left over; the moment counts divided by the wheelbase."""
    heave, moment, rear, front = forces
    return max(abs(heave), abs(moment) / wheelbase, abs(rear), abs(front))


class Case:
    """One machine with one load, ready to be solved from its cold start."""

    def __init__(self, machine, load, start):
        self.residual = residual_of(machine, load)
        self.start = start
        self.wheelbase = machine["geometry"]["wheelbase"]
        unsprung = machine["rear"]["unsprung"] + machine["front"]["unsprung"]
        self.weight = GRAVITY * (machine["sprung"]["mass"] + load["mass"] + unsprung)

    def solve(self, tolerance):
        return root(self.residual, self.start, method="hybr", tol=tolerance)

    def reached(self, tolerance):
        """Residual that this tolerance leaves, as a share of the weight."""
        return left_over(self.residual(self.solve(tolerance).x), self.wheelbase) / self.weight


def loosest_tolerance(cases, share):
    """The loosest power of ten with which every load reaches the residual: it favours SciPy."""
    for digits in range(5, 15):
        tolerance = 10.0**-digits
        if all(case.reached(tolerance) <= share for case in cases):
            return tolerance
    raise SystemExit(f"hybr reaches no residual of {share} of the weight with any tolerance down to 1e-14")


def per_second(case, tolerance, seconds):
    began = time.perf_counter()
    solves = 0
    spent = 0.0
    while spent < seconds:
        for _ in range(50):
            case.solve(tolerance)
        solves += 50
        spent = time.perf_counter() - began
    return solves / spent


def main():
    asked = json.load(sys.stdin)
    cases = [Case(**case) for case in asked["cases"]]
    tolerance = loosest_tolerance(cases, asked["share"])
    answers = []
    for case in cases:
        found = case.solve(tolerance)
        fastest = max(per_second(case, tolerance, asked["seconds"]) for _ in range(asked["rounds"]))
        answers.append({"perSecond": fastest, "state": found.x.tolist(), "calls": int(found.nfev)})
    versions = {"python": platform.python_version(), "scipy": scipy.__version__}
    json.dump({**versions, "tolerance": tolerance, "answers": answers}, sys.stdout)


if __name__ == "__main__":
    main()
