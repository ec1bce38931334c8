"""Reads a backup as a stranger would who has only its README.txt: with Python's zipfile, hashlib, json and csv; then what was
written apart from it for other programs.

Usage: read.py FOLDER, as the example sample_backup leaves it
"""

import csv
import hashlib
import io
import json
import pathlib
import sys
import zipfile
from datetime import datetime, timezone


def fold(events):
    """The things that the journal amounts to, by kind and entity, as the README says."""
    events = sorted(events, key=lambda event: (event["clock"], event["device"], event["seq"]))
    by_name = {(event["device"], event["seq"]) for event in events}
    retracted = set()

    # A retraction may itself be taken back, so the last word counts: from the newest to the oldest.
    for event in reversed(events):
        target = (event["body"].get("device"), event["body"].get("seq"))
        if event["kind"] == "retract" and (event["device"], event["seq"]) not in retracted and target in by_name:
            retracted.add(target)
    things = {}
    for event in events:
        if event["kind"] != "retract" and (event["device"], event["seq"]) not in retracted:
            fields = things.setdefault(event["kind"], {}).setdefault(event["entity"], {})
            fields.update(event["body"])
    return things


def same(what, expected, found):
    if expected != found:
        sys.exit(f"{what}: expected {expected}, found {found}")


def main():
    folder = pathlib.Path(sys.argv[1])
    archive = zipfile.ZipFile(folder / "backup.zip")
    same("the first damaged file, by zipfile's checksums", None, archive.testzip())
    manifest = json.loads(archive.read("manifest.json"))
    names = set(archive.namelist()) - {"manifest.json"}
    same("the files", names, set(manifest["sha256"]))
    for name, sha256 in manifest["sha256"].items():
        same(f"SHA-256 of {name}", hashlib.sha256(archive.read(name)).hexdigest(), sha256)
        if name.startswith("photos/") and not name.endswith(".preview.jpg"):
            ending = {b"\xff\xd8": "jpg", b"\x89P": "png"}[archive.read(name)[:2]]
            same("the name of a photograph", f"photos/{sha256}.{ending}", name)

    events = [json.loads(line) for name in names if name.startswith("journal/") for line in archive.read(name).splitlines()]
    same("events", manifest["events"], len(events))
    for name in (name for name in names if name.startswith("journal/")):
        lines = [json.loads(line) for line in archive.read(name).splitlines()]
        _, device, first = name.removesuffix(".jsonl").split("/")
        same(f"numbers in {name}", list(range(int(first), int(first) + len(lines))), [line["seq"] for line in lines])
        same(f"devices in {name}", {device}, {line["device"] for line in lines})
    things = fold(events)

    def table(name):
        text = archive.read(f"tables/{name}.csv").decode("utf-8-sig")
        same(f"ends of lines in {name}", text.count("\n"), text.count("\r\n"))
        return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))

    readings = table("readings")
    coats = sorted(things["coat"].items(), key=lambda item: (item[1]["at"], item[0]))
    same("readings", len(coats), len(readings))
    for (_, coat), row in zip(coats, readings):
        at = datetime.fromtimestamp(coat["at"] / 1000, timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
        same("when", at, row["at"])
        same("piece", coat["piece"], row["piece"])
        same("form", things["form"][coat["form"]]["name"], row["form"])
        same("glaze", things["glaze"][coat["glaze"]]["name"], row["glaze"])
        for column, field, scale in [
            ("wet_weight_g", "net_mg", 1e3), ("aim_g", "aim_mg", 1e3), ("laydown_g_per_dm2", "laydown_mg_dm2", 1e3),
            ("specific_gravity", "specific_gravity_e5", 1e5),
        ]:
            same(column, coat[field], round(float(row[column]) * scale))
        same("control piece", "yes" if coat.get("control") else "no", row["control_piece"])
    placed = {(place["piece"], place["firing"]) for place in things["placement"].values() if not place.get("gone")}
    pieces = table("pieces")
    same("pieces in firings", placed, {(row["piece"], row["firing"]) for row in pieces})
    liked = {(found["piece"], found["firing"]): found.get("liking") for found in things["finding"].values()}
    for row in pieces:
        same("liking", str(liked.get((row["piece"], row["firing"])) or ""), row["liking_1_to_5"])
    same("firings", len(things["firing"]), len(table("firings")))
    for row in pieces:
        coats_of_piece = [coat for coat in things["coat"].values() if coat["piece"] == row["piece"]]
        same("form of a piece", {things["form"][coat["form"]]["name"] for coat in coats_of_piece}, {row["form"]})
    # Two buckets may have one name.
    buckets = sorted((bucket["name"], things["glaze"][bucket["glaze"]]["name"]) for bucket in things["bucket"].values())
    same("buckets", buckets, sorted((row["bucket"], row["glaze"]) for row in table("buckets")))

    head, *lines = (folder / "journal.jsonl").read_bytes().splitlines(keepends=True)
    head = json.loads(head)
    same("the sum of the journal", head["sha256"], hashlib.sha256(b"".join(lines)).hexdigest())
    same("events in the journal", head["events"], len(lines))
    in_order = lambda events: sorted(events, key=lambda event: (event["device"], event["seq"]))
    same("the journal", in_order(events), [json.loads(line) for line in lines])
    apart = zipfile.ZipFile(folder / "tables.zip")
    tables = {name.removeprefix("tables/") for name in names if name.startswith("tables/")}
    same("the tables", tables, set(apart.namelist()))
    for name in tables:
        same(name, archive.read(f"tables/{name}"), apart.read(name))
    same("the readings", archive.read("tables/readings.csv"), (folder / "readings.csv").read_bytes())
    print(f"{len(events)} events of {len(names)} files read without laydown; {len(readings)} readings and {len(pieces)} pieces agree")


if __name__ == "__main__":
    main()
