#!/usr/bin/env python3
"""Merges the app's two manifests as Gradle would, for the APK: manifest.py MAIN DEVICE OUT."""
import sys
import xml.etree.ElementTree as xml

ANDROID = "http://schemas.android.com/apk/res/android"
xml.register_namespace("android", ANDROID)

main, device = xml.parse(sys.argv[1]), xml.parse(sys.argv[2])
main.getroot().extend(device.getroot())
# The libraries are compressed in the APK: the phone unpacks its own.
main.getroot().find("application").set(f"{{{ANDROID}}}extractNativeLibs", "true")
main.write(sys.argv[3], encoding="utf-8", xml_declaration=True)
