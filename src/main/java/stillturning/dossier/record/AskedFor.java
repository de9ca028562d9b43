package stillturning.dossier.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stillturning.files.ReadStudy;
import stillturning.files.record.Blank;
import stillturning.files.record.Blank.Notation;
import stillturning.files.record.BlankForm;
import stillturning.files.value.Range;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.asbuilt.Compared;
import stillturning.reliability.asbuilt.Expectation;
import stillturning.reliability.asbuilt.Expectations;
import stillturning.reliability.asbuilt.Measurand;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.reliability.asbuilt.StepKey;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.GroundTests;
import stillturning.report.Cautions;
import stillturning.report.groundtest.PlanWords;
import stillturning.report.groundtest.PlannedTest;
import stillturning.report.record.FormLine;
import stillturning.report.record.MeasuredWords;
import stillturning.story.UntoldStory;

/** Everything of a candidate that can be filled in, and the form that asks for it. */
public final class AskedFor {

    private static final String STUDY_FILE = "study.yaml";
    private static final String TEST = "ground-test";
    private static final String BATTERIES = "batteries";
    private static final String LOADS = "loads";
    private static final String PATHS = "resistances";

    /** How far off a path may be of whose length or contact nobody says anything. A guess. */
    private static final double USUAL_PATH = 0.2;

    private final Study study;
    private final ReadStudy read;
    private final Candidate candidate;
    private final Optional<PlannedTest> test;
    private final MeasuredWords words;
    private final Expectations expectations;

    /**
     * @param read what the study's files say
     * @param test the plan of its ground test; readings of none can be filled in without
     */
    public AskedFor(Study study, ReadStudy read, Candidate candidate, Optional<PlannedTest> test) {
        this.study = study;
        this.read = read;
        this.candidate = candidate;
        this.test = test;
        this.words = new MeasuredWords(candidate, test.map(PlanWords::acts).orElse(Map.of()));
        this.expectations = new Expectations(study, candidate, this::openness);
    }

    /**
     * Everything that can be filled in, readings of the ground test among it.
     *
     * @param progress told of each failure that was tried for the plan of the test
     * @throws UntoldStory if the candidate cannot be predicted
     */
    public static AskedFor planned(
            Study study, ReadStudy read, Candidate candidate, Consumer<String> progress)
            throws UntoldStory {
        PlannedTest plan =
                new PlannedTest(
                        candidate,
                        study.aircraft().engine().logic().loads(),
                        GroundTests.of(study, candidate, progress));
        return new AskedFor(study, read, candidate, Optional.of(plan));
    }

    /** Whose it is. */
    public Candidate candidate() {
        return candidate;
    }

    Optional<PlannedTest> test() {
        return test;
    }

    Study study() {
        return study;
    }

    /** What the study's files say. */
    public ReadStudy read() {
        return read;
    }

    MeasuredWords words() {
        return words;
    }

    private double openness(String part, String key) {
        boolean load = key.equals("draws");
        String file = load ? STUDY_FILE : candidate.id() + ".yaml";
        String path = (load ? "loads." : "parts.") + part + "." + key;
        Optional<Range> range =
                read.ranges().stream()
                        .filter(r -> r.place().file().equals(file))
                        .filter(r -> r.place().path().equals(path))
                        .findFirst();
        boolean ofPath = key.equals("length") || (key.equals("resistance") && isPath(part));
        return range.map(AskedFor::share).orElse(ofPath ? USUAL_PATH : 0.0);
    }

    private boolean isPath(String part) {
        return candidate.part(part).flatMap(Expectations::ohms).isPresent();
    }

    private static double share(Range range) {
        double half = Math.max(range.high() - range.likely(), range.likely() - range.low());
        return range.likely() == 0 ? 0 : half / Math.abs(range.likely());
    }

    /** Everything that may be filled in, in the form's order; nothing of it measured. */
    public List<FormLine> lines() {
        List<Expectation> all = new ArrayList<>(expectations.batteries());
        all.addAll(expectations.loads());
        all.addAll(expectations.paths());
        test.ifPresent(plan -> all.addAll(Expectations.of(plan.plan())));
        return all.stream()
                .map(
                        e ->
                                new FormLine(
                                        path(e.subject()),
                                        words.says(e.subject()),
                                        Compared.not(e),
                                        "",
                                        ""))
                .toList();
    }

    /** Where something stands in the form. */
    static String path(Measurand subject) {
        String step = TEST + "." + subject.step().replace('/', '.');
        return switch (subject.kind()) {
            case CAPACITY -> BATTERIES + "." + subject.at() + ".capacity";
            case BATTERY_OHMS -> BATTERIES + "." + subject.at() + ".resistance";
            case LOAD_AMPS -> LOADS + "." + subject.at();
            case PATH_OHMS -> PATHS + "." + subject.at();
            case HAPPENED -> step + ".result";
            case VOLTS -> step + ".volts." + subject.at();
            case AMPS -> step + ".amps." + subject.at();
            case OUT_SECONDS -> step + ".out." + subject.at();
        };
    }

