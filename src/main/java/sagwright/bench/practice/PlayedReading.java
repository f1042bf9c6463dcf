package sagwright.bench.practice;

import sagwright.bench.Reading;

/** A reading and when it is due, in the head's time without wraps or restarts. */
record PlayedReading(long dueMicros, Reading reading) {}
