"""Two hundred random air networks and their solutions, found without any code of Emberwright.

Run with Debian's python3-scipy:  python3 make_networks.py > networks.json   (the seed is fixed)

Equations written anew from the law of each link (SI units):
  opening   q = Cd*A*sqrt(2*rho*dp)
  crack     q = rho*(V10/at**n)*dp**n
  passage   dp = (f*L/D + loss)*q*|q|/(2*rho*A**2), f Darcy by Colebrook's formula, iterated to rest,
            64/Re at Re <= 2300, between 2300 and 4000 the two blended by w = t^3(10 - 15t + 6t^2), t = (Re - 2300)/1700
  blower    dp_rise = rho/1.2*(p0*s^2 - a*s*Q - b*Q|Q|), Q = q/rho
  viscosity of air by Sutherland's law: 1.716e-5*(T/273.15)^1.5*(273.15 + 110.4)/(T + 110.4)
  column    (rho_out - rho)*g*(z_to - z_from), rho of the air that enters the link
Unknowns are the pressures of the free nodes only; each link's flow follows from its pressure difference, in closed form
or by brentq; scipy.optimize.root (hybr, then lm) finds the pressures at which mass balances. This is the other way round
from a solver that keeps flows and pressures as unknowns. Each network is solved from three starts; it is kept when all that
succeed agree and no link could carry air either way at the pressures found (several states are possible where air of two
temperatures meets in a climbing link), and no flow is so small that its link's regime near nothing would decide.
"""
import json
import math
import random
import sys

import numpy as np
from scipy.optimize import brentq, root

G, R = 9.80665, 287.053
rng = random.Random(20260114)


def viscosity(t):
    return 1.716e-5 * (t / 273.15) ** 1.5 * (273.15 + 110.4) / (t + 110.4)


def colebrook(re, rough):
    x = 7.0  # 1/sqrt(f); the map contracts about tenfold a turn
    for _ in range(25):
        x = -2 * math.log10(rough / 3.7 + 2.51 * x / re)
    return 1 / x ** 2


def friction(re, rough):
    laminar = 64 / re
    if re <= 2300:
        return laminar
    turbulent = colebrook(re, rough)
    if re >= 4000:
        return turbulent
    t = (re - 2300) / 1700
    w = t ** 3 * (10 - 15 * t + 6 * t * t)
    return (1 - w) * laminar + w * turbulent


def drop(link, q, rho, t):
    """Loss of a passage, or minus the rise of a blower, at a flow of either sign."""
    if link["kind"] == "passage":
        if q == 0:
            return 0.0
        a = math.pi * link["d"] ** 2 / 4
        zeta = link["loss"]
        if link["l"] > 0:
            zeta += friction(abs(q) * link["d"] / (a * viscosity(t)), link["eps"] / link["d"]) * link["l"] / link["d"]
        return zeta * q * abs(q) / (2 * rho * a * a)
    v, s = q / rho, link["s"]
    return -rho / 1.2 * (link["p0"] * s * s - link["a"] * s * v - link["b"] * v * abs(v))


def one_way(link, dp, rho, t):
    """Flow for a driving difference with the density of one end."""
    if link["kind"] == "opening":
        return math.copysign(link["cd"] * link["area"] * math.sqrt(2 * rho * abs(dp)), dp)
    if link["kind"] == "crack":
        return math.copysign(rho * link["v"] / link["at"] ** link["n"] * abs(dp) ** link["n"], dp)
    return brentq(lambda q: drop(link, q, rho, t) - dp, -3, 3, xtol=1e-13, rtol=1e-12)


def flow(link, net, p):
    a, b = net["nodes"][link["from"]], net["nodes"][link["to"]]
    out = net["ambient"] / (R * net["t_out"])
    for here, sign in ((a, 1), (b, -1)):
        rho = net["ambient"] / (R * here["t"])
        dp = p[link["from"]] - p[link["to"]] + (out - rho) * G * (b["z"] - a["z"])
        q = one_way(link, dp, rho, here["t"])
        if q * sign >= 0:
            return q
    return 0.0  # a stratified link: neither direction carries itself


def either_way(link, net, p):
    """True when the link could carry air both ways at these pressures: up warm and down cold, or the like."""
    a, b = net["nodes"][link["from"]], net["nodes"][link["to"]]
    out = net["ambient"] / (R * net["t_out"])
    flows = []
    for here in (a, b):
        rho = net["ambient"] / (R * here["t"])
        flows.append(one_way(link, p[link["from"]] - p[link["to"]] + (out - rho) * G * (b["z"] - a["z"]), rho, here["t"]))
    return flows[0] * flows[1] <= 0


