#include "../core/head.h"

#include <string.h>

#include "check.h"
#include "frames.h"

enum { PERIOD = 12500 };

/* A head on the desk: its clock, and the lines it has sent. */
typedef struct {
  head_t head;
  uint32_t now_us, next_us;
  uint16_t room;
  bool converter;
  int32_t load;
  char lines[400][LINE_MOST + 1];
  int count;
} desk_t;

static desk_t desk;

static void begin(uint32_t from_us) {
  memset(&desk, 0, sizeof desk);
  head_start(&desk.head, "0042", GAUGE_52_BITS, false, from_us);
  desk.now_us = from_us;
  desk.next_us = from_us + PERIOD;
  desk.room = 255;
  desk.converter = true;
  desk.load = 1000;
}

static void drain(void) {
  uint8_t length;
  while (desk.count < 400 &&
         (length = head_line(&desk.head, desk.now_us, desk.room, desk.lines[desk.count])) > 0) {
    desk.lines[desk.count++][length] = 0;
  }
}

static void run_ms(int ms) {
  for (; ms > 0; ms--) {
    desk.now_us += 1000;
    while (desk.converter && (int32_t)(desk.now_us - desk.next_us) >= 0) {
      head_conversion(&desk.head, (uint32_t)desk.load & 0xFFFFFF, desk.next_us);
      desk.next_us += PERIOD;
    }
    head_time(&desk.head, desk.now_us);
    drain();
  }
}

static void say(const char *text) {
  for (; *text; text++) {
    while (!head_character(&desk.head, *text, desk.now_us)) drain();
  }
  drain();
}

/* The reply to a query, the last line sent. */
static const char *ask(const char *query) {
  say(query);
  say("\n");
  return desk.count ? desk.lines[desk.count - 1] : "";
}

static bool last_error_is(const char *text) { return strstr(ask("SYST:ERR?"), text) != 0; }

static bool field_is(int line, int field, const char *expected) {
  const char *text = desk.lines[line];
  while (field--) {
    text = strchr(text, ',');
    if (!text) return false;
    text++;
  }
  size_t length = strcspn(text, ",*\n");
  return length == strlen(expected) && !strncmp(text, expected, length);
}

static long number_of(int line, int field) {
  const char *text = desk.lines[line];
  long value = -1;
  while (field--) text = strchr(text, ',') + 1;
  sscanf(text, "%ld", &value);
  return value;
}

static void it_says_who_it_is_and_sends_nothing_unasked(void) {
  begin(0);
  run_ms(500);
  CHECK(desk.count == 0);
  CHECK(!strcmp(ask("*IDN?"), "SAGWRIGHT,BH-328,0042,1.0.0\n"));
}

static void readings_come_after_init_until_abor(void) {
  begin(0);
  say("INIT\n");
  run_ms(1000);
  int sent = desk.count;
  CHECK(sent >= 70 && sent <= 80);
  CHECK(field_is(0, 1, "0") && field_is(sent - 1, 1, "73") == (sent == 74));
  CHECK(number_of(1, 2) - number_of(0, 2) == PERIOD);
  CHECK(field_is(0, 3, "1000"));
  say("ABOR\nSAMP:RATE?\n");
  CHECK(!strcmp(desk.lines[desk.count - 1], "80\n")); /* what was held went out before the answer */
  sent = desk.count;
  run_ms(500);
  CHECK(desk.count == sent);
  say("INIT\n");
  run_ms(200);
  CHECK(number_of(sent, 1) == number_of(sent - 2, 1) + 1); /* the count goes on */
}

static void the_first_conversions_after_a_start_are_thrown_away(void) {
  begin(0);
  say("INIT\n");
  run_ms(200);
  CHECK(number_of(0, 2) == 4 * PERIOD - 2 * PERIOD);
}

static void the_stamp_is_the_moment_of_the_value_not_of_its_arrival(void) {
  begin(0);
  run_ms(100);
  say("INIT\n");
  run_ms(100);
  CHECK(number_of(0, 2) == 112500 - 2 * PERIOD);
}

static void an_end_stop_is_flagged_and_still_sent(void) {
  begin(0);
  say("INIT\n");
  desk.load = LOAD_MOST;
  run_ms(200);
  CHECK(field_is(0, 3, "8388607") && field_is(0, 5, "03"));
  desk.count = 0;
  desk.load = LOAD_LEAST;
  run_ms(200);
  CHECK(field_is(desk.count - 1, 3, "-8388608") && field_is(desk.count - 1, 5, "03"));
  desk.count = 0;
  desk.load = LOAD_LEAST + 1;
  run_ms(200);
  CHECK(field_is(desk.count - 1, 5, "02"));
}

