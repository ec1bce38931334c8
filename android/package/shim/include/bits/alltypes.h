/* Types that are longer on Android than in musl: with musl's, Android's C library would write past their ends. */
#ifndef __DEFINED_pthread_mutexattr_t
typedef long pthread_mutexattr_t;
typedef long pthread_condattr_t;
typedef long pthread_rwlockattr_t;
#define __DEFINED_pthread_mutexattr_t
#define __DEFINED_pthread_condattr_t
#define __DEFINED_pthread_rwlockattr_t
#endif
#include_next <bits/alltypes.h>
