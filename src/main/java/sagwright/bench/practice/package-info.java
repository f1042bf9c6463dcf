/**
 * A bench without hardware: {@link sagwright.bench.practice.PracticeHead} is an emulated head with
 * a hand that loads, inside the program; {@link sagwright.bench.practice.SheetPlayer} plays a run
 * as a head at the far end of a line. Both speak the bytes of docs/contract.md, section 6.
 *
 * <p>Knows the wire from the head's side only.
 */
package sagwright.bench.practice;
