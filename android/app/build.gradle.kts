// Not run on the machines that test this project; see settings.gradle.kts. Versions are those of ../pom.xml.
import org.jetbrains.kotlin.gradle.dsl.JvmTarget

plugins {
    id("com.android.application")
    id("org.jetbrains.kotlin.android")
}

val repo = rootDir.parentFile
val libraries = layout.buildDirectory.dir("rust")

android {
    namespace = "studio.laydown"
    compileSdk = 35

    defaultConfig {
        applicationId = "studio.laydown"
        minSdk = 26
        targetSdk = 35
        versionCode = 1
        versionName = "0.1.0"
        ndk { abiFilters += listOf("arm64-v8a", "x86_64") }
    }

    sourceSets {
        getByName("main") {
            kotlin.srcDir(repo.resolve("bindings/kotlin"))
            jniLibs.srcDir(libraries)
        }
        // What Debian's aapt2 cannot read stands in a manifest of its own, which Gradle merges.
        for (kind in listOf("debug", "release")) getByName(kind).manifest.srcFile("src/device/AndroidManifest.xml")
        // The JVM tests belong to pom.xml, which brings what they need.
        getByName("test") { kotlin.setSrcDirs(emptyList<String>()) }
    }

    buildTypes {
        getByName("release") {
            isMinifyEnabled = true
            isShrinkResources = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "proguard-jna.pro")
        }
    }

    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
}

kotlin { compilerOptions { jvmTarget = JvmTarget.JVM_17 } }

dependencies {
    // The AAR carries JNA's own library for each processor, laid out for 16 KB pages since 5.17.
    implementation("net.java.dev.jna:jna:5.18.1@aar")
}

// The core, by cargo-ndk (`cargo install cargo-ndk`, and `rustup target add aarch64-linux-android x86_64-linux-android`).
// NDK r28 and newer lay the library out for 16 KB pages, which devices with Android 15 and later may have. After a release
// build, see that it is so: `llvm-readelf -lW liblaydown_bindings.so` shows 0x4000 for every LOAD.
val rustLibrary by tasks.registering(Exec::class) {
    workingDir = repo
    inputs.files(fileTree(repo) { include("Cargo.lock", "core/**", "bindings/src/**", "bindings/Cargo.toml") })
    outputs.dir(libraries)
    commandLine(
        "cargo", "ndk", "-t", "arm64-v8a", "-t", "x86_64", "-P", "26", "-o", libraries.get().asFile.path,
        "build", "--release", "-p", "laydown-bindings",
    )
}

tasks.named("preBuild") { dependsOn(rustLibrary) }
