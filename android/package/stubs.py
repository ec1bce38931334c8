#!/usr/bin/env python3
"""Makes the libraries that the linker asks which names Android 8.0 has: one for each list in symbols/, with nothing in it but names.

    stubs.py PROCESSOR FOLDER
"""
import pathlib
import subprocess
import sys

package, folder = pathlib.Path(__file__).parent, pathlib.Path(sys.argv[2])
cc, stub = (package / f"../../target/android/bin/{sys.argv[1]}-{tool}" for tool in ("cc", "stub"))

for names in sorted((package / "symbols").glob("*.txt")):
    code = []
    for line in names.read_text().splitlines():
        name, _, data = line.partition(" ")
        code.append(f"char {name}[8];" if data else f"void {name}(void) {{}}")
    source, part = folder / f"{names.stem}-names.c", folder / f"{names.stem}-names.o"
    source.write_text("\n".join(code) + "\n")
    subprocess.run([cc, "-w", "-ffreestanding", "-c", source, "-o", part], check=True)
    subprocess.run([stub, "-soname", f"{names.stem}.so", "-o", folder / f"{names.stem}.so", part], check=True)
