package stillturning.report.export;

import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Study;
import stillturning.report.oneline.CandidateMetal;

/**
 * A candidate as a circuit for a simulator of the SPICE family: the first instant after all
 * charging is lost, levers as in flight.
 */
public final class Netlist {

    private static final String OPTIONS =
            """
            .options reltol=1e-9 abstol=1e-15 vntol=1e-12 gmin=1e-15
            .temp 27
            .op
            .end
            """;

    private final Candidate candidate;
    private final Study study;
    private final Circuit circuit;
    private final StringBuilder text = new StringBuilder();

    private Netlist(Candidate candidate, Study study) {
        this.candidate = candidate;
        this.study = study;
        this.circuit = candidate.circuit();
    }

    /** Its text; the same candidate and study, the same text. */
    public static String of(Candidate candidate, Study study) {
        return new Netlist(candidate, study).text();
    }

    private String text() {
        comment(candidate.title());
        comment("the instant after all charging is lost, levers as in flight, average loads");
        comment("net 0 is the aircraft's structure; volts are against it");
        circuit.netOf()
                .forEach(
                        (terminal, net) ->
                                comment(
                                        "net "
                                                + net
                                                + ": "
                                                + terminal.part()
                                                + "."
                                                + terminal.name()));
        CandidateMetal metal = new CandidateMetal(candidate);
        int number = 1;
        for (Placed placed : circuit.placed()) {
            text.append(
                    placed.element()
                            .accept(new PlainElements(number, placed, candidate, study, metal)));
            number++;
        }
        return text.append(OPTIONS).toString();
    }

    private void comment(String words) {
        text.append(comment(words, 0));
    }

    /** A line that no simulator obeys, whatever stands in it. */
    static String comment(String words, int number) {
        String line = words.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", " ");
        return "* " + (number == 0 ? "" : number + ": ") + line + "\n";
    }
}
