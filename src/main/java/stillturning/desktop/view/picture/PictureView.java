package stillturning.desktop.view.picture;

import static java.util.Objects.requireNonNull;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Affine;
import org.jspecify.annotations.Nullable;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.layout.Sheet;

/**
 * A diagram to look at and to work on: moved, enlarged, pointed at by mouse and by keys. What is
 * pointed at is told by its key, as in {@link stillturning.report.drawing.Mark.PartMarks}.
 *
 * <p>Arrow keys move the picture until Enter goes to its symbols; then they go from one to the
 * next, and Escape goes back.
 */
public final class PictureView extends Region {
    static final String TOLD =
            "Diagram. Arrow keys move it, Enter goes to its symbols; there arrow keys go to the"
                    + " next, with Control along a wire; J picks a terminal, and at another symbol"
                    + " the one to join it with.";

    private static final double ZOOM_STEP = 1.2;

    /** What the window shows until somebody moves the picture. */
    private enum Look {
        WHOLE,
        READABLE,
        MOVED
    }

    /** Takes what the user wants a menu about: a symbol, a line, or the empty paper. */
    @FunctionalInterface
    public interface Menu {
        /** Shows the menu at a point of the screen. */
        void show(Optional<String> key, double screenX, double screenY);
    }

    /** Takes what has been dragged onto the paper. */
    @FunctionalInterface
    public interface DropTarget {
        /**
         * Takes a text dropped at a place of the picture, over a symbol or line if one is there.
         */
        void take(String text, Point at, Optional<String> key);
    }

    private final RegionColours ground = new RegionColours(this);
    private final PictureNodes nodes = new PictureNodes(ground::colour);
    private final Highlights highlights = new Highlights();
    private final Group plane = new Group(nodes.root(), highlights.root());
    private final Affine transform = new Affine();
    private final Rectangle clip = new Rectangle();
    private final Minimap minimap =
            new Minimap(at -> move(viewport().centred(at, getWidth(), getHeight())));
    private final Glide glide = new Glide(this::put);
    private final Tooltip tooltip = new Tooltip();
    private final ReadOnlyDoubleWrapper shape = new ReadOnlyDoubleWrapper();
    private final Set<String> chosen = new LinkedHashSet<>();
    private Targets targets = Targets.NONE;
    private Box paper = new Box(0, 0, 1, 1);
    private @Nullable Sheet sheet;
    private Viewport viewport = new Viewport(1, 0, 0);
    private Look look = Look.WHOLE;
    private final LetterScale letters = new LetterScale();
    private OptionalDouble smallestLetters = OptionalDouble.empty();
    private double beginning;
    private Optional<String> focused = Optional.empty();
    private Optional<String> revealing = Optional.empty();
    private Consumer<List<String>> onPick = keys -> {};
    private Consumer<String> onOpen = key -> {};
    private Menu onMenu = (key, x, y) -> {};
    private @Nullable BiConsumer<SymbolPort, SymbolPort> onJoin;
    private @Nullable DropTarget onDrop;

