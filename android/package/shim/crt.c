/* What the NDK's crtbegin_so.o does: names the library, and runs what it left for its end when it is unloaded. */
__attribute__((visibility("hidden"))) void *__dso_handle = &__dso_handle;
void __cxa_finalize(void *);
__attribute__((destructor, used)) static void at_unload(void) { __cxa_finalize(&__dso_handle); }
