package stillturning.desktop.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.edit.FileChange;

/**
 * Something that a person does to a study: as a whole or not at all, and undone as a whole.
 *
 * @param name what undo calls it: {@code Add breaker}
 * @param steps in order
 * @param parts names of the parts that it is about, to be selected afterwards
 * @param also what it does beside what its name says, a sentence each
 */
public record Change(String name, List<DraftStep> steps, List<String> parts, List<String> also) {

    public Change {
        steps = List.copyOf(steps);
        parts = List.copyOf(parts);
        also = List.copyOf(also);
    }

    /** One that is about no part in particular. */
    public Change(String name, List<DraftStep> steps) {
        this(name, steps, List.of(), List.of());
    }

    /** A file's text as somebody types it. */
    public static Change typing(String file, String text) {
        return new Change("Type in " + file, List.of(new DraftStep.Replace(file, text, true)));
    }

    /** What was worked out for one file. */
    public static Change of(FileChange one) {
        return new Change(
                one.name(),
                List.of(new DraftStep.Edits(one.file(), one.before(), one.edits(), one.after())),
                one.parts(),
                one.also());
    }

    /** Both under one name, this one first. */
    public Change then(Change other) {
        return new Change(
                name, both(steps, other.steps), both(parts, other.parts), both(also, other.also));
    }

    /** The same under another name. */
    public Change named(String other) {
        return new Change(other, steps, parts, also);
    }

    private static <T> List<T> both(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }

    /** The file that somebody types in, if that is all. */
    Optional<String> typedIn() {
        return steps.size() == 1 && steps.get(0) instanceof DraftStep.Replace text && text.typed()
                ? Optional.of(text.file())
                : Optional.empty();
    }
}
