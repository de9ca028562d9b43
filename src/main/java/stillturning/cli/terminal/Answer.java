package stillturning.cli.terminal;

/** What a command has found: for other programs, or for a person. */
public interface Answer {

    /** The whole of it as JSON. */
    String json();

    /** What a person needs of it, but for the caution that stands under everything. */
    void print(Output out);
}
