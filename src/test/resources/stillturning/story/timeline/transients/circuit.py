"""A case as a netlist, and the circuit simulator that plays it.

Charges and heats are capacitors, their rates behavioural sources. The figures below are read from
the same tables that the program's own figures come from; the formulas are written anew.
"""

import math
import pathlib
import re
import subprocess
import tempfile

MOST_SECONDS = 120  # that the simulator may take for a case
MOVE = 2.0  # s from one move of the pilot's to the next, as the program has it where a study says nothing
BLINK = 1e-7  # s in which a contact or a fuse opens
STEPS = 20000  # at least, in a case
OPTIONS = (".options reltol=1e-8 abstol=1e-9 vntol=1e-9 gmin=1e-15 trtol=1"
           " itl1=500 itl4=100 chgtol=1e4")
FARAD = 1e4  # so that rates are as large as the other currents
DRY = 1e-7  # charge over which a full battery takes no more, and a dry one that is not alone gives none
RISE = 1e-4  # s in which the set points of alternators rise; at once, no start is found
DIODE_LEAK = 1e-6  # S
SHORT = 0.005  # ohm
CELLS = {  # charge, V, resistance; temperature; capacity, resistance, V/K; acceptance; gas
    "lead": ([0, .10, .25, .50, .75, 1], [10.50, 11.95, 12.06, 12.24, 12.45, 12.65],
             [2, 1.7, 1.4, 1.15, 1.05, 1],
             [-40, -20, 0, 25, 40], [.25, .55, .80, 1, 1.05], [3.5, 2.2, 1.4, 1, .9], 1.2e-3,
             1, 1, 1e-4,
             (-.0444, [13.1 - 1.5 / math.log(10), 13.1, 14.1, 15, 15.6, 16.05, 16.5, 17.1, 17.55, 18, 108],
              [0, .001, .005, .02, .05, .1, .2, .5, 1, 2, 2 + 90 / .45])),
    "lithium": ([0, .10, .20, .30, .40, .70, .90, 1],
                [10, 12, 12.8, 13, 13.2, 13.3, 13.4, 13.6],
                [1.6, 1.3, 1.15, 1.05, 1, 1, 1, 1],
                [-40, -20, 0, 25, 45], [.20, .60, .85, 1, 1.02], [12, 5, 2, 1, .7], 0,
                3, .1, 1e-3, (0, [16.8, 116.8], [0, 50]))}
BLADE = [(1.10, 360e3), (1.35, math.sqrt(.75 * 600)), (1.60, math.sqrt(.25 * 50)),
         (2, math.sqrt(.15 * 5)), (3.5, math.sqrt(.08 * .5)), (6, math.sqrt(.03 * .1))]
WIRES = {"22": (755, 5), "16": (2426, 11), "12": (5874, 19), "10": (9354, 26), "8": (16983, 57),
         "4": (42615, 103)}  # circular mils, A in a bundle


class NotSolved(Exception):
    """The simulator found no start, or stopped on the way."""


