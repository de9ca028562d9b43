package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.RunLine;
import stillturning.parts.element.Generator;

/**
 * Takes an alternator off when its voltage runs away: its field where a winding makes it, and its
 * output where magnets do.
 */
final class OverVoltage implements Finder {

    private static final String GUARD = "overvoltage-guard";
    private static final String CONTACTOR = "contactor";
    private static final String WIRE = "wire";

    /** Largest current that a relay of its class is made for (A), as the catalogue has it. */
    private static final double RELAY_AMPS = 30;

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.links().stream()
                .filter(link -> drawn.isKind(Runs.to(link), "alternator"))
                .filter(link -> Runs.endsAtUsual(link, "field"))
                .flatMap(link -> of(drawn, site, link).stream());
    }

    private static Optional<Move> of(Drawn drawn, Site site, OutlineRun supply) {
        String alternator = Runs.to(supply);
        Optional<Generator> magnets = magnets(drawn, alternator);
        if (magnets.isEmpty()) {
            return isGuarded(drawn, supply)
                    ? Optional.empty()
                    : Optional.of(
                            guard(
                                    drawn,
                                    site,
                                    supply,
                                    "the field line of the " + drawn.called(alternator)));
        }
        return output(drawn, alternator)
                .flatMap(output -> opened(drawn, site, supply, output, magnets.get()));
    }

    private static Optional<Generator> magnets(Drawn drawn, String alternator) {
        return drawn.candidate().part(alternator).stream()
                .flatMap(part -> part.elements().stream())
                .filter(Generator.class::isInstance)
                .map(Generator.class::cast)
                .filter(Generator::hasMagnets)
                .findFirst();
    }

    private static boolean isGuarded(Drawn drawn, OutlineRun run) {
        return Runs.through(run).stream().anyMatch(p -> drawn.isKind(p, GUARD));
    }

    private static Optional<OutlineRun> output(Drawn drawn, String alternator) {
        return drawn.links().stream()
                .filter(link -> Runs.from(link).equals(alternator))
                .filter(link -> Runs.startsAtUsual(link, "output"))
                .findFirst();
    }

    /** A guard in a line. */
    private static Move guard(Drawn drawn, Site site, OutlineRun line, String called) {
        String from = Runs.from(line);
        return new Move(
                MoveKind.OVER_VOLTAGE,
                "Put an over-voltage guard into " + called,
                List.of(Runs.to(line), from),
                pen -> pen.run(line.path(), guarded(drawn, site, line, pen).text()));
    }

    /** A line with a new guard in it. */
    private static RunLine guarded(Drawn drawn, Site site, OutlineRun run, Pen pen)
            throws ChangeRefused {
        String zone = drawn.zone(Runs.from(run));
        String guard = pen.add(GUARD, run.key() + "-guard", zone);
        pen.link(guard + "-minus", toGround(site, guard + ".minus", zone));
        return run.line().with(run.line().placeInLine(), "via " + guard);
    }

    private static String toGround(Site site, String terminal, String zone) throws ChangeRefused {
        return "from " + terminal + " to " + SecondPath.ground(site, zone) + ", wire AWG 22";
    }

    // --- magnets: only an opened output stops a regulator that passes all through

    private static Optional<Move> opened(
            Drawn drawn, Site site, OutlineRun supply, OutlineRun output, Generator magnets) {
        Optional<String> relay =
                Stream.concat(Runs.through(output).stream(), Stream.of(Runs.to(output)))
                        .filter(p -> drawn.isKind(p, CONTACTOR))
                        .findFirst();
        if (relay.isEmpty()) {
            return Optional.of(byRelay(drawn, site, supply, output, magnets));
        }
        String called = "the coil line of the " + drawn.calledWithKind(relay.get());
        return coil(drawn, relay.get())
                .filter(coil -> !isGuarded(drawn, coil))
                .map(coil -> guard(drawn, site, coil, called));
    }

    /** What feeds a coil from elsewhere than its own contact. */
    private static Optional<OutlineRun> coil(Drawn drawn, String relay) {
        return drawn.links().stream()
                .filter(link -> Runs.to(link).equals(relay))
                .filter(link -> Runs.endsAtUsual(link, "coil-plus"))
                .filter(link -> !Runs.from(link).equals(relay))
                .findFirst();
    }

    /**
     * The guard and the switch of the regulator's supply hold the relay instead, and the regulator
     * gets a supply that nothing switches: so a relay that is welded shows when it is switched off.
     */
    private static Move byRelay(
            Drawn drawn, Site site, OutlineRun supply, OutlineRun output, Generator magnets) {
        String alternator = Runs.to(supply);
        List<String> touches =
                new ArrayList<>(List.of(alternator, Runs.from(supply), Runs.to(output)));
        touches.addAll(output.makes());
        touches.addAll(supply.makes());
        return new Move(
                MoveKind.OVER_VOLTAGE,
                "Put a relay into the output of the "
                        + drawn.called(alternator)
                        + ", held in through "
                        + (isGuarded(drawn, supply) ? "its" : "an")
                        + " over-voltage guard",
                touches,
                pen -> {
                    String zone = drawn.zone(Runs.to(output));
                    String relay = pen.add(relay(magnets, zone), alternator + "-relay");
                    RunLine held =
                            isGuarded(drawn, supply)
                                    ? supply.line()
                                    : guarded(drawn, site, supply, pen);
                    pen.run(output.path(), atItsEnd(output, relay));
                    pen.run(supply.path(), protectedOnly(supply.line()));
                    pen.link(relay + "-coil", coilLine(held, relay));
                    pen.link(relay + "-coil-minus", toGround(site, relay + ".coil-minus", zone));
                });
    }

    private static NewPart relay(Generator magnets, String zone) {
        boolean small = magnets.output().largestAmps() <= RELAY_AMPS;
        return new NewPart(CONTACTOR, Optional.of(small ? "relay" : "continuous"), zone, Map.of());
    }

    /** An output that leads through one thing more, behind its wire: out of the engine's heat. */
    private static String atItsEnd(OutlineRun output, String relay) {
        int wire = Runs.words(output.line()).lastIndexOf(WIRE);
        return wire < 0
                ? output.line().text() + ", wire, via " + relay
                : output.line().with(wire + 1, "via " + relay).text();
    }

    /** A line with its protectors and nothing else in it. */
    private static String protectedOnly(RunLine line) {
        List<String> pieces = line.pieces();
        List<String> words = Runs.words(line);
        List<String> kept = new ArrayList<>(List.of(pieces.get(0)));
        for (int i = 1; i < pieces.size(); i++) {
            if (words.get(i).equals("breaker") || words.get(i).equals("fuse")) {
                kept.add(pieces.get(i));
            }
        }
        return String.join(",", kept);
    }

    /** A line that ends at a coil instead; its last wire is another then. */
    private static String coilLine(RunLine line, String relay) {
        List<String> pieces = new ArrayList<>(line.pieces());
        List<String> words = Runs.words(line);
        for (int i = words.lastIndexOf("via") + 1; i < pieces.size(); i++) {
            pieces.set(i, words.get(i).equals(WIRE) ? " " + WIRE : pieces.get(i));
        }
        int to = pieces.get(0).indexOf(" to ");
        pieces.set(0, pieces.get(0).substring(0, to) + " to " + relay + ".coil-plus");
        return String.join(",", pieces);
    }
}
