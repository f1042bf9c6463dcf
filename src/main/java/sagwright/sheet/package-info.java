/**
 * The JSON documents of docs/contract.md, in and out: {@link sagwright.sheet.Sheet}, orders,
 * calibrations, answers. Every complaint names the key and what is wrong with it.
 *
 * <p>Sole user of Jackson. Knows no store and no screen.
 */
package sagwright.sheet;
