# The Android shell on the JVM. Included by the Makefile at the root; every path is from there.
#
# LAYDOWN_PROFILE (desk or release) says which build of the core is loaded; PORT and DATA are for `make phone`.

LAYDOWN_PROFILE ?= desk
export LAYDOWN_PROFILE
PORT ?= 0
DATA ?= .cache/phone

ANDROID_BUILT := android/target/built
ANDROID_SOURCES := $(shell find android/app/src android/desktop/src bindings/kotlin -type f) $(wildcard android/pom.xml android/*/pom.xml)
ANDROID_MVN := mvn -B -f android/pom.xml -Dlaydown.profile=$(LAYDOWN_PROFILE)

.PHONY: android-tools android-library android-build android-test phone screens page-test

android-tools:
	@tools/need.sh java:openjdk-17-jdk-headless mvn:maven aapt2:aapt

# The core as the shell loads it. Cargo knows whether there is anything to do.
android-library:
	cargo build -p laydown-bindings --profile $(LAYDOWN_PROFILE)
	cargo build -p laydown-app --example sample_studio --profile $(LAYDOWN_PROFILE)

android-build: android-library $(ANDROID_BUILT) ## The Android shell, built for the JVM

$(ANDROID_BUILT): $(ANDROID_SOURCES) | android-tools
	$(ANDROID_MVN) test-compile
	@mkdir -p $(@D) && touch $@

android-test: android-library $(REMOTE)/ready | android-tools ## The Android shell's tests, on the JVM
	$(ANDROID_MVN) test
	@mkdir -p $(dir $(ANDROID_BUILT)) && touch $(ANDROID_BUILT)

phone: android-build ## The app in a browser page; PORT=8080 and DATA=folder if you like
	@tools/phone --port $(PORT) --data $(DATA)

screens: android-build ## A picture of every screen, and a contact sheet, in target/screens
	@rm -rf target/screens
	@tools/desktop studio.laydown.ScreensTest studio.laydown.desktop.ContactSheet

page-test: android-build ## The page, driven in a real browser
	@tools/need.sh chromium:chromium node:nodejs npm:npm
	cd tests/page && npm ci --silent && npm test
