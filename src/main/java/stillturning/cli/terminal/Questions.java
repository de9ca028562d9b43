package stillturning.cli.terminal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.LooseNames;

/** Asks somebody at a terminal; an empty line takes what is offered. */
public final class Questions {

    private final PrintWriter out;
    private final BufferedReader in;

    public Questions(PrintWriter out, BufferedReader in) {
        this.out = out;
        this.in = in;
    }

    /**
     * Asks until one of the choices is given.
     *
     * @param choices in words; the first is what an empty line takes
     * @throws Refusal if the answers end
     */
    public String choose(String question, List<String> choices) {
        while (true) {
            out.print(
                    question + " (" + String.join(" or ", choices) + ") [" + choices.get(0) + "] ");
            out.flush();
            String said = line();
            Optional<String> chosen =
                    said.isEmpty() ? Optional.of(choices.get(0)) : chosen(said, choices);
            if (chosen.isPresent()) {
                return chosen.get();
            }
            out.println("  \"" + said + "\" is none of: " + String.join(", ", choices));
        }
    }

    /** The one choice that an answer means, if it means just one. */
    public static Optional<String> chosen(String said, List<String> choices) {
        List<LooseNames.Named<String>> named =
                choices.stream()
                        .map(c -> new LooseNames.Named<>(c, List.of(LooseNames.LooseName.of(c))))
                        .toList();
        List<String> best = LooseNames.best(said, named);
        return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
    }

    private String line() {
        try {
            String line = in.readLine();
            if (line == null) {
                throw new Refusal("the answers ended before the questions; nothing was written");
            }
            return line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException("the answers cannot be read", e);
        }
    }
}
