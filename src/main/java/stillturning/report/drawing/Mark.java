package stillturning.report.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** One thing on a picture; later ones lie above earlier ones. */
public sealed interface Mark {

    /** Sizes of all that is written (drawing units). */
    DoubleStream letterSizes();

    /**
     * A stroked or filled outline.
     *
     * @param data path in the path language of SVG: M, L, A and Z, absolute
     */
    record Path(String data, Stroke pen) implements Mark {
        @Override
        public DoubleStream letterSizes() {
            return DoubleStream.empty();
        }
    }

    /**
     * One line of text.
     *
     * @param x place of the anchor (drawing units)
     * @param y base line (drawing units)
     */
    record Text(String words, double x, double y, Anchor anchor, Type type) implements Mark {
        @Override
        public DoubleStream letterSizes() {
            return DoubleStream.of(type.size());
        }
    }

    /**
     * Marks that belong to one thing of the caller's.
     *
     * @param key id of a symbol, or of a line as "line 3", counted from 0
     * @param title full name, shown by viewers when pointed at
     */
    record PartMarks(String key, String title, List<Mark> marks) implements Mark {
        public PartMarks {
            marks = List.copyOf(marks);
        }

        @Override
        public DoubleStream letterSizes() {
            return marks.stream().flatMapToDouble(Mark::letterSizes);
        }
    }

    /** Where on a text its place is. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** The look of letters, in the font DejaVu Sans or one no wider. */
    record Type(double size, boolean bold, String colour) {
        /** Size of the title of a picture (drawing units). */
        public static final double TITLE_SIZE = 15;
    }
}
