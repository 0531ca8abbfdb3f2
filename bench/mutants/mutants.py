#!/usr/bin/env python3
"""Breaks the virtual stove on purpose, one line at a time, and asks the named test to notice.

    python3 bench/mutants/mutants.py [FOLDER] [NAME ...]

Works in a scratch copy of the sources (FOLDER, a temporary one unless given), never in this tree. For each row of mutants.tsv it
replaces the text in the file, builds the tests and runs the named class; a mutant that no test kills is printed as SURVIVED and
the exit code is 1. At the end mutants.md beside this file lists file, line, change and the test that failed.
"""
import csv
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


def run(command, where):
    return subprocess.run(command, cwd=where, capture_output=True, text=True)


def copy(to):
    names = ["src/Emberwright.Stove", PROJECT, "docs/schema", "demo"]
    for name in names:
        shutil.copytree(ROOT / name, to / name, dirs_exist_ok=True, ignore=shutil.ignore_patterns("bin", "obj"))
    for file in ROOT.iterdir():
        if file.is_file():
            shutil.copy(file, to / file.name)


def test(folder, name):
    """Builds only the mutated library and lays it beside the tests built once."""
    built = run(["dotnet", "build", STOVE, "--no-restore", "-v", "q", "--nologo"], folder)
    if built.returncode:
        return None, built.stdout[-2000:]
    dll = folder / PROJECT / "bin/Debug/net10.0/Emberwright.Stove.Tests.dll"
    shutil.copy(folder / STOVE / "bin/Debug/net10.0/Emberwright.Stove.dll", dll.parent)
    out = run(["dotnet", str(dll), "-class", f"*.{name}", "-noColor"], folder).stdout
    total = re.search(r"Total: (\d+)", out)
    if not total or total.group(1) == "0":
        return None, f"no test ran: {out[-500:]}"
    return [m.split("(")[0].split(".")[-1] for m in re.findall(r"^\s*(Emberwright\S+?)(?:\(.*\))? \[FAIL\]", out, re.M)], ""


def main():
    args = sys.argv[1:]
    folder = pathlib.Path(args[0]) if args else pathlib.Path(tempfile.mkdtemp(prefix="mutants-"))
    wanted = set(args[1:])
    copy(folder)
    if (built := run(["dotnet", "build", PROJECT, "-v", "q", "--nologo"], folder)).returncode:
        sys.exit(built.stdout[-2000:])
    rows, lived = [], 0
    for row in csv.DictReader((HERE / "mutants.tsv").open(encoding="utf-8"), delimiter="\t", quoting=csv.QUOTE_NONE):
        if wanted and row["name"] not in wanted:
            continue
        path = folder / row["file"]
        sound = path.read_text(encoding="utf-8")
        if sound.count(row["old"]) != 1:
            sys.exit(f"{row['name']}: the text stands {sound.count(row['old'])} times in {row['file']}, not once")
        line = sound[:sound.index(row["old"])].count("\n") + 1
        path.write_text(sound.replace(row["old"], row["new"]), encoding="utf-8")
        failed, why = test(folder, row["test"])
        path.write_text(sound, encoding="utf-8")
        if failed is None:
            sys.exit(f"{row['name']}: {why}")
        lived += not failed
        print(f"{'killed' if failed else 'SURVIVED':9} {row['name']}: {', '.join(sorted(set(failed))[:3])}", flush=True)
        rows.append((row, line, sorted(set(failed))))
    if not wanted:
        with (HERE / "mutants.md").open("w", encoding="utf-8") as out:
            out.write("# Hand-seeded mutants\n\nEach line below was broken in a scratch copy; the named test then failed. Written by `mutants.py`.\n\n")
            out.write("| mutant | file and line | from | to | caught by |\n| --- | --- | --- | --- | --- |\n")
            for row, line, failed in rows:
                cell = lambda text: "`" + text.replace("|", "\\|") + "`"
                caught = f"{row['test']}: {failed[0].replace('_', ' ')}" + (f" and {len(failed) - 1} more" if len(failed) > 1 else "") if failed else "**nothing**"
                out.write(f"| {row['name']} | {row['file'].removeprefix('src/Emberwright.')}:{line} | {cell(row['old'])} | {cell(row['new'])} | {caught} |\n")
    return 1 if lived else 0


sys.exit(main())
