package stillturning.report.joint;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.parts.FailureMode;
import stillturning.reliability.combined.Event;
import stillturning.reliability.runup.Latent;

/**
 * What takes one event out of a set that ends the engine: a set is harmless as soon as one of its
 * events cannot come, is seen before the flight, or is answered in time.
 */
final class SetRemedies {

    private static final String PART =
            "part it from what feeds the engine: a protector near each source, or a diode";
    private static final String SECOND_WAY = "a second way round it for what the engine needs";

    private final CombinedFindings found;
    private final LatentRemedies latent;
    private final Set<Integer> hidden;

    SetRemedies(CombinedFindings found) {
        this.found = found;
        this.latent = new LatentRemedies(found);
        this.hidden =
                found.card().thatMatter().stream().map(Latent::event).collect(Collectors.toSet());
    }

    /**
     * What helps against a group of sets; a class of events that can stand for each other, once.
     */
    String of(SetGroups.SetGroup group) {
        Set<String> remedies = new LinkedHashSet<>();
        for (List<Integer> events : group.classes()) {
            int first = events.get(0);
            String remedy = hidden.contains(first) ? latent.remedy(first) : seen(first);
            if (!remedy.isEmpty()) {
                remedies.add(remedy);
            }
        }
        return remedies.isEmpty() && !group.classes().isEmpty()
                ? shape(group.classes().get(0).get(0))
                : String.join("; or ", remedies);
    }

    /** Of what shows: what keeps it from coming, where that lies with a person or the layout. */
    private String seen(int number) {
        Event event = found.joint().events().get(number);
        return switch (event.kind()) {
            case IDLE_PILOT -> "know the procedure by heart, or let it be done by itself";
            case LEFT_SWITCH -> "look at the switch before take-off";
            case NEEDLESS_DRILL -> "carry the drill out only when its sign shows";
            case DEAD_LAMP -> latent.way(number);
            case CAUSE -> event.cause().map(cause -> CauseRemedies.of(cause.kind())).orElse("");
            case FAILURE -> "";
        };
    }

    private String shape(int number) {
        Event event = found.joint().events().get(number);
        boolean shorts =
                event.failure().hits().stream()
                        .map(hit -> hit.mode())
                        .anyMatch(FailureMode::shortsToStructure);
        return shorts ? PART : SECOND_WAY;
    }
}
