# An APK without the Android SDK or NDK. Included by the Makefile at the root; every path is from there. README.md beside this file
# says how it is done and what is checked.

APK := target/laydown.apk
PACK := android/package
PACKED := target/android
PROCESSORS := aarch64 x86_64
ABI_aarch64 := arm64-v8a
ABI_x86_64 := x86_64
LIBRARIES := $(foreach p,$(PROCESSORS),$(PACKED)/lib/$(ABI_$(p))/liblaydown_bindings.so)
JNA := $(foreach p,$(PROCESSORS),$(PACKED)/jna/jni/$(ABI_$(p))/libjnidispatch.so)
APP_SOURCES := $(shell find android/app/src/main android/app/src/device bindings/kotlin -type f) android/pom.xml android/app/pom.xml android/bindings/pom.xml
RULES := $(PACK)/base.pro android/app/rules.pro
# Read from ../pom.xml, so that there is one place for each.
VERSION := $(shell sed -n 's:^  <version>\(.*\)</version>:\1:p' android/pom.xml)
MIN_SDK := $(shell sed -n 's:.*<laydown.minSdk>\(.*\)</laydown.minSdk>:\1:p' android/pom.xml)
TARGET_SDK := $(shell sed -n 's:.*<laydown.targetSdk>\(.*\)</laydown.targetSdk>:\1:p' android/pom.xml)
R8 := java -cp $(PACKED)/jars/r8.jar
JDK_HOME = $$(dirname "$$(dirname "$$(readlink -f "$$(command -v javac || command -v java)")")")

.PHONY: apk apk-test apk-tools apk-native

apk: $(APK) ## An APK for real phones, in target/laydown.apk, signed with a throw-away key
	@ls -l $(APK) | awk '{ printf "%s: %.1f MB, for arm64-v8a and x86_64\n", $$9, $$5 / 1e6 }'

apk-tools:
	@tools/need.sh java:openjdk-17-jdk-headless javac:openjdk-17-jdk-headless mvn:maven aapt2:aapt apksigner:apksigner readelf:binutils unzip:unzip python3:python3
	@command -v rustup >/dev/null || { echo "Missing: rustup, which has Rust's library for Android. Install it, then try again." >&2; exit 1; }
	@rustup --quiet target add $(addsuffix -linux-android,$(PROCESSORS))

# ---- the native library ----

$(PACKED)/bin/ready: $(PACK)/requirements.txt | apk-tools
	@echo "apk: the C compiler and linker (100 MB, once)"
	@rm -rf $(PACKED)/zig && mkdir -p $(@D)
	@python3 -m venv $(PACKED)/zig || { echo "Python's venv is missing. Type: apt-get install -y python3-venv" >&2; exit 1; }
	@$(PACKED)/zig/bin/pip install --quiet --disable-pip-version-check --requirement $<
	@for p in $(PROCESSORS); do for t in cc ar ranlib stub ld; do ln -sf ../../../$(PACK)/cross $(@D)/$$p-$$t; done; done
	@touch $@

$(PACKED)/%/ready: $(PACK)/runtime.sh $(PACK)/stubs.py $(PACK)/cross $(shell find $(PACK)/shim $(PACK)/symbols -type f) $(PACKED)/bin/ready
	@echo "apk: what every library for $* is linked with"
	@mkdir -p $(@D)
	@$(PACK)/runtime.sh $* $(@D)
	@python3 $(PACK)/stubs.py $* $(@D)
	@# Cargo does not see that these have changed.
	@$(PACK)/cargo $* clean --quiet --profile phone -p laydown-bindings
	@touch $@

# Cargo knows whether there is anything to do. Only the library that shells load is made.
apk-native: $(foreach p,$(PROCESSORS),$(PACKED)/$(p)/ready)
	@for p in $(PROCESSORS); do \
	    echo "apk: the core for $$p (some minutes the first time)"; \
	    $(PACK)/cargo $$p rustc --quiet -p laydown-bindings --profile phone --crate-type cdylib; \
	done

$(PACKED)/lib/arm64-v8a/liblaydown_bindings.so: apk-native
	@mkdir -p $(@D) && cp -u target/aarch64-linux-android/phone/$(@F) $@
$(PACKED)/lib/x86_64/liblaydown_bindings.so: apk-native
	@mkdir -p $(@D) && cp -u target/x86_64-linux-android/phone/$(@F) $@

# ---- resources and classes ----

$(PACKED)/jars/ready: $(PACK)/pom.xml android/pom.xml | apk-tools
	@echo "apk: R8, JNA and the framework's classes"
	@mvn -B -q -f $< package
	@rm -rf $(PACKED)/jna && unzip -q -o $(PACKED)/jars/jna.aar -d $(PACKED)/jna
	@touch $@
$(JNA): $(PACKED)/jars/ready ;

