# The Android shell on the JVM. Included by the Makefile at the root; every path is from there.
#
#   make phone [PORT=8080] [DATA=folder]   the app in a browser page
#   make screens                           a picture of every screen, and a contact sheet, in target/screens
#   make android-test                      the shell's tests
#   make page-test                         the page, driven in a real browser

LAYDOWN_PROFILE ?= release
export LAYDOWN_PROFILE
PORT ?= 0
DATA ?= .cache/phone

ANDROID_BUILT := android/target/built
ANDROID_SOURCES := $(shell find android/app/src android/desk/src android/pom.xml android/app/pom.xml android/desk/pom.xml \
	$(wildcard bindings/kotlin) -type f)
# No compiler daemon: it would stay behind with a gigabyte.
ANDROID_MVN := mvn -q -B -f android/pom.xml -Dkotlin.compiler.daemon=false -Dlaydown.profile=$(LAYDOWN_PROFILE)

.PHONY: android-tools android-library android-build android-test phone screens page-test

android-tools:
	@tools/need.sh java:openjdk-17-jdk-headless mvn:maven aapt2:aapt

# The core as the shell loads it. Cargo knows whether there is anything to do.
android-library:
	@cargo build --quiet -p laydown-bindings $(if $(filter release,$(LAYDOWN_PROFILE)),--release)

android-build: android-library $(ANDROID_BUILT)

$(ANDROID_BUILT): $(ANDROID_SOURCES) | android-tools
	$(ANDROID_MVN) test-compile
	@mkdir -p $(@D) && touch $@

android-test: android-library | android-tools
	$(ANDROID_MVN) test
	@mkdir -p $(dir $(ANDROID_BUILT)) && touch $(ANDROID_BUILT)

phone: android-build
	@tools/phone --port $(PORT) --data $(DATA)

screens: android-build
	@rm -rf target/screens
	@tools/desk studio.laydown.ScreensTest studio.laydown.desk.ContactSheet

page-test: android-build
	@tools/need.sh chromium:chromium node:nodejs npm:npm
	cd tests/page && npm ci --silent && npm test
