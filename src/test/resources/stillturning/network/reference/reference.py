#!/usr/bin/env python3
"""Makes, or checks, the circuit simulator's answers that the network tests compare with.

    reference.py            writes networks.txt: hand-made and random networks with node voltages
    reference.py --check    solves the networks of networks.txt again and compares the voltages

Needs ngspice and nothing else beyond Python 3. The random networks follow from SEED alone.
"""

import math
import pathlib
import random
import re
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).parent
SEED = 20260101
RANDOM_NETWORKS = 300
RANDOM_BATTERIES = 60
DIGITS = 13
OPTIONS = ".options reltol=1e-10 abstol=1e-13 vntol=1e-11 gmin=1e-15 itl1=100 itl6=20"
# Every network is approached by a sweep of one voltage, v(path). From 0 to 1 the limits sharpen from a
# leak of 1e3 S, at which they are straight, to the program's own 1e-9 S; from 1 to 2 the loads grow
# from 2 % to all they want, which follows the higher of two solutions of a constant-power load.
LEAK = "pow(10,3-12*min(v(path),1))"
SHARE = "(0.02+0.98*max(v(path)-1,0))"
STEP = 0.0125
DIODE_LEAK = 1e-6  # S
# the thermal voltage that the simulator uses at 27 °C, measured by thermal_volts()
ARITY = {"open": 0, "resistive": 1, "source": 2, "limited": 3, "charge": 2, "power": 2,
         "current": 2, "diode": 3, "channel": 2, "converter": 4,
         "storage": 7}


def parse(text):
    networks = []
    for line in text.splitlines():
        word, _, rest = line.partition(" ")
        if word == "network":
            networks.append({"name": rest, "branches": [], "volts": {}})
        elif word == "branch":
            start, end, law, *numbers = rest.split()
            assert len(numbers) == ARITY[law], line
            networks[-1]["branches"].append((start, end, law, numbers))
        elif word == "volts":
            net, value = rest.split()
            networks[-1]["volts"][net] = float(value)
        else:
            assert not word or word == "#", line
    return networks


def across(start, end):
    return f"(v({start})-v({end}))" if end != "0" else f"v({start})"


def current(v, law, numbers):
    """The law as a continuous expression of the voltage across."""
    x = [repr(float(n)) for n in numbers]
    if law == "source":
        return f"(({v})-{x[0]})/{x[1]}"
    if law == "limited":
        knee = repr(float(numbers[1]) * float(numbers[2]))
        return (f"(-min(max(({x[0]}-{v})/{x[1]},0),{x[2]})+{LEAK}*max({v}-{x[0]},0)"
                f"-{LEAK}*max({x[0]}-{knee}-{v},0))")
    if law == "charge":
        return f"(max({v}-{x[0]},0)/{x[1]}+{LEAK}*min({v}-{x[0]},0))"
    if law == "power":
        return f"(({v}>={x[1]}) ? {x[0]}*{SHARE}/max({v},{x[1]}) : {x[0]}*{SHARE}*({v})/({x[1]}*{x[1]}))"
    if law == "current":
        return f"({x[0]}*{SHARE}*min({v},{x[1]})/{x[1]})"
    if law == "storage":
        # volts, ohms, accept, beyond ohms, gassing volts, gassing ohms, give
        e, r, accept, beyond, gas, bubbles, give = x
        knee = repr(float(numbers[0]) + float(numbers[1]) * float(numbers[2]))
        dry = repr(float(numbers[0]) - float(numbers[1]) * float(numbers[6]))
        return (f"(min(max(({v}-{e})/{r},-{give}),{accept})+max({v}-{knee},0)/{beyond}"
                f"+max({v}-{gas},0)/{bubbles}+{LEAK}*min({v}-{dry},0)"
                f"+({LEAK}-1e-9)*max({v}-{knee},0))")
    if law == "channel":
        knee = repr(float(numbers[0]) * float(numbers[1]))
        return (f"(min(max(({v})/{x[0]},-{x[1]}),{x[1]})+{LEAK}*max({v}-{knee},0)"
                f"+{LEAK}*min({v}+{knee},0))")
    raise ValueError(law)


def netlist(network, thermal):
    lines = [f"* {network['name']}", "Vpath path 0 2"]
    for b, (start, end, law, numbers) in enumerate(network["branches"]):
        if law == "open":
            continue
        if law == "resistive":
            lines.append(f"R{b} {start} {end} {numbers[0]}")
        elif law == "source":
            lines += [f"V{b} i{b}x {end} {numbers[0]}", f"R{b} {start} i{b}x {numbers[1]}"]
        elif law == "diode":
            n = float(numbers[1]) / thermal
            lines += [f".model m{b} d(is={numbers[0]} n={n!r} rs={numbers[2]})",
                      f"D{b} {start} {end} m{b}", f"R{b} {start} {end} {1 / DIODE_LEAK!r}"]
        elif law == "converter":
            out = network["branches"][int(numbers[0])]
            v, o = across(start, end), across(out[0], out[1])
            watts = f"({numbers[2]}+max(0,-({o})*{current(o, out[2], out[3])})/{numbers[1]})"
            floor = numbers[3]
            lines.append(f"B{b} {start} {end} i=(({v}>={floor}) ? {watts}/max({v},{floor}) : "
                         f"{watts}*({v})/({floor}*{floor}))+{LEAK}*({v})")
        else:
            lines.append(f"B{b} {start} {end} i={current(across(start, end), law, numbers)}")
    highest = max(float(n[0]) for _, _, law, n in network["branches"]
                  if law in ("source", "limited", "storage"))
    # only a hint: of two solutions of a constant-power load the higher is wanted
    lines += [f".nodeset v({net})={highest}" for net in nets(network)]
    return "\n".join(lines + [OPTIONS, ".end"]) + "\n"


