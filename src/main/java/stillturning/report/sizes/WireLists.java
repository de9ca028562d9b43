package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTable.Head.words;

import java.util.ArrayList;
import java.util.List;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WireSize;

/** What one takes along to cut, to crimp and to mark. */
final class WireLists {

    private WireLists() {}

    static SizeTable wires(SizingReport report, SizeUnits units) {
        List<List<String>> rows = new ArrayList<>();
        for (WireSize w : report.wires().wires()) {
            rows.add(
                    List.of(
                            w.wire().id(),
                            w.ends().from().toString(),
                            w.ends().to().toString(),
                            w.wire().cable().awg(),
                            units.length(w.wire().metres()),
                            w.ends().said().colour().orElse(""),
                            w.ends().said().terminals().orElse(""),
                            String.join(" > ", w.ends().zones()),
                            w.guard().map(g -> g.part()).orElse("")));
        }
        return new SizeTable(
                "wire-list",
                "Wire list",
                List.of(
                        words("wire", 20),
                        words("from", 20),
                        words("to", 20),
                        words("AWG", 4),
                        SizeTable.Head.number("length (" + units.length() + ")"),
                        words("colour", 10),
                        words("terminals", 10),
                        words("zones", 10),
                        words("protector", 16)),
                rows,
                List.of());
    }

    /** Two for each wire: what it is, its size, and where the other end is. */
    static SizeTable labels(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (WireSize w : report.wires().wires()) {
            rows.add(label(w, w.ends().from().toString(), w.ends().to().toString()));
            rows.add(label(w, w.ends().to().toString(), w.ends().from().toString()));
        }
        return new SizeTable(
                "labels",
                "Labels",
                List.of(words("at", 30), words("label", 30), words("other end", 30)),
                rows,
                List.of());
    }

    private static List<String> label(WireSize w, String here, String there) {
        return List.of(here, w.wire().id() + " AWG " + w.wire().cable().awg(), there);
    }
}
