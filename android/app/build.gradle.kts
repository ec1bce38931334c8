// Not run on the machines that test this project; see settings.gradle.kts. Versions are those of ../pom.xml.
import com.android.build.api.artifact.SingleArtifact
import org.jetbrains.kotlin.gradle.dsl.JvmTarget
import javax.inject.Inject

plugins {
    id("com.android.application")
    id("org.jetbrains.kotlin.android")
}

val root: File = rootDir.parentFile
val processors = listOf("arm64-v8a", "x86_64")

android {
    namespace = "studio.laydown"
    compileSdk = 36
    // r28 and newer lay libraries out for 16 KB pages.
    ndkVersion = "28.2.13676358"

    defaultConfig {
        applicationId = "studio.laydown"
        minSdk = 26
        targetSdk = 36
        versionCode = 1
        versionName = "0.1.0"
        // Phones with 32 bits only are left out by choice: nobody here could test one.
        ndk { abiFilters += processors }
    }

    sourceSets {
        getByName("main") { kotlin.srcDir(root.resolve("bindings/kotlin")) }
        // What Debian's aapt2 cannot read stands in a manifest of its own, which Gradle merges.
        for (kind in listOf("debug", "release")) getByName(kind).manifest.srcFile("src/device/AndroidManifest.xml")
        // The JVM tests belong to pom.xml, which brings what they need.
        getByName("test") { kotlin.setSrcDirs(emptyList<String>()) }
    }

    // The builder's own key, named by the environment and never by a file of the project. Without one the release is unsigned.
    val store = providers.environmentVariable("LAYDOWN_KEYSTORE").orNull
    signingConfigs {
        if (store != null) {
            create("own") {
                storeFile = file(store)
                storePassword = providers.environmentVariable("LAYDOWN_KEYSTORE_PASSWORD").get()
                keyAlias = providers.environmentVariable("LAYDOWN_KEY_ALIAS").get()
                keyPassword = providers.environmentVariable("LAYDOWN_KEY_PASSWORD").orElse(storePassword!!).get()
            }
        }
    }

    buildTypes {
        getByName("release") {
            isMinifyEnabled = true
            isShrinkResources = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "rules.pro")
            signingConfig = signingConfigs.findByName("own")
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

/** The core, by cargo-ndk: `cargo install cargo-ndk --version 4.1.2 --locked`, and `rustup target add` for both processors. */
abstract class RustLibrary @Inject constructor(private val run: ExecOperations) : DefaultTask() {
    /** All that Cargo reads: with less, an old library could be packed. */
    @get:InputFiles
    @get:PathSensitive(PathSensitivity.RELATIVE)
    abstract val sources: ConfigurableFileCollection

    @get:Input
    abstract val abis: ListProperty<String>

    /** A release of another NDK is another library. */
    @get:Input
    abstract val ndk: Property<String>

    @get:Internal
    abstract val repo: DirectoryProperty

    @get:OutputDirectory
    abstract val libraries: DirectoryProperty

    @TaskAction
    fun build() {
        run.exec {
            workingDir(repo)
            environment("ANDROID_NDK_HOME", ndk.get())
            commandLine(
                listOf("cargo", "ndk") + abis.get().flatMap { listOf("-t", it) } +
                    listOf("--platform", "26", "-o", libraries.get().asFile.path) +
                    listOf("build", "--release", "--locked", "--package", "laydown-bindings"),
            )
        }
    }
}

/** Fails if a library of the APK could not be mapped on a phone with pages of 16 KB, by the check that `make apk-test` uses. */
abstract class PageCheck @Inject constructor(private val run: ExecOperations) : DefaultTask() {
    @get:InputDirectory
    @get:PathSensitive(PathSensitivity.RELATIVE)
    abstract val apks: DirectoryProperty

    @get:InputFile
    @get:PathSensitive(PathSensitivity.NONE)
    abstract val check: RegularFileProperty

    @TaskAction
    fun look() {
        val found = apks.get().asFile.walk().filter { it.extension == "apk" }.toList()
        require(found.isNotEmpty()) { "no APK in ${apks.get()}" }
        for (apk in found) run.exec { commandLine("python3", check.get().asFile.path, apk.path) }
    }
}

androidComponents {
    onVariants { variant ->
        val name = variant.name.replaceFirstChar(Char::uppercase)
        val rustLibrary = tasks.register<RustLibrary>("rustLibrary$name") {
            sources.from(
                fileTree(root) {
                    include("Cargo.toml", "Cargo.lock", "core/**", "bindings/src/**", "bindings/**/Cargo.toml", "tests/**/Cargo.toml")
                },
            )
            abis = processors
            ndk = sdkComponents.ndkDirectory.map { it.asFile.path }
            repo = root
        }
        // The folder is the task's to choose, and whatever packs it waits for the task.
        variant.sources.jniLibs?.addGeneratedSourceDirectory(rustLibrary, RustLibrary::libraries)

        val pages = tasks.register<PageCheck>("checkPages$name") {
            apks = variant.artifacts.get(SingleArtifact.APK)
            check = layout.projectDirectory.file("../package/pages.py")
        }
        tasks.matching { it.name == "assemble$name" }.configureEach { finalizedBy(pages) }
    }
}
