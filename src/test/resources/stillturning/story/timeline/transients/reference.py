#!/usr/bin/env python3
"""Makes, or checks, the circuit simulator's answers that the tests of stories compare with.

    reference.py            writes stories.txt: hand-made and random cases with what happens in them
    reference.py --check    plays the cases of stories.txt again and compares

Needs ngspice and nothing else beyond Python 3. The random cases follow from SEED alone.
"""

import pathlib
import random
import re
import subprocess
import sys

sys.dont_write_bytecode = True
from circuit import Circuit, NotSolved, OPTIONS, RISE, STEPS, transient

HERE = pathlib.Path(__file__).parent
SEED = 20260102
RANDOM_CASES = 24
ARITY = {"celsius": 1, "bar": 1, "battery": 8, "alternator": 6, "load": 6, "wire": 5, "fuse": 5,
         "diode": 6, "switch": 5, "flown": 0, "until": 1, "event": 2,
         "volts": 3, "charge": 3, "happens": 3}
ANSWERS = ("volts", "charge", "happens")


def parse(text):
    cases = []
    for line in text.splitlines():
        word, _, rest = line.partition(" ")
        if word == "case":
            cases.append({"name": rest, "lines": []})
        elif word and word != "#":
            words = line.split()
            assert ARITY.get(word, len(words) - 1) == len(words) - 1, line
            cases[-1]["lines"].append(words)
    return cases


def play(case):
    """What happens in a case, as lines of answers."""
    before = Circuit(case, False, {}, {})
    loads = transient(before, list(before.heats.values()), 2 * RISE)[-1][1:] if before.heats else []
    warm = {n: x * x if abs(x) <= 1 else 0.0 for n, x in zip(before.heats, loads)}
    circuit = Circuit(case, True, warm, {})
    switched = {}
    while True:
        found = first_switch(circuit)
        if found is None:
            break
        switched.update([found])
        circuit = Circuit(case, True, warm, switched)
    nets = [w[0] for w in circuit.rows["bar"]]
    batteries = [w[0] for w in circuit.rows["battery"]]
    events = list(circuit.watched())
    series = transient(circuit, [f"v({n})" for n in nets] + [f"v(q_{b})" for b in batteries]
                       + [e[2] for e in events], circuit.until)
    answers = []
    for t in circuit.one("at", []):
        here = at(series, float(t))
        answers += [["volts", t, net, f"{v:.10g}"] for net, v in zip(nets, here)]
        answers += [["charge", t, b, f"{q:.10g}"] for b, q in zip(batteries, here[len(nets):])]
    for k, (kind, part, _, value, later) in enumerate(events):
        seconds = crossing(series, 1 + len(nets) + len(batteries) + k, value) + later
        answers.append(["happens", kind, part, f"{seconds:.10g}"])
    return answers


def first_switch(circuit):
    """The first that has not switched although it had reason to, and when."""
    open_ones = [n for n in circuit.switches if n not in circuit.switched]
    watched = [circuit.switches[n] for n in open_ones]
    series = transient(circuit, [w[0] for w in watched], circuit.until) if watched else []
    found = []
    for column, (node, (_, value, later)) in enumerate(zip(open_ones, watched), 1):
        if any((row[column] - value) * (series[0][column] - value) <= 0 for row in series[1:]):
            found.append((crossing(series, column, value) + later, node))
    return (min(found)[1], min(found)[0]) if found else None


def at(series, t):
    k = next(i for i, row in enumerate(series) if row[0] >= t and i > 0)
    return between(series[k - 1], series[k], (t - series[k - 1][0]) / (series[k][0] - series[k - 1][0]))


def between(low, high, share):
    return [a + share * (b - a) for a, b in zip(low[1:], high[1:])]


def crossing(series, column, value):
    for low, high in zip(series, series[1:]):
        a, b = low[column] - value, high[column] - value
        if a * b <= 0 and a != b:
            return low[0] + (high[0] - low[0]) * a / (a - b)
    raise ValueError(f"column {column} never crosses {value}, ends at {series[-1][column]}")


