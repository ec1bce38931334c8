#!/usr/bin/env python3
"""Looks at an APK without a phone: check.py APK UNSIGNED MIN_SDK TARGET_SDK VERSION. Each line says what was seen, or what is wrong.

Sources: the permissions are permissions.txt; Google Play's rule on 16 KB pages; the APK signature schemes v2 and v3.
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import zipfile

import pages

HERE = pathlib.Path(__file__).parent
LARGEST = 12_000_000
ABIS = ["arm64-v8a", "x86_64"]
failures = 0


def tool(*command):
    """What a command prints; its failure is printed, and is one."""
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True)
    if done.returncode:
        raise SystemExit(f"FAILED: {' '.join(map(str, command))}\n{done.stdout}{done.stderr}")
    return done.stdout


def expect(what, seen, wanted):
    global failures
    if seen == wanted:
        print(f"ok: {what}: {seen}")
    else:
        failures += 1
        print(f"FAILED: {what}: {seen}, not {wanted}")


apk, unsigned, min_sdk, target_sdk, version = sys.argv[1:]

badging = tool("aapt2", "dump", "badging", apk)
expect("package", re.search(r"package: name='([^']*)' versionCode='([^']*)' versionName='([^']*)'", badging).groups(), ("studio.laydown", "1", version))
expect("oldest Android", re.search(r"sdkVersion:'(\d+)'", badging)[1], min_sdk)
expect("Android it is made for", re.search(r"targetSdkVersion:'(\d+)'", badging)[1], target_sdk)
expect("what opens", re.search(r"launchable-activity: name='([^']*)'", badging)[1], "studio.laydown.MainActivity")
expect("processors", re.search(r"native-code: (.*)", badging)[1].split(), [f"'{abi}'" for abi in ABIS])
expect("debuggable", "application-debuggable" in badging, False)
permissions = sorted(re.findall(r"uses-permission[^:]*: name='([^']*)'", badging))
expect("permissions", permissions, (HERE / "permissions.txt").read_text().split())
manifest = tool("aapt2", "dump", "xmltree", apk, "--file", "AndroidManifest.xml")
expect("it says that it looks for a voice", "android.intent.action.TTS_SERVICE" in manifest, True)
exported = re.findall(r"exported\(0x01010010\)=(\w+)", manifest)
expect("what other apps reach (the activity of the icon alone)", exported.count("true"), 1)

for name, path in (("unsigned", unsigned), ("signed", apk)):
    wrong, libraries = pages.faults(path)
    expect(f"pages of 16 KB, {name}", wrong, [])
expect("libraries", sorted(libraries), sorted(f"lib/{abi}/{name}" for abi in ABIS for name in ("libjnidispatch.so", "liblaydown_bindings.so")))

signature = tool("apksigner", "verify", "--verbose", "--min-sdk-version", min_sdk, apk)
for scheme in ("v2", "v3"):
    expect(f"signed by {scheme}", re.search(rf"Verified using {scheme} scheme[^:]*: (\w+)", signature)[1], "true")
expect("signers", re.search(r"Number of signers: (\d+)", signature)[1], "1")

with zipfile.ZipFile(apk) as packed, tempfile.TemporaryDirectory() as folder:
    expect("a broken entry", packed.testzip(), None)
    dexes = [name for name in packed.namelist() if name.endswith(".dex")]
    expect("dex files", dexes, ["classes.dex"])
    packed.extract("classes.dex", folder)
    listed = tool("dexdump", "-f", pathlib.Path(folder) / "classes.dex")
    classes = set(re.findall(r"Class descriptor\s*: '([^']*)'", listed))
    for name in ("MainActivity", "LaydownApplication", "setup/BackupJob", "picture/PictureProvider", "core/UniffiLib"):
        expect(f"class {name}", f"Lstudio/laydown/{name};" in classes, True)
    print(f"ok: {len(classes)} classes can be read")

size = pathlib.Path(apk).stat().st_size
expect(f"{size / 1e6:.2f} MB is at most {LARGEST / 1e6:.0f}", size <= LARGEST, True)
sys.exit(f"{failures} checks failed." if failures else 0)
