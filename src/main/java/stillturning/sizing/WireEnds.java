package stillturning.sizing;

import static java.util.Objects.requireNonNull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.parts.Wire;
import stillturning.sizing.result.WireSize.Ends;

/** What each wire leads to. */
final class WireEnds {

    private final Subject subject;
    private final Map<Terminal, Terminal> partners = new HashMap<>();
    private final Map<String, Ends> ends = new HashMap<>();

    WireEnds(Subject subject) {
        this.subject = subject;
        for (Join join : subject.candidate().joins()) {
            partners.putIfAbsent(join.one(), join.other());
            partners.putIfAbsent(join.other(), join.one());
        }
        subject.candidate().wires().forEach(wire -> ends.put(wire.id(), endsOf(wire)));
    }

    private Ends endsOf(Wire wire) {
        Terminal from = at(wire, "a");
        Terminal to = at(wire, "b");
        return new Ends(from, to, subject.zones(wire, from.part(), to.part()), subject.lay(wire));
    }

    private Terminal at(Wire wire, String end) {
        Terminal own = new Terminal(wire.id(), end);
        return partners.getOrDefault(own, own);
    }

    Ends of(Wire wire) {
        return requireNonNull(ends.get(wire.id()), wire.id());
    }

    List<String> zones(Wire wire) {
        return of(wire).zones();
    }
}
