"""Sheets as Python's csv module writes them, in its dialects and in several encodings, and what laydown made of them.

Usage: write.py make FOLDER       writes the sheets into FOLDER, which is made
       write.py check FOLDER      compares with the backups that `import_sheets FOLDER` left beside them
"""

import csv
import io
import pathlib
import random
import sys
import zipfile
from datetime import datetime, timedelta, timezone

# As in tests/examples/import_sheets.rs: an hour ahead of UTC.
LOCAL = timezone(timedelta(hours=1))
HEADERS = ["When", "Shape", "Glaze", "Side", "Net weight (g)", "S.G.", "Control piece", "Remarks"]
# The semicolon is what a spreadsheet writes where numbers have a comma.
GERMAN = ["Datum", "Form", "Glasur", "Seite", "Nassgewicht (g)", "Dichte", "Kontrollstück", "Bemerkungen"]
GERMAN_ZONES = {"in": "innen", "Outside": "außen", "both": "innen und außen"}
ZONES = {"in": "inside", "Outside": "outside", "both": "inside and outside"}
NOTES = ["", "fine", 'says "good"', "a, b; c\td", "two\nlines", "=1+1", "-dry", "brûlé at the rim", '"', ";;", "'quoted'"]


class Semicolon(csv.excel):
    delimiter = ";"


class Careful(csv.excel):
    quoting = csv.QUOTE_NONNUMERIC
    lineterminator = "\n"


DIALECTS = {"excel": csv.excel, "tab": csv.excel_tab, "unix": csv.unix_dialect, "semicolon": Semicolon, "careful": Careful}
ENCODINGS = ["utf-8", "utf-8-sig", "cp1252", "utf-16"]


def readings():
    """The same readings for every sheet: when, form, glaze, zone as written, weight, SG, control, note."""
    chance = random.Random(7)
    at = datetime(2024, 1, 2, 9, 0, tzinfo=LOCAL)
    for _ in range(120):
        at += timedelta(minutes=chance.randint(1, 2_000))
        form, wet = chance.choice([("Small mug", 19), ("Jug, “tall”", 44)])
        yield [
            at, form, chance.choice(["Ash white", "Céladon; pale"]), chance.choice(list(ZONES)),
            round(chance.uniform(0.8, 1.3) * wet, 1), round(chance.uniform(1.40, 1.55), 2), chance.random() < 0.1,
            chance.choice(NOTES),
        ]


def make(folder):
    folder.mkdir(parents=True)
    for name, dialect in DIALECTS.items():
        for encoding in ENCODINGS:
            written = io.StringIO(newline="")
            writer = csv.writer(written, dialect=dialect)
            comma = name == "semicolon"
            writer.writerow(GERMAN if comma else HEADERS)
            number = lambda value: str(value).replace(".", ",") if comma else value
            for at, form, glaze, zone, wet, sg, control, note in readings():
                moment = at.strftime("%d.%m.%Y %H:%M") if comma else at.strftime("%Y-%m-%d %H:%M")
                side = GERMAN_ZONES[zone] if comma else zone
                control = ("ja" if control else "nein") if comma else ("x" if control else "")
                writer.writerow([moment, form, glaze, side, number(wet), number(sg), control, note])
            (folder / f"{name}-{encoding}.csv").write_bytes(written.getvalue().encode(encoding))


def check(folder):
    sheets = sorted(folder.glob("*.csv"))
    if len(sheets) != len(DIALECTS) * len(ENCODINGS):
        sys.exit(f"{len(sheets)} sheets in {folder}")
    expected = sorted(
        [
            at.astimezone(timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ"), form, glaze, ZONES[zone], wet, sg,
            # A note in laydown is one line: a line break or a tab becomes a space.
            "yes" if control else "no", note.replace("\n", " ").replace("\t", " "),
        ]
        for at, form, glaze, zone, wet, sg, control, note in readings()
    )
    for sheet in sheets:
        text = zipfile.ZipFile(sheet.with_suffix(".zip")).read("tables/readings.csv").decode("utf-8-sig")
        found = sorted(
            [
                row["at"], row["form"], row["glaze"], row["zone"], float(row["wet_weight_g"]),
                float(row["specific_gravity"]), row["control_piece"],
                # A cell that a spreadsheet would take for a formula is marked as text.
                row["note"][1:] if row["note"][:2] in ("'=", "'+", "'-", "'@") else row["note"],
            ]
            for row in csv.DictReader(io.StringIO(text, newline=""), strict=True)
        )
        for line, (ours, theirs) in enumerate(zip(expected, found)):
            if ours != theirs:
                sys.exit(f"{sheet.name}, reading {line}: wrote {ours}, found {theirs}")
        if len(expected) != len(found):
            sys.exit(f"{sheet.name}: wrote {len(expected)} readings, found {len(found)}")
    print(f"{len(sheets)} sheets of {len(expected)} readings each came in as Python wrote them, each note on one line.")


if __name__ == "__main__":
    {"make": make, "check": check}[sys.argv[1]](pathlib.Path(sys.argv[2]))
