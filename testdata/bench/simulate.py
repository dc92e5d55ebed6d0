#!/usr/bin/env python3
"""Holds `ramplan simulate` to a plain vectorised program of the same model.

    python3 testdata/bench/simulate.py RAMPLAN PLAN.json [PARTS]

RAMPLAN is the built program, PLAN.json a plan with an interference joint whose rows
stand on the nest. The program below draws and presses in PARTS parts with NumPy, in
chunks that stay in the cache; both run on one processor. Printed are user and system
time, which a busy machine leaves alone, and two ratios: at the same number of parts,
and at the same precision for the share of false accepts (± 10 %, 95 %), where plain
sampling needs so many parts that its time is computed from the first run.

Needs Python 3 and NumPy.
"""
import json
import os
import resource
import subprocess
import sys
import time

import numpy as np

CHUNK = 1 << 15


def usage(who):
    u = resource.getrusage(who)
    return u.ru_utime + u.ru_stime


def run(program, *args):
    """The output of ramplan on one processor, and the time that it took."""
    before = usage(resource.RUSAGE_CHILDREN)
    out = subprocess.run([program, *args], env={**os.environ, "GOMAXPROCS": "1"}, stdout=subprocess.PIPE, check=False).stdout
    return json.loads(out), usage(resource.RUSAGE_CHILDREN) - before


def law(rng, row, n):
    mean = row["nominal"] + (row["plus"] - row["minus"]) / 2
    half = (row["plus"] + row["minus"]) / 2
    shape = row.get("shape", "uniform")
    if shape == "normal":
        return rng.normal(mean, half / row.get("sigmas", 3), n)
    if shape == "triangular":
        return rng.triangular(mean - half, mean, mean + half, n)
    return rng.uniform(mean - half, mean + half, n)


def press(plan, result, parts, seed):
    """Counts of truth against verdict: unseated, long, short, loose, conforming against
    both signals, arrival, zone, neither, met early."""
    rng = np.random.default_rng(seed)
    ram, station, joint, need = plan["ram"], plan["station"], plan["joint"], plan["requirement"]
    hub, insert = joint["hub"], joint["insert"]
    force, window, travel = result["force"], result["window"], result["travel"]
    scatter = (force["high"] - force["typical"]) / 2
    d, D, b = joint["diameter"], hub["outside_diameter"], insert.get("bore", 0)
    give = d * (((D * D + d * d) / (D * D - d * d) + hub["poisson"]) / hub["modulus"]
                + ((d * d + b * b) / (d * d - b * b) - insert["poisson"]) / insert["modulus"])
    length, drag = joint["engagement"], joint.get("drag", 0)
    pilot = joint.get("pilot", max(0, result["stack"]["press_in_travel"] - length))
    rough = hub.get("roughness_rz", 0) + insert.get("roughness_rz", 0)
    low, _, high = result["joint"]["interference"]
    # The limits of hole and shaft are not in the result; their sum is, and normal laws add.
    holes = joint.get("hole"), joint.get("shaft")
    widths = [h[1] - h[0] for h in holes] if all(holes) else HOLE_SHAFT
    grip = np.pi * d / (1000 * give)
    a, e, (z1, z2) = travel["approach_end"], travel["push_end"], window["zone"]
    counts = np.zeros((5, 5), dtype=np.int64)
    while parts > 0:
        n = min(parts, CHUNK)
        parts -= n
        contact, seat = np.zeros(n), np.zeros(n)
        for row in plan["parts"]:
            x = law(rng, row, n)
            contact += row["contact"] * x
            seat += row["seat"] * x
        i = (low + high) / 2 + rng.normal(0, widths[0] / 6, n) - rng.normal(0, widths[1] / 6, n)
        left = np.maximum(0, i - rough * rng.uniform(joint.get("smoothing_least", 0), joint.get("smoothing_most", 0.8), n))
        friction = rng.uniform(joint["friction_low"], joint["friction_high"], n)
        f = rng.normal(force["typical"], scatter, n)
        position = (rng.normal(0, ram.get("repeatability", 0.02) / 2, n) + rng.normal(0, station.get("reference_uncertainty", 0) / 2, n)
                    + rng.uniform(-1, 1, n) * station.get("nest_drift", 0))
        bend = (f - station.get("nest_force", 0)) / station["stiffness"] * rng.normal(1, station.get("stiffness_tolerance", 10) / 200, n)
        t = np.maximum(0, contact - seat)
        engaged = np.clip(t - pilot, 0, length)
        slope = grip * left * friction
        stalled = slope * engaged + drag > f
        depth = np.where(f <= drag, 0, np.minimum(t, pilot + (f - drag) / np.where(slope > 0, slope, 1)))
        met = station["nest"] - contact + position
        reading = np.where(stalled, met + depth, station["nest"] - seat + position) + bend
        holding = joint.get("holding_friction", joint["friction_low"]) * grip * left * engaged
        truth = np.select([stalled, seat > need["height_high"], seat < need["height_low"],
                           holding < joint.get("holding_required", 0) * joint.get("holding_safety", 1)], [0, 1, 2, 3], 4)
        rest = np.minimum(reading, e)
        zone = (rest >= z1) & (rest <= z2)
        arrival = reading <= e
        seen = np.select([(met < a) | (reading < a), arrival & zone, arrival, zone], [4, 0, 1, 2], 3)
        counts += np.bincount(truth * 5 + seen, minlength=25).reshape(5, 5)
    return counts


