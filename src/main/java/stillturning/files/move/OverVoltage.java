package stillturning.files.move;

import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;

/** Takes an alternator's field away when its voltage runs away. */
final class OverVoltage implements Finder {

    private static final String GUARD = "overvoltage-guard";

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.links().stream()
                .filter(link -> drawn.isKind(Runs.to(link), "alternator"))
                .filter(link -> Runs.through(link).stream().noneMatch(p -> drawn.isKind(p, GUARD)))
                .map(link -> of(drawn, site, link));
    }

    private static Move of(Drawn drawn, Site site, OutlineRun field) {
        String alternator = Runs.to(field);
        String from = Runs.from(field);
        return new Move(
                MoveKind.OVER_VOLTAGE,
                "Put an over-voltage guard into the field line of the " + drawn.called(alternator),
                List.of(alternator, from),
                pen -> {
                    String zone = drawn.zone(from);
                    String guard = pen.add(GUARD, field.key() + "-guard", zone);
                    pen.run(
                            field.path(),
                            field.line().with(field.line().placeInLine(), "via " + guard).text());
                    pen.link(
                            guard + "-minus",
                            "from "
                                    + guard
                                    + ".minus to "
                                    + SecondPath.ground(site, zone)
                                    + ", wire AWG 22");
                });
    }
}