$(PACKED)/classes: $(APP_SOURCES) $(PACKED)/jars/ready
	@echo "apk: the app's classes"
	@mvn -B -q -f android/pom.xml -pl bindings,app compile
	@touch $@

# As the app's own pom does it, but without the invented languages that tests use. The numbers of the resources must be the same.
$(PACKED)/resources.apk: $(PACKED)/classes $(PACK)/manifest.py
	@echo "apk: resources and manifest"
	@python3 $(PACK)/manifest.py android/app/src/main/AndroidManifest.xml android/app/src/device/AndroidManifest.xml $(PACKED)/AndroidManifest.xml
	@aapt2 compile --dir android/app/src/main/res -o $(PACKED)/res.zip
	@aapt2 link -I $(PACKED)/jars/android-all.jar --manifest $(PACKED)/AndroidManifest.xml --warn-manifest-validation \
	    --min-sdk-version $(MIN_SDK) --target-sdk-version $(TARGET_SDK) --version-code 1 --version-name $(VERSION) \
	    --java $(PACKED)/r --proguard $(PACKED)/manifest.pro -o $@.part $(PACKED)/res.zip 2>$(PACKED)/aapt2.log || { cat $(PACKED)/aapt2.log >&2; exit 1; }
	@cmp $(PACKED)/r/studio/laydown/R.java android/app/target/generated-sources/resources/studio/laydown/R.java
	@mv $@.part $@

# JNA's classes as its AAR has them.
$(PACKED)/dex/classes.dex: $(PACKED)/classes $(PACKED)/resources.apk $(RULES)
	@echo "apk: shrinking the classes"
	@rm -rf $(@D) && mkdir -p $(@D)
	@(cd android/bindings/target/classes && zip -q -r -FS ../../../../$(PACKED)/bindings.jar . -i '*.class') && (cd android/app/target/classes && zip -q -r -FS ../../../../$(PACKED)/app.jar . -i '*.class')
	@$(R8) com.android.tools.r8.R8 --release --min-api $(MIN_SDK) --lib $(JDK_HOME) --lib $(PACKED)/jars/android-all.jar \
	    $(foreach rules,$(RULES) $(PACKED)/manifest.pro,--pg-conf $(rules)) --output $(@D) \
	    $(PACKED)/app.jar $(PACKED)/bindings.jar $(PACKED)/jna/classes.jar $(PACKED)/jars/kotlin-stdlib.jar $(PACKED)/jars/annotations.jar

# ---- the file ----

# Made once and never given away. A phone updates an app only by one with the same key: keep the file if you keep the app.
$(PACKED)/throwaway.p12: | apk-tools
	@echo "apk: a throw-away key"
	@mkdir -p $(@D)
	@keytool -genkeypair -keystore $@ -storetype PKCS12 -storepass throwaway -alias laydown -keyalg RSA -keysize 3072 -validity 10000 \
	    -dname "CN=laydown throw-away key" 2>/dev/null

$(APK): $(LIBRARIES) $(JNA) $(PACKED)/dex/classes.dex $(PACKED)/resources.apk $(PACKED)/throwaway.p12 $(PACK)/pack.py
	@echo "apk: packing and signing"
	@python3 $(PACK)/pack.py $(PACKED)/resources.apk $(PACKED)/dex $(PACKED)/unsigned.apk \
	    $(foreach p,$(PROCESSORS),$(ABI_$(p))=$(PACKED)/lib/$(ABI_$(p))/liblaydown_bindings.so $(ABI_$(p))=$(PACKED)/jna/jni/$(ABI_$(p))/libjnidispatch.so)
	@apksigner sign --ks $(PACKED)/throwaway.p12 --ks-pass pass:throwaway --min-sdk-version $(MIN_SDK) \
	    --v1-signing-enabled false --v2-signing-enabled true --v3-signing-enabled true --out $@ $(PACKED)/unsigned.apk

# ---- what can be seen without a phone ----

# Calls of the framework that Android 8.0 does not have are listed in newer-than-26.txt, each with what guards it.
apk-test: $(APK) android-build | apk-test-tools ## The APK's structure, signature, symbols and classes, its arm64 library under qemu
	@python3 $(PACK)/check.py $(APK) $(PACKED)/unsigned.apk $(MIN_SDK) $(TARGET_SDK) $(VERSION)
	@$(PACK)/test.sh
	@$(PACK)/framework.sh
	@$(PACK)/shrunk.sh studio.laydown.WeighTest studio.laydown.StartupReportTest studio.laydown.FailureTest

.PHONY: apk-test-tools
apk-test-tools:
	@tools/need.sh dexdump:dexdump qemu-aarch64-static:qemu-user-static zip:zip cmp:diffutils
	@test -e /usr/aarch64-linux-gnu/lib/libc.so.6 || tools/need.sh no-such-command:libc6-arm64-cross
