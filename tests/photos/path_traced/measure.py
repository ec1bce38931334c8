"""Measures what laydown found in the path-traced photographs, and lays the outlines over them.

    measure.py FOLDER < outlines.json
prints a table and writes FOLDER/sheet.png: every picture with its outline, or with why it was refused.
"""

import json
import sys
from pathlib import Path

from PIL import Image, ImageDraw

AREA, VOLUME, WRONG = 0.02, 0.03, 0.06
LEVEL = 5
"""Seen from no more than so many degrees above its middle, a pot may be accepted."""
TILE = (320, 240)
INK = {"right": (0, 190, 0), "near": (240, 170, 0), "wrong": (255, 0, 0), "refused": (90, 90, 255)}


def errors(true, got):
    return {what: got[what] / true[what] - 1 for what in ("area", "volume")}


def verdict(true, got):
    """Right, near, wrong or refused."""
    if "refused" in got:
        return "refused"
    if "area" not in true:
        return "wrong"
    off = errors(true, got)
    if abs(off["area"]) <= AREA and abs(off["volume"]) <= VOLUME:
        return "right"
    return "wrong" if max(map(abs, off.values())) > WRONG else "near"


def told(true, got):
    if "refused" in got:
        return got["refused"]
    said = f"{got['sure']} ±{2 * got['uncertainty']:.1%}"
    if "area" in true:
        off = errors(true, got)
        said = f"area {off['area']:+.1%} vol {off['volume']:+.1%} {said}"
    return said


def tile(folder, true, got):
    picture = Image.open(folder / true["file"])
    wide, scale = picture.size[0], min(TILE[0] / picture.size[0], TILE[1] / picture.size[1])
    picture = picture.resize((round(wide * scale), round(picture.size[1] * scale)))
    draw, ink = ImageDraw.Draw(picture), INK[verdict(true, got)]
    for side in ("left", "right"):
        line = [(x * scale, y * scale) for x, y in got.get(side, [])]
        if line:
            draw.line(line, fill=ink, width=1)
    whole = Image.new("RGB", (TILE[0], TILE[1] + 24), (0, 0, 0))
    whole.paste(picture, (0, 24))
    label = ImageDraw.Draw(whole)
    label.text((2, 0), f"{true['file'].split('.')[0]} {true.get('kind', '')} {true.get('known', '')} p{true.get('pitch', 0):.1f}", fill=(255, 255, 255))
    label.text((2, 11), told(true, got), fill=ink)
    return whole


def sheet(folder, pairs, columns=6):
    rows = -(-len(pairs) // columns)
    whole = Image.new("RGB", (columns * TILE[0], rows * (TILE[1] + 24)))
    for at, (true, got) in enumerate(pairs):
        whole.paste(tile(folder, true, got), ((at % columns) * TILE[0], (at // columns) * (TILE[1] + 24)))
    whole.save(folder / "sheet.png")


def counted(pairs, what):
    return sum(verdict(true, got) == what for true, got in pairs)


def main():
    folder = Path(sys.argv[1])
    truth, found = json.loads((folder / "truth.json").read_text()), json.load(sys.stdin)
    groups = {name: list(zip(truth[name], found[name])) for name in ("good", "oblique", "bad")}
    for name, pairs in groups.items():
        for true, got in pairs:
            if verdict(true, got) != {"good": "right"}.get(name, "refused"):
                print(f"{true['file']} {true.get('kind', '')} by {true.get('known', '')}: {told(true, got)}")
    print(f"{'':10}{'all':>6}{'right':>7}{'near':>6}{'wrong':>7}{'refused':>9}")
    for name, pairs in groups.items():
        print(f"{name:10}{len(pairs):6}" + "".join(f"{counted(pairs, what):{wide}}" for what, wide in (("right", 7), ("near", 6), ("wrong", 7), ("refused", 9))))
    for sure in ("sure", "fair", "doubtful"):
        said = [(true, got) for pairs in groups.values() for true, got in pairs if got.get("sure") == sure]
        print(f"said {sure}: {len(said)}, of which wrong by over {WRONG:.0%} or to be refused: {counted(said, 'wrong')}")
    known = [(true, got) for name in ("good", "oblique") for true, got in groups[name] if "refused" not in got]
    covered = sum(abs(errors(true, got)["area"]) <= 2 * got["uncertainty"] for true, got in known)
    print(f"two uncertainties cover the area of {covered} of {len(known)}")
    for true, got in groups["bad"]:
        if "refused" in got and got["refused"] not in true["why"]:
            print(f"{true['file']}: refused as {got['refused']}, of which {' or '.join(true['why'])} is true")
    sheet(folder, [pair for pairs in groups.values() for pair in pairs])


if __name__ == "__main__":
    main()