class Circuit:
    """One case as a netlist, before the failure or after it."""

    def __init__(self, case, failed, warm, switched):
        self.rows = {}
        for words in case["lines"]:
            self.rows.setdefault(words[0], []).append(words[1:])
        self.failed = failed
        self.switched = switched  # when what opens or is moved does so (s)
        self.switches = {}  # what leads to that: voltage to watch, the value that it crosses, delay
        self.warm = warm  # heat that a current before the failure has left, by fuse or wire
        self.celsius = float(self.one("celsius", ["25"])[0])
        self.until = float(self.one("until", [])[0])
        self.modes = {w[0]: " ".join(w[1:]) for w in self.rows.get("fails", []) if failed}
        self.out = [f"* {case['name']}", "Rground ground 0 1e-4", f"Vup up 0 pwl(0 0.5 {RISE} 1)"]
        self.heats = {}  # what carries the current, to say how warm it was before
        self.starts = {}
        self.pilot()
        for kind in ("battery", "alternator", "load", "wire", "fuse", "diode", "switch"):
            for words in self.rows.get(kind, []):
                getattr(self, kind)(*words)
        self.out += [f".nodeset v({net[0]})=12.5" for net in self.rows["bar"]]
        self.out += [f".ic v({node})={value!r}" for node, value in self.starts.items()]

    def one(self, kind, otherwise):
        return self.rows.get(kind, [otherwise])[0]

    def text(self):
        return "\n".join(self.out + [OPTIONS, ".end"]) + "\n"

    def carries(self, node, start, rate):
        """A state: a node whose voltage rises by this much a second."""
        self.out += [f"C{node} {node} 0 {FARAD}", f"B{node} 0 {node} i={FARAD}*({rate})"]
        self.starts[node] = start

    def gone(self, node, watched, value, later):
        """0 before, 1 after what is watched has crossed a value: at a time that runs before found."""
        self.switches[node] = (watched, value, later)
        if node not in self.switched:
            return "0"
        at = self.switched[node]
        self.out.append(f"V{node} {node} 0 pwl(0 0 {at!r} 0 {at + BLINK!r} 1)")
        return f"v({node})"

    def pilot(self):
        self.moved = {}
        if not self.failed or "cue" not in self.rows:
            return
        seconds, *moves = self.one("pilot", [])
        kind, subject, *limits = self.one("cue", [])
        for k, (lever, position) in enumerate(zip(moves[::2], moves[1::2])):
            later = float(seconds) + k * MOVE
            if kind == "low":
                gone = self.gone(f"hand{k}", f"v({subject})", float(limits[0]),
                                 float(limits[1]) + later)
            else:
                gone = self.gone(f"hand{k}", "time", 0.0, later)
            self.moved[lever] = (position, gone)

    def battery(self, name, net, chemistry, hours, rated, peukert, ohms, charge):
        (at, volts, by_charge, celsius, capacity, by_celsius, per_kelvin, most, tapers,
         floats, (shift, gas_volts, gas)) = CELLS[chemistry]
        one_hour = float(hours)
        full = one_hour * 3600 * line(celsius, capacity, self.celsius)
        warm = per_kelvin * (self.celsius - 25)
        cold = float(ohms) * line(celsius, by_celsius, self.celsius)
        q, e, r, a = (f"v({x}_{name})" for x in "qera")
        v = f"(v({net})-v(ground))"
        steady = full / 3600 / float(rated)
        loss = float(peukert) - 1
        # pwl goes straight on beyond its ends
        gas_volts = [-100] + [x + shift * (self.celsius - 25) for x in gas_volts]
        gas = [0] + gas
        dries = f"*min(max({q}/{DRY},0),1)" if len(self.rows["battery"]) > 1 else ""
        self.out += [
            f"Be_{name} e_{name} 0 v={pwl(q, at, [x + warm for x in volts])}",
            f"Br_{name} r_{name} 0 v={pwl(q, at, [x * cold for x in by_charge])}",
            f"Ba_{name} a_{name} 0 v={one_hour}*({floats}+{most}*min(1,max(0,1-{q})/{tapers}))",
            # given, accepted, turned to gas (A)
            f"Bg_{name} g_{name} 0 v=max({e}-{v},0)/{r}{dries}",
            f"Bi_{name} i_{name} 0 v=min(max({v}-{e},0),{r}*{a})/{r}"
            f"+max({v}-{e}-{r}*{a},0)/({r}+2/{a})",
            f"Bh_{name} h_{name} 0 v={v}",
            f"Bb_{name} b_{name} 0 v=max({pwl(f'v(h_{name})', gas_volts, gas)}-{pwl(e, gas_volts, gas)},0)*{one_hour}",
            f"B{name} {net} ground i=v(i_{name})+v(b_{name})-v(g_{name})"]
        lost = f"*pow(max(v(g_{name})/{steady!r},1),{loss!r})" if loss > 0 else ""
        self.carries(f"q_{name}", float(charge), f"(v(i_{name})*min(max((1-{q})/{DRY},0),1)-v(g_{name}){lost})/{full!r}")
        self.carries(f"boils_{name}", 0.0,
                     f"max(v(b_{name})-0.05*{one_hour},0)/{0.5 * one_hour * 3600}")

    def alternator(self, name, net, volts, droop, amps, field):
        mode = self.modes.get(name, "")
        if mode != "regulator open":
            self.out.append(f"Rfield_{name} {net} ground {field}")
        if mode in ("regulator open", "no output"):
            return
        limit = float(amps) * (0.5 if mode == "part output" else 1)
        volts = float(volts) * (1.35 if mode == "over-voltage" else 1)
        self.out.append(f"B{name} ground {net} "
                        f"i=min(max(({volts!r}*v(up)-v({net})+v(ground))/{droop},0),{limit!r})")

    def load(self, name, net, kind, amps, minimum, ride):
        v = f"(v({net})-v(ground))"
        law = {"power": f"({v}>={minimum}) ? {12 * float(amps)!r}/max({v},{minimum})"
                        f" : {12 * float(amps)!r}*{v}/({minimum}*{minimum})",
               "current": f"{amps}*min({v}/{minimum},1)",
               "resistance": f"{v}*{amps}/12"}[kind]
        self.out.append(f"B{name} {net} ground i={law}")

    def wire(self, name, start, end, ohms, size):
        if self.modes.get(name) == "chafed to ground":
            half = float(ohms) / 2
            self.out += [f"R{name} {start} {name}x {half!r}", f"Rfar_{name} {name}x {end} {half!r}",
                         f"Rshort_{name} {name}x 0 {SHORT}"]
            end, ohms = f"{name}x", repr(half)
        else:
            self.out.append(f"R{name} {start} {end} {ohms}")
        mils, bundle = WIRES[size]
        energy = mils * mils * 0.0297 * math.log10((150 + 234) / (self.celsius + 234))
        steady = bundle * math.sqrt((150 - self.celsius) / 80)
        self.heat(name, start, end, ohms, steady, lambda load2: repr(steady * steady / energy))

    def fuse(self, name, start, end, amps, ohms):
        rated = float(amps) * math.sqrt((419.5 - self.celsius) / (419.5 - 25))
        points = BLADE + [(600, BLADE[-1][1] * 1e-4)]

        def pace(load2):
            cold = pwl(f"(0.5*ln({load2})+{math.log(1.1)!r})",
                       [math.log(m) for m, _ in points], [math.log(s) for _, s in points])
            return f"(-ln(1-1/{load2})*exp(-({cold})))"

        self.heat(name, start, end, ohms, 1.1 * rated, pace)
        open_now = self.gone(f"gap_{name}", f"v(h_{name})", 1.0, 0.0)
        self.out.append(f"B{name} {start} {end} i=(v({start})-v({end}))/{ohms}*(1-{open_now}+1e-12)")

    def heat(self, name, start, end, ohms, hold, pace):
        """First order towards the square of the load, above what is carried for ever."""
        load = f"((v({start})-v({end}))/{float(ohms) * hold!r})"
        self.heats[name] = load
        load2 = f"max({load}*{load},1.0000001)"
        self.carries(f"h_{name}", self.warm.get(name, 0.0),
                     f"(abs({load})>1) ? ({load2}-v(h_{name}))*{pace(load2)} : 0")

    def diode(self, name, start, end, saturation, emission, ohms):
        n = float(emission) / thermal_volts()
        self.out += [f".model m{name} d(is={saturation} n={n!r} rs={ohms})",
                     f"D{name} {start} {end} m{name}", f"Rd_{name} {start} {end} {1 / DIODE_LEAK!r}"]

    def switch(self, name, start, end, ohms, position):
        for lever, other in self.rows.get("moves", []) if self.failed else []:
            position = other if lever == name else position
        then, gone = self.moved.get(name, (position, "0"))
        share = {("on", "on"): "1", ("off", "off"): "0", ("on", "off"): f"(1-{gone})",
                 ("off", "on"): gone}[position, then]
        self.out.append(f"B{name} {start} {end} i=(v({start})-v({end}))/{ohms}*({share}+1e-12)")

    def watched(self):
        """For each event: the voltage to watch, the value that it crosses, what then passes (s)."""
        loads = {words[0]: words for words in self.rows["load"]}
        dry = DRY if len(self.rows["battery"]) > 1 else 0
        moves = 0
        for kind, part in self.rows.get("event", []):
            if kind == "LOAD_STOPS":
                _, net, _, _, minimum, ride = loads[part]
                yield kind, part, f"v({net})-v(ground)", float(minimum), float(ride)
            else:
                node, value = {"BATTERY_EMPTY": (f"q_{part}", dry),
                               "PROTECTOR_OPENS": (f"gap_{part}", 0.5),
                               "WIRE_OVERHEATS": (f"h_{part}", 1),
                               "BATTERY_DISCONNECTS": (f"boils_{part}", 1),
                               "PILOT": (f"hand{moves}", 0.5)}[kind]
                moves += kind == "PILOT"
                yield kind, part, f"v({node})", value, 0.0


