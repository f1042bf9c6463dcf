/**
 * Between what people type and read and what the program reckons with: {@link
 * sagwright.quantity.TypedQuantity} reads "18½ oz" or "147,3 cm", {@link sagwright.quantity.Unit}
 * holds every conversion, {@link sagwright.quantity.Figures} shows as many digits as an uncertainty
 * allows.
 *
 * <p>For the rooms that face a person. Knows nothing else of ours; behaves alike under every
 * locale.
 */
package sagwright.quantity;