    private static Notation notation(MeasurandKind kind) {
        return switch (kind) {
            case CAPACITY -> Notation.CAPACITY;
            case BATTERY_OHMS -> Notation.OHMS;
            case LOAD_AMPS -> Notation.AMPS_AT_VOLTS;
            case PATH_OHMS -> Notation.VOLTS_AT_AMPS;
            case HAPPENED -> Notation.RESULT;
            case VOLTS -> Notation.VOLTS;
            case AMPS -> Notation.AMPS;
            case OUT_SECONDS -> Notation.SECONDS;
        };
    }

    /** Everything that may be filled in. */
    public List<Blank> blanks() {
        return lines().stream().map(AskedFor::blank).toList();
    }

    private static Blank blank(FormLine line) {
        Expectation expectation = line.compared().expectation();
        MeasurandKind kind = expectation.subject().kind();
        return new Blank(
                line.path(),
                notation(kind),
                kind == MeasurandKind.HAPPENED
                        ? "passed or failed"
                        : MeasuredWords.beside(expectation));
    }

    /** What can be filled in of each group of the form, with what stands above the group. */
    public List<AskedGroup> groups() throws UntoldStory {
        BlankForm form = form();
        Map<String, FormLine> lines = new LinkedHashMap<>();
        lines().forEach(line -> lines.put(line.path(), line));
        Map<String, List<FormLine>> byGroup = new LinkedHashMap<>();
        for (Blank blank : form.blanks()) {
            Optional.ofNullable(lines.get(blank.path()))
                    .ifPresent(
                            line ->
                                    byGroup.computeIfAbsent(
                                                    part(blank.path()), g -> new ArrayList<>())
                                            .add(line));
        }
        return byGroup.entrySet().stream()
                .map(e -> new AskedGroup(e.getKey(), e.getValue()))
                .toList();
    }

    /** Title of the part of the form that something stands in. */
    private static String part(String path) {
        if (path.startsWith(BATTERIES)) {
            return "Batteries";
        } else if (path.startsWith(LOADS)) {
            return "Loads";
        } else if (path.startsWith(PATHS)) {
            return "Wires, contacts, protectors";
        }
        String step = path.substring(TEST.length() + 1).replace('.', '/');
        return "Ground test: " + PlanWords.ready(StepKey.configurationOf(step));
    }

    /** How a line is written, by an example. */
    public static String example(FormLine line) {
        return notation(line.compared().expectation().subject().kind()).example();
    }

    /** What keeps to the prediction of a line; empty for what is no number. */
    public static String predicted(FormLine line) {
        return blank(line).beside();
    }

    /**
     * The form.
     *
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public BlankForm form() throws UntoldStory {
        Set<String> main =
                expectations.mainPaths().stream()
                        .map(e -> path(e.subject()))
                        .collect(Collectors.toCollection(HashSet::new));
        List<Blank> blanks =
                blanks().stream()
                        .filter(b -> !b.path().startsWith(PATHS + ".") || main.contains(b.path()))
                        .toList();
        return new BlankForm(head(), candidate.id(), read.fingerprint(), blanks, above());
    }

    private List<String> head() {
        List<String> head = new ArrayList<>();
        head.add(study.heading().title() + ", " + candidate.title() + ": what was measured");
        if (study.heading().invented()) {
            head.add(Cautions.inFull(true).get(0));
        }
        head.add(Cautions.SHORT);
        head.add(
                "Write behind the colons, each value with its unit; what stays empty was not"
                        + " measured. In brackets stands what keeps to a prediction. Then: stillturning"
                        + " record "
                        + study.id()
                        + " --candidate "
                        + candidate.id()
                        + " FILE");
        return head;
    }

    private Map<String, List<String>> above() {
        Map<String, List<String>> above = new LinkedHashMap<>();
        above.put(
                BATTERIES,
                List.of(
                        "By a discharge test, or as its tester shows it; at 25 °C, with its age: "
                                + Notation.CAPACITY.example()
                                + ", "
                                + Notation.OHMS.example()));
        above.put(
                LOADS,
                List.of(
                        "What each draws while it runs, and the voltage at its terminals: "
                                + Notation.AMPS_AT_VOLTS.example()));
        above.put(
                PATHS,
                List.of(
                        "What is lost from end to end, and the current meanwhile, once or more"
                                + " often: "
                                + Notation.VOLTS_AT_AMPS.example(),
                        "Asked for where most is lost in flight; any other wire, contact or"
                                + " protector may be added by its name."));
        test.ifPresent(plan -> steps(plan, above));
        return above;
    }

    private static void steps(PlannedTest plan, Map<String, List<String>> above) {
        above.put(TEST, List.of("As in the plan that ground-test writes; limits are those there."));
        for (Configuration configuration : Configuration.values()) {
            String ready = PlanWords.ready(configuration);
            above.put(
                    path(StepKey.before(configuration)),
                    List.of(ready + ", before the first step"));
        }
        Map<String, String> acts = PlanWords.acts(plan);
        Map<String, String> must = PlanWords.mustHappen(plan);
        PlanWords.numbers(plan)
                .forEach(
                        (key, number) ->
                                above.put(
                                        path(key),
                                        List.of(
                                                number + ": " + acts.get(key),
                                                "must happen: " + must.get(key))));
    }

    private static String path(String step) {
        return TEST + "." + step.replace('/', '.');
    }
}