def pwl(of, x, y):
    return f"pwl({of}," + ",".join(f"{a!r},{b!r}" for a, b in zip(x, y)) + ")"


def line(x, y, at):
    """Straight between points."""
    k = max(1, min(len(x) - 1, next((i for i, a in enumerate(x) if a >= at), len(x) - 1)))
    return y[k - 1] + (at - x[k - 1]) / (x[k] - x[k - 1]) * (y[k] - y[k - 1])


def simulator(text, commands):
    with tempfile.TemporaryDirectory() as folder:
        pathlib.Path(folder, "case.cir").write_text(text)
        pathlib.Path(folder, "driver.cir").write_text("\n".join(
            ["* driver", ".control", "set numdgt=14", "set width=200", "set wr_singlescale",
             "source case.cir", *commands, "quit", ".endc", ".end"]) + "\n")
        done = subprocess.run(["ngspice", "-b", "driver.cir"], cwd=folder,
                              capture_output=True, text=True, timeout=MOST_SECONDS)
        table = pathlib.Path(folder, "table.data")
        rows = [[float(x) for x in row.split()] for row in table.read_text().splitlines()] \
            if table.exists() else []
    return done, rows


def transient(circuit, wanted, until):
    """Time and what is wanted, row by row."""
    step = until / STEPS
    done, rows = simulator(circuit.text(), [f"tran {step!r} {until!r} 0 {step!r}",
                                            "wrdata table.data " + " ".join(wanted)])
    if not rows or rows[-1][0] < until * (1 - 1e-9):
        raise NotSolved(done.stdout[-3000:] + done.stderr[-3000:])
    return rows


THERMAL = []


def thermal_volts():
    """The thermal voltage that the simulator uses at 27 °C."""
    if not THERMAL:
        text = f"* thermal\n.model d d(is=1e-12 n=1)\nI1 0 a 1e-3\nD1 a 0 d\nR1 a b 1\n{OPTIONS}\n.end\n"
        done, _ = simulator(text, ["op", "print v(a)"])
        THERMAL.append(float(re.search(r"v\(a\) = (\S+)", done.stdout)[1]) / math.log1p(1e9))
    return THERMAL[0]
