/*
 * Loads the library as an app does and lives a short day with it: session LIBRARY BACKUP FOLDER.
 * It compares nothing itself but the library's stamp; what the studio then holds is written to FOLDER/journal.jsonl.
 * The calls and their buffers are uniffi's, as in bindings/kotlin: text crosses as UTF-8, a moment as two big-endian numbers.
 */
#include <dlfcn.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef struct { uint64_t capacity, length; uint8_t *data; } Buffer;
typedef struct { int8_t code; Buffer error; } Status;

static void *library;
static Status status;
static Buffer (*alloc)(uint64_t, Status *);
static void (*release)(Buffer, Status *);

static void *named(const char *name) {
    void *call = dlsym(library, name);
    if (!call) {
        fprintf(stderr, "session: no %s: %s\n", name, dlerror());
        exit(1);
    }
    return call;
}

static void done(const char *what) {
    if (!status.code) return;
    fprintf(stderr, "session: %s failed with %d: %.*s\n", what, status.code, (int)status.error.length, (char *)status.error.data);
    exit(1);
}

static Buffer bytes(const void *data, size_t length) {
    Buffer buffer = alloc(length, &status);
    done("a buffer");
    memcpy(buffer.data, data, length);
    buffer.length = length;
    return buffer;
}

static Buffer text(const char *words) { return bytes(words, strlen(words)); }

/* 2026-11-25 10:15 UTC. */
static Buffer now(void) {
    static const uint8_t moment[12] = {0, 0, 0x01, 0xa2, 0x12, 0x33, 0x94, 0xa0, 0, 0, 0, 0};
    return bytes(moment, sizeof moment);
}

static void said(const char *what, Buffer answer) {
    done(what);
    printf("%s: %.*s\n", what, (int)answer.length, (char *)answer.data);
    release(answer, &status);
}

int main(int count, char **arguments) {
    if (count != 4) return 2;
    library = dlopen(arguments[1], RTLD_NOW);
    if (!library) {
        fprintf(stderr, "session: %s\n", dlerror());
        return 1;
    }
    alloc = named("ffi_laydown_app_rustbuffer_alloc");
    release = named("ffi_laydown_app_rustbuffer_free");
    Buffer (*stamp)(Status *) = named("uniffi_laydown_app_fn_func_build_stamp");
    uint64_t (*open)(Buffer, Buffer, Buffer, Status *) = named("uniffi_laydown_app_fn_constructor_studio_open_here");
    uint64_t (*clone)(uint64_t, Status *) = named("uniffi_laydown_app_fn_clone_studio");
    void (*close)(uint64_t, Status *) = named("uniffi_laydown_app_fn_free_studio");
    Buffer (*restore)(uint64_t, Buffer, Buffer, Status *) = named("uniffi_laydown_app_fn_method_studio_restore");
    Buffer (*back_up)(uint64_t, Buffer, Status *) = named("uniffi_laydown_app_fn_method_studio_back_up");
    Buffer (*export)(uint64_t, Buffer, Buffer, Status *) = named("uniffi_laydown_app_fn_method_studio_export");

    char studio[512], mark[512], backup[512], journal[512];
    snprintf(studio, sizeof studio, "%s/studio.laydown", arguments[3]);
    snprintf(mark, sizeof mark, "%s/this_phone", arguments[3]);
    snprintf(backup, sizeof backup, "%s/backup.zip", arguments[3]);
    snprintf(journal, sizeof journal, "%s/journal.jsonl", arguments[3]);

    said("stamp", stamp(&status));
    /* Twice: what was restored is there when the studio is opened again. */
    for (int turn = 0; turn < 2; turn++) {
        uint64_t handle = open(text(studio), text(mark), now(), &status);
        done("open");
        said("restore", restore(clone(handle, &status), now(), text(arguments[2]), &status));
        said("back up", back_up(clone(handle, &status), text(backup), &status));
        said("export", export(clone(handle, &status), text("journal"), text(journal), &status));
        close(handle, &status);
        done("close");
    }
    /* A panic would end the process; a refusal comes back as an error. */
    open(text("/nowhere/studio.laydown"), text("/nowhere/mark"), now(), &status);
    printf("a folder that is not there: error %d\n", status.code);
    return status.code == 1 ? 0 : 1;
}