def nets(network):
    seen = []
    for start, end, _, _ in network["branches"]:
        seen += [net for net in (start, end) if net != "0" and net not in seen]
    return seen


def simulate(networks, thermal):
    """
    Node voltages of each network, or None. Random networks by the sweep only, so that of two points
    the higher is met; the others, made to have one, also by its first half at full load, or at once.
    """
    answers = []
    for network in networks:
        text = netlist(network, thermal)
        loaded = text.replace(SHARE, "1")
        answer = sweep(network, text, 2)
        if answer is None and not network["name"].startswith("random"):
            answer = sweep(network, loaded, 1) or run([loaded], "op", "print all")[0]
        answers.append(answer)
    return answers


def sweep(network, text, end):
    wanted = " ".join(f"{net}[{round(end / STEP)}]" for net in ["path", *nets(network)])
    answer = run([text], f"dc vpath 0 {end} {STEP}", f"print {wanted}")[0]
    # a sweep that broke off prints its last point
    return answer if answer and abs(answer.get("path", 0) - end) < 1e-9 else None


def run(lists, analysis, output):
    """Runs all netlists in one process; a dict of node voltages, or None, for each."""
    with tempfile.TemporaryDirectory() as folder:
        script = ["* driver", ".control", f"set numdgt={DIGITS}", "set width=200"]
        for k, text in enumerate(lists):
            path = pathlib.Path(folder, f"n{k}.cir")
            path.write_text(text)
            script += [f"echo BEGIN {k}", f"source {path}", analysis, output, "remcirc"]
        script += ["echo END", "quit", ".endc", ".end"]
        driver = pathlib.Path(folder, "driver.cir")
        driver.write_text("\n".join(script) + "\n")
        done = subprocess.run(["ngspice", "-b", str(driver)], capture_output=True, text=True)
    answers = [None] * len(lists)
    at = None
    for line in done.stdout.splitlines():
        if line.startswith("BEGIN "):
            at = int(line.split()[1])
        match = re.fullmatch(r"(\S+) = (\S+)\s*", line)
        if match and at is not None and "#" not in match[1]:
            name = re.sub(r"\[\d+\]$", "", match[1])
            answers[at] = answers[at] or {}
            answers[at][name] = float(match[2])
    return answers


def thermal_volts():
    text = f"* thermal voltage\n.model d d(is=1e-12 n=1)\nI1 0 a 1e-3\nD1 a 0 d\nR1 a b 1\n{OPTIONS}\n.end\n"
    return run([text], "op", "print all")[0]["a"] / math.log1p(1e9)


