// The release build for real devices. It needs the Android SDK 36, the NDK r28 and Google's repository, none of which the machines that
// test this project have: it has not been run there. What is tested is pom.xml, from the same sources.
//
//     rustup target add aarch64-linux-android x86_64-linux-android
//     cargo install cargo-ndk --version 4.1.2 --locked
//     gradle --project-dir android :app:assembleRelease
//
// Gradle 8.14.3, as gradle/wrapper pins it by checksum. The wrapper's jar is not committed, since it could not be had here honestly: with
// any Gradle, `gradle --project-dir android wrapper` makes it. LAYDOWN_KEYSTORE, LAYDOWN_KEYSTORE_PASSWORD and LAYDOWN_KEY_ALIAS in the
// environment sign the release by your own key; without them it is unsigned.
pluginManagement {
    repositories {
        google()
        mavenCentral()
        gradlePluginPortal()
    }
}

dependencyResolutionManagement {
    repositoriesMode = RepositoriesMode.FAIL_ON_PROJECT_REPOS
    repositories {
        google()
        mavenCentral()
    }
}

rootProject.name = "laydown"
include(":app")