static void a_missing_converter_keeps_the_time_by_itself(void) {
  begin(0);
  say("INIT\n");
  run_ms(500);
  desk.converter = false;
  run_ms(100);
  desk.count = 0;
  run_ms(1000);
  CHECK(desk.count == 80);
  for (int i = 0; i < desk.count; i++) {
    CHECK(field_is(i, 3, "") && field_is(i, 5, "06"));
    if (i) CHECK(number_of(i, 2) - number_of(i - 1, 2) == PERIOD);
  }
}

static void time_never_goes_back_when_the_converter_returns_or_its_rate_changes(void) {
  begin(0);
  say("INIT\n");
  run_ms(300);
  desk.converter = false;
  run_ms(400);
  desk.converter = true;
  desk.next_us = desk.now_us + 300;
  run_ms(300);
  say("SAMP:RATE 10\n");
  run_ms(900);
  say("SAMP:RATE 80\n");
  run_ms(300);
  CHECK(desk.count > 50);
  for (int i = 1; i < desk.count; i++) {
    CHECK(number_of(i, 2) > number_of(i - 1, 2));
    CHECK(number_of(i, 1) == number_of(i - 1, 1) + 1);
  }
}

static void a_gauge_value_rides_on_the_reading_of_its_moment(void) {
  begin(0);
  say("INIT\n");
  run_ms(300);
  desk.count = 0;
  frame_t frame = frame_of_um(-1234, 290000);
  head_frame(&desk.head, &frame);
  run_ms(200);
  int found = 0;
  for (int i = 0; i < desk.count; i++) {
    if (field_is(i, 4, "-1234")) {
      found++;
      CHECK(number_of(i, 2) == 287500);
    } else {
      CHECK(field_is(i, 4, ""));
    }
  }
  CHECK(found == 1);
}

static void a_gauge_that_dies_is_flagged_after_half_a_second(void) {
  begin(0);
  say("INIT\n");
  for (int i = 0; i < 10; i++) {
    frame_t frame = frame_of_um(1000 + i, desk.now_us);
    run_ms(43);
    head_frame(&desk.head, &frame);
  }
  desk.count = 0;
  run_ms(2000);
  long died_us = 387000;
  for (int i = 0; i < desk.count; i++) {
    CHECK(field_is(i, 5, number_of(i, 2) - died_us > 500000 ? "02" : "00"));
  }
  CHECK(field_is(0, 5, "00") && field_is(desk.count - 1, 5, "02"));
}

/* Half a round of the clock later a difference of times changes its sign. */
static void what_is_silent_stays_silent_for_hours(void) {
  begin(0);
  frame_t frame = frame_of_um(1000, desk.now_us);
  head_frame(&desk.head, &frame);
  desk.converter = false;
  say("INIT\n");
  run_ms(2000);
  for (int quarter = 0; quarter < 12; quarter++) {
    for (int second = 0; second < 900; second++) { /* a poll each second is enough here */
      desk.now_us += 1000000;
      head_time(&desk.head, desk.now_us);
    }
    drain();
    desk.count = 0;
    run_ms(100);
    CHECK(desk.count > 0 && field_is(desk.count - 1, 5, "06"));
  }
}

static void both_counters_go_round(void) {
  begin(4294967295u - 500000u);
  say("INIT\n");
  desk.head.seq = 65530;
  run_ms(1000);
  CHECK(field_is(5, 1, "65535") && field_is(6, 1, "0"));
  int wraps = 0;
  for (int i = 1; i < desk.count; i++) {
    long step = number_of(i, 2) - number_of(i - 1, 2);
    if (step < 0) {
      wraps++;
      step += 4294967296l;
    }
    CHECK(step == PERIOD);
  }
  CHECK(wraps == 1);
}

static void a_line_too_slow_drops_whole_readings_and_says_so(void) {
  begin(0);
  say("INIT\n");
  desk.room = LINE_MOST - 1;
  run_ms(500);
  CHECK(desk.count == 0);
  desk.room = 255;
  run_ms(1);
  CHECK(desk.count > 0 && number_of(0, 1) > 0);
  CHECK(field_is(0, 5, "0A") && field_is(1, 5, "02"));
}

