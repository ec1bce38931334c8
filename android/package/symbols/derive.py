#!/usr/bin/env python3
"""Writes the names that the C library of Android 8.0 (API 26) has, one file for each library, from bionic's own version scripts.

    derive.py BIONIC-CHECKOUT

Run by hand when the lists are to be made anew; the build reads the committed lists. liblog.txt is written by hand: six names.
"""
import pathlib
import re
import sys

API = 26
ABIS = {"arm64", "x86_64"}
OTHER_ABIS = {"arm", "x86", "riscv64"}
NOT_FOR_APPS = {"apex", "llndk", "platform-only", "systemapi"}


def introduced(tags):
    """The newest API level that any of our ABIs needs; 0 when the name was always there."""
    levels = [0]
    for tag in tags:
        found = re.fullmatch(r"introduced(?:-(arm64|x86_64))?=(\d+)", tag)
        if found:
            levels.append(int(found[2]))
    return max(levels)


def names(script):
    """The public names of a version script that both ABIs have at API 26, each with 'var' when it is data."""
    public, found = False, set()
    for line in script.read_text().splitlines():
        text, _, comment = line.partition("#")
        text, tags = text.strip(), comment.split()
        if text.endswith("{"):
            section = text.split()[0]
            public = not section.endswith(("_PRIVATE", "_PLATFORM", "_DEPRECATED")) and introduced(tags) <= API
        elif public and re.fullmatch(r"\w+;", text):
            only = set(tags) & (ABIS | OTHER_ABIS)
            if introduced(tags) <= API and not set(tags) & NOT_FOR_APPS and (not only or ABIS <= only):
                found.add(text[:-1] + (" var" if "var" in tags else ""))
    return sorted(found)


bionic, here = pathlib.Path(sys.argv[1]), pathlib.Path(__file__).parent
for library in ("libc", "libm", "libdl"):
    list_ = names(bionic / library / f"{library}.map.txt")
    (here / f"{library}.txt").write_text("\n".join(list_) + "\n")
    print(f"{library}: {len(list_)} names")
