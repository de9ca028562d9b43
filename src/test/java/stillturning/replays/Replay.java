package stillturning.replays;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.assess.ranges.QuasiRandomPoints;
import stillturning.bench.Effort;
import stillturning.dossier.NamedFailures;
import stillturning.files.DrawnStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Range;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.replays.ReplayFile.Course;
import stillturning.replays.ReplayFile.Found;
import stillturning.story.Moment;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.yaml.BindResult;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.shape.Binder;

/**
 * A report replayed.
 *
 * @param id its number as the folder is called
 * @param folder of its study
 */
public record Replay(String id, Path folder, ReplayFile file) {

    /** Where all are kept. */
    static final Path FOLDER = Path.of("src/test/resources/stillturning/replays").toAbsolutePath();

    /** Each course is played so often, its unknown values anywhere in their ranges. */
    static final int SAMPLES = Effort.cases(32, 64);

    private static final long SEED = 1;

    private static final Map<String, Replayed> DONE = new ConcurrentHashMap<>();

    /** The reports, in the order of their numbers. */
    static List<Replay> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .map(Replay::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Replay of(Path file) {
        try {
            BindResult<ReplayFile> read =
                    new Binder().bind(YamlDocument.read(file), ReplayFile.class);
            ReplayFile says = read.value().orElseThrow(() -> new AssertionError(read.problems()));
            String id = String.valueOf(file.getFileName()).replace(".yaml", "");
            return new Replay(id, file.resolveSibling(id), says);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return id;
    }

    /**
     * What came of a sample.
     *
     * @param inside whether it went as the report tells
     * @param stopSeconds when the engine stopped first; infinite for never
     * @param ended whether it stopped for good before the aircraft had landed
     * @param told what happened, for the reader of a test that fails
     */
    record Sample(boolean inside, double stopSeconds, boolean ended, String told) {}

    /**
     * What came of it all.
     *
     * @param samples of the course; none if it is not modelled
     * @param places of what has to be found, in its order; 0 for nowhere
     * @param answers of which these are places
     */
    record Replayed(List<Sample> samples, List<Integer> places, List<List<String>> answers) {

        int inside() {
            return (int) samples.stream().filter(Sample::inside).count();
        }

        int ended() {
            return ended(samples);
        }

        static int ended(List<Sample> samples) {
            return (int) samples.stream().filter(Sample::ended).count();
        }
    }

    /** Played and asked, once for every test that wants to know. */
    Replayed replayed() {
        return DONE.computeIfAbsent(id, same -> work());
    }

    private Replayed work() {
        Map<Question, List<String>> answers = new TreeMap<>();
        List<Integer> places = new ArrayList<>();
        for (Found found : file.beforeFlight()) {
            List<String> findings =
                    answers.computeIfAbsent(found.asked(), question -> question.of(folder));
            places.add(place(found, findings));
        }
        return new Replayed(
                file.course().map(course -> played(course, SAMPLES)).orElse(List.of()),
                places,
                file.beforeFlight().stream().map(f -> answers.get(f.asked())).toList());
    }

    private static int place(Found found, List<String> findings) {
        return IntStream.range(0, findings.size())
                        .filter(n -> found.says().stream().allMatch(findings.get(n)::contains))
                        .findFirst()
                        .orElse(-1)
                + 1;
    }

    /** The course, flown with the unknown values anywhere in their ranges. */
    List<Sample> played(Course course, int times) {
        StudyReader reader = StudyReader.open(folder);
        String candidate = candidate();
        List<Range> ranges = reader.rangesOf(candidate);
        double[][] points = QuasiRandomPoints.points(times, ranges.size(), SEED);
        return Stream.of(points)
                .parallel()
                .map(at -> sample(reader.drawn(Set.of(candidate), ranges, at), course))
                .toList();
    }

    String candidate() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .filter(f -> !f.equals("study"))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Sample sample(DrawnStudy drawn, Course course) {
        Study study = drawn.study().orElseThrow(() -> new AssertionError(drawn.refusal()));
        Candidate candidate = study.candidates().get(0);
        try {
            Moment moment =
                    new Moment(course.in(), Moment.FlightSpan.FLOWN, Moment.Batteries.AS_STATED);
            Story story =
                    Timeline.quick(study, candidate, moment)
                            .tell(failure(candidate, course), course.pilot());
            double stops =
                    story.of(StoryEvent.Kind.ENGINE_STOPS).stream()
                            .mapToDouble(StoryEvent::seconds)
                            .findFirst()
                            .orElse(Double.POSITIVE_INFINITY);
            boolean ended = story.engine().misses(study.landing());
            return new Sample(isInside(course, story, stops), stops, ended, told(story));
        } catch (UntoldStory e) {
            return new Sample(false, Double.POSITIVE_INFINITY, true, "untold: " + e.getMessage());
        }
    }

    /** What is not there cannot happen: a change may have taken it out. */
    private static Failure failure(Candidate candidate, Course course) {
        Map<String, Failure> names =
                NamedFailures.everything(candidate).stream()
                        .collect(Collectors.toMap(Failure::name, Function.identity()));
        return course.happens().stream()
                .flatMap(name -> Optional.ofNullable(names.get(name)).stream())
                .reduce(Failure::and)
                .orElseGet(() -> Failure.levers("nothing fails", Map.of()));
    }

    private static boolean isInside(Course course, Story story, double stops) {
        boolean inTime =
                course.engine()
                        .map(w -> w.after().si() <= stops && stops <= w.before().si())
                        .orElse(Double.isInfinite(stops));
        List<String> stopped =
                story.happenings().stream()
                        .filter(
                                e ->
                                        e.kind() == StoryEvent.Kind.LOAD_STOPS
                                                || e.kind() == StoryEvent.Kind.LOAD_ON_ITS_OWN
                                                || e.kind() == StoryEvent.Kind.LOAD_DESTROYED)
                        .map(StoryEvent::part)
                        .toList();
        int next = 0;
        for (String load : stopped) {
            if (next < course.order().size() && load.equals(course.order().get(next))) {
                next++;
            }
        }
        return inTime && next == course.order().size();
    }

    private static String told(Story story) {
        return story.happenings().stream()
                .map(e -> String.format(Locale.ROOT, "%.2f s %s", e.seconds(), e.words()))
                .collect(Collectors.joining("\n  "));
    }
}
