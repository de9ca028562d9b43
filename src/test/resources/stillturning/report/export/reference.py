#!/usr/bin/env python3
"""Solves the netlists beside this file with an independent circuit simulator (ngspice).

--write   stores the volts of every net as NAME.volts, in the order of the nets
--check   solves them anew and compares with what is stored
"""
import pathlib
import re
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).parent
TOLERANCE = 1e-6  # volts


def solved(netlist):
    text = netlist.read_text()
    nets = sorted({int(n) for n in re.findall(r"^\* net (\d+):", text, re.M)} - {0})
    asked = " ".join(f"v({n})" for n in nets)
    control = f".control\nset numdgt=12\nop\nprint {asked}\nquit\n.endc\n.end\n"
    with tempfile.NamedTemporaryFile("w", suffix=".cir") as run:
        run.write(text.replace(".op\n.end\n", control))
        run.flush()
        out = subprocess.run(
            ["ngspice", "-b", run.name], capture_output=True, text=True, check=False
        ).stdout
    found = {int(n): float(v) for n, v in re.findall(r"^v\((\d+)\) = (\S+)", out, re.M)}
    if sorted(found) != nets:
        sys.exit(f"{netlist.name}: the simulator found {len(found)} of {len(nets)} nets\n{out}")
    return found


def stored(netlist):
    lines = netlist.with_suffix(".volts").read_text().splitlines()
    rows = [line.split() for line in lines if line and not line.startswith("#")]
    return {int(net): float(volts) for net, volts in rows}


def main():
    for netlist in sorted(HERE.glob("*.cir")):
        found = solved(netlist)
        if "--write" in sys.argv:
            head = "# volts of each net against the structure, by ngspice: see reference.py\n"
            rows = "".join(f"{net} {found[net]:.9f}\n" for net in sorted(found))
            netlist.with_suffix(".volts").write_text(head + rows)
        worst = max(abs(found[net] - volts) for net, volts in stored(netlist).items())
        print(f"{netlist.name}: {len(found)} nets, largest difference {worst:.1e} V")
        if worst > TOLERANCE:
            sys.exit(1)


main()
