package stillturning.dossier.record;

import java.util.List;
import java.util.OptionalDouble;
import stillturning.files.record.LogFile;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.reliability.asbuilt.DischargeFit;
import stillturning.reliability.asbuilt.DischargeLog;
import stillturning.reliability.asbuilt.DischargeLog.LogSample;
import stillturning.reliability.asbuilt.Expectations;
import stillturning.reliability.asbuilt.UntellingLog;
import stillturning.report.Spoken;
import stillturning.report.record.Fit;

/**
 * A battery of a candidate that was discharged.
 *
 * @param battery its id
 * @param celsius its temperature meanwhile (°C); that of its zone where nobody says it
 * @param charge state of charge at the first reading, 0 to 1, where it is known
 */
public record Discharged(
        Study study,
        Candidate candidate,
        String battery,
        OptionalDouble celsius,
        OptionalDouble charge) {

    /** The batteries of a candidate, in its order. */
    public static List<String> batteries(Candidate candidate) {
        return candidate.parts().stream()
                .filter(part -> Expectations.cell(part).isPresent())
                .map(Part::id)
                .toList();
    }

    /**
     * What a log says of it.
     *
     * @param file name of the log
     * @throws UntellingLog if nothing can be concluded from it
     */
    public Fit fit(List<LogFile.LogLine> lines, String file) throws UntellingLog {
        Part part = candidate.part(battery).orElseThrow();
        Cell cell = Expectations.cell(part).orElseThrow();
        DischargeLog log =
                new DischargeLog(
                        lines.stream()
                                .map(l -> new LogSample(l.seconds(), l.volts(), l.amps()))
                                .toList());
        double warm = celsius.orElse(study.aircraft().celsius(part.tag().zone()));
        return new Fit(
                battery,
                new Spoken(candidate).of(battery),
                cell,
                DischargeFit.of(cell, warm, log, charge),
                file,
                log);
    }
}
