#!/usr/bin/env python3
"""Breaks the virtual stove on purpose, one expression at a time, and asks the named test to notice.

    python3 bench/mutants/mutants.py [FOLDER]

Works in a scratch copy of the sources (FOLDER, a temporary one unless given), never in this tree. Each row of mutants.tsv names a
file, a text that stands in it once, an expression in that text and what takes its place. In the copy every such expression is
made to choose by an environment variable, the tests are built once, and the named test class is run: sound, where it must pass, and
with each mutant switched on, where some test must fail. A mutant that none kills is printed as SURVIVED and the exit code is 1.
mutants.md beside this file lists file, line, change and the test that failed.
"""
import csv
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent
STOVE = "src/Emberwright.Stove"
PROJECT = "tests/Emberwright.Stove.Tests"
SWITCH = '''namespace Emberwright.Stove;

internal static class Mutant
{
    public static readonly int On = int.Parse(System.Environment.GetEnvironmentVariable("MUTANT") ?? "0");
}
'''


def copy(to):
    for name in [STOVE, PROJECT, "docs/schema", "demo"]:
        shutil.copytree(ROOT / name, to / name, dirs_exist_ok=True, ignore=shutil.ignore_patterns("bin", "obj"))
    for file in ROOT.iterdir():
        if file.is_file():
            shutil.copy(file, to / file.name)


def seed(folder, number, row):
    """Puts the choice in; returns the line it stands on."""
    sound = (ROOT / row["file"]).read_text(encoding="utf-8")
    path = folder / row["file"]
    text = path.read_text(encoding="utf-8")
    if sound.count(row["line"]) != 1 or text.count(row["line"]) != 1:
        sys.exit(f"{row['name']}: the text stands {sound.count(row['line'])} times in {row['file']}, not once")
    choice = row["line"].replace(row["old"], f"(Emberwright.Stove.Mutant.On == {number} ? ({row['new']}) : ({row['old']}))", 1)
    path.write_text(text.replace(row["line"], choice), encoding="utf-8")
    return sound[:sound.index(row["line"])].count("\n") + 1


def failed(folder, name, mutant):
    dll = folder / PROJECT / "bin/Debug/net10.0/Emberwright.Stove.Tests.dll"
    out = subprocess.run(["dotnet", str(dll), "-class", f"*.{name}", "-noColor"], cwd=folder, capture_output=True, text=True,
                         env=os.environ | {"MUTANT": str(mutant)}).stdout
    total = re.search(r"Total: (\d+)", out)
    if not total or total.group(1) == "0":
        sys.exit(f"{name}: no test ran: {out[-500:]}")
    return sorted({m.split("(")[0].split(".")[-1] for m in re.findall(r"^\s*(Emberwright\S+?)(?:\(.*\))? \[FAIL\]", out, re.M)})


def main():
    folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else pathlib.Path(tempfile.mkdtemp(prefix="mutants-"))
    copy(folder)
    with (HERE / "mutants.tsv").open(encoding="utf-8") as file:
        rows = list(csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE))
    lines = [seed(folder, i + 1, row) for i, row in enumerate(rows)]
    (folder / STOVE / "Mutant.cs").write_text(SWITCH, encoding="utf-8")
    built = subprocess.run(["dotnet", "build", PROJECT, "-v", "q", "--nologo"], cwd=folder, capture_output=True, text=True)
    if built.returncode:
        sys.exit(built.stdout[-3000:])
    for name in sorted({row["test"] for row in rows}):
        if wrong := failed(folder, name, 0):
            sys.exit(f"{name} fails on the sound stove: {wrong}")
    lived, table = 0, []
    for i, row in enumerate(rows):
        by = failed(folder, row["test"], i + 1)
        lived += not by
        print(f"{'killed' if by else 'SURVIVED':9} {row['name']}: {', '.join(by[:3])}", flush=True)
        more = f" and {len(by) - 1} more" if len(by) > 1 else ""
        caught = f"{row['test']}: {by[0].replace('_', ' ')}{more}" if by else "**nothing**"
        table.append(f"| {row['name']} | {row['file'].removeprefix('src/Emberwright.')}:{lines[i]} | `{row['old']}` | `{row['new']}` | {caught} |")
    (HERE / "mutants.md").write_text(
        "# Hand-seeded mutants\n\nEach expression below was broken in a scratch copy; the named test then failed. Written by `mutants.py`.\n\n"
        "| mutant | file and line | from | to | caught by |\n| --- | --- | --- | --- | --- |\n" + "\n".join(table) + "\n", encoding="utf-8")
    return 1 if lived else 0


sys.exit(main())
