#!/usr/bin/env python3
"""Fails if a library of an APK could not be mapped on a phone with pages of 16 KB: pages.py APK.

Each LOAD segment of a library must be aligned to 16 KB. One that is stored and not compressed is mapped out of the APK, and must begin
there at a multiple of 16 KB too; a compressed one is unpacked when the app is installed.
"""
import struct
import sys
import zipfile

PAGE = 16384
LOAD = 1


def load_alignments(library):
    """The alignment of each LOAD segment of a 64-bit little-endian ELF file."""
    if library[:6] != b"\x7fELF\x02\x01":
        raise ValueError("no 64-bit little-endian ELF file")
    table, = struct.unpack_from("<Q", library, 32)
    size, count = struct.unpack_from("<HH", library, 54)
    headers = (struct.unpack_from("<IIQQQQQQ", library, table + size * i) for i in range(count))
    return [align for kind, _, _, _, _, _, _, align in headers if kind == LOAD]


def data_offset(apk, entry):
    """Where the bytes of an entry begin, by its own header."""
    apk.fp.seek(entry.header_offset + 26)
    name, extra = struct.unpack("<HH", apk.fp.read(4))
    return entry.header_offset + 30 + name + extra


def faults(path):
    """What is wrong, a sentence for each; the libraries that were looked at."""
    found, seen = [], []
    with zipfile.ZipFile(path) as apk:
        for entry in apk.infolist():
            if not (entry.filename.startswith("lib/") and entry.filename.endswith(".so")):
                continue
            seen.append(entry.filename)
            if entry.compress_type == zipfile.ZIP_STORED and data_offset(apk, entry) % PAGE:
                found.append(f"{entry.filename} begins at {data_offset(apk, entry)}, no multiple of {PAGE}")
            alignments = load_alignments(apk.read(entry))
            if not alignments or any(align < PAGE or align % PAGE for align in alignments):
                found.append(f"{entry.filename} has LOAD segments aligned to {alignments}")
    return found, seen


if __name__ == "__main__":
    wrong, libraries = faults(sys.argv[1])
    if not libraries:
        wrong.append("there is no library in it")
    print("\n".join(wrong) or f"{len(libraries)} libraries, all for pages of 16 KB")
    sys.exit(1 if wrong else 0)
