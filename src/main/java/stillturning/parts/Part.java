package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.parts.element.Element;

/**
 * A thing with a weight that can fail. Whatever a room wants to know of a part it asks here, so
 * that no room has to know which kinds there are.
 */
public interface Part {

    /** What a part is to the wiring, as far as the study's own language speaks of it. */
    enum Role {
        /** Needs electricity; stands in the study, the same in all candidates. */
        LOAD,
        /** A length of cable. */
        WIRE,
        /** A bar at which lines meet. */
        BUS,
        /** Where returns meet. */
        GROUND,
        /** Plug and socket. */
        CONNECTOR,
        /** Anything else. */
        DEVICE
    }

    Tag tag();

    /** What it has in common with others of its kind. */
    PartKind kind();

    /** Named points where other parts may be joined, in the order a person would list them. */
    List<String> terminals();

    /** What it does electrically while nothing is wrong with it. */
    List<Element> elements();

    /** Every way in which it can stop doing its job. */
    List<FailureMode> failureModes();

    /** Terminal at which a run that ends here is joined. */
    String entry();

    /** Terminal at which a run that starts here is joined. */
    String exit();

    /** Terminal at which the n-th run that ends here is joined, from 0. */
    default String entry(int arrival) {
        return entry();
    }

    /** What it is to the wiring. */
    default Role role() {
        return Role.DEVICE;
    }

    /** Whether more than one thing can be joined at a terminal, as at a stud. */
    default boolean takesMany(String terminal) {
        return false;
    }

    /** Whether the part does its job with nothing joined at a terminal, as with a spare pin. */
    default boolean mayDangle(String terminal) {
        return false;
    }

    /**
     * The terminal by which a run leaves that came in at this one; absent where no run leads
     * through.
     */
    default Optional<String> across(String terminal) {
        if (entry().equals(exit())) {
            return Optional.empty();
        }
        return terminal.equals(entry())
                ? Optional.of(exit())
                : Optional.of(entry()).filter(e -> terminal.equals(exit()));
    }

    /**
     * How a run through it says which of several ways it takes: "write the pin, such as j1 pin 1";
     * empty where there is one.
     */
    default Optional<String> wayHint() {
        return Optional.empty();
    }

    /** Terminals that must be fed for it to work, as plus of a load or of a coil. */
    default List<String> inputs() {
        return List.of();
    }

    /** Terminals at which a source gives, against the aircraft's minus. */
    default List<String> sourceTerminals() {
        return List.of();
    }

    /** What the pilot can move on it. */
    default List<Lever> levers() {
        return List.of();
    }

    /** What limits the current of a line that leaves by a terminal. */
    default Optional<Protection> protection(String terminal) {
        return Optional.empty();
    }

    /** Most that it can drive out of a terminal for long (A), where it limits that itself. */
    default OptionalDouble mostAmps(String terminal) {
        return OptionalDouble.empty();
    }

    /** Whether one blow to it takes lines that have nothing else in common. */
    default boolean carriesSeveral() {
        return false;
    }

    /** Whether it may end the lead of a battery that goes without protector by custom. */
    default boolean endsBatteryLead() {
        return false;
    }

    /** Whether a program runs inside, which may fail everywhere at once. */
    default boolean runsProgram() {
        return logics() > 0;
    }

    /** How many logics it has that run what it switches. */
    default int logics() {
        return 0;
    }

    /** What a bill of materials says beside the name of its kind: a rating, a size. */
    default String detail() {
        return "";
    }

    default String id() {
        return tag().id();
    }

    /** How it is drawn in a one-line diagram: a plain box unless its kind says otherwise. */
    default List<Symbol> symbols() {
        return List.of(Symbol.around(this, Symbol.Figure.BOX, detail()));
    }
}
