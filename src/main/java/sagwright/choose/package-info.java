/**
 * Which blank for which order: {@link sagwright.choose.Candidate}s held against one order by {@link
 * sagwright.choose.OrderTrial}, put in order by {@link sagwright.choose.Ranking}; all orders at
 * once by {@link sagwright.choose.Allocator} on a {@link sagwright.choose.ChanceTable}.
 *
 * <p>docs/contract.md, section 7. Pure functions; knows no record, no file and no screen. Sole user
 * of JGraphT.
 */
package sagwright.choose;
