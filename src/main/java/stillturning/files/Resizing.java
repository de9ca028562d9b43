package stillturning.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.candidate.CableSizes;
import stillturning.files.finding.PartPlace;
import stillturning.parts.Cable;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

/** Writes other sizes of wires and protectors into a candidate's file, and leaves the rest. */
final class Resizing {

    private static final String PARTS = "parts";
    private static final Pattern WIRE =
            Pattern.compile("wire( +(" + WireGauge.PATTERN + "))?(?= |$)");
    private static final Pattern RATING = Pattern.compile("(breaker|fuse) +[0-9.]+ *m?A");
    private static final Pattern BACK = Pattern.compile(", *return ");

    /** Something that is written again at an offset of a run's text. */
    private record Change(int offset, String key, String written) {}

    private final Map<String, PartPlace> places;
    private final Map<String, List<Change>> runs = new LinkedHashMap<>();
    private YamlDocument document;

    /**
     * @param places where each part of the candidate is asked for
     */
    Resizing(YamlDocument document, Map<String, PartPlace> places) {
        this.document = document;
        this.places = places;
    }

    /**
     * The document with these sizes.
     *
     * @param awgByWire size by wire, by its name in the table
     * @param ampsByProtector rating by protector (A)
     * @throws EditRefused if the file is written in a way that forbids it
     */
    YamlDocument with(Map<String, String> awgByWire, Map<String, Double> ampsByProtector)
            throws EditRefused {
        for (Map.Entry<String, String> wire : awgByWire.entrySet()) {
            String gauge = gauge(wire.getValue());
            change(wire.getKey(), "gauge", gauge);
        }
        for (Map.Entry<String, Double> protector : ampsByProtector.entrySet()) {
            change(protector.getKey(), "rating", amps(protector.getValue()));
        }
        for (Map.Entry<String, List<Change>> run : runs.entrySet()) {
            rewrite(run.getKey(), run.getValue());
        }
        return document;
    }

    private void change(String part, String key, String written) throws EditRefused {
        PartPlace place = places.get(part);
        if (place == null) {
            return;
        }
        if (!place.path().equals(DocumentPlaces.under(PARTS, part))) {
            runs.computeIfAbsent(place.path(), p -> new ArrayList<>())
                    .add(new Change(place.offset(), key, written));
            return;
        }
        String at = DocumentPlaces.under(place.path(), key);
        YamlValue value = YamlValue.text(written);
        YamlEdit edit =
                document.textAt(at).isPresent()
                        ? new YamlEdit.Set(at, value)
                        : new YamlEdit.AddField(place.path(), key, value);
        document = edit.on(document).document();
    }

    private void rewrite(String path, List<Change> changes) throws EditRefused {
        String text = document.textAt(path).orElse("");
        List<Change> fromTheEnd =
                changes.stream()
                        .sorted(Comparator.comparingInt(Change::offset).reversed())
                        .toList();
        for (Change change : fromTheEnd) {
            text = changed(text, change);
        }
        document = new YamlEdit.Set(path, YamlValue.text(text)).on(document).document();
    }

    private static String changed(String text, Change change) {
        if (change.key.equals("rating")) {
            return replaced(text, change.offset, RATING, m -> m.group(1) + " " + change.written);
        }
        if (change.offset > 0) {
            return replaced(text, change.offset, WIRE, m -> "wire " + change.written);
        }
        Matcher back = BACK.matcher(text);
        int end = back.find() ? back.start() : text.length();
        return text.substring(0, end) + ", wire " + change.written + text.substring(end);
    }

    /** How a find is written again. */
    private interface Anew {
        String of(Matcher found);
    }

    private static String replaced(String text, int offset, Pattern what, Anew anew) {
        Matcher found = what.matcher(text);
        found.region(offset, text.length());
        found.useTransparentBounds(true);
        return found.lookingAt()
                ? text.substring(0, found.start()) + anew.of(found) + text.substring(found.end())
                : text;
    }

    private static String gauge(String awg) {
        return CableSizes.gauge(Cable.awg(awg).orElseThrow()).name();
    }

    private static String amps(double amps) {
        return Quantity.of(amps, Dimension.CURRENT).written();
    }
}
