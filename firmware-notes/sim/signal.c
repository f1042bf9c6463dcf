/* What the shaft does, as straight pieces between points, and the noise on it. */
#include "bench.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

bool signal_read(signal_t *signal, const char *path) {
  FILE *file = fopen(path, "r");
  char text[256];
  int row = 0;
  if (!file) {
    fprintf(stderr, "%s: cannot be read\n", path);
    return false;
  }
  while (fgets(text, sizeof text, file)) {
    point_t point;
    char rest;
    if (row++ == 0) {
      if (strncmp(text, "timeS,counts,gaugeUm", 20) == 0) continue;
      fprintf(stderr, "%s: row 1 is not timeS,counts,gaugeUm\n", path);
      break;
    }
    if (sscanf(text, "%lf,%lf,%lf %c", &point.time_s, &point.counts, &point.gauge_um, &rest) != 3 ||
        (signal->count && point.time_s <= signal->points[signal->count - 1].time_s)) {
      fprintf(stderr, "%s: row %d is not three numbers with a later time\n", path, row);
      signal->count = 0;
      break;
    }
    signal->points = realloc(signal->points, (size_t)(signal->count + 1) * sizeof point);
    signal->points[signal->count++] = point;
  }
  fclose(file);
  return signal->count > 0;
}

void signal_bend(signal_t *signal, double counts, double gauge_um) {
  const point_t points[] = {
      {0, 0, 0}, {1, 0, 0}, {5, counts, gauge_um}, {5.2, counts, gauge_um}, {9.2, 0, 0}, {10.7, 0, 0}};
  signal->count = sizeof points / sizeof *points;
  signal->points = malloc(sizeof points);
  memcpy(signal->points, points, sizeof points);
}

static double folded(const signal_t *signal, double time_s) {
  return signal->repeat_s > 0 && time_s > 0 ? fmod(time_s, signal->repeat_s) : time_s;
}

static point_t at(const signal_t *signal, double time_s) {
  const point_t *points = signal->points;
  int i = 1;
  if (signal->count == 1 || time_s <= points[0].time_s) return points[0];
  while (i < signal->count - 1 && points[i].time_s < time_s) i++;
  if (time_s >= points[i].time_s) return points[i];
  double share = (time_s - points[i - 1].time_s) / (points[i].time_s - points[i - 1].time_s);
  return (point_t){time_s, points[i - 1].counts + share * (points[i].counts - points[i - 1].counts),
                   points[i - 1].gauge_um + share * (points[i].gauge_um - points[i - 1].gauge_um)};
}

double signal_gauge_um(const signal_t *signal, double time_s) {
  return at(signal, folded(signal, time_s)).gauge_um;
}

/* Sixteen places of the window by the midpoint rule: exact on each straight piece. */
double signal_mean_counts(const signal_t *signal, double from_s, double to_s) {
  enum { PLACES = 16 };
  double sum = 0;
  for (int i = 0; i < PLACES; i++) {
    double time_s = from_s + (to_s - from_s) * (i + 0.5) / PLACES;
    sum += at(signal, folded(signal, time_s)).counts;
  }
  return sum / PLACES;
}

uint64_t noise_bits(uint64_t *state) { /* splitmix64: Steele, Lea, Flood 2014 */
  uint64_t z = (*state += UINT64_C(0x9E3779B97F4A7C15));
  z = (z ^ z >> 30) * UINT64_C(0xBF58476D1CE4E5B9);
  z = (z ^ z >> 27) * UINT64_C(0x94D049BB133111EB);
  return z ^ z >> 31;
}

double noise_gauss(uint64_t *state) { /* Box and Muller 1958 */
  double u = ((double)(noise_bits(state) >> 11) + 1) / 9007199254740993.0;
  double v = (double)(noise_bits(state) >> 11) / 9007199254740992.0;
  return sqrt(-2 * log(u)) * cos(6.283185307179586 * v);
}
