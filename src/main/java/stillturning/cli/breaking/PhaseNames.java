package stillturning.cli.breaking;

import java.util.List;
import java.util.stream.Collectors;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** Which phase of the flight is meant, loosely. */
final class PhaseNames {

    private PhaseNames() {}

    /**
     * The moment at which the phase meant begins, the rest of the flight then being flown.
     *
     * @throws Refusal if none or more than one fits
     */
    static Moment find(Study study, String said) {
        List<Named<Moment>> names =
                study.aircraft().phases().stream()
                        .map(
                                phase ->
                                        new Moment(
                                                phase.name(),
                                                FlightSpan.FLOWN,
                                                Batteries.AS_STATED))
                        .map(moment -> new Named<>(moment, List.of(LooseName.of(moment.phase()))))
                        .toList();
        List<Moment> best = LooseNames.best(said, names);
        if (best.size() == 1) {
            return best.get(0);
        }
        throw new Refusal(
                "no phase is called \""
                        + said
                        + "\"; write one of "
                        + names.stream()
                                .map(named -> named.thing().phase())
                                .collect(Collectors.joining(", ")));
    }
}
