/* Android numbers what sysconf is asked otherwise than musl. A question that is not numbered here does not compile. */
#include_next <unistd.h>
#ifndef LAYDOWN_SYSCONF
#define LAYDOWN_SYSCONF
#define ANDROID_SC_PAGESIZE 39
#define ANDROID_SC_PAGE_SIZE 40
#define ANDROID_SC_NPROCESSORS_CONF 96
#define ANDROID_SC_NPROCESSORS_ONLN 97
#define sysconf(question) sysconf(ANDROID##question)
#endif
