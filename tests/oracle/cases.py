"""What the oracles share that make cases, have laydown answer them, and calculate the answers again."""

import json
import sys


def run(name, cases, checks, done):
    """Writes the cases where it is told to `make` them. Else reads laydown's answers, one for each case, and holds each against
    every check, which raises AssertionError where it differs; says what was done, and ends with an error if any differs."""
    if sys.argv[1] == "make":
        json.dump(cases, sys.stdout)
        return
    failures = 0
    for number, (made, got) in enumerate(zip(cases, json.load(sys.stdin), strict=True)):
        for check in checks:
            try:
                check(made, got)
            except AssertionError as difference:
                failures += 1
                print(f"{name} {number}: {difference}", file=sys.stderr)
    print(done)
    if failures:
        sys.exit(f"{failures} differ")
