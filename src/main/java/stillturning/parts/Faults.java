package stillturning.parts;

import java.util.List;
import stillturning.parts.Alteration.Added;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Alteration.Removed;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;

/** The recurring faults, so that every kind means the same by the same words. */
public final class Faults {

    /** Metal touching metal under vibration. Common practice, no published source. */
    private static final double SHORT_OHMS = 0.005;

    /** A contact gone bad: warm, flickering, still joined. Common practice, no published source. */
    private static final double BAD_CONTACT_OHMS = 0.5;

    private Faults() {}

    public static Alteration open(String element) {
        return new Removed(element);
    }

    public static Alteration shortBetween(String from, String to) {
        return new Added(new Conductor("short from " + from + " to " + to, from, to, SHORT_OHMS));
    }

    /**
     * A winding whose turns touch: it makes no field any more, and its feed meets bare metal, so
     * that a protector opens, or else its thinnest wire gives way.
     */
    public static List<Alteration> shortedCoil(Coil coil) {
        return List.of(open(coil.name()), shortBetween(coil.from(), coil.to()));
    }

    public static Alteration shortToStructure(String terminal) {
        return shortBetween(terminal, Element.STRUCTURE);
    }

    public static Alteration metalFor(Element element, double ohms) {
        return new Put(new Conductor(element.name(), element.from(), element.to(), ohms));
    }

    public static Alteration badContact(Element element) {
        return metalFor(element, BAD_CONTACT_OHMS);
    }
}
