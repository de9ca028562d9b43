package stillturning.fuzz;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.yaml.Problem;

/** What the program promises of any text; each is an {@link AssertionError} where it is broken. */
public final class Promises {

    /** A story of something absurd is looked at no further (s). */
    private static final double LONGEST_SECONDS = 600;

    /** More parts than this are not computed. */
    private static final int MOST_PARTS = 40;

    private Promises() {}

    /** The text that bytes are, with a mark for what is none. */
    public static String text(byte[] input) {
        return new String(input, StandardCharsets.UTF_8);
    }

    /** Lots that depend on nothing but the input, so that what it shows can be shown again. */
    public static SplittableRandom lot(byte[] input) {
        CRC32 sum = new CRC32();
        sum.update(input);
        return new SplittableRandom(sum.getValue());
    }

    /** Fails unless something holds. */
    public static void hold(boolean promise, String broken) {
        if (!promise) {
            throw new AssertionError(broken);
        }
    }

    /** Every problem says where it is, what is wrong, and what would be right. */
    public static void areSound(List<Problem> problems, String text) {
        List<String> lines = List.of(text.split("\r\n|\r|\n", -1));
        for (Problem problem : problems) {
            String shown = problem.shownIn(text);
            hold(problem.line() >= 1 && problem.column() >= 1, shown);
            hold(problem.line() <= lines.size(), shown);
            String line = lines.get(problem.line() - 1);
            hold(problem.column() <= line.codePointCount(0, line.length()) + 1, shown);
            hold(!problem.wrong().isBlank() && !problem.right().isBlank(), shown);
            hold(problem.wrong().length() + problem.right().length() < 2000, shown);
        }
        hold(problems.stream().sorted().toList().equals(problems), "out of order: " + problems);
    }

    /** There is a study exactly if there is no problem, and no value of it is no number. */
    public static void isSound(ReadStudy read) {
        hold(read.study().isPresent() == read.problems().isEmpty(), "" + read.problems());
        read.study().ifPresent(study -> isNumber(study, "study"));
        isNumber(read.assumptions(), "assumptions");
        isNumber(read.ranges(), "ranges");
    }

    /** What is accepted has a normal flight and the story of a failure, or a word why not. */
    public static void canBeTold(Study study, SplittableRandom lot) {
        Candidate candidate = study.candidates().get(lot.nextInt(study.candidates().size()));
        if (candidate.parts().size() > MOST_PARTS) {
            return;
        }
        try {
            Timeline timeline = Timeline.quick(study, candidate);
            isNumber(timeline.normal(), "normal flight");
            List<Failure> failures = FailureCatalogue.singlesOf(candidate);
            Failure failure = failures.get(lot.nextInt(failures.size()));
            Story story = timeline.tell(failure, Setting.with(Pilot.PLANNED), LONGEST_SECONDS);
            hold(!Double.isNaN(story.endSeconds()), failure.name() + " ends at no time");
            isNumber(story.happenings(), failure.name());
            isNumber(story.engine(), failure.name());
            isNumber(story.aftermath(), failure.name());
        } catch (UntoldStory untold) {
            hold(String.valueOf(untold.getMessage()).length() > 10, "refused without a word");
        }
    }

    /** No number in a value, however deep, is no number. */
    public static void isNumber(Object value, String where) {
        if (value instanceof Double number) {
            hold(!Double.isNaN(number), where + " is no number");
        } else if (value instanceof Record all) {
            for (RecordComponent component : all.getClass().getRecordComponents()) {
                isNumber(of(component, all), where + "." + component.getName());
            }
        } else if (value instanceof Collection<?> all) {
            all.forEach(one -> isNumber(one, where));
        } else if (value instanceof Map<?, ?> all) {
            all.forEach((key, one) -> isNumber(one, where + "." + key));
        } else if (value instanceof Optional<?> one) {
            one.ifPresent(there -> isNumber(there, where));
        } else if (value instanceof OptionalDouble one) {
            one.ifPresent(there -> isNumber(there, where));
        }
    }

    private static Object of(RecordComponent component, Record record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }
}