static void a_reply_goes_before_the_readings(void) {
  begin(0);
  say("INIT\n");
  desk.room = 0;
  run_ms(500);
  for (const char *text = "*IDN?\nINIT\n"; *text; text++) {
    if (!head_character(&desk.head, *text, desk.now_us)) break; /* waits for the reply to go */
  }
  desk.room = 255;
  drain();
  CHECK(!strncmp(desk.lines[0], "SAGWRIGHT,", 10));
  CHECK(!strncmp(desk.lines[1], "$SG,", 4));
}

static void wrong_commands_fill_the_error_queue(void) {
  begin(0);
  say("SAMP:RATE 20\n");
  CHECK(last_error_is("-222,\"Data out of range\""));
  say("SAMP:RATE\n");
  CHECK(last_error_is("-109,"));
  say("SAMP:RATE fast\n");
  CHECK(last_error_is("-104,"));
  say("SAMP:RATE -80\n");
  CHECK(last_error_is("-222,"));
  say("SAMP:RATE 1\n");
  CHECK(last_error_is("-222,"));
  say("MEAS?\n");
  CHECK(last_error_is("-113,"));
  say("INIT 5\n");
  CHECK(last_error_is("-108,"));
  CHECK(!desk.head.running);
  say("INIT\nINIT\n");
  CHECK(last_error_is("-213,"));
  CHECK(last_error_is("0,\"No error\""));
  say("BAD\n*CLS\n");
  CHECK(last_error_is("0,\"No error\""));
}

static void the_rate_is_the_two_that_the_chip_knows(void) {
  begin(0);
  say("SAMP:RATE 10.0\n");
  CHECK(head_rate_hz(&desk.head) == 10);
  CHECK(!strcmp(ask("SAMP:RATE?"), "10\n"));
  say("samp:rate 8e1\n");
  CHECK(head_rate_hz(&desk.head) == 80);
  say("SAMP:RATE 10\n*RST\n");
  CHECK(head_rate_hz(&desk.head) == 80 && !desk.head.running);
  CHECK(last_error_is("0,\"No error\""));
}

static void a_command_too_long_is_refused_whole(void) {
  begin(0);
  for (int i = 0; i < 5; i++) say("INIT INIT INIT INIT INIT ");
  say("\n");
  CHECK(!desk.head.running);
  CHECK(last_error_is("-363,"));
  CHECK(last_error_is("0,"));
}

static void several_commands_on_a_line_and_empty_lines_are_taken(void) {
  begin(0);
  say("\r\n\n;;INIT;SAMP:RATE 10\r\n");
  CHECK(desk.head.running && head_rate_hz(&desk.head) == 10);
  CHECK(last_error_is("0,"));
}

static void a_start_by_the_watchdog_is_told(void) {
  begin(0);
  head_start(&desk.head, "0", GAUGE_52_BITS, true, 0);
  CHECK(last_error_is("-310,\"System error;watchdog\""));
  head_line_fault(&desk.head, ERROR_FRAMING);
  CHECK(last_error_is("-362,"));
}

static void a_long_serial_number_does_not_overrun_the_reply(void) {
  begin(0);
  head_start(&desk.head, "0123456789012345678901234567890123456789", GAUGE_52_BITS, false, 0);
  const char *reply = ask("*IDN?");
  CHECK(strlen(reply) == REPLY_MOST && reply[REPLY_MOST - 1] == '\n');
}

void test_head(void) {
  it_says_who_it_is_and_sends_nothing_unasked();
  readings_come_after_init_until_abor();
  the_first_conversions_after_a_start_are_thrown_away();
  the_stamp_is_the_moment_of_the_value_not_of_its_arrival();
  an_end_stop_is_flagged_and_still_sent();
  a_missing_converter_keeps_the_time_by_itself();
  time_never_goes_back_when_the_converter_returns_or_its_rate_changes();
  a_gauge_value_rides_on_the_reading_of_its_moment();
  a_gauge_that_dies_is_flagged_after_half_a_second();
  what_is_silent_stays_silent_for_hours();
  both_counters_go_round();
  a_line_too_slow_drops_whole_readings_and_says_so();
  a_reply_goes_before_the_readings();
  wrong_commands_fill_the_error_queue();
  the_rate_is_the_two_that_the_chip_knows();
  a_command_too_long_is_refused_whole();
  several_commands_on_a_line_and_empty_lines_are_taken();
  a_start_by_the_watchdog_is_told();
  a_long_serial_number_does_not_overrun_the_reply();
}
