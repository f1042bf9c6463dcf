#include "wire.h"

uint16_t wire_crc(const char *text, uint8_t length) {
  uint16_t crc = 0xFFFF;
  while (length--) {
    crc ^= (uint16_t)((uint16_t)(uint8_t)*text++ << 8);
    for (uint8_t bit = 0; bit < 8; bit++) {
      crc = (uint16_t)((unsigned)crc << 1 ^ (crc & 0x8000u ? 0x1021u : 0u));
    }
  }
  return crc;
}

int32_t wire_sign24(uint32_t bits) {
  bits &= 0xFFFFFFul;
  return (bits & 0x800000ul) ? (int32_t)bits - 0x1000000l : (int32_t)bits;
}

static uint8_t put_unsigned(uint32_t value, char *text) {
  char backwards[10];
  uint8_t digits = 0;
  do {
    backwards[digits++] = (char)('0' + value % 10);
    value /= 10;
  } while (value);
  for (uint8_t i = 0; i < digits; i++) text[i] = backwards[digits - 1 - i];
  return digits;
}

uint8_t wire_decimal(int32_t value, char *text) {
  if (value >= 0) return put_unsigned((uint32_t)value, text);
  *text = '-';
  return (uint8_t)(1 + put_unsigned(0u - (uint32_t)value, text + 1));
}

static uint8_t put_hex(uint16_t value, uint8_t digits, char *text) {
  for (uint8_t i = digits; i--; value >>= 4) text[i] = "0123456789ABCDEF"[value & 0xF];
  return digits;
}

uint8_t wire_line(const reading_t *reading, char *line) {
  uint8_t n = 0;
  line[n++] = '$';
  line[n++] = 'S';
  line[n++] = 'G';
  line[n++] = ',';
  n += put_unsigned(reading->seq, line + n);
  line[n++] = ',';
  n += put_unsigned(reading->moment_us, line + n);
  line[n++] = ',';
  if (!(reading->flags & FLAG_CONVERTER_SILENT)) n += wire_decimal(reading->load, line + n);
  line[n++] = ',';
  if (reading->has_gauge) n += wire_decimal(reading->gauge, line + n);
  line[n++] = ',';
  n += put_hex(reading->flags, 2, line + n);
  uint16_t crc = wire_crc(line + 1, (uint8_t)(n - 1));
  line[n++] = '*';
  n += put_hex(crc, 4, line + n);
  line[n++] = '\n';
  return n;
}
