package stillturning.report.joint;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import stillturning.model.Candidate;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.story.Setting;

/** What a pilot calls the things of a candidate: labels, never identifiers. */
record Spoken(Candidate candidate) {

    /** A part or a load; anything else as its name is spoken. */
    String of(String name) {
        return candidate.part(name).map(part -> part.tag().label()).orElse(name.replace('-', ' '));
    }

    /** A lever; one of several on a part by its number. */
    String lever(String name) {
        int point = name.lastIndexOf('.');
        return point < 0
                ? of(name)
                : of(name.substring(0, point)) + " channel " + name.substring(point + 1);
    }

    /** A move: {@code "pump 2 breaker: pull"} is said {@code "pull pump 2 breaker"}. */
    String move(String lever, String position) {
        if (position.equals(Setting.PULLED)) {
            return "pull " + lever(lever);
        }
        boolean pushed = position.equals(Lever.PULLED.get(0)) && canBePulled(lever);
        return pushed ? "push " + lever(lever) + " in" : lever(lever) + " " + position;
    }

    private boolean canBePulled(String lever) {
        return candidate.lever(lever).filter(l -> l.positions().equals(Lever.PULLED)).isPresent();
    }

    /** Many at once, in the order of their names. */
    String all(Collection<String> names) {
        return String.join(", ", new TreeSet<>(names).stream().map(this::of).toList());
    }

    /** Parts, what hangs in one run as one thing. */
    String parts(List<String> ids) {
        return PartNames.listed(
                ids,
                id ->
                        candidate
                                .part(id)
                                .map(Part::tag)
                                .map(tag -> tag.label())
                                .orElse(id.replace('-', ' ')));
    }
}
