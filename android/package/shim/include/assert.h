/* Android's assert calls __assert2. Included anew each time, as the standard wants. */
#undef assert
#ifdef NDEBUG
#define assert(expression) ((void)0)
#else
_Noreturn void __assert2(const char *file, int line, const char *function, const char *expression);
#define assert(expression) ((expression) ? (void)0 : __assert2(__FILE__, __LINE__, __func__, #expression))
#endif
#ifndef __cplusplus
#undef static_assert
#define static_assert _Static_assert
#endif
