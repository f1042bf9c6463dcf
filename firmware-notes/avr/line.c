/* The serial line: two rings, each written by one side and read by the other. */
#include <avr/interrupt.h>
#include <avr/io.h>

#include "board.h"
#include "parts.h"

enum { SEND_RING = 256, TAKE_RING = 64 };

static volatile char send_ring[SEND_RING];
static volatile uint8_t send_head, send_tail; /* they wrap by themselves at 256 */
static volatile char take_ring[TAKE_RING];
static volatile uint8_t take_head, take_tail;
static volatile bool overrun, misframed;

ISR(USART_UDRE_vect) {
  uint8_t tail = send_tail;
  if (tail == send_head) {
    UCSR0B &= (uint8_t)~_BV(UDRIE0);
    return;
  }
  UDR0 = (uint8_t)send_ring[tail];
  send_tail = (uint8_t)(tail + 1);
}

ISR(USART_RX_vect) {
  uint8_t status = UCSR0A;
  char c = (char)UDR0;
  uint8_t next = (uint8_t)((take_head + 1) % TAKE_RING);
  if (status & _BV(FE0)) misframed = true;
  if (status & _BV(DOR0) || next == take_tail) overrun = true;
  if (status & _BV(FE0) || next == take_tail) return;
  take_ring[take_head] = c;
  take_head = next;
  something_came = true;
}

void line_begin(void) {
  UCSR0A = _BV(U2X0); /* 115200 baud: +2.1 % with it, -3.5 % without */
  UBRR0 = (uint16_t)((F_CPU + 4 * BAUD) / (8 * BAUD) - 1);
  UCSR0C = _BV(UCSZ01) | _BV(UCSZ00);
  UCSR0B = _BV(RXCIE0) | _BV(RXEN0) | _BV(TXEN0);
}

uint16_t line_room(void) { return (uint16_t)(SEND_RING - 1 - (uint8_t)(send_head - send_tail)); }

void line_put(const char *text, uint8_t length) {
  uint8_t head = send_head;
  while (length--) {
    send_ring[head] = *text++;
    send_head = ++head; /* the character first, then the index: it may be sent at once */
  }
  UCSR0B |= _BV(UDRIE0);
}

bool line_peek(char *c) {
  if (take_head == take_tail) return false;
  *c = take_ring[take_tail];
  return true;
}

void line_skip(void) { take_tail = (uint8_t)((take_tail + 1) % TAKE_RING); }

error_t line_fault(void) {
  if (misframed) {
    misframed = false;
    return ERROR_FRAMING;
  }
  if (overrun) {
    overrun = false;
    return ERROR_INPUT_OVERRUN;
  }
  return ERROR_NONE;
}
