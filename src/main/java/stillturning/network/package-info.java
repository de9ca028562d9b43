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
 *       networks, solved by a general circuit simulator) and, for the speed, {@code
 *       NodalSolverBenchmark}.
 * </ul>
 */
@NullMarked
package stillturning.network;

import org.jspecify.annotations.NullMarked;
