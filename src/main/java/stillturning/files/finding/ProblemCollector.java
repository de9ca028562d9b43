package stillturning.files.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.Names;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Problem;
import stillturning.yaml.Spelling;

/** Collects what is to be said about one file. */
public final class ProblemCollector {

    private static final int MOST = 200;

    /**
     * Where a message belongs.
     *
     * @param path path in the document
     * @param offset index of a char in the text there; {@link #KEY} for its key
     */
    public record Spot(String path, int offset) {

        private static final int KEY = -1;

        public static Spot atKey(String path) {
            return new Spot(path, KEY);
        }

        boolean isKey() {
            return offset == KEY;
        }
    }

    private final DocumentPlaces places;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Problem, String> subjects = new HashMap<>();
    private final List<FileRemark> remarks = new ArrayList<>();

    public ProblemCollector(DocumentPlaces places) {
        this.places = places;
    }

    public List<Problem> problems() {
        return problems;
    }

    public List<FileRemark> remarks() {
        return remarks;
    }

    public boolean isClean() {
        return problems.isEmpty();
    }

    /** Tells a mistake at the value of a path. */
    public void problem(String path, String wrong, String right) {
        add(places.problem(path, wrong, right));
    }

    /** Tells a mistake at a key or inside a text. */
    public void problem(Spot spot, String wrong, String right) {
        add(placed(spot, wrong, right));
    }

    /** Tells a mistake that is about one part, though no line of its own says so. */
    public void problem(Spot spot, String part, String wrong, String right) {
        Problem problem = placed(spot, wrong, right);
        subjects.put(problem, part);
        add(problem);
    }

    /** The part that a mistake is about, where its path does not say so. */
    public Optional<String> subjectOf(Problem problem) {
        return Optional.ofNullable(subjects.get(problem));
    }

    /** Tells that nothing of this name is known. */
    public void unknown(Spot spot, String what, String name, Collection<String> known) {
        String right = problems.size() < MOST ? Spelling.choice(name, known) : "";
        problem(spot, "there is no " + what + " \"" + name + "\"", right);
    }

    /** Tells that a name has a point in it, which stands between a part and its terminal. */
    public void refusePoint(Spot spot, String name) {
        if (!Names.isPlain(name)) {
            problem(
                    spot,
                    "\"" + name + "\" cannot be a name, since a point leads to a terminal",
                    "use lower case letters, digits and hyphens");
        }
    }

    /** Says something that is worth a second look. */
    public void remark(Spot spot, String words) {
        Problem at = placed(spot, words, "");
        if (remarks.size() < MOST) {
            remarks.add(new FileRemark(at.file(), at.line(), at.column(), at.path(), words));
        }
    }

    /** Where a spot stands in the file. */
    public PartPlace place(Spot spot) {
        Problem at = placed(spot, "", "");
        return new PartPlace(
                at.file(), at.line(), at.column(), spot.path(), Math.max(0, spot.offset()));
    }

    private Problem placed(Spot spot, String wrong, String right) {
        return spot.isKey()
                ? places.problemAtKey(spot.path(), wrong, right)
                : places.problemInside(spot.path(), spot.offset(), wrong, right);
    }

    private void add(Problem problem) {
        if (problems.size() < MOST) {
            problems.add(problem);
        } else if (problems.size() == MOST) {
            problems.add(
                    places.problem(
                            "",
                            "the file has more than " + MOST + " mistakes",
                            "correct the others first"));
        }
    }
}
