package sagwright.job;

import sagwright.grade.Order;
import sagwright.workshop.WorkshopOrder;

/** An order that a blank is tried for: as it is stored, and as it reads. */
public record TriedOrder(WorkshopOrder stored, Order order) {}
