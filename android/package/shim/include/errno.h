/* Android keeps errno behind another function than musl does. */
#include_next <errno.h>
#undef errno
int *__errno(void);
#define errno (*__errno())
