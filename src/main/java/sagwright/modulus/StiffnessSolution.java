package sagwright.modulus;

import sagwright.uncertainty.Budget;

/** The modulus that one stiffness on one set-up stands for, and what its trust is made of. */
interface StiffnessSolution {
  double modulusMPa();

  /** The shaft's own stiffness, frame and gauge spring taken off. */
  double shaftStiffnessNPerMm();

  /**
   * The first-order budget in MPa.
   *
   * @param lineUncertaintyNPerMm standard uncertainty of the stiffness from the readings alone
   */
  Budget budget(double lineUncertaintyNPerMm);
}
