#!/usr/bin/env python3
"""Packs an APK: pack.py RESOURCES DEX OUT ABI=LIBRARY...

Libraries are compressed: the phone unpacks those of its own processor when it installs the app, which takes less room on it than a file
with those of every processor as they are. Everything that aapt2 stored stays stored, at a multiple of 4. Dates are fixed: the same input
gives the same file.
"""
import pathlib
import sys
import zipfile

LOCAL_HEADER = 30


def add(apk, name, data, compress, align):
    """Adds one file, its data at a multiple of `align` when it is stored: the extra field of its header is the padding."""
    entry = zipfile.ZipInfo(name, date_time=(1981, 1, 1, 0, 0, 0))
    entry.compress_type = zipfile.ZIP_DEFLATED if compress else zipfile.ZIP_STORED
    entry.external_attr = 0o644 << 16
    if not compress:
        # An extra field is an id, a length and so many bytes; 0xd935 is the id that Android's own tools pad with.
        begin = apk.fp.tell() + LOCAL_HEADER + len(name.encode())
        padding = -(begin + 6) % align
        entry.extra = b"\x35\xd9" + (2 + padding).to_bytes(2, "little") + align.to_bytes(2, "little") + bytes(padding)
    apk.writestr(entry, data)


resources, dex, out, *libraries = sys.argv[1:]
with zipfile.ZipFile(out, "w", compresslevel=9) as apk:
    with zipfile.ZipFile(resources) as linked:
        for entry in linked.infolist():
            add(apk, entry.filename, linked.read(entry), entry.compress_type == zipfile.ZIP_DEFLATED, 4)
    for part in sorted(pathlib.Path(dex).glob("*.dex")):
        add(apk, part.name, part.read_bytes(), True, 4)
    for library in libraries:
        abi, _, path = library.partition("=")
        add(apk, f"lib/{abi}/{pathlib.Path(path).name}", pathlib.Path(path).read_bytes(), True, 4)
