package sagwright.workshop;

/**
 * A run that was cut off by a power failure or a crash, in the hands of whoever closes it: until
 * {@link #journal} is closed nobody else may.
 *
 * @param start as it was entered
 * @param wire every byte that had come; the last line may be torn
 * @param journal to close the run by, {@link Runs#close}
 */
public record CutOffRun(RunStart start, byte[] wire, RunJournal journal) {}
