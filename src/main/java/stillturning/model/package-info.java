/**
 * A study and its candidates as graphs: parts, joints, levers, what the pilot sees and does. In:
 * parts and plain SI numbers. Out: immutable values, and each candidate's circuit. Knows no solver,
 * no failure, no time line, no file.
 */
@NullMarked
package stillturning.model;

import org.jspecify.annotations.NullMarked;
