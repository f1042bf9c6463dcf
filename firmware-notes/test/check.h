/* Counts checks; a failed one says where and goes on. */
#ifndef SAGWRIGHT_CHECK_H
#define SAGWRIGHT_CHECK_H

#include <stdio.h>

extern unsigned checks_made, checks_failed;

#define CHECK(condition)                                              \
  do {                                                                \
    checks_made++;                                                    \
    if (!(condition)) {                                               \
      checks_failed++;                                                \
      printf("%s:%d: not so: %s\n", __FILE__, __LINE__, #condition);  \
    }                                                                 \
  } while (0)

void test_wire(void);
void test_gauge(void);
void test_pairing(void);
void test_command(void);
void test_head(void);

#endif
