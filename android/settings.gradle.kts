// The release build for real devices. It needs the Android SDK, the NDK r28 and Google's repository, none of which
// the machines that test this project have: it has not been run there. What is tested is pom.xml, from the same sources.
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
