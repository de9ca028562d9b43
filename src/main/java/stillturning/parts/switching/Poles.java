package stillturning.parts.switching;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.parts.Alteration;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;

/**
 * Alike poles that one lever moves together. With several poles each terminal and each contact
 * carries its pole's number ({@code in-2}).
 *
 * @param ohms resistance of a closed contact (ohm)
 * @param ways the contacts of one pole
 */
record Poles(int count, double ohms, List<PoleContact> ways) {

    /**
     * A contact of one pole.
     *
     * @param closedAt positions of the lever at which it is closed
     */
    record PoleContact(String name, String from, String to, Set<String> closedAt) {}

    Poles {
        ways = List.copyOf(ways);
    }

    static Poles of(int count, double ohms, PoleContact... ways) {
        return new Poles(count, ohms, List.of(ways));
    }

    List<String> terminals() {
        List<String> ofOnePole =
                ways.stream().flatMap(w -> Stream.of(w.from, w.to)).distinct().toList();
        return IntStream.rangeClosed(1, count)
                .boxed()
                .flatMap(pole -> ofOnePole.stream().map(name -> onPole(name, pole)))
                .toList();
    }

    List<Contact> contacts() {
        return IntStream.rangeClosed(1, count)
                .boxed()
                .flatMap(pole -> ways.stream().map(way -> contact(way, pole)))
                .toList();
    }

    private Contact contact(PoleContact way, int pole) {
        return new Contact(
                onPole(way.name, pole),
                onPole(way.from, pole),
                onPole(way.to, pole),
                ohms,
                new Control.ByHand(way.closedAt));
    }

    private String onPole(String name, int pole) {
        return count == 1 ? name : name + "-" + pole;
    }

    /** What becomes of the contacts that are closed at a position where they are welded. */
    List<Alteration> weldedAt(String position) {
        return contacts().stream()
                .filter(contact -> contact.control().closes(position, false))
                .map(contact -> Faults.metalFor(contact, ohms))
                .toList();
    }

    /**
     * What every contact becomes where one blade is welded at a position: the others never close.
     */
    List<Alteration> stuckAt(String position) {
        return contacts().stream()
                .map(
                        contact ->
                                contact.control().closes(position, false)
                                        ? Faults.metalFor(contact, ohms)
                                        : Faults.open(contact.name()))
                .toList();
    }

    /** No way leads through any more. */
    FailureMode open(String key) {
        return FailureMode.of(
                        key,
                        key.replace('-', ' '),
                        contacts().stream().map(c -> Faults.open(c.name())).toList())
                .by(Damage.TORN, Damage.SCORCHED);
    }

    /** Its first terminal touches the metal around it. */
    FailureMode shortToGround() {
        return FailureMode.of("short-to-ground", Faults.shortToStructure(terminals().get(0)))
                .by(Damage.SOAKED);
    }

    /** Where a run leaves that came in at a terminal; from a terminal of several ways, none. */
    Optional<String> across(String terminal) {
        return contacts().stream()
                .filter(c -> c.to().equals(terminal) || ways.size() == 1)
                .filter(c -> c.to().equals(terminal) || c.from().equals(terminal))
                .map(c -> c.to().equals(terminal) ? c.from() : c.to())
                .findFirst();
    }
}
