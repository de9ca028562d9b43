/**
 * What a wire may carry and drop where it lies: the rule by which sizes are judged and by which
 * they are chosen. In: a candidate, how it is laid, a current. Out: lines of metal, the current
 * that a size may carry there, the volts that it drops warm, and the published limits. Knows no
 * solver: what current really flows is for others to say.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Ampacity is a law through the points that could be read.</b> The curves of AC 43.13-1B
 *       themselves could not be opened. One law with one exponent for the area, straight pieces for
 *       altitude and one formula for bundles go through the points that were read. The 51 currents
 *       of table 11-9 it meets within 14 %. Six points lie above the table, four of them by up to 5
 *       %, and by 9 and 11 % the two that it rounds to 3 and 4 A. The factor for 60 000 ft was
 *       inferred from that table, which is therefore a check of sizes, insulations and bundles, and
 *       none of the altitude. Turned down: interpolating a curve from memory. Held by {@code
 *       AmpacityTest}.
 *   <li><b>One rule chooses and judges.</b> {@code files} asks these classes when it chooses a
 *       gauge that is not written, {@code sizing} when it judges what is there. Turned down: a
 *       quicker rule for choosing, on cold copper, which the judge then found wrong. Held by {@code
 *       AutomaticGaugesTest}.
 * </ul>
 */
@NullMarked
package stillturning.model.wiring;

import org.jspecify.annotations.NullMarked;
