package sagwright.example;

import sagwright.grade.Order;

/**
 * An order of the example workshop. Days are counted back from the day of the making.
 *
 * @param tag the blank that is promised to it, null for none
 */
record ExampleOrder(Order order, int takenDaysAgo, String tag) {
  String number() {
    return order.number();
  }
}
