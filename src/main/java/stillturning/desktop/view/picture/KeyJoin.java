package stillturning.desktop.view.picture;

import java.util.List;
import java.util.Optional;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.layout.SymbolPosition.LineLanding;

/** Joins two terminals by keys: one is picked at each of two symbols, then they are joined. */
final class KeyJoin {

    private final PictureView view;
    private Optional<SymbolPort> from = Optional.empty();
    private Optional<SymbolPort> to = Optional.empty();

    KeyJoin(PictureView view) {
        this.view = view;
    }

    boolean isUnderWay() {
        return from.isPresent();
    }

    /** Picks a terminal of a symbol, or its next one if one of them is picked. */
    void pick(String symbol) {
        if (view.joining().isEmpty()) {
            return;
        }
        boolean second = from.filter(f -> !f.symbol().equals(symbol)).isPresent();
        if (second) {
            to = next(symbol, to);
        } else {
            from = next(symbol, from);
            to = Optional.empty();
        }
        show();
    }

    private Optional<SymbolPort> next(String symbol, Optional<SymbolPort> picked) {
        List<SymbolPort> ports = view.targets().ports(symbol);
        int at = picked.map(ports::indexOf).orElse(-1);
        return ports.isEmpty() ? Optional.empty() : Optional.of(ports.get((at + 1) % ports.size()));
    }

    private void show() {
        Targets targets = view.targets();
        Optional<LineLanding> start = from.flatMap(targets::landing);
        List<LineLanding> end = to.flatMap(targets::landing).stream().toList();
        start.ifPresent(
                s -> {
                    Point reaches = end.isEmpty() ? s.at() : end.get(0).at();
                    view.highlights().join(s, reaches, targets, end);
                });
        view.setAccessibleText(
                from.map(f -> "Join " + words(f)).orElse("Diagram")
                        + to.map(t -> " with " + words(t) + "; Enter joins them").orElse(""));
    }

    private static String words(SymbolPort port) {
        return port.symbol() + " " + port.port();
    }

    /** Joins what is picked; whether two terminals were. */
    boolean finish() {
        boolean both = from.isPresent() && to.isPresent();
        if (both) {
            SymbolPort one = from.get();
            SymbolPort other = to.get();
            leave();
            view.joining().ifPresent(join -> join.accept(one, other));
        }
        return both;
    }

    /** Picks nothing any more. */
    void leave() {
        from = Optional.empty();
        to = Optional.empty();
        view.highlights().dragEnded();
        view.setAccessibleText(PictureView.TOLD);
    }
}
