package stillturning.desktop.viewmodel.explain;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.beans.property.SimpleObjectProperty;
import stillturning.cli.Main;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.dossier.NamedFailures;
import stillturning.files.edit.ChangeRefused;
import stillturning.yaml.YamlDocument;

/** A copy of a demo study that a test opens, changes and explains. */
public final class OpenStudy implements AutoCloseable {

    private final Path folder;
    private final BackgroundWork work;
    private final Draft draft;
    private final Desk desk;
    private final Explaining explaining;

    /**
     * @param parent folder in which the copy is made
     * @param screen the thread of the screen
     */
    public OpenStudy(String demo, Path parent, Executor screen) {
        folder = copied(Path.of("architectures", demo), parent.resolve("copy"));
        work = new BackgroundWork(screen);
        draft = opened(folder);
        desk =
                new Desk(
                        draft,
                        Desk.reading(draft),
                        work,
                        new SimpleObjectProperty<>(Settings.USUAL));
        explaining = new Explaining(desk, NamedFailures::cases);
    }

    private static Draft opened(Path folder) {
        try {
            return Draft.open(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path copied(Path from, Path to) {
        try (Stream<Path> files = Files.list(from)) {
            Files.createDirectories(to);
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(String.valueOf(file.getFileName())));
            }
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Desk desk() {
        return desk;
    }

    public Explaining explaining() {
        return explaining;
    }

    /** Name of the last change that can be taken back; empty if there is none. */
    public String lastChange() {
        return draft.state().undo().orElse("");
    }

    /** What stands in the study's own file. */
    public String text() {
        return draft.document(Desk.STUDY_FILE).map(YamlDocument::text).orElse("");
    }

    /** Another text in the study's own file, from elsewhere in the program. */
    public void write(String text) {
        make(new DraftStep.Replace(Desk.STUDY_FILE, text));
    }

    /** Takes a file out of the study. */
    public void delete(String file) {
        make(new DraftStep.Delete(file));
    }

    private void make(DraftStep step) {
        try {
            desk.make(new Change("Write", List.of(step)));
        } catch (ChangeRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the command line puts on the page of the same study. */
    public String pageOfTheCommandLine(String... options) {
        if (!draft.save().isEmpty()) {
            throw new IllegalStateException(draft.state().problems().toString());
        }
        Path page = folder.resolveSibling("cli.html");
        List<String> words =
                new ArrayList<>(List.of("explain", folder.toString(), "--html", page.toString()));
        words.addAll(List.of(options));
        String said = said(words);
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new UncheckedIOException(said, e);
        }
    }

    /** The file in which the command line keeps what would mend the candidates. */
    public String mendsOfTheCommandLine() {
        if (!draft.save().isEmpty()) {
            throw new IllegalStateException(draft.state().problems().toString());
        }
        String file = folder.resolveSibling("mends.json").toString();
        said(List.of("suggest", folder.toString(), "--lightest", "--keep", file));
        return file;
    }

    private static String said(List<String> words) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        Main.run(
                writer, writer, InputStream.nullInputStream(), false, words.toArray(String[]::new));
        return out.toString();
    }

    @Override
    public void close() {
        work.close();
        draft.close();
    }
}
