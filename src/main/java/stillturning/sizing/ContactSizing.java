package stillturning.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.model.Circuit.Placed;
import stillturning.model.Installation.Nature;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ContactSize;

/** Holds every contact against its rating. */
final class ContactSizing {

    private final Subject subject;

    ContactSizing(Subject subject) {
        this.subject = subject;
    }

    List<ContactSize> all() {
        List<ContactSize> sizes = new ArrayList<>();
        for (Placed placed : subject.circuit().placed()) {
            if (placed.element() instanceof Contact contact) {
                sizes.add(size(placed, contact));
            }
        }
        return sizes;
    }

    private ContactSize size(Placed placed, Contact contact) {
        boolean byHand = contact.control() instanceof Control.ByHand;
        Nature nature = nature(placed);
        Carried carried = subject.running(placed.part(), contact.name());
        double factor = byHand ? PublishedLimits.contactFactor(nature, subject.nominalVolts()) : 1;
        Optional<Double> rated = Optional.ofNullable(subject.fit().ratedAmps().get(placed.part()));
        return new ContactSize(
                name(placed),
                byHand,
                carried,
                nature,
                factor * carried.amps(),
                rated.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    /** The part alone where it has one contact. */
    private String name(Placed placed) {
        long contacts =
                subject.circuit().placed().stream()
                        .filter(p -> p.part().equals(placed.part()))
                        .filter(p -> p.element() instanceof Contact)
                        .count();
        return contacts == 1 ? placed.part() : placed.part() + " " + placed.element().name();
    }

    /** What it switches, if that is one thing. */
    private Nature nature(Placed contact) {
        Optional<MetalLine> line =
                subject.candidate()
                        .wires()
                        .map(w -> subject.lines().of(w.id()))
                        .filter(l -> l.links().contains(contact))
                        .findFirst();
        return line.stream()
                .flatMap(l -> l.links().stream())
                .filter(p -> p.element().role().isLoad())
                .map(this::natureOf)
                .findFirst()
                .orElse(Nature.INDUCTIVE);
    }

    private Nature natureOf(Placed placed) {
        return switch (placed.element().role()) {
            case LOAD -> subject.installation().nature(placed.part());
            case BATTERY, GENERATOR, CAPACITOR, COIL, CONVERTER, PATH, ELECTRONICS ->
                    Nature.INDUCTIVE;
        };
    }
}
