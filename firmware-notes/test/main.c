#include "check.h"

unsigned checks_made, checks_failed;

int main(void) {
  test_wire();
  test_gauge();
  test_pairing();
  test_command();
  test_head();
  printf("%u checks, %u failed\n", checks_made, checks_failed);
  return checks_failed != 0;
}
