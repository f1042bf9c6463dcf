/**
 * From readings to a stiffness: {@link sagwright.run.Readings} in, {@link
 * sagwright.run.StiffnessFit} out.
 *
 * <p>Knows loads and deflections only: no beam, no wire, no file.
 */
package sagwright.run;
