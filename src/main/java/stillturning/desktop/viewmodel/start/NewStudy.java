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
import stillturning.files.Starter.Answers;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.Protection;
import stillturning.yaml.Problem;

/** A study that is about to begin: the questions, and what was answered so far. */
public final class NewStudy {

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

    private final StringProperty title = new SimpleStringProperty("My aircraft");
    private final ObjectProperty<Path> parent;
    private final ObjectProperty<Integer> batteries = new SimpleObjectProperty<>(2);
    private final ObjectProperty<Integer> alternators = new SimpleObjectProperty<>(1);
    private final ObjectProperty<Integer> computers = new SimpleObjectProperty<>(2);
    private final ObjectProperty<Integer> pumps = new SimpleObjectProperty<>(2);
    private final ObjectProperty<Protection> protection =
            new SimpleObjectProperty<>(Protection.BREAKERS);
    private final ObjectProperty<Nominal> nominal =
            new SimpleObjectProperty<>(Nominal.FOURTEEN_VOLTS);

    /**
     * @param home the user's folder
     */
    public NewStudy(Path home) {
        parent = new SimpleObjectProperty<>(home.resolve(STUDIES));
    }

    /** Title of the study. */
    public StringProperty title() {
        return title;
    }

    /** Folder in which the study's own folder is made. */
    public ObjectProperty<Path> parent() {
        return parent;
    }

    /** How many batteries. */
    public ObjectProperty<Integer> batteries() {
        return batteries;
    }

    /** How many alternators. */
    public ObjectProperty<Integer> alternators() {
        return alternators;
    }

    /** How many engine computers. */
    public ObjectProperty<Integer> computers() {
        return computers;
    }

    /** How many fuel pumps. */
    public ObjectProperty<Integer> pumps() {
        return pumps;
    }

    /** What protects and switches the loads. */
    public ObjectProperty<Protection> protection() {
        return protection;
    }

    /** Voltage while charging. */
    public ObjectProperty<Nominal> nominal() {
        return nominal;
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
        Answers answers;
        try {
            answers =
                    new Answers(
                            title.get().strip(),
                            new Counts(
                                    batteries.get(),
                                    alternators.get(),
                                    computers.get(),
                                    pumps.get()),
                            protection.get(),
                            nominal.get());
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
