#include <string.h>

#include "../core/clock.h"
#include "../core/wire.h"
#include "check.h"

static void crc_has_the_published_check_value(void) {
  CHECK(wire_crc("123456789", 9) == 0x29B1); /* catalogue of CRC algorithms, CRC-16/CCITT-FALSE */
  CHECK(wire_crc("", 0) == 0xFFFF);
}

static void every_24_bit_value_keeps_its_sign(void) {
  unsigned wrong = 0;
  for (int32_t value = LOAD_LEAST; value <= LOAD_MOST; value++) {
    wrong += wire_sign24((uint32_t)value & 0xFFFFFF) != value;
  }
  CHECK(wrong == 0);
  CHECK(wire_sign24(0xAAFE1DC0 & 0xFFFFFFFF) == wire_sign24(0xFE1DC0)); /* what is above is noise */
}

static bool line_is(reading_t reading, const char *expected) {
  char line[LINE_MOST + 8];
  memset(line, 'x', sizeof line);
  uint8_t length = wire_line(&reading, line);
  char sum[8];
  snprintf(sum, sizeof sum, "*%04X\n", wire_crc(expected, (uint8_t)strlen(expected)));
  return length == strlen(expected) + 7 && line[0] == '$' &&
         memcmp(line + 1, expected, strlen(expected)) == 0 &&
         memcmp(line + 1 + strlen(expected), sum, 6) == 0 && line[length] == 'x';
}

static void lines_stand_as_the_contract_has_them(void) {
  CHECK(line_is((reading_t){0}, "SG,0,0,0,,00"));
  CHECK(line_is((reading_t){.seq = 7, .moment_us = 1234567, .load = -123456, .gauge = -42,
                            .has_gauge = true, .flags = FLAG_DROPPED},
                "SG,7,1234567,-123456,-42,08"));
  CHECK(line_is((reading_t){.load = 5, .flags = FLAG_CONVERTER_SILENT | FLAG_GAUGE_SILENT},
                "SG,0,0,,,06"));
}

static void the_longest_line_fits(void) {
  reading_t longest = {65535, 4294967295u, LOAD_LEAST, -999999, true, 0x0B};
  char line[LINE_MOST];
  CHECK(wire_line(&longest, line) == 46);
  CHECK(line_is(longest, "SG,65535,4294967295,-8388608,-999999,0B"));
}

static void decimals_reach_both_ends(void) {
  char text[12] = {0};
  CHECK(wire_decimal(INT32_MIN, text) == 11 && !memcmp(text, "-2147483648", 11));
  CHECK(wire_decimal(INT32_MAX, text) == 10 && !memcmp(text, "2147483647", 10));
  CHECK(wire_decimal(0, text) == 1 && text[0] == '0');
}

/* The truth is half microseconds since the start; the timer shows 16 bits, the rest is counted. */
static void the_clock_never_jumps_at_an_overflow(void) {
  unsigned wrong = 0;
  for (uint32_t round = 1; round < 4; round++) {
    for (int32_t off = -400; off <= 400; off++) {
      uint32_t truth = round * 65536u + (uint32_t)off;
      uint32_t before = truth >> 16;
      wrong += clock_microseconds(before, (uint16_t)truth, false) != truth / 2;
      /* An overflow that came after the timer was read must not count, one before must. */
      if (off >= 0) wrong += clock_microseconds(before - 1, (uint16_t)truth, true) != truth / 2;
      if (off < 0) wrong += clock_microseconds(before, (uint16_t)truth, true) != truth / 2;
    }
  }
  CHECK(wrong == 0);
}

static void the_clock_goes_round_after_32_bits(void) {
  CHECK(clock_microseconds(131071, 65535, false) == 4294967295u);
  CHECK(clock_microseconds(131072, 0, false) == 0);
  CHECK(clock_microseconds(131071, 0, true) == 0);
  CHECK(clock_apart(5, 4294967290u) == 11);
  CHECK(clock_apart(4294967290u, 5) == -11);
}

void test_wire(void) {
  crc_has_the_published_check_value();
  every_24_bit_value_keeps_its_sign();
  lines_stand_as_the_contract_has_them();
  the_longest_line_fits();
  decimals_reach_both_ends();
  the_clock_never_jumps_at_an_overflow();
  the_clock_goes_round_after_32_bits();
}
