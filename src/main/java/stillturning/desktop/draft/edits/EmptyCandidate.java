package stillturning.desktop.draft.edits;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileEdits;
import stillturning.files.edit.PartDefaults;
import stillturning.files.edit.StudyOutline;
import stillturning.files.edit.UsualProtection;
import stillturning.yaml.YamlValue;

/** The text of a candidate to begin with: one battery, one bus, every load on it. */
final class EmptyCandidate {

    private static final double MOST_FUSE_AMPS = 100;

    private final StudyOutline loads;
    private final boolean structure;
    private final String home;
    private final Set<String> grounds = new LinkedHashSet<>();

    /**
     * @param structure whether the aircraft's metal leads the returns; if not, wires do
     */
    EmptyCandidate(StudyOutline loads, boolean structure) throws ChangeRefused {
        if (loads.zones().isEmpty()) {
            throw new ChangeRefused("the study has no zones yet; add one, such as panel");
        }
        this.loads = loads;
        this.structure = structure;
        this.home = loads.zones().get(0);
        grounds.add(home);
        loads.names().forEach(load -> loads.zone(load).ifPresent(grounds::add));
    }

    /** The start of a file, to be filled by {@link #fill}. */
    static final String START =
            "candidate: \"\"\nparts: {}\nreturns: {}\nlinks: {}\nfeeds: {}\npositions: {flight: {}}\n";

    void fill(String title, FileEdits edits) throws ChangeRefused {
        edits.set("candidate", title);
        parts(edits);
        for (String zone : grounds) {
            edits.put("returns", zone, YamlValue.text(zone + "-ground"));
        }
        link(edits, "battery-minus", "from battery.minus to " + home + "-ground, wire AWG 4");
        link(edits, "battery-lead", "from battery to main-bus" + fuse() + ", wire AWG 4");
        if (!structure) {
            straps(edits);
        }
        for (String load : loads.names()) {
            feeds(load, edits);
        }
    }

    /** Where no metal does it, wires lead from every ground to that of the battery. */
    private void straps(FileEdits edits) throws ChangeRefused {
        for (String zone : grounds) {
            if (!zone.equals(home)) {
                link(
                        edits,
                        zone + "-strap",
                        "from " + zone + "-ground to " + home + "-ground, wire AWG 4");
            }
        }
    }

    private void parts(FileEdits edits) throws ChangeRefused {
        boolean twice = loads.isTwiceTheVoltage();
        edits.put(CandidateOutline.PARTS, "battery", part("battery", Map.of(), home, twice));
        edits.put(CandidateOutline.PARTS, "main-bus", part("bus", Map.of(), home, twice));
        for (String zone : grounds) {
            Map<String, String> bolted = Map.of("on-structure", structure ? "yes" : "no");
            edits.put(
                    CandidateOutline.PARTS, zone + "-ground", part("ground", bolted, zone, twice));
        }
    }

    private static YamlValue part(
            String kind, Map<String, String> settings, String zone, boolean twice)
            throws ChangeRefused {
        return PartDefaults.fields(kind, Optional.empty(), zone, settings, twice);
    }

    private static void link(FileEdits edits, String name, String text) throws ChangeRefused {
        edits.put(CandidateOutline.LINKS, name, YamlValue.text(text));
    }

    /** A fuse for all that the bus feeds; none where no usual one is large enough. */
    private String fuse() {
        double amps =
                loads.names().stream()
                        .filter(load -> !loads.isStarter(load))
                        .mapToDouble(load -> loads.amps(load).orElse(0.0))
                        .sum();
        return UsualProtection.rating(Math.min(amps, MOST_FUSE_AMPS))
                .map(rating -> ", fuse " + rating + " class high-current")
                .orElse("");
    }

    private void feeds(String load, FileEdits edits) throws ChangeRefused {
        List<String> inputs = loads.inputs(load);
        for (String input : inputs) {
            String key = inputs.size() == 1 ? load : load + "." + input;
            String text =
                    loads.isStarter(load)
                            ? "from battery, wire AWG 2"
                            : "from main-bus"
                                    + loads.amps(load)
                                            .flatMap(UsualProtection::rating)
                                            .map(r -> ", breaker " + r)
                                            .orElse("");
            edits.put(CandidateOutline.FEEDS, key, YamlValue.text(text));
        }
    }
}
