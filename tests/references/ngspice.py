"""Runs netlists through ngspice and writes what it says, one CSV for each netlist.

    python3 ngspice.py FOLDER --out FOLDER

Each netlist NAME.cir writes binary raw files; their rows are put into NAME.csv in order of
frequency: hertz, then real and imaginary part of each vector, as shortest decimals that
read back to the same double. Only the standard library is needed.
"""

import argparse
import pathlib
import shutil
import struct
import subprocess
import tempfile


def rows_of(raw):
    """The rows of one binary raw file: real frequency, then the complex vectors."""
    head, _, body = raw.partition(b"Binary:\n")
    said = dict(line.split(":", 1) for line in head.decode().splitlines() if ":" in line)
    variables = int(said["No. Variables"])
    points = int(said["No. Points"].split()[0])
    if "complex" not in said["Flags"] or len(body) < points * variables * 16:
        raise SystemExit("not a complex raw file")
    width = 2 * variables
    for point in range(points):
        numbers = struct.unpack_from(f"<{width}d", body, point * width * 8)
        yield numbers[0], *numbers[2:]


def run(netlist):
    """All rows that a netlist's analyses give, by frequency."""
    with tempfile.TemporaryDirectory() as folder:
        done = subprocess.run(
            ["ngspice", "-b", str(netlist.resolve())],
            cwd=folder, capture_output=True, text=True, check=False,
        )
        files = sorted(pathlib.Path(folder).glob("*.raw"))
        if done.returncode != 0 or not files:
            raise SystemExit(f"{netlist.name}: ngspice gave nothing\n{done.stdout}{done.stderr}")
        rows = {row for file in files for row in rows_of(file.read_bytes())}
    return sorted(rows)


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("folder", type=pathlib.Path)
    asked.add_argument("--out", type=pathlib.Path, required=True)
    asked = asked.parse_args()
    if shutil.which("ngspice") is None:
        raise SystemExit("ngspice is not installed (Debian package ngspice)")
    asked.out.mkdir(parents=True, exist_ok=True)
    for netlist in sorted(asked.folder.glob("*.cir")):
        lines = [",".join(map(repr, row)) for row in run(netlist)]
        (asked.out / netlist.with_suffix(".csv").name).write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
