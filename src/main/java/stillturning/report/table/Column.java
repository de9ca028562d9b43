package stillturning.report.table;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.TerminalColour.Ink;

/**
 * A column of a table: what stands in its head, and how its cell is read from a row.
 *
 * @param head without the unit
 * @param widest characters at most on a terminal, at least 1; longer cells are broken
 * @param cells how a cell is read and shown
 * @param ink of a cell on a terminal
 * @param field for other programs, if they read this column
 * @param repeats whether a terminal shows a cell that equals the one above it
 * @param foot below the last row; empty where nothing stands there
 */
public record Column<R>(
        String head,
        Unit unit,
        int widest,
        Cells<R> cells,
        Function<? super R, Ink> ink,
        Optional<DataField<R>> field,
        boolean repeats,
        String foot) {

    /** Characters of a column of numbers on a terminal. */
    private static final int NUMBER = 10;

    /** How cells are read from rows, and shown. */
    public sealed interface Cells<R> {

        /** The cell of a row. */
        String text(R row, Unit unit, UnitSystem system);

        /** What other programs read under a key. */
        DataField<R> field(String key);

        /** The same, blank where there is no number. */
        Cells<R> orBlank();

        /** Whether they are numbers. */
        boolean number();
    }

    /** Words, or numbers that are in words already. */
    private record Words<R>(Function<? super R, String> get, boolean number) implements Cells<R> {
        @Override
        public String text(R row, Unit unit, UnitSystem system) {
            return get.apply(row);
        }

        @Override
        public DataField<R> field(String key) {
            return new DataField<>(key, String.class, get);
        }

        @Override
        public Cells<R> orBlank() {
            return this;
        }
    }

    /** Numbers in SI; what is no number is shown by a word. */
    private record Numbers<R>(
            ToDoubleFunction<? super R> get, Optional<DoubleFunction<String>> shown, String absent)
            implements Cells<R> {
        @Override
        public String text(R row, Unit unit, UnitSystem system) {
            double value = get.applyAsDouble(row);
            if (Double.isNaN(value)) {
                return absent;
            }
            return shown.map(words -> words.apply(unit.of(value, system)))
                    .orElseGet(() -> unit.shown(value, system));
        }

        @Override
        public DataField<R> field(String key) {
            return new DataField<>(key, Double.class, get::applyAsDouble);
        }

        @Override
        public Cells<R> orBlank() {
            return new Numbers<>(get, shown, "");
        }

        @Override
        public boolean number() {
            return true;
        }
    }

    /**
     * A column as a field for other programs.
     *
     * @param get a {@link String}, or a {@link Double} in SI
     */
    public record DataField<R>(String key, Class<?> type, Function<? super R, ?> get) {}

    public Column {
        if (widest < 1) {
            throw new IllegalArgumentException(
                    "column " + head + ": " + widest + " characters are no room");
        }
    }

    private Column(String head, Unit unit, int widest, Cells<R> cells) {
        this(head, unit, widest, cells, row -> Ink.PLAIN, Optional.empty(), true, "");
    }

    /** A column of words. */
    public static <R> Column<R> words(String head, int widest, Function<? super R, String> get) {
        return new Column<>(head, Unit.NONE, widest, new Words<>(get, false));
    }

    /** A column of numbers that are in words already. */
    public static <R> Column<R> figures(String head, int widest, Function<? super R, String> get) {
        return new Column<>(head, Unit.NONE, widest, new Words<>(get, true));
    }

    /** A column of numbers with the usual digits of their unit. */
    public static <R> Column<R> number(String head, Unit unit, ToDoubleFunction<? super R> get) {
        return numbers(head, unit, Optional.empty(), get);
    }

    /** A column of numbers with some digits behind the point. */
    public static <R> Column<R> number(
            String head, Unit unit, int digits, ToDoubleFunction<? super R> get) {
        return number(head, unit, value -> Formats.fixed(value, digits), get);
    }

    /**
     * A column of numbers.
     *
     * @param shown how a number in the unit is shown
     */
    public static <R> Column<R> number(
            String head, Unit unit, DoubleFunction<String> shown, ToDoubleFunction<? super R> get) {
        return numbers(head, unit, Optional.of(shown), get);
    }

    private static <R> Column<R> numbers(
            String head,
            Unit unit,
            Optional<DoubleFunction<String>> shown,
            ToDoubleFunction<? super R> get) {
        return new Column<>(head, unit, NUMBER, new Numbers<>(get, shown, "-"));
    }

    /** The same in an ink that depends on the row. */
    public Column<R> ink(Function<? super R, Ink> of) {
        return new Column<>(head, unit, widest, cells, of, field, repeats, foot);
    }

    /** The same, read by other programs under a key. */
    public Column<R> key(String key) {
        return with(cells.field(key));
    }

    /** The same, read by other programs under a key as a number in SI. */
    public Column<R> value(String key, ToDoubleFunction<? super R> get) {
        return with(new DataField<R>(key, Double.class, get::applyAsDouble));
    }

    /** The same, read by other programs under a key in words of theirs. */
    public Column<R> words(String key, Function<? super R, String> get) {
        return with(new DataField<R>(key, String.class, get));
    }

    private Column<R> with(DataField<R> read) {
        return new Column<>(head, unit, widest, cells, ink, Optional.of(read), repeats, foot);
    }

    /** The same; on a terminal a cell that equals the one above it is left blank. */
    public Column<R> once() {
        return new Column<>(head, unit, widest, cells, ink, field, false, foot);
    }

    /** The same with something below the last row. */
    public Column<R> foot(String text) {
        return new Column<>(head, unit, widest, cells, ink, field, repeats, text);
    }

    /** The same, blank where there is no number. */
    public Column<R> orBlank() {
        return new Column<>(head, unit, widest, cells.orBlank(), ink, field, repeats, foot);
    }

    /** The same of rows that are text already, as wide and as often shown. */
    Column<List<String>> said(String head, int at) {
        Column<List<String>> said =
                new Column<>(head, Unit.NONE, widest, new Words<>(row -> row.get(at), isNumber()));
        return repeats ? said : said.once();
    }

    /** Whether it holds numbers. */
    public boolean isNumber() {
        return cells.number();
    }

    /** Its head with its unit. */
    public String head(UnitSystem system) {
        String sign = unit.sign(system);
        return sign.isEmpty() ? head : head + " (" + sign + ")";
    }

    String text(R row, UnitSystem system) {
        return cells.text(row, unit, system);
    }
}
