package sagwright.job;

import sagwright.uncertainty.Warning;

/** A warning of an answer that was stored, in the words of then. */
record KeptWarning(String inWords) implements Warning {}
