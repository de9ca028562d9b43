package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Element;

/** A thing with a weight that can fail. */
public sealed interface Part
        permits Alternator,
                Battery,
                Breaker,
                Bus,
                Connector,
                Contactor,
                DcConverter,
                Diode,
                Fuse,
                GroundPoint,
                Load,
                OvervoltageGuard,
                SolidStateController,
                Switch,
                Wire {

    Tag tag();

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

    /** Whether more than one thing can be joined at a terminal, as at a stud. */
    default boolean takesMany(String terminal) {
        return false;
    }

    /** Whether the part does its job with nothing joined at a terminal, as with a spare pin. */
    default boolean mayDangle(String terminal) {
        return false;
    }

    default String id() {
        return tag().id();
    }
}
