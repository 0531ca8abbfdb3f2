"""Forty random networks whose links may carry air either way, and every state SciPy finds them in.

Run with Debian's python3-scipy:  python3 make_states.py > states.json   (the seed is fixed)

Laws and file form are those of make_networks.py. Where a link climbs between places of different temperature, the density
of its air depends on which end it comes from. Every choice of ends is tried: with the choice held, each flow is a plain
function of the pressure difference and the balance has one solution (scipy.optimize.root, several starts); it is a state when
every flow then does come from the chosen end. A network is kept when at least one state exists, no flow of any state is below
5e-4 kg/s (where a column of some pascals stands behind so small a flow, the way a law is smoothed near nothing decides), and in some state some link could carry air the other way at the very same pressures. Blowers are left out and
given pressures kept small, so that columns of air decide.
"""
import itertools
import json
import math
import sys

import numpy as np
from scipy.optimize import root

import make_networks as mn

rng = mn.rng
rng.seed(20260215)


def climbing(net):
    def column(link):
        a, b = net["nodes"][link["from"]], net["nodes"][link["to"]]
        return abs(net["ambient"] / mn.R * (1 / a["t"] - 1 / b["t"]) * mn.G * (b["z"] - a["z"]))
    return [i for i, link in enumerate(net["links"]) if column(link) > 0.01]


def held_flow(net, link, forward, p):
    a, b = net["nodes"][link["from"]], net["nodes"][link["to"]]
    t = a["t"] if forward else b["t"]
    rho, out = net["ambient"] / (mn.R * t), net["ambient"] / (mn.R * net["t_out"])
    return mn.one_way(link, p[link["from"]] - p[link["to"]] + (out - rho) * mn.G * (b["z"] - a["z"]), rho, t)


def state(net, choice):
    """The one solution with the chosen ends held; None when SciPy finds none or a flow denies its end."""
    free = [i for i, n in enumerate(net["nodes"]) if n["p"] is None]

    def pressures(x):
        p = [n["p"] for n in net["nodes"]]
        for i, v in zip(free, x):
            p[i] = float(v)
        return p

    def flows(p):
        return [held_flow(net, link, choice[i], p) if i in choice else mn.flow(link, net, p) for i, link in enumerate(net["links"])]

    def balance(x):
        sums = np.zeros(len(net["nodes"]))
        for link, q in zip(net["links"], flows(pressures(x))):
            sums[link["from"]] -= q
            sums[link["to"]] += q
        return sums[free] * 1e3

    for attempt in range(6):
        start = [rng.uniform(-20, 20) for _ in free]
        method = ("hybr", "lm")[attempt % 2]
        try:
            r = root(balance, start, method=method, options={"xtol": 1e-13} if method == "hybr" else {"xtol": 1e-14, "ftol": 1e-14})
        except ValueError:
            continue
        if max(abs(balance(r.x)), default=0) < 1e-7:
            p = pressures(r.x)
            q = flows(p)
            return None if any((q[i] > 0) != forward for i, forward in choice.items()) else (p, q)
    raise ArithmeticError


def network():
    net = mn.network()
    net["links"] = [k for k in net["links"] if k["kind"] != "blower"]
    for n in net["nodes"]:
        if n["p"] is not None:
            n["p"] = round(0.05 * n["p"], 2)
    reached = {i for i, n in enumerate(net["nodes"]) if n["p"] is not None}
    for _ in net["nodes"]:
        for k in net["links"]:
            if k["from"] in reached or k["to"] in reached:
                reached |= {k["from"], k["to"]}
    return net if len(reached) == len(net["nodes"]) and len(net["nodes"]) <= 7 else None


kept, several, tried = [], 0, 0
while len(kept) < 40:
    tried += 1
    net = network()
    if net is None:
        continue
    links = climbing(net)
    if not 1 <= len(links) <= 6:
        continue
    try:
        found = [state(net, dict(zip(links, ends))) for ends in itertools.product([True, False], repeat=len(links))]
    except ArithmeticError:
        continue
    states = [f for f in found if f is not None]
    if not states or any(abs(q) < 5e-4 for _, flows in states for q in flows):
        continue
    if not any(mn.either_way(net["links"][i], net, p) for p, _ in states for i in links):
        continue
    if len(states) == 1 and len(kept) - several >= 20:
        continue  # half of them stand in more than one state
    several += len(states) > 1
    kept.append({"network": mn.as_file(net, len(kept) + 1),
                 "states": [{"pressurePa": [float(f"{x:.9g}") for x in p], "massFlowKgPerS": [float(f"{x:.9g}") for x in q]} for p, q in states]})
    print(len(kept), several, tried, file=sys.stderr)
print("[")
print(",\n".join(json.dumps(k, separators=(",", ":")) for k in kept))
print("]")