# Widths of the limits of hole and shaft, µm, of the fit of the example plan, 12 H7/u6
# (ISO 286-1): a plan that gives limits needs none of this.
HOLE_SHAFT = (18, 11)


def main():
    program, name = sys.argv[1:3]
    parts = int(float(sys.argv[3])) if len(sys.argv) > 3 else 4_000_000
    with open(name, encoding="utf-8") as f:
        plan = json.load(f)
    result, _ = run(program, "eval", name)

    press(plan, result, CHUNK, 0)  # what is loaded at first is not counted
    before, wall = usage(resource.RUSAGE_SELF), time.perf_counter()
    counts = press(plan, result, parts, 1)
    numpy, wall = usage(resource.RUSAGE_SELF) - before, time.perf_counter() - wall

    clock = time.perf_counter()
    subprocess.run([program, "simulate", "-json", "-parts", str(parts), "-precision", "1", name], stdout=subprocess.DEVNULL, check=False)
    clock = time.perf_counter() - clock
    _, start = run(program, "simulate", "-json", "-parts", "1", "-precision", "1", name)
    counted, took = run(program, "simulate", "-json", "-parts", str(parts), "-precision", "1", name)
    plain = max(took - start, 1e-9)
    exact, whole = run(program, "simulate", "-json", "-parts", "1", "-precision", "0.1", name)

    share = exact["shares"]["named"]["false_accept"]
    print(f"{name}: {parts:,} parts, one processor, user and system time")
    print(f"{'NumPy ' + np.__version__:32} {numpy:10.3f} s   {1e9 * numpy / parts:8.1f} ns a part")
    print(f"{'ramplan, plain sampling':32} {plain:10.3f} s   {1e9 * plain / parts:8.1f} ns a part")
    print(f"{'ratio at the same parts':32} {numpy / plain:10.1f}")
    print(f"{'wall clock, all processors':32} {wall:10.3f} s   {clock:10.3f} s   ratio {wall / clock:.1f} (NumPy uses one; on an idle machine only)")
    if share["ppm"] > 0:
        needed = (1.96 / 0.1) ** 2 / (share["ppm"] * 1e-6)
        long = numpy / parts * needed
        print(f"false accept {share['ppm']:.3g} ppm, {share['low']:.3g} to {share['high']:.3g}: plain sampling needs {needed:.2g} parts for ± 10 %")
        print(f"{'NumPy, computed':32} {long:10.1f} s")
        print(f"{'ramplan, whole program':32} {whole:10.3f} s   (estimates of the average and of a bad lot, worst day)")
        print(f"{'ratio at the same precision':32} {long / whole:10.0f}")
    names = ["unseated", "long", "short", "loose", "conforming"]
    seen = ["on_on", "on_off", "off_on", "off_off", "early_contact"]
    worst = 0.0
    for i, truth in enumerate(names):
        for j, verdict in enumerate(seen):
            x, y = counts[i, j], counted["matrix"][truth][verdict]
            worst = max(worst, abs(x - y) / max(1.0, (x + y) ** 0.5))
    print(f"the two matrices differ by at most {worst:.1f} standard deviations")


if __name__ == "__main__":
    main()