    /** A view without a picture. */
    public PictureView() {
        getStyleClass().add("picture-view");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.NODE);
        setAccessibleText(TOLD);
        setMinSize(80, 80);
        setClip(clip);
        plane.setAutoSizeChildren(false);
        plane.setManaged(false);
        plane.getTransforms().add(transform);
        getChildren().addAll(plane, minimap, letters.node());
        letters.onChange(this::requestLayout);
        ground.onChange(() -> nodes.recolour(ground::colour));
        new Pointing(this).listen();
        new Dragging(this).listen();
        new Keys(this).listen();
    }

    /** Width over height of what there is to draw on, 0 while nobody knows. */
    public ReadOnlyDoubleProperty shape() {
        return shape.getReadOnlyProperty();
    }

    @Override
    public String getUserAgentStylesheet() {
        return requireNonNull(
                        PictureView.class.getResource("/stillturning/desktop/view/picture.css"))
                .toExternalForm();
    }

    /**
     * Shows a sheet in some state. A picture of the same sheet as before costs only what differs,
     * and leaves the view where it is.
     *
     * @param picture of that sheet
     */
    public void show(Sheet sheet, Picture picture) {
        boolean other = this.sheet != sheet;
        this.sheet = sheet;
        paper = new Box(0, 0, picture.width(), picture.height());
        smallestLetters = picture.smallestLetters();
        boolean hadFocus = holdsFocus();
        nodes.show(picture);
        if (other) {
            targets = Targets.of(sheet);
            beginning = targets.first().flatMap(targets::box).map(b -> middle(b).y()).orElse(0.0);
            minimap.show(sheet, picture.width(), picture.height());
            highlights.mark(Map.of(), targets);
            chosen.removeIf(key -> targets.box(key).isEmpty());
            focused = focused.filter(key -> targets.box(key).isPresent());
            highlight();
            point(Optional.empty());
        }
        if (hadFocus && !holdsFocus()) {
            focus(focused);
        }
        requestLayout();
    }

    /** Whether this or one of its symbols has the focus; a symbol drawn again loses it. */
    private boolean holdsFocus() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        for (Node up = owner; up != null; up = up.getParent()) {
            if (up == this) {
                return true;
            }
        }
        return false;
    }

    /** Told whenever the user chooses symbols or lines, or nothing. */
    public void setOnPick(Consumer<List<String>> action) {
        onPick = action;
    }

    /** Told on a double click, and on Enter at a focused symbol. */
    public void setOnOpen(Consumer<String> action) {
        onOpen = action;
    }

    /** Told when a menu is asked for. */
    public void setOnMenu(Menu action) {
        onMenu = action;
    }

    /** Lets ports be joined by dragging from one to the other. */
    public void setOnJoin(BiConsumer<SymbolPort, SymbolPort> action) {
        onJoin = action;
    }

    /** Lets texts be dropped onto the paper. */
    public void setOnDrop(DropTarget action) {
        onDrop = action;
    }

    /** The keys of what is chosen, in the order of choosing. */
    public List<String> chosen() {
        return List.copyOf(chosen);
    }

    /** Chooses these and nothing else, without telling anybody. */
    public void choose(Collection<String> keys) {
        chosen.clear();
        keys.stream().filter(key -> targets.box(key).isPresent()).forEach(chosen::add);
        highlight();
    }

    /** Marks in what a picture differs from another, until the next sheet is shown. */
    public void mark(Map<Difference, List<String>> keys) {
        highlights.mark(keys, targets);
    }

    /** Shows the whole picture, and goes on doing so when the window changes. */
    public void fit() {
        look = Look.WHOLE;
        glide.to(viewport, looking());
    }

    /** Shows as much as can be read, from where the power comes from on, until it is moved. */
    public void fitToRead() {
        look = Look.READABLE;
        requestLayout();
    }

    /** One unit of the picture for each pixel. */
    public void actualSize() {
        zoom(1 / viewport.scale(), getWidth() / 2, getHeight() / 2);
    }

    /** Larger about the middle. */
    public void zoomIn() {
        zoom(ZOOM_STEP, getWidth() / 2, getHeight() / 2);
    }

    /** Smaller about the middle. */
    public void zoomOut() {
        zoom(1 / ZOOM_STEP, getWidth() / 2, getHeight() / 2);
    }

    /** Goes to a symbol or line, large enough to be read. */
    public void zoomTo(String key) {
        targets.box(key).ifPresent(this::goTo);
    }

    /** Brings a symbol or line into sight, and moves nothing if it is there already. */
    public void reveal(String key) {
        revealing = Optional.of(key);
        requestLayout();
    }

    private void reveal() {
        Optional<Box> box = revealing.flatMap(targets::box);
        revealing = Optional.empty();
        box.ifPresent(
                b -> {
                    Viewport next = viewport.showing(b, getWidth(), getHeight());
                    if (!next.equals(viewport)) {
                        move(viewport.centred(middle(b), getWidth(), getHeight()));
                    }
                });
    }

    private static Point middle(Box box) {
        return new Point(box.x() + box.width() / 2, box.y() + box.height() / 2);
    }

    private void goTo(Box box) {
        look = Look.MOVED;
        double scale = Math.max(viewport.scale(), letters.largest());
        glide.to(viewport, new Viewport(scale, 0, 0).centred(middle(box), getWidth(), getHeight()));
    }

    // --- for the gestures of this room

    Viewport viewport() {
        return viewport;
    }

    Targets targets() {
        return targets;
    }

    Highlights highlights() {
        return highlights;
    }

    Optional<BiConsumer<SymbolPort, SymbolPort>> joining() {
        return Optional.ofNullable(onJoin);
    }

    Optional<DropTarget> dropping() {
        return Optional.ofNullable(onDrop);
    }

    Optional<String> focusedKey() {
        return focused;
    }

    Optional<String> keyAt(double x, double y) {
        return targets.keyAt(viewport.onPicture(x, y), 5 / viewport.scale());
    }

    void zoom(double factor, double x, double y) {
        move(viewport.zoomed(factor, x, y));
    }

    /** Moves at once, by the user's hand. */
    void move(Viewport next) {
        look = Look.MOVED;
        glide.stop();
        put(next.within(paper, getWidth(), getHeight()));
    }

    void point(Optional<String> key) {
        highlights.point(key.stream().toList(), targets, onJoin != null);
        Optional<String> title = key.flatMap(nodes::part).map(node -> node.part().title());
        title.ifPresent(tooltip::setText);
        Tooltip.uninstall(this, tooltip);
        if (title.isPresent()) {
            Tooltip.install(this, tooltip);
        }
    }

    void pick(Collection<String> keys) {
        choose(keys);
        onPick.accept(chosen());
    }

    void open(String key) {
        onOpen.accept(key);
    }

    void menu(Optional<String> key, double screenX, double screenY) {
        onMenu.show(key, screenX, screenY);
    }

    /** Gives a symbol the focus, and chooses it; without one the view has it. */
    void focus(Optional<String> key) {
        focused = key;
        key.flatMap(nodes::part).ifPresentOrElse(PartNode::requestFocus, this::requestFocus);
        highlight();
        key.flatMap(targets::box)
                .ifPresent(
                        box -> {
                            Viewport next = viewport.showing(box, getWidth(), getHeight());
                            if (!next.equals(viewport)) {
                                move(next);
                            }
                        });
    }

    private void highlight() {
        highlights.choose(chosen, targets);
        highlights.focus(focused.stream().toList(), targets);
    }

    private Viewport looking() {
        return switch (look) {
            case WHOLE -> Viewport.fitting(paper, getWidth(), getHeight(), letters.largest());
            case READABLE ->
                    Viewport.readable(
                                    paper,
                                    getWidth(),
                                    getHeight(),
                                    letters.readable(smallestLetters),
                                    letters.largest())
                            .level(paper, beginning, getHeight());
            case MOVED -> viewport;
        };
    }

    private void put(Viewport next) {
        viewport = next;
        transform.setToTransform(next.scale(), 0, next.x(), 0, next.scale(), next.y());
        Box seen = next.seen(getWidth(), getHeight());
        boolean all = seen.joined(paper).equals(seen);
        minimap.setVisible(!all && sheet != null && minimap.leavesRoom(getWidth(), getHeight()));
        minimap.frame(seen);
    }

    @Override
    protected void layoutChildren() {
        clip.setWidth(getWidth());
        clip.setHeight(getHeight());
        if (getWidth() > 0 && getHeight() > 0) {
            shape.set(getWidth() / getHeight());
            put(looking());
            if (look != Look.MOVED) {
                avoidSymbols();
            }
            reveal();
        }
        minimap.placeIn(getWidth(), getHeight());
    }

    private void avoidSymbols() {
        List<Box> symbols =
                targets.spots().stream().map(spot -> viewport.onWindow(spot.box())).toList();
        Optional<Box> first = targets.first().flatMap(targets::box).map(viewport::onWindow);
        first.ifPresent(box -> minimap.avoid(box, symbols, getWidth(), getHeight()));
    }
}
