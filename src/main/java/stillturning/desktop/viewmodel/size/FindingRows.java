package stillturning.desktop.viewmodel.size;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.ReadStudy;
import stillturning.files.finding.PartPlace;
import stillturning.model.Candidate;
import stillturning.quantity.UnitSystem;
import stillturning.report.PrintedNames;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizeFinding.Mend;
import stillturning.sizing.result.SizingReport;

/** The findings of a report, with where to look. */
final class FindingRows {

    /** Loads are asked for by the study, so a candidate's file has no place for them. */
    private static final String LOADS = "loads";

    private FindingRows() {}

    /** Gravest first. */
    static List<FindingRow> of(SizingReport report, ReadStudy read, UnitSystem units) {
        String candidate = report.candidate().id();
        Map<String, PartPlace> places = read.sizes().places().getOrDefault(candidate, Map.of());
        PrintedNames names = new PrintedNames(report.candidate());
        return report.findings().stream()
                .map(
                        f ->
                                row(
                                        report.candidate(),
                                        f,
                                        places,
                                        new Said(
                                                names.cell(FindingWords.about(report, f, units)),
                                                names.in(FindingWords.wrong(f)),
                                                names.in(FindingWords.mend(f)))))
                .toList();
    }

    /** What it is about, what is wrong and what mends it, with labels for names. */
    private record Said(String about, String wrong, String mend) {}

    private static FindingRow row(
            Candidate candidate, SizeFinding f, Map<String, PartPlace> places, Said said) {
        return new FindingRow(
                f.rule().gravity(),
                said.about,
                said.wrong,
                said.mend,
                part(candidate, f),
                parts(f).flatMap(p -> Optional.ofNullable(places.get(p)).stream())
                        .filter(place -> !place.path().startsWith(LOADS))
                        .findFirst());
    }

    /** What mends it comes first: there one has to write. */
    private static Stream<String> parts(SizeFinding f) {
        return Stream.concat(f.mend().map(Mend::part).stream(), Stream.of(f.part(), first(f)));
    }

    private static Optional<String> part(Candidate candidate, SizeFinding f) {
        return Stream.of(f.part(), first(f)).filter(p -> candidate.part(p).isPresent()).findFirst();
    }

    /** Contacts and channels go by their part and their own name. */
    private static String first(SizeFinding f) {
        return f.part().split(" ", 2)[0];
    }
}
