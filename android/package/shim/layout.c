/*
 * What the C parts (SQLite, zstd, the unwinder) share with Android's C library, as numbers: sizes and places in structures, and
 * values. They are those of bionic's own headers, against which this file compiles too; a stand-in header that differs does
 * not compile. The functions that they belong to are listed in called.txt.
 */
#define _GNU_SOURCE
#include <assert.h>
#include <dlfcn.h>
#include <elf.h>
#include <errno.h>
#include <fcntl.h>
#include <link.h>
#include <pthread.h>
#include <stddef.h>
#include <stdio.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/time.h>
#include <time.h>
#include <unistd.h>

#define SAME(value, number) _Static_assert((long)(value) == (number), #value)
#define SIZE(type, number) SAME(sizeof(type), number)
#define PLACE(type, field, number) SAME(offsetof(type, field), number)

SIZE(time_t, 8); SIZE(off_t, 8); SIZE(mode_t, 4); SIZE(uid_t, 4); SIZE(pid_t, 4); SIZE(size_t, 8); SIZE(useconds_t, 4);
SIZE(clock_t, 8); SAME(CLOCKS_PER_SEC, 1000000);

SIZE(struct timespec, 16); PLACE(struct timespec, tv_nsec, 8);
SIZE(struct timeval, 16); PLACE(struct timeval, tv_usec, 8);
SIZE(struct tm, 56); PLACE(struct tm, tm_sec, 0); PLACE(struct tm, tm_min, 4); PLACE(struct tm, tm_hour, 8);
PLACE(struct tm, tm_mday, 12); PLACE(struct tm, tm_mon, 16); PLACE(struct tm, tm_year, 20);

SIZE(struct flock, 32); PLACE(struct flock, l_type, 0); PLACE(struct flock, l_whence, 2); PLACE(struct flock, l_start, 8);
PLACE(struct flock, l_len, 16); PLACE(struct flock, l_pid, 24);

#ifdef __aarch64__
SIZE(struct stat, 128); PLACE(struct stat, st_mode, 16); PLACE(struct stat, st_nlink, 20);
SIZE(((struct stat *)0)->st_nlink, 4); SIZE(((struct stat *)0)->st_blksize, 4);
SAME(O_DIRECTORY, 0x4000); SAME(O_NOFOLLOW, 0x8000); SAME(SYS_rt_sigprocmask, 135);
#else
SIZE(struct stat, 144); PLACE(struct stat, st_mode, 24); PLACE(struct stat, st_nlink, 16);
SIZE(((struct stat *)0)->st_nlink, 8); SIZE(((struct stat *)0)->st_blksize, 8);
SAME(O_DIRECTORY, 0x10000); SAME(O_NOFOLLOW, 0x20000); SAME(SYS_rt_sigprocmask, 14);
#endif
PLACE(struct stat, st_dev, 0); PLACE(struct stat, st_ino, 8); PLACE(struct stat, st_size, 48); PLACE(struct stat, st_mtime, 88);

SIZE(pthread_t, 8); SIZE(pthread_key_t, 4); SIZE(pthread_once_t, 4);
SIZE(pthread_mutex_t, 40); SIZE(pthread_cond_t, 48); SIZE(pthread_rwlock_t, 56); SIZE(pthread_attr_t, 56);
SIZE(pthread_mutexattr_t, 8); SIZE(pthread_condattr_t, 8); SIZE(pthread_rwlockattr_t, 8);
SAME(PTHREAD_MUTEX_NORMAL, 0); SAME(PTHREAD_MUTEX_RECURSIVE, 1);

PLACE(struct dl_phdr_info, dlpi_addr, 0); PLACE(struct dl_phdr_info, dlpi_name, 8); PLACE(struct dl_phdr_info, dlpi_phdr, 16);
PLACE(struct dl_phdr_info, dlpi_phnum, 24); SIZE(Elf64_Phdr, 56);
SIZE(Dl_info, 32); PLACE(Dl_info, dli_fname, 0); PLACE(Dl_info, dli_fbase, 8); PLACE(Dl_info, dli_sname, 16);
PLACE(Dl_info, dli_saddr, 24);

SAME(O_RDONLY, 0); SAME(O_WRONLY, 1); SAME(O_RDWR, 2); SAME(O_CREAT, 0x40); SAME(O_EXCL, 0x80); SAME(O_TRUNC, 0x200);
SAME(O_APPEND, 0x400); SAME(O_NONBLOCK, 0x800); SAME(O_CLOEXEC, 0x80000);
SAME(F_GETFD, 1); SAME(F_SETFD, 2); SAME(F_GETFL, 3); SAME(F_SETFL, 4); SAME(F_GETLK, 5); SAME(F_SETLK, 6); SAME(F_SETLKW, 7);
SAME(FD_CLOEXEC, 1); SAME(F_RDLCK, 0); SAME(F_WRLCK, 1); SAME(F_UNLCK, 2);
SAME(SEEK_SET, 0); SAME(SEEK_CUR, 1); SAME(SEEK_END, 2); SAME(F_OK, 0); SAME(X_OK, 1); SAME(W_OK, 2); SAME(R_OK, 4);
SAME(S_IFMT, 0170000); SAME(S_IFREG, 0100000); SAME(S_IFDIR, 0040000); SAME(S_IFLNK, 0120000);
SAME(PROT_READ, 1); SAME(PROT_WRITE, 2); SAME(MAP_SHARED, 1); SAME(MAP_PRIVATE, 2); SAME(MREMAP_MAYMOVE, 1);
SAME(RTLD_LAZY, 1); SAME(RTLD_NOW, 2); SAME(RTLD_GLOBAL, 0x100);
SAME((size_t)MAP_FAILED, -1); SAME(BUFSIZ, 1024); SAME(EOF, -1); SAME(_IONBF, 2);

SAME(EPERM, 1); SAME(ENOENT, 2); SAME(EINTR, 4); SAME(EIO, 5); SAME(EBADF, 9); SAME(EAGAIN, 11); SAME(ENOMEM, 12); SAME(EACCES, 13);
SAME(EFAULT, 14); SAME(EBUSY, 16); SAME(EEXIST, 17); SAME(ENOTDIR, 20); SAME(EISDIR, 21); SAME(EINVAL, 22); SAME(ENOSPC, 28);
SAME(EROFS, 30); SAME(ERANGE, 34); SAME(EDEADLK, 35); SAME(ENOLCK, 37); SAME(ENOSYS, 38); SAME(EOVERFLOW, 75); SAME(EOPNOTSUPP, 95);
SAME(ETIMEDOUT, 110); SAME(ESTALE, 116);
