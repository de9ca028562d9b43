package stillturning.dossier.suggest;

import java.util.List;
import java.util.stream.Stream;
import stillturning.assess.NearLimit;
import stillturning.assess.NothingBroken;
import stillturning.assess.Scrutiny;
import stillturning.files.move.Drawn;
import stillturning.story.StoryEvent;

/**
 * What gives way although nothing fails. Mended where nothing does any more, in the phase that the
 * study holds and in the whole flight.
 *
 * @param part that gives way first
 * @param how in words
 */
public record NothingWrong(String part, String how) implements Aim {

    /** That of a candidate, if there is one. */
    static Stream<Aim> in(NothingBroken flight) {
        Stream<StoryEvent> held =
                Stream.of(flight.normal().givenUp(), flight.normal().lost(), flight.happenings())
                        .flatMap(List::stream)
                        .filter(event -> !event.part().isEmpty());
        Stream<StoryEvent> whole =
                flight.nearLimit().stream()
                        .map(NearLimit::flight)
                        .flatMap(story -> story.of(StoryEvent.Kind.PROTECTOR_OPENS).stream());
        return Stream.concat(held, whole)
                .limit(1)
                .map(event -> new NothingWrong(event.part(), event.words()));
    }

    @Override
    public String words() {
        return "with nothing wrong, " + part + " " + how;
    }

    @Override
    public List<String> parts() {
        return List.of(part);
    }

    @Override
    public boolean isLeft(Drawn after, Scrutiny look) {
        return in(look.flight()).findAny().isPresent();
    }
}
