package stillturning.report.page;

import java.util.List;
import stillturning.report.drawing.Picture;
import stillturning.report.page.Page.Fact;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** A piece of running text, for paper, the page and the terminal alike. */
public sealed interface Block {

    /** A heading inside a sheet. */
    record Heading(String words) implements Block {}

    /** A sentence that stands out. */
    record Lead(String text) implements Block {}

    /** A paragraph. */
    record Words(String text) implements Block {}

    /** A paragraph that explains what stands above it. */
    record Note(String text) implements Block {}

    /** A list. */
    record Points(List<String> points) implements Block {
        public Points {
            points = List.copyOf(points);
        }
    }

    /** Labels, each with what it says. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** A table. */
    record Grid(Table<?> table) implements Block {

        /** The columns of some rows. */
        public static <R> Grid of(List<R> rows, List<Column<R>> columns) {
            return new Grid(new Table<>(columns, rows));
        }
    }

    /** Lines that keep their shape. */
    record Lines(List<String> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    /** A drawing, no larger than it is. */
    record Drawing(Picture picture, Room room) implements Block {
        /** It as SVG text. */
        public String svg() {
            return picture.toSvg(room.fitting(picture));
        }
    }

    /** A table with a small drawing before each row. */
    record Lineup(List<Head> heads, List<Shown> rows) implements Block {

        /** The head of a column, and its share of the width (%). */
        public record Head(String words, int share) {}

        /** One row. */
        public record Shown(Drawing drawing, List<String> cells) {
            public Shown {
                cells = List.copyOf(cells);
            }
        }

        public Lineup {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /** What somebody ticks once it is done. */
    record Boxes(List<String> steps) implements Block {
        public Boxes {
            steps = List.copyOf(steps);
        }
    }

    /** Labels, each with a line to write on. */
    record Blanks(List<String> labels) implements Block {
        public Blanks {
            labels = List.copyOf(labels);
        }
    }

    /** What must not be overlooked. */
    record Warning(String heading, List<String> points) implements Block {
        public Warning {
            points = List.copyOf(points);
        }
    }

    /**
     * Room for a drawing on paper.
     *
     * @param wide at most so wide (mm)
     * @param high at most so high (mm)
     */
    record Room(double wide, double high) {

        private static final double MILLIMETRES_PER_INCH = 25.4;

        /** A CSS pixel is a ninety-sixth of an inch (CSS Values and Units 3, 6.2, from memory). */
        private static final double PIXELS_PER_INCH = 96;

        /** More than this does not fit on a sheet that stands upright (mm). */
        private static final double UPRIGHT = 186;

        /** Whether it wants a sheet that lies on its side. */
        public boolean broad() {
            return wide > UPRIGHT;
        }

        /** How large one unit of a picture may be drawn (mm), at most as large as it is made. */
        double fitting(Picture picture) {
            return Math.min(
                    MILLIMETRES_PER_INCH / PIXELS_PER_INCH,
                    Math.min(wide / picture.width(), high / picture.height()));
        }
    }
}
