#include "../core/command.h"

#include <string.h>

#include "check.h"

static command_t read_as(const char *text) {
  const char *parameter;
  return command_read(text, &parameter);
}

static void headers_are_read_short_and_long_in_either_case(void) {
  static const struct {
    const char *text;
    command_t command;
  } table[] = {
      {"*IDN?", COMMAND_IDENTITY},     {"*idn?\r", COMMAND_IDENTITY},
      {"INIT", COMMAND_INIT},          {"init", COMMAND_INIT},
      {"INITIATE", COMMAND_INIT},      {":INIT:IMM", COMMAND_INIT},
      {"initiate:immediate", COMMAND_INIT},
      {"ABOR", COMMAND_ABORT},         {"ABORt", COMMAND_ABORT},
      {"SAMP:RATE 80", COMMAND_RATE},  {"sample:rate\t10", COMMAND_RATE},
      {"SAMP:RATE", COMMAND_RATE},     {"SAMP:RATE?", COMMAND_RATE_QUERY},
      {"SYST:ERR?", COMMAND_ERROR_QUERY}, {"SYSTem:ERRor:NEXT?", COMMAND_ERROR_QUERY},
      {"*CLS", COMMAND_CLEAR},         {"*RST", COMMAND_RESET},
      {"", COMMAND_NONE},              {"  \r", COMMAND_NONE},
      {"IN", COMMAND_UNKNOWN},         {"INITI", COMMAND_UNKNOWN},
      {"INITX", COMMAND_UNKNOWN},      {"INIT:", COMMAND_UNKNOWN},
      {"INIT:IM", COMMAND_UNKNOWN},    {"ABORTS", COMMAND_UNKNOWN},
      {":*IDN?", COMMAND_UNKNOWN},     {"*IDN", COMMAND_UNKNOWN},
      {"SYST:ERR", COMMAND_UNKNOWN},   {"SYST:ERR??", COMMAND_UNKNOWN},
      {"\x80\xFF", COMMAND_UNKNOWN},   {"$SG,1,2,3,,00*0000", COMMAND_UNKNOWN},
  };
  for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
    CHECK(read_as(table[i].text) == table[i].command);
    if (read_as(table[i].text) != table[i].command) printf("  %s\n", table[i].text);
  }
}

static void the_parameter_is_what_stands_behind_the_header(void) {
  const char *parameter;
  command_read(" SAMP:RATE   80 ", &parameter);
  CHECK(!strcmp(parameter, "80 "));
  command_read("INIT", &parameter);
  CHECK(!strcmp(parameter, ""));
}

static bool number_is(const char *text, bool negative, uint32_t digits, int8_t power) {
  decimal_t decimal;
  return decimal_read(text, &decimal) && decimal.negative == negative && decimal.digits == digits &&
         decimal.power == power;
}

static void numbers_in_every_form_are_the_same_number(void) {
  CHECK(number_is("80", false, 8, 1));
  CHECK(number_is("+80.000", false, 8, 1));
  CHECK(number_is("8e1", false, 8, 1));
  CHECK(number_is("0.8E+2", false, 8, 1));
  CHECK(number_is("800E-1", false, 8, 1));
  CHECK(number_is(" 80 ", false, 8, 1));
  CHECK(number_is("80.5", false, 805, -1));
  CHECK(number_is("-80", true, 8, 1));
  CHECK(number_is("0", false, 0, 0));
  CHECK(number_is("0e99999", false, 0, 0));
  CHECK(number_is("8e99999999999", false, 8, 100));
  CHECK(number_is("8e-99999999999", false, 8, -100));
}

static void a_number_too_long_is_none_that_the_head_knows(void) {
  decimal_t decimal;
  CHECK(decimal_read("80.00000000000000000001", &decimal));
  CHECK(decimal.digits != 8 || decimal.power != 1);
  CHECK(decimal_read("4294967376", &decimal)); /* 80 beyond 32 bits */
  CHECK(decimal.digits != 8);
}

static void what_is_no_number_is_refused(void) {
  static const char *const texts[] = {"", "fast", "8O", "80 Hz", "--80", ".", "+", "8e", "8e+", "8 0"};
  decimal_t decimal;
  for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) CHECK(!decimal_read(texts[i], &decimal));
}

static bool reply_is(error_queue_t *queue, const char *expected) {
  char reply[ERROR_REPLY_MOST];
  uint8_t length = error_reply(queue, reply);
  return length == strlen(expected) && !memcmp(reply, expected, length);
}

static void errors_come_out_oldest_first_and_then_none(void) {
  error_queue_t queue = {0};
  CHECK(reply_is(&queue, "0,\"No error\"\n"));
  error_push(&queue, ERROR_OUT_OF_RANGE);
  error_push(&queue, ERROR_UNDEFINED_HEADER);
  CHECK(reply_is(&queue, "-222,\"Data out of range\"\n"));
  CHECK(reply_is(&queue, "-113,\"Undefined header\"\n"));
  CHECK(reply_is(&queue, "0,\"No error\"\n"));
  error_push(&queue, ERROR_INIT_IGNORED);
  error_clear(&queue);
  CHECK(reply_is(&queue, "0,\"No error\"\n"));
}

static void a_full_queue_says_so_in_its_last_place(void) {
  error_queue_t queue = {0};
  for (int round = 0; round < 3; round++) { /* also where the ring wraps */
    error_push(&queue, ERROR_DATA_TYPE);
    CHECK(reply_is(&queue, "-104,\"Data type error\"\n"));
    for (int i = 0; i < ERRORS_HELD + 5; i++) error_push(&queue, ERROR_MISSING_PARAMETER);
    for (int i = 0; i < ERRORS_HELD - 1; i++) {
      CHECK(reply_is(&queue, "-109,\"Missing parameter\"\n"));
    }
    CHECK(reply_is(&queue, "-350,\"Queue overflow\"\n"));
    CHECK(reply_is(&queue, "0,\"No error\"\n"));
  }
}

static void every_error_has_its_text(void) {
  static const struct {
    error_t error;
    const char *reply;
  } table[] = {{ERROR_PARAMETER_NOT_ALLOWED, "-108,\"Parameter not allowed\"\n"},
               {ERROR_SYSTEM, "-310,\"System error;watchdog\"\n"},
               {ERROR_FRAMING, "-362,\"Framing error\"\n"},
               {ERROR_INPUT_OVERRUN, "-363,\"Input buffer overrun\"\n"},
               {ERROR_INIT_IGNORED, "-213,\"Init ignored\"\n"}};
  for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
    error_queue_t queue = {0};
    error_push(&queue, table[i].error);
    CHECK(reply_is(&queue, table[i].reply));
  }
}

void test_command(void) {
  headers_are_read_short_and_long_in_either_case();
  the_parameter_is_what_stands_behind_the_header();
  numbers_in_every_form_are_the_same_number();
  a_number_too_long_is_none_that_the_head_knows();
  what_is_no_number_is_refused();
  errors_come_out_oldest_first_and_then_none();
  a_full_queue_says_so_in_its_last_place();
  every_error_has_its_text();
}
