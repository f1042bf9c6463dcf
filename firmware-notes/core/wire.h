/* The bench head's wire, sagwright-wire/1 (docs/contract.md, section 6). No register in here. */
#ifndef SAGWRIGHT_WIRE_H
#define SAGWRIGHT_WIRE_H

#include <stdbool.h>
#include <stdint.h>

enum {
  FLAG_END_STOP = 0x01,        /* load converter at its end stop */
  FLAG_GAUGE_SILENT = 0x02,    /* gauge missing or silent */
  FLAG_CONVERTER_SILENT = 0x04, /* load converter missing or silent */
  FLAG_DROPPED = 0x08          /* readings were dropped since the last line */
};

enum { LOAD_LEAST = -8388608, LOAD_MOST = 8388607 };

/* "$SG,65535,4294967295,-8388608,-999999,0F*FFFF\n" has 46 characters; a reply is shorter. */
enum { LINE_MOST = 48 };

typedef struct {
  uint16_t seq;
  uint32_t moment_us;
  int32_t load; /* counts; not sent with FLAG_CONVERTER_SILENT */
  int32_t gauge; /* steps of 0.001 mm; sent where has_gauge */
  bool has_gauge;
  uint8_t flags;
} reading_t;

/* CRC-16/CCITT-FALSE: polynomial 1021, start FFFF; of "123456789" it is 29B1. */
uint16_t wire_crc(const char *text, uint8_t length);

/* Writes the reading's line with its LF into line (LINE_MOST characters) and returns its length. */
uint8_t wire_line(const reading_t *reading, char *line);

/* The converter's 24-bit two's complement as a signed number. */
int32_t wire_sign24(uint32_t bits);

/* Decimal digits of value, at most 11 characters, no terminator; returns how many. */
uint8_t wire_decimal(int32_t value, char *text);

#endif
