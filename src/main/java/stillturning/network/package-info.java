/**
 * Steady direct currents and voltages. In: nets and branches. Out: an operating point or a named
 * refusal. Knows no part, no failure, no time, no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The network knows no part.</b> There are few branch laws, and each is a function of the
 *       voltage across its own branch. Everything that changes in steps (contactors, trips,
 *       under-voltage, pilots) is an event of the time line. So the solver stays a pure function
 *       and can be compared with any published circuit. Turned down: state inside the laws. Held by
 *       {@code ArchitectureTest}.
 *   <li><b>Our own sparse factorisation.</b> It is symmetric, its order is fixed once by least
 *       degree, and it works on arrays only. No library came within a factor of ten of it at 60
 *       nets. Where a pivot or the residual is bad, a dense factorisation with pivoting ({@code
 *       DenseNewton}, by Commons Math) takes over. Turned down: a library's sparse solver. Held by
 *       {@code SolverPropertiesTest}, {@code DenseNewtonTest}, {@code SimulatorReferenceTest} (361
 *       of 402 networks, solved by a general circuit simulator; the other 41, of 360 random ones,
 *       it could not solve, so these are held to the laws and compared with nothing) and, for the
 *       speed, {@code NodalSolverBenchmark}.
 *   <li><b>Nets between two resistances go first, and only once.</b> What only metal touches never
 *       bends, so those nets are eliminated once for each set of resistances and an iteration goes
 *       over the others alone: 50 to 69 of Sandpiper's 80 to 110 nets. The answer is held to
 *       Kirchhoff's law at every net all the same. Only nets with two neighbours at most go: a bus
 *       would join all that hangs on it. Held by {@code SolverPropertiesTest}.
 *   <li><b>A network that drifts is looked for where its last points point to.</b> Charges move
 *       little from solution to solution. The curve through the last three points, by how far the
 *       charges have come, foretells the next so well that two steps are left of three. It is
 *       forgotten at each event, and where a way does not begin at the last point: a look ahead may
 *       leave a network at the other of two points that it has, and a story that tells both in turn
 *       comes to no end. Turned down: new slopes at once, which cost as much as they spare. Held by
 *       {@code DriftingLawsTest} and {@code ConditionsTest}.
 *   <li><b>From nothing, straight lines come first.</b> A diode that turns off walks down its
 *       exponential by 27 mV a step, thirteen steps in a row. A line drawn anew where its current,
 *       not its voltage, has led to is there after three to five. Where lines jump to and fro
 *       between limits, only the first counts. Held by {@code SolverPropertiesTest}, which compares
 *       points from any start.
 *   <li><b>A refusal is rarer than one state in 10,000.</b> Where every Newton way fails, {@code
 *       PseudoTransient} lets the network settle with a capacitor at each net, first from its
 *       nearly unloaded state, so that of several points the one with the loads at their power is
 *       met first, then from nothing. Of 10,000 networks with torn returns, hanging converters and
 *       loads with floors, 539 were refused without it, none with it. Turned down: random starts,
 *       whose answer would hang on the draw. Held by {@code RefusalsTest} and {@code
 *       FloatingConverterTest}.
 * </ul>
 */
@NullMarked
package stillturning.network;

import org.jspecify.annotations.NullMarked;
