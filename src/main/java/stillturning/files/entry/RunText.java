package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import stillturning.quantity.WireGauge;
import stillturning.yaml.notation.Given;

/**
 * A run in one line: {@code from main-bus, breaker 5 A, via strobe-switch, wire AWG 20 1.8 m,
 * return tail-ground}.
 *
 * @param from where it starts
 * @param to where it ends; empty for a feed, which ends at its load
 * @param items what lies in it, in order
 * @param back ground point at which a load's return lands, if not that of its zone
 */
public record RunText(
        NamedTerminal from,
        Optional<NamedTerminal> to,
        List<RunItem> items,
        Optional<NamedTerminal> back) {

    /** A part or one of its terminals, at an offset of the text. */
    public record NamedTerminal(String part, Optional<String> terminal, int offset) {}

    /** One thing in a run, at an offset of the text. */
    public sealed interface RunItem {
        /** Where it stands in the text. */
        int offset();

        /** The part that the run leads through there; empty where the run makes what lies there. */
        default Optional<NamedTerminal> leadsThrough() {
            return Optional.empty();
        }

        /** Word of the kind of part that the run makes there; empty where it makes none. */
        Optional<String> makes();

        /** Whether it settles how the line is wired, so that no wire is added to it. */
        boolean settlesWiring();
    }

    /**
     * A breaker or fuse of its own: {@code breaker 5 A}, {@code fuse 60 A class high-current}.
     *
     * @param ofClass class in the catalogue; the kind's first if not written
     */
    public record NewProtector(boolean breaker, Given rating, Optional<String> ofClass, int offset)
            implements RunItem {
        @Override
        public Optional<String> makes() {
            return Optional.of(breaker ? "breaker" : "fuse");
        }

        @Override
        public boolean settlesWiring() {
            return false;
        }
    }

    /** A wire: {@code wire}, {@code wire AWG 18}, {@code wire 1.2 m}, {@code wire AWG 4 0.9 m}. */
    public record NewWire(Optional<WireGauge> gauge, Optional<Given> length, int offset)
            implements RunItem {
        @Override
        public Optional<String> makes() {
            return Optional.of("wire");
        }

        @Override
        public boolean settlesWiring() {
            return true;
        }
    }

    /** A part in line: {@code via fuel-switch}, {@code via j1 pin 3}, {@code via selector.up}. */
    public record Through(NamedTerminal anchor, int offset) implements RunItem {
        @Override
        public Optional<NamedTerminal> leadsThrough() {
            return Optional.of(anchor);
        }

        @Override
        public Optional<String> makes() {
            return Optional.empty();
        }

        @Override
        public boolean settlesWiring() {
            return false;
        }
    }

    /** No wire at all: {@code direct}. */
    public record Direct(int offset) implements RunItem {
        @Override
        public Optional<String> makes() {
            return Optional.empty();
        }

        @Override
        public boolean settlesWiring() {
            return true;
        }
    }

    public RunText {
        items = List.copyOf(items);
    }
}
