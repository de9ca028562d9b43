package stillturning.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.candidate.Expanded;
import stillturning.files.finding.FileRemark;
import stillturning.files.finding.PartPlace;
import stillturning.files.value.Assumption;
import stillturning.files.value.Range;
import stillturning.model.Chances;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.yaml.Problem;

/**
 * What came of reading a study's folder.
 *
 * @param study present exactly if there is no problem
 * @param problems every mistake in every file, by file and place
 * @param remarks what is allowed but worth a second look, by file and place
 * @param assumptions every value that the study rests on, in the order of the files
 * @param ranges between which limits values are, where anything is known about that
 * @param expanded what became of each sketch line, by candidate
 * @param sizes what only the checking of sizes asks for
 * @param chances what only the counting of failures asks for
 * @param fingerprint SHA-256 over names and contents of the study's files, in order of name
 */
public record ReadStudy(
        Optional<Study> study,
        List<Problem> problems,
        List<FileRemark> remarks,
        List<Assumption> assumptions,
        List<Range> ranges,
        Map<String, List<Expanded>> expanded,
        SizingInput sizes,
        Chances chances,
        String fingerprint) {

    /**
     * What only the checking of sizes asks for.
     *
     * @param places where each part is asked for, by candidate and part
     */
    public record SizingInput(
            Installation installation, Map<String, Map<String, PartPlace>> places) {
        public SizingInput {
            places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
        }
    }

    public ReadStudy {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
        assumptions = List.copyOf(assumptions);
        ranges = List.copyOf(ranges);
        expanded = Collections.unmodifiableMap(new LinkedHashMap<>(expanded));
    }

    /** The same with further mistakes, which somebody found who knows more than the files. */
    public ReadStudy with(List<Problem> further) {
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(further);
        Collections.sort(all);
        return new ReadStudy(
                study.filter(s -> all.isEmpty()),
                all,
                remarks,
                assumptions,
                ranges,
                expanded,
                sizes,
                chances,
                fingerprint);
    }
}
