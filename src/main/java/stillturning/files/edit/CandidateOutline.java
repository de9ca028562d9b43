package stillturning.files.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** What a candidate's file says, as far as names go. */
public final class CandidateOutline {

    public static final String PARTS = "parts";
    public static final String LINKS = "links";
    public static final String FEEDS = "feeds";
    public static final String LEAVES_OUT = "leaves-out";

    /** A link or a feed. */
    public record OutlineRun(String section, String key, RunLine line) {
        /** Where it stands. */
        public String path() {
            return DocumentPlaces.under(section, key);
        }

        /** Names of the parts that it makes; a feed makes its load's return, or one of its own. */
        public Set<String> makes() {
            Set<String> names = new LinkedHashSet<>(line.makes(Naming.prefix(key)));
            if (section.equals(FEEDS)) {
                names.add(Naming.part(key) + "-return");
                names.add(Naming.prefix(key) + "-return");
            }
            return names;
        }
    }

    private final WrittenKeys all;
    private final List<OutlineRun> runs = new ArrayList<>();

    public CandidateOutline(YamlDocument document) {
        this.all = WrittenKeys.in(document);
        for (String section : List.of(LINKS, FEEDS)) {
            all.under(section)
                    .texts()
                    .forEach(
                            (key, text) ->
                                    runs.add(new OutlineRun(section, key, new RunLine(text))));
        }
    }

    /** All that stands in the file. */
    public WrittenKeys all() {
        return all;
    }

    /** The parts with what is written of them. */
    public Map<String, YamlValue> parts() {
        return all.under(PARTS).fields();
    }

    /** The kind of a part, in the word of the files. */
    public Optional<String> kind(String part) {
        return all.under(PARTS).under(part).text("is");
    }

    /** Whether the aircraft's metal leads its returns; absent where no ground is written. */
    public Optional<Boolean> usesStructure() {
        List<String> grounds =
                parts().keySet().stream()
                        .filter(part -> kind(part).filter("ground"::equals).isPresent())
                        .toList();
        return grounds.isEmpty()
                ? Optional.empty()
                : Optional.of(grounds.stream().anyMatch(this::isOnStructure));
    }

    private boolean isOnStructure(String ground) {
        return all.under(PARTS)
                .under(ground)
                .text("on-structure")
                .filter("yes"::equals)
                .isPresent();
    }

    /** The links and feeds, in order. */
    public List<OutlineRun> runs() {
        return runs;
    }

    /** The feeds of a load. */
    List<OutlineRun> feedsOf(String load) {
        return runs.stream()
                .filter(run -> run.section().equals(FEEDS) && Naming.part(run.key()).equals(load))
                .toList();
    }

    /** The run that makes a part. */
    public Optional<OutlineRun> maker(String part) {
        return runs.stream().filter(r -> r.makes().contains(part)).findFirst();
    }

    /** The run of a path. */
    public Optional<OutlineRun> run(String path) {
        return runs.stream().filter(r -> r.path().equals(path)).findFirst();
    }

    /** Loads of the study that it does without. */
    public Set<String> leavesOut() {
        return new LinkedHashSet<>(all.under(LEAVES_OUT).itemTexts());
    }

    /** Every name that is in use, of runs and of parts written or made. */
    public Set<String> taken() {
        Set<String> taken = new LinkedHashSet<>(parts().keySet());
        for (OutlineRun run : runs) {
            taken.add(Naming.prefix(run.key));
            taken.addAll(run.makes());
        }
        return taken;
    }

    /** A name that is not taken: the wanted one, or with a number behind it. */
    public static String free(String wanted, Set<String> taken) {
        String name = wanted;
        for (int count = 2; taken.contains(name); count++) {
            name = wanted + "-" + count;
        }
        return name;
    }

    /** Keys and texts of a section below another, such as the positions in flight. */
    public Map<String, Map<String, String>> positions() {
        Map<String, Map<String, String>> positions = new LinkedHashMap<>();
        WrittenKeys written = all.under("positions");
        written.fields().keySet().forEach(c -> positions.put(c, written.under(c).texts()));
        return positions;
    }
}
