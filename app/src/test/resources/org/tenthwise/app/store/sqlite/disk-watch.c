/*
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes down what a process does to the files of one folder, in the order it does it: put between the process and the C
 * library by LD_PRELOAD. DISK_WATCH_FOLDER names the folder, DISK_WATCH_LOG the file to write to, which lies elsewhere.
 * A line of the log: one letter, two numbers of 8 bytes, then a text and data, each behind its length in 4 bytes; most
 * significant byte first. DiskLog.java reads it.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#define MOST_FILES 4096

static pthread_mutex_t order = PTHREAD_MUTEX_INITIALIZER;
static char watched[MOST_FILES];
static int log_fd = -1;

static void *real(const char *name) {
    return dlsym(RTLD_NEXT, name);
}

static int is_watched(int fd) {
    return fd >= 0 && fd < MOST_FILES && watched[fd];
}

/* The folder itself, or what lies directly in it. */
static int is_inside(const char *path) {
    const char *folder = getenv("DISK_WATCH_FOLDER");
    size_t length = folder ? strlen(folder) : 0;
    return length && path && strncmp(path, folder, length) == 0 && (path[length] == '/' || path[length] == 0);
}

static unsigned char *put(unsigned char *to, uint64_t value, int bytes) {
    for (int i = bytes - 1; i >= 0; i--) {
        *to++ = (unsigned char) (value >> (8 * i));
    }
    return to;
}

static void say(char what, int64_t a, int64_t b, const char *text, const void *data, size_t length) {
    size_t letters = text ? strlen(text) : 0;
    unsigned char *line = malloc(1 + 8 + 8 + 4 + letters + 4 + length);
    unsigned char *end = line;
    if (log_fd < 0) {
        log_fd = (int) syscall(SYS_openat, AT_FDCWD, getenv("DISK_WATCH_LOG"), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    }
    *end++ = (unsigned char) what;
    end = put(end, (uint64_t) a, 8);
    end = put(end, (uint64_t) b, 8);
    end = put(end, letters, 4);
    memcpy(end, text ? text : "", letters);
    end += letters;
    end = put(end, length, 4);
    if (length) {
        memcpy(end, data, length);
    }
    end += length;
    if (syscall(SYS_write, log_fd, line, (size_t) (end - line)) != end - line) {
        abort();
    }
    free(line);
}

static int opened(int dirfd, const char *path, int flags, mode_t mode) {
    struct stat before;
    int fd;
    if (!is_inside(path)) {
        return (int) syscall(SYS_openat, dirfd, path, flags, mode);
    }
    pthread_mutex_lock(&order);
    int there = stat(path, &before) == 0;
    fd = (int) syscall(SYS_openat, dirfd, path, flags, mode);
    if (fd >= 0 && fd < MOST_FILES) {
        watched[fd] = 1;
        say('O', fd, there, path, NULL, 0);
        if (there && (flags & O_TRUNC)) {
            say('T', fd, 0, NULL, NULL, 0);
        }
    }
    pthread_mutex_unlock(&order);
    return fd;
}

#define MODE_OF(flags, last) \
    mode_t mode = 0; \
    if ((flags) & (O_CREAT | O_TMPFILE)) { \
        va_list more; \
        va_start(more, last); \
        mode = va_arg(more, mode_t); \
        va_end(more); \
    }

int open(const char *path, int flags, ...) { MODE_OF(flags, flags) return opened(AT_FDCWD, path, flags, mode); }
int open64(const char *path, int flags, ...) { MODE_OF(flags, flags) return opened(AT_FDCWD, path, flags | O_LARGEFILE, mode); }
int openat(int dir, const char *path, int flags, ...) { MODE_OF(flags, flags) return opened(dir, path, flags, mode); }
int openat64(int dir, const char *path, int flags, ...) { MODE_OF(flags, flags) return opened(dir, path, flags | O_LARGEFILE, mode); }

int close(int fd) {
    if (!is_watched(fd)) {
        return (int) syscall(SYS_close, fd);
    }
    pthread_mutex_lock(&order);
    watched[fd] = 0;
    say('C', fd, 0, NULL, NULL, 0);
    int done = (int) syscall(SYS_close, fd);
    pthread_mutex_unlock(&order);
    return done;
}

ssize_t write(int fd, const void *data, size_t length) {
    if (!is_watched(fd)) {
        return syscall(SYS_write, fd, data, length);
    }
    pthread_mutex_lock(&order);
    off_t at = lseek(fd, 0, SEEK_CUR);
    ssize_t done = syscall(SYS_write, fd, data, length);
    if (done > 0) {
        say('W', fd, at, NULL, data, (size_t) done);
    }
    pthread_mutex_unlock(&order);
    return done;
}

static ssize_t written_at(int fd, const void *data, size_t length, off_t at) {
    if (!is_watched(fd)) {
        return syscall(SYS_pwrite64, fd, data, length, at);
    }
    pthread_mutex_lock(&order);
    ssize_t done = syscall(SYS_pwrite64, fd, data, length, at);
    if (done > 0) {
        say('W', fd, at, NULL, data, (size_t) done);
    }
    pthread_mutex_unlock(&order);
    return done;
}

ssize_t pwrite(int fd, const void *data, size_t length, off_t at) { return written_at(fd, data, length, at); }
ssize_t pwrite64(int fd, const void *data, size_t length, off64_t at) { return written_at(fd, data, length, at); }

static int cut(int fd, off_t size) {
    if (!is_watched(fd)) {
        return (int) syscall(SYS_ftruncate, fd, size);
    }
    pthread_mutex_lock(&order);
    int done = (int) syscall(SYS_ftruncate, fd, size);
    if (done == 0) {
        say('T', fd, size, NULL, NULL, 0);
    }
    pthread_mutex_unlock(&order);
    return done;
}

int ftruncate(int fd, off_t size) { return cut(fd, size); }
int ftruncate64(int fd, off64_t size) { return cut(fd, size); }

/* The model decides what survives, so the real disk need not be waited for. */
static int synchronised(int fd, long call) {
    if (!is_watched(fd)) {
        return (int) syscall(call, fd);
    }
    pthread_mutex_lock(&order);
    say('S', fd, 0, NULL, NULL, 0);
    pthread_mutex_unlock(&order);
    return 0;
}

int fsync(int fd) { return synchronised(fd, SYS_fsync); }
int fdatasync(int fd) { return synchronised(fd, SYS_fdatasync); }

int unlink(const char *path) {
    int (*next)(const char *) = (int (*)(const char *)) real("unlink");
    if (!is_inside(path)) {
        return next(path);
    }
    pthread_mutex_lock(&order);
    int done = next(path);
    if (done == 0) {
        say('U', 0, 0, path, NULL, 0);
    }
    pthread_mutex_unlock(&order);
    return done;
}

int rename(const char *from, const char *to) {
    int (*next)(const char *, const char *) = (int (*)(const char *, const char *)) real("rename");
    if (!is_inside(from)) {
        return next(from, to);
    }
    pthread_mutex_lock(&order);
    int done = next(from, to);
    if (done == 0) {
        say('R', 0, 0, from, to, strlen(to));
    }
    pthread_mutex_unlock(&order);
    return done;
}
