/**
 * The orders: {@link sagwright.screen.orders.OrdersScreen} lists them and takes new ones beside the
 * drawing of what is to be made. It draws an {@link sagwright.screen.orders.OrdersView} and calls
 * {@link sagwright.screen.orders.OrdersActions}.
 *
 * <p>Knows how an order is written down, not where it is kept.
 */
package sagwright.screen.orders;
