package stillturning.desktop.view.window;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import stillturning.desktop.draft.Conflict;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.draft.JournalPolicy;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.AreaHost;
import stillturning.desktop.view.Theme;
import stillturning.desktop.view.guide.GuideWindow;
import stillturning.desktop.view.start.StartArea;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.BackgroundWork;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.FileUpkeep;
import stillturning.desktop.viewmodel.Notice;
import stillturning.desktop.viewmodel.Notice.Severity;
import stillturning.desktop.viewmodel.Settings;
import stillturning.desktop.viewmodel.SettingsFile;
import stillturning.desktop.viewmodel.start.NewStudy;
import stillturning.files.LenientReading;
import stillturning.report.drawing.Paper;

/** The program's window: the areas, what is open, and the way from one to the other. */
public final class Window {

    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;

    /** How often files are looked at for what others wrote. */
    private static final long WATCH_MILLISECONDS = 800;

    private static final double SMALLEST_WIDTH = 1024;
    private static final double SMALLEST_HEIGHT = 700;
    private static final double ROOM = 640;
    private static final double ROOM_HIGH = 400;
    private static final String OPENING = "Opening the study";

    private final Stage stage;
    private final SettingsFile file;
    private final ObjectProperty<Settings> settings;
    private final BackgroundWork work = new BackgroundWork(Platform::runLater);
    private final ScheduledExecutorService keeper =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "keeper");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final ScheduledFuture<?> watching;
    private final BorderPane frame = new BorderPane();
    private final Notices notices = new Notices();
    private final StatusLine status = new StatusLine(work);
    private final AreaBar bar = new AreaBar(this::show);
    private final StartArea start;
    private final Header header;
    private final AreaHost host;
    private volatile Optional<OpenStudy> open = Optional.empty();

    /**
     * @param stage not shown yet
     * @param file where settings are kept
     */
    public Window(Stage stage, SettingsFile file, Consumer<URI> browser) {
        this.stage = stage;
        this.file = file;
        this.settings = new SimpleObjectProperty<>(file.read());
        this.host = new AreaHost(stage, browser);
        this.start =
                new StartArea(
                        new NewStudy(Path.of(System.getProperty("user.home", "."))),
                        settings,
                        new StartArea.Doors(this::open, this::chooseFolder));
        this.header = new Header(settings, this);
        frame.setTop(new VBox(header, notices));
        frame.setLeft(bar);
        frame.setBottom(status);
        frame.getStyleClass().add("window");
        Scene scene = new Scene(frame, USUAL_WIDTH, USUAL_HEIGHT);
        Theme.apply(scene, settings.get());
        settings.addListener((of, before, now) -> Theme.apply(scene, now));
        stage.setScene(scene);
        stage.setOnCloseRequest(event -> close());
        stage.focusedProperty().addListener((of, before, now) -> look());
        watching =
                keeper.scheduleWithFixedDelay(
                        this::watch, WATCH_MILLISECONDS, WATCH_MILLISECONDS, TimeUnit.MILLISECONDS);
        acceptFolders(scene);
        place();
        bar.enable(false);
        show(AreaName.START);
    }

    private Optional<Path> chooseFolder(String title, Path from) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        if (Files.isDirectory(from)) {
            chooser.setInitialDirectory(from.toFile());
        }
        return Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
    }

    private void place() {
        stage.setTitle("Stillturning");
        limit();
        settings.addListener((of, before, now) -> limit());
        stage.getIcons().add(icon());
        settings.get()
                .window()
                .ifPresent(
                        at -> {
                            stage.setX(at.x());
                            stage.setY(at.y());
                            stage.setWidth(at.width());
                            stage.setHeight(at.height());
                            stage.setMaximized(at.maximized());
                        });
    }

    /** Below this something would be cut: larger letters need a larger window. */
    private void limit() {
        double scale = settings.get().scalePercent() / 100.0;
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setMinWidth(Math.min(screen.getWidth(), Math.max(SMALLEST_WIDTH, ROOM * scale)));
        stage.setMinHeight(
                Math.min(screen.getHeight(), Math.max(SMALLEST_HEIGHT, ROOM_HIGH * scale)));
    }

    private void acceptFolders(Scene scene) {
        scene.setOnDragOver(
                event -> {
                    if (event.getDragboard().hasFiles()) {
                        event.acceptTransferModes(TransferMode.LINK, TransferMode.COPY);
                    }
                });
        scene.setOnDragDropped(
                event -> {
                    Dragboard dropped = event.getDragboard();
                    event.setDropCompleted(dropped.hasFiles());
                    if (dropped.hasFiles()) {
                        Path first = dropped.getFiles().get(0).toPath().toAbsolutePath();
                        open(Files.isDirectory(first) ? first : first.resolveSibling(""));
                    }
                });
    }

    /** Shows the window. */
    public void show() {
        stage.show();
    }

    /** The study that is open. */
    Optional<OpenStudy> study() {
        return open;
    }

    /** Saves what is unsaved. */
    void save() {
        open.ifPresent(study -> study.upkeep().save());
    }

    /** Takes the last change back. */
    void undo() {
        open.ifPresent(study -> study.desk().undo());
    }

    /** Makes the change again that was taken back last. */
    void redo() {
        open.ifPresent(study -> study.desk().redo());
    }

    /** Letters and symbols larger or smaller by a step; the usual size for 0. */
    void scale(int steps) {
        Settings now = settings.get();
        int percent = steps == 0 ? Settings.SMALLEST_PERCENT : now.scalePercent() + 25 * steps;
        settings.set(now.scaled(percent));
    }

    /** Tells what the program is. */
    void guide() {
        GuideWindow.show(stage, settings.get().paper() == Paper.DARK);
    }

    void about() {
        About.show(stage);
    }

    /** Ends the program as the button that closes the window does. */
    void quit() {
        stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
        stage.close();
    }

    /** Asks for a study's folder and opens it. */
    void chooseStudy() {
        Path from =
                open.map(o -> o.desk().draft().folder())
                        .orElse(Path.of(System.getProperty("user.home", ".")));
        chooseFolder("A study's folder", from).ifPresent(this::open);
    }

    /** Opens a study; the one that was open is kept with what is unsaved in it. */
    public void open(Path folder) {
        Path whole = folder.toAbsolutePath().normalize();
        JournalPolicy keeping = new JournalPolicy(file.recoveryFolder(), keeper, Clock.systemUTC());
        work.start(
                OPENING,
                progress -> {
                    Draft draft = Draft.open(whole, keeping);
                    return new Opened(draft, Desk.reading(draft));
                },
                opened -> take(opened, whole),
                wrong -> refuse(whole, wrong));
    }

    private record Opened(Draft draft, LenientReading read) {}

    private void refuse(Path folder, Exception wrong) {
        settings.set(settings.get().forgotten(folder.toString()));
        notices.show(
                Notice.of(
                        "opening",
                        Severity.WRONG,
                        folder
                                + " cannot be opened: "
                                + wrong.getMessage()
                                + ". Choose a folder that holds a study.yaml."));
    }

    private void take(Opened opened, Path folder) {
        closeStudy();
        notices.clearAll();
        settings.set(settings.get().opened(folder.toString()));
        keepSettings();
        Desk desk = new Desk(opened.draft(), opened.read(), work, settings);
        OpenStudy study =
                new OpenStudy(
                        desk,
                        new FileUpkeep.Teller(notices::show, notices::clear, this::compare),
                        ZoneId.systemDefault(),
                        host);
        open = Optional.of(study);
        desk.guide(this::go);
        header.follow(study);
        status.follow(desk);
        desk.texts().addListener((of, before, now) -> entitle(desk));
        entitle(desk);
        bar.enable(true);
        study.upkeep().offerRecovered();
        show(desk.study().isPresent() ? AreaName.DECIDE : AreaName.DRAW);
    }

    private void entitle(Desk desk) {
        String mark = desk.texts().get().isSaved() ? "" : "\u25CF ";
        stage.setTitle(mark + desk.draft().folder().getFileName() + " \u2014 Stillturning");
    }

    private void look() {
        if (stage.isFocused()) {
            open.ifPresent(study -> study.upkeep().look());
        }
    }

    private void compare(Conflict conflict) {
        open.ifPresent(
                study -> {
                    Node area = frame.getCenter();
                    frame.setCenter(
                            new ComparePane(
                                    conflict,
                                    choices -> study.upkeep().resolve(conflict, choices),
                                    () -> frame.setCenter(area)));
                });
    }

    /** Looks whether somebody wrote a file, off the screen's thread. */
    private void watch() {
        open.map(OpenStudy::upkeep)
                .filter(FileUpkeep::isTouched)
                .ifPresent(touched -> Platform.runLater(this::look));
    }

    /** Brings an area to the front. */
    void show(AreaName area) {
        go(Destination.of(area));
    }

    private void go(Destination destination) {
        AreaName name = open.isPresent() ? destination.area() : AreaName.START;
        Area area = name == AreaName.START ? start : open.orElseThrow().area(name);
        frame.setCenter(area.view());
        bar.choose(name);
        area.show(destination);
    }

    /** Closes the study; what is unsaved stays where the next start finds it. */
    void closeStudy() {
        open.ifPresent(OpenStudy::close);
        open = Optional.empty();
        header.clear();
        status.clear();
        bar.enable(false);
        stage.setTitle("Stillturning");
        show(AreaName.START);
    }

    /**
     * Ends what runs in the background and keeps settings; the window itself is closed by others.
     */
    public void close() {
        settings.set(
                settings.get()
                        .with(
                                new Settings.WindowFrame(
                                        stage.getX(),
                                        stage.getY(),
                                        stage.getWidth(),
                                        stage.getHeight(),
                                        stage.isMaximized())));
        keepSettings();
        closeStudy();
        work.close();
        watching.cancel(false);
        keeper.shutdown();
    }

    private void keepSettings() {
        try {
            file.write(settings.get());
        } catch (IOException unwritable) {
            notices.show(
                    Notice.of(
                            "settings",
                            Severity.CARE,
                            "Settings cannot be kept ("
                                    + unwritable.getMessage()
                                    + "); they hold until the program ends."));
        }
    }

    private static Image icon() {
        String resource = "/stillturning/desktop/view/icon.png";
        return new Image(
                Objects.requireNonNull(Window.class.getResource(resource), resource)
                        .toExternalForm());
    }
}
