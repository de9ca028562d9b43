package stillturning.report.paper;

import stillturning.model.Candidate;
import stillturning.model.Cue;
import stillturning.model.Cue.AlternatorOut;
import stillturning.model.Cue.EngineStops;
import stillturning.model.Cue.HighVolts;
import stillturning.model.Cue.LoadStops;
import stillturning.model.Cue.LowVolts;
import stillturning.quantity.Formats;
import stillturning.report.PrintedNames;

/** What a pilot notices, in his words. */
final class CueWords implements Cue.Visitor<String> {

    private final PrintedNames labels;

    CueWords(PrintedNames labels) {
        this.labels = labels;
    }

    /** The cue of this name in a candidate: what shows, and what that means. */
    String of(String name, Candidate candidate) {
        return candidate.cockpit().cues().stream()
                .filter(cue -> cue.name().equals(name))
                .findFirst()
                .map(cue -> labels.in(name) + " (" + cue.sign().accept(this) + ")")
                .orElse(labels.in(name));
    }

    @Override
    public String visit(LowVolts low) {
        return labels.in(low.at().part()) + " below " + volts(low.volts());
    }

    @Override
    public String visit(HighVolts high) {
        return labels.in(high.at().part()) + " above " + volts(high.volts());
    }

    @Override
    public String visit(AlternatorOut out) {
        return labels.in(out.alternator()) + " delivers nothing";
    }

    @Override
    public String visit(LoadStops stops) {
        return labels.in(stops.load()) + " stops";
    }

    @Override
    public String visit(EngineStops stops) {
        return "the engine stops";
    }

    private static String volts(double volts) {
        return Formats.fixed(volts, 1) + " V";
    }
}
