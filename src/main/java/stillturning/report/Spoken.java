package stillturning.report;

import java.util.Collection;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.model.Candidate;
import stillturning.parts.Lever;
import stillturning.story.Setting;

/** What a pilot calls the things of a candidate: labels, never identifiers. */
public record Spoken(Candidate candidate) {

    private static final Pattern IDENTIFIER = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)+");

    /** A part or a load; anything else as its name is spoken. */
    public String of(String name) {
        return candidate.part(name).map(part -> part.tag().label()).orElse(name.replace('-', ' '));
    }

    /** A lever; one of several on a part by its number. */
    public String lever(String name) {
        int point = name.lastIndexOf('.');
        return point < 0
                ? of(name)
                : of(name.substring(0, point)) + " channel " + name.substring(point + 1);
    }

    /** A move: {@code "pump 2 breaker: pull"} is said {@code "pull pump 2 breaker"}. */
    public String move(String lever, String position) {
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
    public String all(Collection<String> names) {
        return String.join(", ", new TreeSet<>(names).stream().map(this::of).toList());
    }

    /** A failure by its name, {@code "part: how"}. */
    public String failure(String name) {
        int colon = name.indexOf(": ");
        return colon < 0
                ? sentence(name)
                : of(name.substring(0, colon)) + sentence(name.substring(colon));
    }

    /** A sentence of a story: what it names by an identifier of several words is spoken. */
    public String sentence(String words) {
        return IDENTIFIER
                .matcher(words)
                .replaceAll(found -> Matcher.quoteReplacement(known(found.group())));
    }

    private String known(String name) {
        return candidate
                .part(name)
                .map(part -> part.tag().label())
                .orElse(isOfCockpit(name) ? name.replace('-', ' ') : name);
    }

    private boolean isOfCockpit(String name) {
        return candidate.cockpit().cues().stream().anyMatch(cue -> cue.name().equals(name))
                || candidate.cockpit().procedures().stream().anyMatch(p -> p.name().equals(name));
    }
}
