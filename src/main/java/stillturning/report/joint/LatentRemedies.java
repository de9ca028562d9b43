package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.reliability.likelihood.Inspection;
import stillturning.reliability.runup.Latent;

/** What reveals each latent failure of a candidate. */
public final class LatentRemedies {

    /** Nothing charges then, so a lamp that tells of that has to be lit. Common practice. */
    private static final String LAMP =
            "before the engine runs, switch on and look: the lamp lights; one that stays dark there"
                    + " with nothing wrong needs a press-to-test";

    private final CombinedFindings found;
    private final EventNames names;

    /** What the candidate's card and inspections reveal. */
    public LatentRemedies(CombinedFindings found) {
        this.found = found;
        this.names = new EventNames(found.joint().events());
    }

    /** Number of the first check of the card that reveals it, counted from 1. */
    public Optional<Integer> check(int event) {
        return found.card().check(event);
    }

    /** How to look for it otherwise. */
    public String way(int event) {
        if (names.event(event).deadLamp().isPresent()) {
            return LAMP;
        }
        Part part = found.candidate().part(names.part(event)).orElseThrow();
        FailureMode mode = names.event(event).failure().hits().get(0).mode();
        return mode.traits().inspection().orElse(part.kind().inspection());
    }

    /** How often to look for it; empty where nobody says. */
    public Optional<Inspection> inspection(int event) {
        return found.likely().inspections().stream().filter(i -> i.event() == event).findFirst();
    }

    /** Its check, or how to look for it and how often, or that nothing does. */
    String remedy(int event) {
        return check(event)
                .map(number -> "check " + number + " of the run-up card")
                .orElseGet(
                        () ->
                                inspection(event)
                                        .map(i -> way(event) + ", " + i.words())
                                        .orElse("nothing; look for it: " + way(event)));
    }

    /** Its check, or the letter of its inspection among {@link #inspected}, or nothing. */
    String revealedBy(int event) {
        return check(event)
                .map(number -> "check " + number)
                .orElseGet(
                        () ->
                                inspection(event)
                                        .map(i -> "inspection " + letter(event))
                                        .orElse("nothing"));
    }

    private String letter(int event) {
        char letter = 'a';
        for (List<Integer> events : inspected().values()) {
            if (events.contains(event)) {
                return String.valueOf(letter);
            }
            letter++;
        }
        return "";
    }

    /** Latent failures that matter, those of one fate together. */
    Map<String, List<Latent>> thatMatter() {
        return found.card().thatMatter().stream()
                .collect(
                        Collectors.groupingBy(
                                latent -> latent.with() + revealedBy(latent.event()),
                                LinkedHashMap::new,
                                Collectors.toCollection(ArrayList::new)));
    }

    /** Those that no check reveals, by how to look for them and how often the first asks for. */
    Map<String, List<Integer>> inspected() {
        Map<String, List<Inspection>> ways = new LinkedHashMap<>();
        found.likely()
                .inspections()
                .forEach(i -> ways.computeIfAbsent(way(i.event()), w -> new ArrayList<>()).add(i));
        Map<String, List<Integer>> all = new LinkedHashMap<>();
        ways.forEach(
                (way, some) ->
                        all.put(
                                way + ", " + soonest(some).words(),
                                some.stream().map(Inspection::event).toList()));
        return all;
    }

    private static Inspection soonest(List<Inspection> some) {
        return some.stream()
                .min(Comparator.comparingDouble(i -> i.everySeconds().orElse(Double.MAX_VALUE)))
                .orElseThrow();
    }
}
