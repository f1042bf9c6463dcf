package sagwright.workshop;

/**
 * An order as it stands now.
 *
 * @param number as it was first written
 * @param versionId of its newest version
 * @param document that version, a {@code sagwright-order/1}
 */
public record WorkshopOrder(long id, String number, long versionId, String document) {}
