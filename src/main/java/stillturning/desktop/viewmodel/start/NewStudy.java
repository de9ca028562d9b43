package stillturning.desktop.viewmodel.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import stillturning.files.Samples;
import stillturning.files.Starter;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.StarterAnswers;
import stillturning.yaml.Problem;

/**
 * A study that is about to begin: the questions, and what was answered so far.
 *
 * @param title of the study
 * @param parent folder in which the study's own folder is made
 * @param numbers how many there are of what the engine needs
 * @param protection what protects and switches the loads
 * @param nominal voltage while charging
 * @param structure whether it leads current
 */
public record NewStudy(
        StringProperty title,
        ObjectProperty<Path> parent,
        NumbersAsked numbers,
        ObjectProperty<LoadProtection> protection,
        ObjectProperty<Nominal> nominal,
        ObjectProperty<AirframeStructure> structure) {

    /** How many batteries, alternators, engine computers and fuel pumps. */
    public record NumbersAsked(
            ObjectProperty<Integer> batteries,
            ObjectProperty<Integer> alternators,
            ObjectProperty<Integer> computers,
            ObjectProperty<Integer> pumps) {

        private static NumbersAsked usual() {
            return new NumbersAsked(
                    new SimpleObjectProperty<>(2),
                    new SimpleObjectProperty<>(1),
                    new SimpleObjectProperty<>(2),
                    new SimpleObjectProperty<>(2));
        }

        private Counts counts() {
            return new Counts(batteries.get(), alternators.get(), computers.get(), pumps.get());
        }
    }

    /**
     * What came of it.
     *
     * @param folder of a study that can be opened; empty if nothing was written
     * @param refusal why nothing was written, and what would help; empty if it was
     */
    public record Begun(Optional<Path> folder, String refusal) {
        private static Begun in(Path folder) {
            return new Begun(Optional.of(folder), "");
        }

        private static Begun refused(String why) {
            return new Begun(Optional.empty(), why);
        }
    }

    private static final String STUDIES = "Stillturning";

    /**
     * @param home the user's folder
     */
    public NewStudy(Path home) {
        this(
                new SimpleStringProperty("My aircraft"),
                new SimpleObjectProperty<>(home.resolve(STUDIES)),
                NumbersAsked.usual(),
                new SimpleObjectProperty<>(LoadProtection.BREAKERS),
                new SimpleObjectProperty<>(Nominal.FOURTEEN_VOLTS),
                new SimpleObjectProperty<>(AirframeStructure.METAL));
    }

    /** The folder that the study would get; empty while the title gives no name for one. */
    public Optional<Path> folder() {
        String name = folderName(title.get());
        return name.isEmpty() ? Optional.empty() : Optional.of(parent.get().resolve(name));
    }

    /** A title as the name of a folder: lower case letters, digits and hyphens. */
    static String folderName(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        return plain.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
    }

    /** Writes the study that was asked for. */
    public Begun begin() {
        Optional<Path> folder = folder();
        if (folder.isEmpty()) {
            return Begun.refused("The study needs a name with a letter or a digit in it.");
        }
        StarterAnswers answers;
        try {
            answers =
                    new StarterAnswers(
                            title.get().strip(),
                            numbers.counts(),
                            protection.get(),
                            nominal.get(),
                            structure.get());
        } catch (IllegalArgumentException e) {
            return Begun.refused(String.valueOf(e.getMessage()));
        }
        List<Problem> problems = Starter.write(folder.get(), answers);
        return problems.isEmpty()
                ? Begun.in(folder.get())
                : Begun.refused(
                        folder.get()
                                + ": "
                                + problems.get(0).wrong()
                                + "; give the study another name or choose another place");
    }

    /** Copies the demo study, beside earlier copies of it, so that nothing of them is lost. */
    public Begun sample() {
        Path at = parent.get().resolve(Samples.LARGE);
        for (int n = 2; Files.exists(at); n++) {
            at = parent.get().resolve(Samples.LARGE + "-" + n);
        }
        try {
            Samples.copy(Samples.LARGE, at);
            return Begun.in(at);
        } catch (IOException e) {
            return Begun.refused(
                    "The demo study cannot be written (" + e + "); choose another place for it.");
        }
    }
}
