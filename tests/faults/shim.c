/**
 * Preloaded under the real hub: fails what it writes to the day files of the log or to a photo, or records the log's.
 *
 * RODCALL_FAULT names a file whose first letter says what fails: n a write finds no space, e a write meets an error of
 * the disk, s a write takes half and the next finds no space, y fdatasync meets an error, p a photo finds no space; anything
 * else fails nothing.
 * RODCALL_RECORD names a file that gets a line for each thing that was done: W COUNT bytes were written, S they were
 * synced, D the folder was synced. h sets the laptop's clock back an hour.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

enum place { ELSEWHERE, DAY_FILE, LOG_FOLDER, PHOTO };

static int ends(const char *text, const char *end) {
  size_t length = strlen(text), tail = strlen(end);
  return length >= tail && strcmp(text + length - tail, end) == 0;
}

static enum place place_of(int fd) {
  char link[64], path[PATH_MAX];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  if (length <= 0) {
    return ELSEWHERE;
  }
  path[length] = '\0';
  if (ends(path, "/data/log")) {
    return LOG_FOLDER;
  }
  if (strstr(path, "/data/photos/")) {
    return PHOTO;
  }
  return strstr(path, "/data/log/") && ends(path, ".jsonl") ? DAY_FILE : ELSEWHERE;
}

static char fault(void) {
  const char *name = getenv("RODCALL_FAULT");
  char letter = '-';
  int fd = name ? open(name, O_RDONLY | O_CLOEXEC) : -1;
  if (fd >= 0) {
    if (read(fd, &letter, 1) != 1) {
      letter = '-';
    }
    close(fd);
  }
  return letter;
}

static ssize_t real_write(int fd, const void *bytes, size_t count) {
  static ssize_t (*real)(int, const void *, size_t);
  if (!real) {
    real = (ssize_t(*)(int, const void *, size_t))dlsym(RTLD_NEXT, "write");
  }
  return real(fd, bytes, count);
}

static int real_sync(const char *name, int fd) {
  int (*real)(int) = (int (*)(int))dlsym(RTLD_NEXT, name);
  return real(fd);
}

static void record(const char *line) {
  const char *name = getenv("RODCALL_RECORD");
  int fd = name ? open(name, O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC, 0600) : -1;
  if (fd >= 0) {
    if (real_write(fd, line, strlen(line)) < 0) {
      abort();
    }
    close(fd);
  }
}

ssize_t write(int fd, const void *bytes, size_t count) {
  static int halved;
  enum place place = place_of(fd);
  if (place == PHOTO && fault() == 'p') {
    errno = ENOSPC;
    return -1;
  }
  if (place != DAY_FILE) {
    return real_write(fd, bytes, count);
  }
  char letter = fault();
  if (letter == 'e') {
    errno = EIO;
    return -1;
  }
  if (letter == 'n' || (letter == 's' && halved)) {
    errno = ENOSPC;
    return -1;
  }
  if (letter == 's') {
    halved = 1;
    count = count / 2 + 1;
  }
  ssize_t done = real_write(fd, bytes, count);
  if (done > 0) {
    char line[32];
    snprintf(line, sizeof line, "W %zd\n", done);
    record(line);
  }
  return done;
}

static int sync_file(const char *name, int fd) {
  enum place place = place_of(fd);
  if (place == DAY_FILE && fault() == 'y') {
    errno = EIO;
    return -1;
  }
  int done = real_sync(name, fd);
  if (done == 0 && (place == DAY_FILE || place == LOG_FOLDER)) {
    record(place == DAY_FILE ? "S\n" : "D\n");
  }
  return done;
}

int clock_gettime(clockid_t which, struct timespec *at) {
  static int (*real)(clockid_t, struct timespec *);
  if (!real) {
    real = (int (*)(clockid_t, struct timespec *))dlsym(RTLD_NEXT, "clock_gettime");
  }
  int done = real(which, at);
  if (done == 0 && which == CLOCK_REALTIME && fault() == 'h') {
    at->tv_sec -= 3600;
  }
  return done;
}

int fdatasync(int fd) { return sync_file("fdatasync", fd); }

int fsync(int fd) { return sync_file("fsync", fd); }
