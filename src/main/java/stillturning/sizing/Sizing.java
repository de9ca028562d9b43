package stillturning.sizing;

import java.util.List;
import java.util.function.Consumer;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.model.wiring.MetalLines;
import stillturning.model.wiring.WirePlaces;
import stillturning.sizing.result.CrankingSupply;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.SizingReport.Devices;
import stillturning.sizing.result.SizingReport.Purchase;
import stillturning.sizing.result.WireSchedule;
import stillturning.story.UntoldStory;

/** Holds a candidate against the published limits of wires, protectors, contacts and sources. */
public final class Sizing {

    private Sizing() {}

    /**
     * Everything about the sizes of one candidate, single failures included. The result does not
     * depend on the number of threads.
     *
     * @throws UntoldStory if the candidate has no steady state in some phase with nothing wrong
     */
    public static SizingReport of(Study study, Candidate candidate, Installation installation)
            throws UntoldStory {
        return of(study, candidate, installation, SurveyDepth.SINGLE_FAILURES);
    }

    /**
     * Everything about the sizes of one candidate, as far as one wants to look. The result does not
     * depend on the number of threads.
     *
     * @throws UntoldStory if the candidate has no steady state in some phase with nothing wrong
     */
    public static SizingReport of(
            Study study, Candidate candidate, Installation installation, SurveyDepth reach)
            throws UntoldStory {
        return of(study, candidate, installation, reach, phase -> {});
    }

    /**
     * Everything about the sizes of one candidate, where somebody waits for it. The result does not
     * depend on the number of threads.
     *
     * @param progress told the name of each phase before it is looked at; what it throws ends the
     *     work
     * @throws UntoldStory if the candidate has no steady state in some phase with nothing wrong
     */
    public static SizingReport of(
            Study study,
            Candidate candidate,
            Installation installation,
            SurveyDepth reach,
            Consumer<String> progress)
            throws UntoldStory {
        Circuit circuit = candidate.circuit();
        CurrentSurvey survey = CurrentSurvey.of(study, candidate, reach, progress);
        Subject subject =
                new Subject(
                        study,
                        candidate,
                        installation,
                        circuit,
                        new MetalLines(candidate, circuit),
                        new WirePlaces(
                                study.aircraft(),
                                installation.laying(),
                                installation.fit(candidate.id()).wires(),
                                candidate),
                        survey);
        WireSchedule wires = new WireSizing(subject).schedule(reach == SurveyDepth.SINGLE_FAILURES);
        Devices devices =
                new Devices(
                        new ProtectorSizing(subject, reach).all(),
                        new ContactSizing(subject).all());
        LoadAnalysis loads = new LoadSums(subject).analysis();
        List<CrankingSupply> cranking = new Starting(subject).all();
        return new SizingReport(
                candidate,
                new SizeFindings(subject).of(wires, devices, loads, cranking),
                loads,
                wires,
                devices,
                cranking,
                new Purchase(
                        new WeightSums(subject, wires.wires()).sheet(),
                        new Billing(subject, wires.wires()).rows()),
                survey.untold());
    }
}
