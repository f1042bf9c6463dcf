/**
 * An invented workshop with which every screen looks lived in: some 150 blanks at all stages, two
 * dozen orders, months of check-rod readings. {@link sagwright.example.ExampleWorkshop} writes it;
 * {@link sagwright.example.ExampleRack} knows what its wood truly is, which the program must find
 * from runs that the practice bench gave, errors of calipers, scales and positions included.
 *
 * <p>Everything is entered as a person would enter it, through the doors of {@code job} and {@code
 * workshop}; all of it comes from one seed. Names, people and figures are invented.
 */
package sagwright.example;
