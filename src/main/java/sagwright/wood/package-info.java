/**
 * What wood is and what water does to it: {@link sagwright.wood.SpeciesTable} with its published
 * values, {@link sagwright.wood.MoistureAdjustment} of a modulus, {@link
 * sagwright.wood.DensityAtMoisture}, {@link sagwright.wood.RoomAir} and the moisture that wood
 * settles to in it, {@link sagwright.wood.SafeStress}.
 *
 * <p>"Wood Handbook" is FPL-GTR-282 (2021) of the Forest Products Laboratory; equations and tables
 * are cited by its numbers. Knows no run, no beam, no file but its own table.
 */
package sagwright.wood;
