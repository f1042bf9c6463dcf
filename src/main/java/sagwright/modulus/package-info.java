/**
 * From a run on a tapered shaft to a modulus with its budget: {@link sagwright.modulus.BendTest}
 * in, {@link sagwright.modulus.Evaluation} out.
 *
 * <p>Formulas: docs/contract.md, sections 2 and 4. Knows no file, no port and no screen.
 */
package sagwright.modulus;