def random_case(rng, k):
    """A main and an essential bus, each with its battery; what is left of the source; the pilot."""
    celsius = rng.choice([-20, 0, 25, 25, 40])
    lines = [["celsius", str(celsius)], *(["bar", n] for n in ("main", "essential", "far"))]

    def add(*words):
        lines.append([w if isinstance(w, str) else f"{w:.4g}" for w in words])

    for name, net in (("battery", "main"), ("reserve", "essential"), ("third", "far")):
        if name == "third" and rng.random() < 0.7:
            continue
        kind = rng.choice(["lead", "lead", "lithium"])
        add("battery", name, net, kind, rng.uniform(6, 24), "20" if kind == "lead" else "1",
            rng.choice([1, 1.1, 1.2]) if kind == "lead" else "1", rng.uniform(0.006, 0.03),
            rng.uniform(0.6, 1))
    add("alternator", "alternator", "main", rng.uniform(13.9, 14.5), rng.uniform(0.003, 0.02),
        rng.uniform(8, 40), "4")
    if rng.random() < 0.5:
        add("diode", "feed", "main", "essential", "1e-5", "0.0275", rng.uniform(0.002, 0.02))
    else:
        add("wire", "feed", "main", "essential", 10 ** rng.uniform(-2.5, -0.8), "4")
    add("switch", "tie", "main", "essential", rng.uniform(0.005, 0.05), rng.choice(["on", "off"]))
    add("wire", "lead", "essential", "far", 10 ** rng.uniform(-2.5, -1), "4")
    for name, net in (("computer", "essential"), ("pump", "far"), ("lamp", "main"), ("radio", "far"),
                      ("heat", "main")):
        add("load", name, net, rng.choice(["power", "current", "resistance"]), rng.uniform(1, 7),
            "6", "0.02")
    add("fails", "alternator",
        *rng.choice(["no output", "regulator open", "part output", "over-voltage"]).split())
    if lines[-1][2:] in (["no", "output"], ["regulator", "open"]):
        add("cue", "out", "alternator")
        add("pilot", f"{rng.uniform(50, 400):.1f}", "tie",
            "off" if ["on"] == next(w for w in lines if w[:2] == ["switch", "tie"])[-1:] else "on")
    add("flown")
    add("until", "900")
    add("at", *(f"{t * rng.uniform(0.9, 1):.1f}" for t in (3, 30, 180, 450, 900)))
    return {"name": f"random {k}", "lines": lines}


def store(cases, dropped, version):
    out = [
        "# origin: cases by handmade.txt and reference.py (invented, random from a fixed seed);",
        f"# what happens by {version}, an independent general circuit simulator, {OPTIONS[9:]},",
        f"# at least {STEPS} steps a case; random cases it did not solve, left out: {dropped} of {RANDOM_CASES}",
        "# volts <s> <net> <V>; charge <s> <battery> <0 to 1>; happens <kind> <part> <s>;",
        "# everything else as in handmade.txt",
    ]
    for case in cases:
        out += ["", f"case {case['name']}", *(" ".join(words) for words in case["lines"])]
    (HERE / "stories.txt").write_text("\n".join(out) + "\n")


def check():
    """Plays every stored case again; how far volts, charges and times are off (relatively, above 1)."""
    worst = dict.fromkeys(ANSWERS, 0.0)
    cases = parse((HERE / "stories.txt").read_text())
    for case in cases:
        stored = [words for words in case["lines"] if words[0] in ANSWERS]
        answers = play(case)
        assert [w[:3] for w in stored] == [w[:3] for w in answers], case["name"]
        for old, new in zip(stored, answers):
            off = abs(float(old[3]) - float(new[3])) / max(1, float(old[3]))
            worst[old[0]] = max(worst[old[0]], off)
    print(f"{len(cases)} stories: furthest from the stored", worst)
    return max(worst.values()) > 1e-6


def main():
    version = re.search(r"ngspice-\S+", subprocess.run(["ngspice", "-v"], capture_output=True, text=True).stdout)[0]
    if "--check" in sys.argv:
        sys.exit(check())
    rng = random.Random(SEED)
    cases = parse((HERE / "handmade.txt").read_text())
    cases += [random_case(rng, k) for k in range(RANDOM_CASES)]
    kept = []
    for case in cases:
        try:
            answers = play(case)
        except NotSolved:
            print("not solved:", case["name"])
            assert case["name"].startswith("random")
            continue
        case["lines"] += answers
        kept.append(case)
        print(case["name"], [a for a in answers if a[0] == "happens"])
    store(kept, len(cases) - len(kept), version)


main()
