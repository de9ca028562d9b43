package stillturning.files.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.entry.RunText.Direct;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.NewProtector;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.entry.RunText.RunItem;
import stillturning.files.entry.RunText.Through;
import stillturning.parts.Wire;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.Spelling;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.TextForm;

/** Reads one run, and tells everything that is wrong with it. */
final class RunForm {

    static final String EXAMPLE = "from main-bus, breaker 5 A";

    private static final int MOST_ITEMS = 50;
    private static final List<String> ITEMS =
            List.of("breaker", "fuse", "wire", "via", "direct", "return");
    private static final Pattern NAME =
            Pattern.compile("(?<part>[a-z0-9][a-z0-9-]*)(\\.(?<terminal>[a-z0-9][a-z0-9-]*))?");
    private static final Pattern GAUGE = Pattern.compile("(" + WireGauge.PATTERN + ")(?= |$)");
    private static final Pattern AWG = Pattern.compile("(?i)(awg *[^ ]*|[0-9/]+ *awg)(?= |$)");
    private static final Pattern CLASS = Pattern.compile(" class(?: +|$)");
    private static final Pattern LATE_GAUGE =
            Pattern.compile(
                    "(?<length>"
                            + Dimension.LENGTH.pattern()
                            + ") +(?<gauge>"
                            + WireGauge.PATTERN
                            + ")");
    private static final List<String> METRIC_SIZES = List.of("25", "35", "50", "70", "95");
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,2}");
    private static final Pattern MILLIMETRES =
            Pattern.compile("(?<number>[0-9]+(\\.[0-9]+)?) *mm *");

    private final TextForm.FaultReceiver faults;
    private final List<RunItem> items = new ArrayList<>();
    private Optional<NamedTerminal> back = Optional.empty();
    private boolean sound = true;

    private RunForm(TextForm.FaultReceiver faults) {
        this.faults =
                (offset, wrong, right) -> {
                    sound = false;
                    faults.at(offset, wrong, right);
                };
    }

    static Optional<RunText> read(String text, TextForm.FaultReceiver faults) {
        return new RunForm(faults).run(TextPiece.splitAtCommas(text));
    }

    private Optional<RunText> run(List<TextPiece> pieces) {
        List<TextPiece> ends = pieces.get(0).words();
        int to = indexOf("to", ends);
        Optional<NamedTerminal> start =
                start(ends.subList(0, to < 0 ? ends.size() : to), pieces.get(0));
        Optional<NamedTerminal> end =
                to < 0 ? Optional.empty() : anchor(ends.get(to), ends.subList(to + 1, ends.size()));
        pieces.stream().skip(1).limit(MOST_ITEMS).forEach(this::item);
        if (pieces.size() > MOST_ITEMS + 1) {
            TextPiece tooMuch = pieces.get(MOST_ITEMS + 1);
            faults.at(
                    tooMuch.offset(),
                    "the run has more than " + MOST_ITEMS + " items",
                    "make two runs of it");
        }
        refuseDirectWire();
        return start.filter(s -> sound).map(s -> new RunText(s, end, items, back));
    }

    private static int indexOf(String word, List<TextPiece> words) {
        for (int i = 0; i < words.size(); i++) {
            if (words.get(i).text().equals(word)) {
                return i;
            }
        }
        return -1;
    }

    private Optional<NamedTerminal> start(List<TextPiece> words, TextPiece whole) {
        if (words.isEmpty() || !words.get(0).text().equals("from")) {
            faults.at(
                    whole.offset(),
                    "the run does not start with \"from\"",
                    "write where it starts, such as " + EXAMPLE);
            return Optional.empty();
        }
        return anchor(words.get(0), words.subList(1, words.size()));
    }

    private Optional<NamedTerminal> anchor(TextPiece before, List<TextPiece> words) {
        if (words.isEmpty()) {
            faults.at(
                    before.end(),
                    "no part is named after \"" + before.text() + "\"",
                    "write a part, such as main-bus");
            return Optional.empty();
        }
        Optional<NamedTerminal> named = named(words.get(0));
        if (words.size() == 1) {
            return named;
        }
        if (words.size() == 3 && NUMBER.matcher(words.get(2).text()).matches()) {
            String number = words.get(2).text();
            if (words.get(1).text().equals("channel")) {
                return named.map(a -> terminal(a, "out-" + number));
            }
            if (words.get(1).text().equals("pin") && before.text().equals("via")) {
                return named.map(a -> terminal(a, number + "a"));
            }
        }
        faults.at(
                words.get(1).offset(),
                "\"" + words.get(1).shown() + "\" does not belong here",
                "write main-bus, j1.3b, controller channel 3 or, after via, j1 pin 3;"
                        + " names have no blanks, and a comma stands between items");
        return Optional.empty();
    }

    private static NamedTerminal terminal(NamedTerminal anchor, String name) {
        return new NamedTerminal(anchor.part(), Optional.of(name), anchor.offset());
    }

    private Optional<NamedTerminal> named(TextPiece word) {
        Matcher name = NAME.matcher(word.text());
        if (name.matches()) {
            return Optional.of(
                    new NamedTerminal(
                            name.group("part"),
                            Optional.ofNullable(name.group("terminal")),
                            word.offset()));
        }
        faults.at(
                word.offset(),
                "\"" + word.shown() + "\" cannot be a name",
                "write a part or part.terminal, in lower case letters, digits and hyphens");
        return Optional.empty();
    }

    private void item(TextPiece piece) {
        List<TextPiece> words = piece.words();
        if (words.isEmpty()) {
            faults.at(piece.offset(), "nothing stands after the comma", "take the comma out");
            return;
        }
        TextPiece first = words.get(0);
        TextPiece rest = piece.from(first.text().length());
        switch (first.text()) {
            case "breaker", "fuse" -> protector(first, rest);
            case "wire" -> wire(first, rest);
            case "via" ->
                    anchor(first, words.subList(1, words.size()))
                            .ifPresent(a -> items.add(new Through(a, first.offset())));
            case "direct" -> direct(first, rest);
            case "return" -> returning(first, words.subList(1, words.size()));
            default ->
                    faults.at(
                            first.offset(),
                            "\"" + first.shown() + "\" is nothing that lies in a run",
                            Spelling.didYouMean(first.text(), ITEMS)
                                    + "write one of "
                                    + String.join(", ", ITEMS));
        }
    }

    private void protector(TextPiece kind, TextPiece rest) {
        if (rest.text().isEmpty()) {
            faults.at(
                    kind.end(),
                    "the " + kind.text() + " has no rating",
                    "write " + kind.text() + " 5 A");
            return;
        }
        Matcher of = CLASS.matcher(rest.text());
        boolean classed = of.find();
        TextPiece rated = classed ? rest.upTo(of.start()) : rest;
        Optional<String> ofClass = classed ? className(rest.from(of.end())) : Optional.empty();
        rated.above0(Dimension.CURRENT, faults)
                .ifPresent(
                        rating ->
                                items.add(
                                        new NewProtector(
                                                kind.text().equals("breaker"),
                                                rating,
                                                ofClass,
                                                kind.offset())));
    }

    private Optional<String> className(TextPiece name) {
        if (name.text().isEmpty() || name.words().size() != 1) {
            faults.at(
                    name.offset(),
                    "one word must follow \"class\"",
                    "write for example class high-current");
            return Optional.empty();
        }
        return Optional.of(name.text());
    }

    private void wire(TextPiece kind, TextPiece rest) {
        Matcher late = LATE_GAUGE.matcher(rest.text());
        if (late.matches()) {
            faults.at(
                    rest.offset() + late.start("gauge"),
                    "the gauge stands behind the length",
                    "write wire " + late.group("gauge") + " " + late.group("length").strip());
            return;
        }
        Matcher gauge = GAUGE.matcher(rest.text());
        Matcher awg = AWG.matcher(rest.text());
        int end = gauge.lookingAt() ? gauge.end() : awg.lookingAt() ? awg.end() : 0;
        Optional<WireGauge> size = end > 0 ? gauge(rest.upTo(end)) : Optional.empty();
        TextPiece remainder = rest.from(end);
        Optional<Given> length =
                remainder.text().isEmpty()
                        ? Optional.empty()
                        : remainder.above0(Dimension.LENGTH, faults);
        length.ifPresent(l -> refuseStub(l.quantity(), size.isPresent(), remainder.offset()));
        items.add(new NewWire(size, length, kind.offset()));
    }

    /** A cross-section written as a length, and a length that no wire has. */
    private void refuseStub(Quantity length, boolean sized, int offset) {
        String shown = length.written().strip();
        boolean stub = length.si() < Wire.SHORTEST_METRES;
        Matcher area = MILLIMETRES.matcher(shown);
        boolean maybeArea =
                !sized && area.matches() && (stub || METRIC_SIZES.contains(area.group("number")));
        if (maybeArea) {
            String metres = Quantity.of(length.si(), Dimension.LENGTH).written();
            faults.at(
                    offset,
                    shown + " of wire is a length, and reads like a cross-section",
                    "write wire "
                            + area.group("number")
                            + " mm2 for the cross-section"
                            + (stub
                                    ? ", wire 1.5 m for a length"
                                    : ", wire " + metres + " for the length"));
        } else if (stub) {
            faults.at(
                    offset,
                    shown + " is shorter than the terminals at a wire's ends",
                    "write at least "
                            + Quantity.of(Wire.SHORTEST_METRES, Dimension.LENGTH).written()
                            + ", or \"direct\" in place of the wire");
        }
    }

    private Optional<WireGauge> gauge(TextPiece text) {
        try {
            return Optional.of(WireGauge.parse(text.text()));
        } catch (MalformedQuantity malformed) {
            faults.from(text.offset()).at(0, malformed);
            return Optional.empty();
        }
    }

    private void direct(TextPiece word, TextPiece rest) {
        if (!rest.text().isEmpty()) {
            faults.at(
                    rest.offset(),
                    "\"" + rest.shown() + "\" does not belong here",
                    "write \"direct\" alone");
        }
        items.add(new Direct(word.offset()));
    }

    private void returning(TextPiece word, List<TextPiece> rest) {
        if (back.isPresent()) {
            faults.at(word.offset(), "a second return stands here", "keep one of the two");
        }
        back = anchor(word, rest);
    }

    private void refuseDirectWire() {
        boolean direct = items.stream().anyMatch(Direct.class::isInstance);
        items.stream()
                .filter(i -> direct && i instanceof NewWire)
                .findFirst()
                .ifPresent(
                        wire ->
                                faults.at(
                                        wire.offset(),
                                        "a wire stands in a run that is \"direct\"",
                                        "take one of the two out: direct means that there is no"
                                                + " wire"));
    }
}