def random_network(rng, k):
    """A tree of wires from buses, sources on some nets, loads, diodes, returns."""
    size = rng.choice([4, 6, 9, 14, 22, 35, 60])
    system = rng.choice([14, 14, 14, 28])
    emf = 12.0 if system == 14 else 24.5
    branches = []

    def add(start, end, law, *numbers):
        branches.append((start, end, law, [f"{n:.5g}" for n in numbers]))

    feed, back = ["n1"], ["0"]
    add("n1", "0", "source", emf + rng.random() * 1.2, 0.008 + 0.03 * rng.random())
    count = 1
    while count < size:
        count += 1
        net = f"n{count}"
        kind = rng.random()
        if kind < 0.12:
            add(net, rng.choice(back), "resistive", 0.002 + 0.05 * rng.random())
            back.append(net)
            continue
        parent = rng.choice(feed)
        if kind < 0.22:
            add(parent, net, "diode", *rng.choice([(1e-6, 0.0271, 0.008), (2e-9, 0.0401, 0.02)]))
        elif kind < 0.30:
            add(parent, net, "channel", 0.005 + 0.02 * rng.random(), rng.choice([3, 5, 10, 25]))
        else:
            add(parent, net, "resistive", 10 ** rng.uniform(-3, -0.7))
        feed.append(net)
        draw = rng.random()
        ret = rng.choice(back)
        small = rng.uniform(2, 45)
        if draw < 0.40:
            add(net, ret, "power", small, emf * 0.6)
        elif draw < 0.65:
            add(net, ret, "resistive", emf * emf / small)
        elif draw < 0.75:
            add(net, ret, "current", small / emf, emf * 0.55)
        elif draw < 0.80:
            add(net, "0", "source", emf + rng.uniform(-1, 1), 0.01 + 0.05 * rng.random())
        elif draw < 0.86:
            add(net, "0", "limited", emf * rng.uniform(1.08, 1.18), 0.01, rng.choice([8, 20, 45]))
        elif draw < 0.89:
            add(net, "0", "charge", emf * 0.9, 0.03)
        elif draw < 0.91:
            add(net, ret, "resistive", 0.01 + 0.1 * rng.random())
        elif draw < 0.95 and count < size:
            count += 1
            out = f"n{count}"
            add(out, ret, "limited", 0.45 * emf, 0.02, 6)
            add(net, ret, "converter", len(branches) - 1, 0.9, 1, emf * 0.6)
            add(out, ret, "resistive", rng.uniform(1.5, 20))
        else:
            add(net, "0", "resistive", 2000.0)
    for _ in range(rng.randrange(1 + size // 6)):
        one, other = rng.sample(feed, 2) if len(feed) > 1 else ("n1", "0")
        law = rng.random()
        if law < 0.6:
            add(one, other, "resistive", 10 ** rng.uniform(-3, -1))
        elif law < 0.8:
            add(one, other, "diode", 1e-6, 0.0271, 0.008)
        else:
            add(one, other, "open")
    return {"name": f"random {k}", "branches": branches, "volts": {}}


def with_batteries(rng, network):
    """The same network with batteries that are charged where it had plain sources."""
    branches, scale = [], 1
    for start, end, law, numbers in network["branches"]:
        if law == "source":
            volts, ohms = (float(n) for n in numbers)
            accept = rng.choice([0.02, 2, 15, 60])
            scale = volts / 12.5
            numbers = [f"{n:.6g}" for n in (volts, ohms, accept, ohms + 2 * scale / accept,
                                             14.4 * scale, 0.1 * scale, 1e4)]
            law = "storage"
        branches.append((start, end, law, numbers))
    feed = branches[0][0]
    branches.append((feed, "0", "limited", [f"{rng.choice([14.2, 19]) * scale:.5g}", "0.01", "30"]))
    return {"name": network["name"] + ", charged", "branches": branches, "volts": {}}


def store(networks, dropped, version, thermal):
    out = [
        "# origin: networks by handmade.txt and reference.py (invented, random from a fixed seed);",
        f"# voltages by {version}, an independent general circuit simulator, {OPTIONS[9:]}",
        f"# thermal voltage of its diodes {thermal:.10g} V (27 degC); it printed {DIGITS} digits",
        f"# random networks it did not solve: {dropped} of {RANDOM_NETWORKS + RANDOM_BATTERIES}; they stand in unsolved.txt",
        "# tolerance of the comparison: 1e-6 relative and 2e-6 V absolute",
        "# volts <net> <V>; branches as in handmade.txt",
    ]
    for network in networks:
        out += ["", f"network {network['name']}"]
        out += [" ".join(["branch", s, e, law, *numbers]) for s, e, law, numbers in network["branches"]]
        out += [f"volts {net} {network['volts'][net]!r}" for net in nets(network)]
    (HERE / "networks.txt").write_text("\n".join(out) + "\n")


def store_unsolved(networks):
    out = [
        "# origin: the random networks of reference.py that the simulator of networks.txt did not solve; no voltages",
        "# are known; branches as in handmade.txt",
    ]
    for network in networks:
        out += ["", f"network {network['name']}"]
        out += [" ".join(["branch", s, e, law, *numbers]) for s, e, law, numbers in network["branches"]]
    (HERE / "unsolved.txt").write_text("\n".join(out) + "\n")


def main():
    thermal = thermal_volts()
    version = re.search(r"ngspice-\S+", subprocess.run(["ngspice", "-v"], capture_output=True, text=True).stdout)[0]
    if "--check" in sys.argv:
        networks = parse((HERE / "networks.txt").read_text())
        worst = 0.0
        for network, answer in zip(networks, simulate(networks, thermal)):
            for net, volts in network["volts"].items():
                off = abs(answer[net] - volts) / (1.0 + abs(volts))
                worst = max(worst, off)
        print(f"{len(networks)} networks, {version}: furthest from the stored voltages {worst:.3g}")
        sys.exit(worst > 1e-8)
    rng = random.Random(SEED)
    networks = parse((HERE / "handmade.txt").read_text())
    made = len(networks)
    networks += [random_network(rng, k) for k in range(RANDOM_NETWORKS)]
    networks += [with_batteries(rng, random_network(rng, RANDOM_NETWORKS + k))
                 for k in range(RANDOM_BATTERIES)]
    kept, lost, hand_made_lost = [], [], 0
    for k, (network, answer) in enumerate(zip(networks, simulate(networks, thermal))):
        if answer is None or any(net not in answer for net in nets(network)):
            print("not solved:", network["name"])
            hand_made_lost += k < made
            lost.append(network)
            continue
        network["volts"] = {net: answer[net] for net in nets(network)}
        kept.append(network)
    store(kept, len(lost), version, thermal)
    store_unsolved(lost)
    print(f"{made} hand-made, {len(kept) - made} random, thermal voltage {thermal!r}")


main()