def solve(net):
    free = [i for i, n in enumerate(net["nodes"]) if n["p"] is None]
    found = []

    def pressures(x):
        p = [n["p"] for n in net["nodes"]]
        for i, v in zip(free, x):
            p[i] = v
        return p

    def balance(x):
        p = pressures(x)
        sums = np.zeros(len(p))
        for link in net["links"]:
            q = flow(link, net, p)
            sums[link["from"]] -= q
            sums[link["to"]] += q
        return sums[free] * 1e3

    for _ in range(3):
        start = [rng.uniform(-40, 40) for _ in free]
        for method in ("hybr", "lm"):
            try:
                r = root(balance, start, method=method, options={"xtol": 1e-13} if method == "hybr" else {"xtol": 1e-14, "ftol": 1e-14})
            except ValueError:
                continue
            if max(abs(balance(r.x)), default=0) < 1e-7:
                found.append(r.x)
                break
        if not found or any(abs(flow(link, net, pressures(found[0]))) < 1e-4 for link in net["links"]):
            return None
    if len(found) < 2 or any(np.max(np.abs(f - found[0])) > 1e-4 for f in found):
        return None
    p = pressures(found[0])
    if any(either_way(link, net, p) for link in net["links"]):
        return None
    flows = [flow(link, net, p) for link in net["links"]]
    return p, flows


def uniform_log(low, high):
    return math.exp(rng.uniform(math.log(low), math.log(high)))


def sig(x, digits=4):
    return float(f"{x:.{digits}g}")


def network():
    fixed, free = rng.randint(1, 4), rng.randint(2, 9)
    warm = rng.random() < 0.7
    net = {"ambient": sig(rng.uniform(70000, 103000), 5), "t_out": 273.15 + round(rng.uniform(-20, 30), 1)}
    net["nodes"] = [{"z": round(rng.uniform(0, 8), 2), "p": round(rng.uniform(-40, 40), 2) if i < fixed else None,
                     "t": 273.15 + round(rng.uniform(-20, 250), 1) if warm else net["t_out"]} for i in range(fixed + free)]
    ends = [(rng.randrange(i), i) for i in range(fixed, fixed + free)]
    ends += [tuple(rng.sample(range(fixed + free), 2)) for _ in range(rng.randint(free // 2 + 1, free + 2))]
    net["links"] = []
    for a, b in ends:
        if rng.random() < 0.5:
            a, b = b, a
        if a < fixed and b < fixed:
            continue
        kind = rng.choices(["opening", "crack", "passage", "blower"], [4, 3, 4, 1])[0]
        link = {"kind": kind, "from": a, "to": b}
        if kind == "opening":
            link |= {"area": sig(uniform_log(5e-4, 2e-2)), "cd": round(rng.uniform(0.5, 0.9), 2)}
        elif kind == "crack":
            link |= {"v": sig(uniform_log(10, 300)) / 3600, "at": 10.0, "n": round(rng.uniform(0.5, 0.9), 2)}
        elif kind == "passage":
            link |= {"d": sig(uniform_log(0.03, 0.15), 3), "l": round(rng.choice([0, rng.uniform(0.2, 8)]), 2),
                     "eps": sig(uniform_log(1e-5, 2e-3), 3), "loss": round(rng.uniform(0.5, 8), 2)}
        else:
            link |= {"p0": round(rng.uniform(20, 200), 1), "a": sig(uniform_log(200, 3000)), "b": sig(uniform_log(1e4, 3e5)),
                     "s": round(rng.uniform(0.4, 1.3), 2)}
        net["links"].append(link)
    return net


def as_file(net, number):
    def link(i, k):
        made = {"id": f"l{i}", "kind": k["kind"], "from": f"n{k['from']}", "to": f"n{k['to']}"}
        if k["kind"] == "opening":
            made |= {"areaM2": k["area"], "discharge": k["cd"]}
        elif k["kind"] == "crack":
            made |= {"leakage": f"{k['v'] * 3600:.10g} m3/h", "at": "10 Pa", "exponent": k["n"]}
        elif k["kind"] == "passage":
            made |= {"diameter": f"{k['d'] * 1000:.10g} mm", "length": f"{k['l']} m", "roughness": f"{k['eps'] * 1000:.10f} mm", "loss": k["loss"]}
        else:
            made |= {"shutOff": f"{k['p0']} Pa", "linearPaSPerM3": k["a"], "quadraticPaS2PerM6": k["b"], "speed": k["s"]}
        return made

    def node(i, n):
        made = {"id": f"n{i}", "height": f"{n['z']} m", "temperature": f"{n['t'] - 273.15:.1f} degC"}
        return made if n["p"] is None else made | {"pressure": f"{n['p']} Pa"}

    return {"format": "emberwright-network", "version": 1, "name": f"random network {number}",
            "outdoor": {"temperature": f"{net['t_out'] - 273.15:.1f} degC", "pressure": f"{net['ambient']} Pa"},
            "nodes": [node(i, n) for i, n in enumerate(net["nodes"])],
            "links": [link(i, k) for i, k in enumerate(net["links"])]}


def main():
    kept, tried = [], 0
    while len(kept) < 200:
        tried += 1
        net = network()
        answer = solve(net)
        if answer is None:
            continue
        p, q = answer
        kept.append({"network": as_file(net, len(kept) + 1), "pressurePa": [float(f"{x:.9g}") for x in p], "massFlowKgPerS": [float(f"{x:.9g}") for x in q]})
        print(len(kept), tried, file=sys.stderr)
    print("[")
    print(",\n".join(json.dumps(k, separators=(",", ":")) for k in kept))
    print("]")


if __name__ == "__main__":
    main()
