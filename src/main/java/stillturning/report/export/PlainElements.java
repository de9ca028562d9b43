package stillturning.report.export;

import java.util.Locale;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Capacitor;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Protector;
import stillturning.parts.element.Rectifier;
import stillturning.report.oneline.CandidateMetal;

/** One element in the lines of a netlist, its name as a comment before it. */
final class PlainElements implements Element.Visitor<String> {

    /** Boltzmann's constant times 300.15 K over the elementary charge (V), CODATA 2018. */
    private static final double THERMAL_VOLTS = 0.025864926;

    /** Below it no simulator finds a state from which to start. */
    private static final double LEAST_VOLTS = 1;

    private final int number;
    private final Placed placed;
    private final Candidate candidate;
    private final Study study;
    private final CandidateMetal metal;

    PlainElements(
            int number, Placed placed, Candidate candidate, Study study, CandidateMetal metal) {
        this.number = number;
        this.placed = placed;
        this.candidate = candidate;
        this.study = study;
        this.metal = metal;
    }

    @Override
    public String visit(Conductor conductor) {
        return resistor(conductor.ohms());
    }

    @Override
    public String visit(Protector protector) {
        return closed() ? resistor(protector.ohms()) : open();
    }

    @Override
    public String visit(Contact contact) {
        return closed() ? resistor(contact.ohms()) : open();
    }

    @Override
    public String visit(Channel channel) {
        return closed() ? resistor(channel.switching().ohms()) : open();
    }

    @Override
    public String visit(Coil coil) {
        return resistor(coil.ohms());
    }

    @Override
    public String visit(Rectifier diode) {
        return named("")
                + line("D", ends() + " MOD" + number)
                + ".model MOD"
                + number
                + " D(IS="
                + exact(diode.saturationAmps())
                + " N="
                + exact(diode.emissionVolts() / THERMAL_VOLTS)
                + " RS="
                + exact(diode.ohms())
                + ")\n";
    }

    @Override
    public String visit(Cell cell) {
        double charge = cell.chargeAtStart();
        double celsius = study.aircraft().celsius(part().tag().zone());
        int piece = cell.openCircuit().curve().pieceAt(charge);
        double rest = cell.openCircuit().voltsOn(piece, charge, celsius);
        String inside = "c" + number;
        return named("at rest, behind its resistance")
                + line("V", inside + " " + placed.to() + " " + exact(rest))
                + line(
                        "R",
                        placed.from()
                                + " "
                                + inside
                                + " "
                                + exact(cell.ohmsOn(piece, charge, celsius)));
    }

    @Override
    public String visit(Consumer consumer) {
        double share = share();
        if (consumer.demand().selfPowered() || share == 0) {
            return named("off in this phase, or supplies itself");
        }
        double amps = consumer.demand().amps() * share;
        return switch (consumer.demand().kind()) {
            case CONSTANT_CURRENT -> named("") + line("I", ends() + " " + exact(amps));
            case CONSTANT_RESISTANCE -> resistor(consumer.demand().ohms() / share);
            case CONSTANT_POWER ->
                    named("constant power, below its minimum a resistance")
                            + power(
                                    consumer.demand().watts() * share,
                                    consumer.tolerance().minimumVolts());
            case SELF_POWERED -> open();
        };
    }

    private String power(double watts, double leastVolts) {
        String volts = "V(" + placed.from() + "," + placed.to() + ")";
        double least = Math.max(leastVolts, LEAST_VOLTS);
        String works = exact(watts) + "/" + volts;
        String starved = exact(watts / (least * least)) + "*" + volts;
        return line("B", ends() + " I=" + volts + ">" + exact(least) + "?" + works + ":" + starved);
    }

    /** Share of the time that its load runs in the phase in which failures happen. */
    private double share() {
        String phase = study.goals().failurePhase().name();
        Optional<LoadNeed> load = study.aircraft().load(placed.part());
        return load.map(l -> l.averageAmps(phase) / l.demand().amps()).orElse(1.0);
    }

    @Override
    public String visit(Conversion conversion) {
        return named("converter, left out: its law has no plain element");
    }

    @Override
    public String visit(Generator generator) {
        return named(
                "charging source, left out; regulates at "
                        + exact(generator.regulation().setVolts())
                        + " V");
    }

    @Override
    public String visit(Guard guard) {
        return named("guard, watches only");
    }

    @Override
    public String visit(Capacitor capacitor) {
        return named("leak of a capacitor") + resistance(capacitor.leakOhms());
    }

    private Part part() {
        return candidate
                .part(placed.part())
                .orElseThrow(() -> new IllegalStateException("no part " + placed.part()));
    }

    private boolean closed() {
        return metal.closedInFlight(part(), placed.element().name());
    }

    private String open() {
        return named("open");
    }

    private String resistor(double ohms) {
        return named("") + resistance(ohms);
    }

    private String resistance(double ohms) {
        return line("R", ends() + " " + exact(ohms));
    }

    private String ends() {
        return placed.from() + " " + placed.to();
    }

    private String line(String kind, String words) {
        return kind + number + " " + words + "\n";
    }

    private String named(String what) {
        return Netlist.comment(placed.name() + (what.isEmpty() ? "" : ", " + what), number);
    }

    private static String exact(double value) {
        return String.format(Locale.ROOT, "%.9g", value);
    }
}
