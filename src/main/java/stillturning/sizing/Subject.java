package stillturning.sizing;

import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Installation;
import stillturning.model.Installation.FittedParts;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.wiring.MetalLines;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.model.wiring.WirePlaces;
import stillturning.parts.Cable;
import stillturning.parts.Protection.Chart;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Element.Role;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.element.curve.Tripping;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ProtectorSize.ProtectorKind;

/** The candidate that is sized, with what is known of it already. */
record Subject(
        Study study,
        Candidate candidate,
        Installation installation,
        Circuit circuit,
        MetalLines lines,
        WirePlaces places,
        CurrentSurvey survey) {

    private static final double MOST_MULTIPLE = 1000;
    private static final double MULTIPLE_STEP = 1e-6;

    /** A fuse, breaker or electronic trip as the chart sees it. */
    record Rated(String name, ProtectorKind kind, double amps, TimeCurrentCurve curve) {
        /** The largest of its kind (A) that the chart has for a size. */
        Optional<Double> largestFor(Cable cable) {
            return kind == ProtectorKind.FUSE ? cable.fuseAmps() : cable.breakerAmps();
        }

        /** Largest current (A) that even at the fast edge of its band lasts so long (s). */
        double letsThroughAmps(double seconds) {
            double low = curve.holdMultiple();
            double high = MOST_MULTIPLE;
            while (high - low > MULTIPLE_STEP) {
                double middle = (low + high) / 2;
                if (curve.secondsToOpen(middle, Tripping.FAST) > seconds) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return amps * low;
        }
    }

    FittedParts fit() {
        return installation.fit(candidate.id());
    }

    double nominalVolts() {
        return study.aircraft().nominalVolts();
    }

    SizingPhases phases() {
        return survey.phases();
    }

    /** Largest current of an element (A) while the engine runs, with nothing wrong. */
    Carried running(String part, String element) {
        Carried most = Carried.NOTHING;
        for (Phase phase : phases().running().toList()) {
            double amps = Math.abs(survey.rest(phase).amps(part, element));
            most = most.orMore(new Carried(amps, phase.name(), ""));
        }
        return most;
    }

    Rated rated(Placed placed) {
        Trip trip = placed.element().overload().orElseThrow();
        boolean channel = placed.element().role() == Role.ELECTRONICS;
        String name = channel ? placed.part() + " " + placed.element().name() : placed.part();
        return new Rated(name, kind(placed, channel), trip.ratedAmps(), trip.curve());
    }

    private ProtectorKind kind(Placed placed, boolean channel) {
        if (channel) {
            return ProtectorKind.CHANNEL;
        }
        boolean fuse =
                candidate
                        .part(placed.part())
                        .flatMap(p -> p.protection(placed.element().to()))
                        .filter(p -> p.chart() == Chart.FUSE)
                        .isPresent();
        return fuse ? ProtectorKind.FUSE : ProtectorKind.BREAKER;
    }

    /** The smallest protector in a line, if it has one. */
    Optional<Rated> smallestIn(MetalLine line) {
        return line.protectors().map(this::rated).min((a, b) -> Double.compare(a.amps(), b.amps()));
    }
}
