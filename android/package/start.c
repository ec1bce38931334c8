/* The beginning of a program for the test under qemu; the tool chain here has none for glibc. */
int main(int, char **);
int __libc_start_main(int (*)(int, char **), int, char **, void (*)(void), void (*)(void), void (*)(void), void *);
__attribute__((used)) static void begin(long *stack) { __libc_start_main(main, (int)stack[0], (char **)(stack + 1), 0, 0, 0, 0); }
__asm__(".globl _start\n_start: mov x29, #0\nmov x30, #0\nmov x0, sp\nb begin\n");
