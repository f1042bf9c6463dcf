package sagwright.workshop;

/**
 * One blank at a glance: its newest caliper entry and the newest of its runs that count.
 *
 * @param species null where not known
 * @param massG null where not weighed
 * @param shaftStiffnessNPerMm null for a blank that has no run that counts
 * @param modulusMPa null for a blank that has no run that counts
 * @param testedAt when that run was made; null likewise
 */
public record RackRow(
    Blank blank,
    BlankState state,
    String species,
    Double massG,
    Double shaftStiffnessNPerMm,
    Double modulusMPa,
    String testedAt) {}
