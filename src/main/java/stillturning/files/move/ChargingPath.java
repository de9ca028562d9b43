package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.RunLine;

/** Joins two buses or batteries by another means: diode, switch or charge relay. */
final class ChargingPath implements Finder {

    private static final List<String> MEANS = List.of("diode", "switch", "charge-relay");

    @Override
    public Stream<Move> in(Drawn drawn) {
        Site site = new Site(drawn);
        return drawn.links().stream()
                .filter(link -> site.sources().contains(Runs.from(link)))
                .filter(link -> site.sources().contains(Runs.to(link)))
                .flatMap(link -> of(drawn, site, link));
    }

    private static Stream<Move> of(Drawn drawn, Site site, OutlineRun link) {
        List<String> inLine =
                Runs.through(link).stream()
                        .filter(p -> MEANS.stream().anyMatch(m -> drawn.isKind(p, m)))
                        .toList();
        if (inLine.size() != 1) {
            return Stream.empty();
        }
        String old = inLine.get(0);
        return MEANS.stream()
                .filter(means -> !drawn.isKind(old, means))
                .map(means -> by(drawn, site, link, old, means));
    }

    private static Move by(Drawn drawn, Site site, OutlineRun link, String old, String means) {
        List<String> touches = new ArrayList<>(List.of(old, Runs.from(link), Runs.to(link)));
        touches.addAll(link.makes());
        return new Move(
                MoveKind.CHARGING_PATH,
                "Join the "
                        + drawn.called(Runs.from(link))
                        + " and the "
                        + drawn.called(Runs.to(link))
                        + " by a "
                        + means.replace('-', ' ')
                        + " instead of the "
                        + drawn.called(old),
                touches,
                pen -> {
                    String zone =
                            means.equals("switch")
                                    ? site.handZone(drawn.zone(old))
                                    : drawn.zone(Runs.from(link));
                    String part = pen.add(means, link.key() + "-" + means, zone);
                    RunLine line = link.line().renamed(name -> name.equals(old) ? part : name);
                    pen.run(link.path(), line.text());
                    if (means.equals("charge-relay")) {
                        pen.link(
                                part + "-minus",
                                "from "
                                        + part
                                        + ".minus to "
                                        + SecondPath.ground(site, zone)
                                        + ", wire AWG 22");
                    }
                    pen.sweep();
                });
    }
}
