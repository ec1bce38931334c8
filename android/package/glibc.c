/*
 * Android's names over glibc, for qemu: what bionic calls otherwise, and the types that glibc has longer (a mutex has 40 bytes on
 * Android and 48 here). Only for the test; a phone has the real ones.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

int *__errno(void) { return __errno_location(); }

void __assert2(const char *file, int line, const char *function, const char *expression) {
    fprintf(stderr, "%s:%d: %s: %s\n", file, line, function, expression);
    abort();
}

int __android_log_write(int level, const char *tag, const char *words) { return fprintf(stderr, "%d %s %s\n", level, tag, words); }

void android_set_abort_message(const char *words) { fprintf(stderr, "abort: %s\n", words); }

static void *real(const char *name) {
    void *call = dlsym(RTLD_NEXT, name);
    if (!call) abort();
    return call;
}

/* bionic's numbers. */
long sysconf(int question) {
    long (*ask)(int) = real("sysconf");
    switch (question) {
        case 39: case 40: return ask(_SC_PAGESIZE);
        case 96: return ask(_SC_NPROCESSORS_CONF);
        case 97: return ask(_SC_NPROCESSORS_ONLN);
        default: fprintf(stderr, "sysconf was asked %d\n", question); abort();
    }
}

/* A longer object lies apart; the first word of Android's is the way to it. All zero is a plain one, as an initialiser leaves it. */
static void *apart(void *short_one, size_t size) {
    void **way = short_one, *none = NULL, *made;
    if (__atomic_load_n(way, __ATOMIC_ACQUIRE)) return *way;
    made = calloc(1, size);
    if (!made) abort();
    if (__atomic_compare_exchange_n(way, &none, made, 0, __ATOMIC_ACQ_REL, __ATOMIC_ACQUIRE)) return made;
    free(made);
    return *way;
}
#define MUTEX(m) apart(m, sizeof(pthread_mutex_t))
#define ATTRIBUTES(a) apart(a, sizeof(pthread_attr_t))

int pthread_mutex_init(pthread_mutex_t *m, const pthread_mutexattr_t *a) {
    *(void **)m = NULL;
    return ((int (*)(void *, const void *))real("pthread_mutex_init"))(MUTEX(m), a);
}
int pthread_mutex_lock(pthread_mutex_t *m) { return ((int (*)(void *))real("pthread_mutex_lock"))(MUTEX(m)); }
int pthread_mutex_trylock(pthread_mutex_t *m) { return ((int (*)(void *))real("pthread_mutex_trylock"))(MUTEX(m)); }
int pthread_mutex_unlock(pthread_mutex_t *m) { return ((int (*)(void *))real("pthread_mutex_unlock"))(MUTEX(m)); }
int pthread_mutex_destroy(pthread_mutex_t *m) {
    int answer = ((int (*)(void *))real("pthread_mutex_destroy"))(MUTEX(m));
    free(*(void **)m);
    *(void **)m = NULL;
    return answer;
}

int pthread_attr_init(pthread_attr_t *a) {
    *(void **)a = NULL;
    return ((int (*)(void *))real("pthread_attr_init"))(ATTRIBUTES(a));
}
int pthread_attr_setstacksize(pthread_attr_t *a, size_t size) {
    return ((int (*)(void *, size_t))real("pthread_attr_setstacksize"))(ATTRIBUTES(a), size);
}
int pthread_attr_destroy(pthread_attr_t *a) {
    int answer = ((int (*)(void *))real("pthread_attr_destroy"))(ATTRIBUTES(a));
    free(*(void **)a);
    return answer;
}
int pthread_create(pthread_t *thread, const pthread_attr_t *a, void *(*work)(void *), void *with) {
    void *attributes = a ? ATTRIBUTES((void *)a) : NULL;
    return ((int (*)(void *, const void *, void *(*)(void *), void *))real("pthread_create"))(thread, attributes, work, with);
}

/* glibc has this in a static part only. */
int __register_atfork(void (*)(void), void (*)(void), void (*)(void), void *);
int pthread_atfork(void (*before)(void), void (*parent)(void), void (*child)(void)) { return __register_atfork(before, parent, child, NULL); }

/* The properties of an Android phone, such as its time zone: here it has none. */
int __system_property_get(const char *name, char *value) {
    (void)name;
    value[0] = 0;
    return 0;
}
