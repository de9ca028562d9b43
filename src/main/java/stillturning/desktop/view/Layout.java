package stillturning.desktop.view;

import java.util.regex.Pattern;
import javafx.beans.property.DoubleProperty;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TableColumnBase;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Pieces of layout that several panes use. */
public final class Layout {

    /** Room for a scroll bar. */
    private static final double BAR = 16;

    /** Room on both sides of the words above a column (em). */
    private static final double HEAD_EDGES = 1.4;

    /** The same where columns are narrow. */
    private static final double NARROW_EDGES = 0.8;

    /** Breadth of a letter above a column (em). */
    private static final double HEAD_LETTER = 0.5;

    private Layout() {}

    /** Nodes one beside the other. */
    public static HBox inLine(Node... nodes) {
        HBox line = new HBox(nodes);
        line.getStyleClass().add("in-line");
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** A control with a word before it. */
    public static HBox named(String word, Node control) {
        HBox box = inLine(new Label(word), control);
        box.getStyleClass().add("named");
        return box;
    }

    /** Takes the room that is left in a line. */
    public static Region gap() {
        return wide(new Region());
    }

    /** Gives a node the room that is left in a line. */
    public static <N extends Node> N wide(N node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }

    /** Gives a node the room that is left in a column. */
    public static <N extends Node> N high(N node) {
        VBox.setVgrow(node, Priority.ALWAYS);
        return node;
    }

    /** One node above another, the border between them to be moved. */
    public static SplitPane above(double share, Node upper, Node lower) {
        SplitPane split = new SplitPane(upper, lower);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(share);
        return split;
    }

    /** Scrolls up and down only. */
    public static void scroll(ScrollPane scroll, Node content) {
        scroll.setContent(content);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("edge-to-edge");
    }

    /** Moved sideways by itself where it is broader than the room for it; never cut below. */
    public static ScrollPane sideways(Region content) {
        ScrollPane scroll = new ScrollPane();
        scroll(scroll, content);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.minHeightProperty().bind(content.heightProperty().add(BAR));
        return scroll;
    }

    /** Makes a column of a table so broad (em), as letters grow and shrink. */
    public static void broad(TableColumnBase<?, ?> column, Label letters, double ems) {
        broad(column.prefWidthProperty(), letters, ems);
    }

    /** Keeps a width at so many heights of a letter (em). */
    public static void broad(DoubleProperty width, Label letters, double ems) {
        width.bind(letters.fontProperty().map(font -> ems * font.getSize()));
    }

    /** Puts words above a column of a table, in as many lines as they need. */
    public static void head(TableColumnBase<?, ?> column, String words) {
        column.setGraphic(new Head(column, words, HEAD_EDGES));
    }

    /** The same above a column in which there is little room beside the words. */
    public static void narrowHead(TableColumnBase<?, ?> column, String words) {
        column.getStyleClass().add("narrow-column");
        column.setGraphic(new Head(column, words, NARROW_EDGES));
    }

    /** Breadth at which no word above a narrow column is broken (em). */
    public static double narrowest(String words) {
        int longest =
                Pattern.compile(" ").splitAsStream(words).mapToInt(String::length).max().orElse(0);
        return longest * HEAD_LETTER + NARROW_EDGES;
    }

    /** A table asks its heads for their height without telling them how broad they are. */
    private static final class Head extends Label {
        private final TableColumnBase<?, ?> column;
        private final double edges;

        Head(TableColumnBase<?, ?> column, String words, double edges) {
            super(words);
            this.column = column;
            this.edges = edges;
            getStyleClass().add("wrapped-head");
            setWrapText(true);
            column.widthProperty().addListener((of, before, now) -> requestLayout());
        }

        private double room() {
            return Math.max(1, column.getWidth() - edges * getFont().getSize());
        }

        @Override
        protected double computePrefWidth(double height) {
            return room();
        }

        @Override
        protected double computePrefHeight(double width) {
            return super.computePrefHeight(room());
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }
    }

    /** Moved up and down where there is less room than its content needs at least. */
    public static ScrollPane roomy(Region content) {
        ScrollPane scroll = new ScrollPane();
        scroll(scroll, content);
        scroll.setFitToHeight(true);
        return scroll;
    }

    /** A tab that stays. */
    public static Tab tab(String words, @Nullable Node content) {
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    /** A column of a grid that is as wide as what is in it. */
    public static ColumnConstraints asWideAsWords() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(Region.USE_PREF_SIZE);
        return column;
    }

    /** A column of a grid that takes the room that is left. */
    public static ColumnConstraints growing() {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(Priority.ALWAYS);
        return column;
    }
}
