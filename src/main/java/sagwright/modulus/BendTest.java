package sagwright.modulus;

import sagwright.run.Readings;

/** Everything that a modulus is worked out from: the problem whose answer is an Evaluation. */
public record BendTest(
    Shaft shaft, BenchSetUp setUp, Instrument instrument, ShearRatio ratio, Readings readings) {}
