/**
 * A study and its candidates as graphs: parts, joints, levers, what the pilot sees and does. In:
 * parts and plain SI numbers. Out: immutable values, and each candidate's circuit. Knows no solver,
 * no failure, no time line, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What is asked only for sizes is not part of the study.</b> Altitude, bundles, arms and
 *       ratings are in {@code Installation}, beside {@code Study}, so that no story, no guess and
 *       no ranking depends on them. Held by the signatures: {@code Timeline} and {@code Assess}
 *       take a study alone. Inrush is of the study: a motor's start may stop the engine.
 *   <li><b>How often things fail is not part of the study either.</b> {@code Chances} is beside it,
 *       for the rooms that count failures together. No story, and no guess that {@code explain}
 *       tries, rests on it. A rate is a median and a factor, since nobody knows one better. A
 *       failure mode is named by its words, and its number or name may be left out, so that one
 *       line serves all pins of a connector. Turned down: a field in every part, which the wires of
 *       a sketch could not have; so {@code fails:} goes by name, as {@code arms:} and {@code
 *       wires:} do. Held by {@code ChancesTest}.
 *   <li><b>Voltages are told against the place where the returns meet.</b> In metal that is the
 *       structure. Wood and composite have none: told against a structure that nothing touches,
 *       each bus had 0 V, every warning of low voltage showed in normal flight, and sizes found no
 *       load fed. There it is the ground nearest to the first battery's minus ({@code
 *       Circuit.reference}). Between nets that nothing joins a meter shows 0. Held by {@code
 *       WoodenAircraftTest}.
 * </ul>
 */
@NullMarked
package stillturning.model;

import org.jspecify.annotations.NullMarked;
