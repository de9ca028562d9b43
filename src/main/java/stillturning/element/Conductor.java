package stillturning.element;

/** Metal between two terminals: wire, stud, pin, bus bar. */
public record Conductor(String name, String from, String to, double ohms) implements Element {

    public Conductor {
        Require.positive(name, "resistance (ohm)", ohms);
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }
}
