package stillturning.desktop.viewmodel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.Paper;

/**
 * What the user has chosen, kept from one start to the next.
 *
 * @param scalePercent size of letters and symbols, from 100 to 200 (%)
 * @param recent folders of studies, the last one first
 * @param window where the window was
 * @param beside what stands beside the paper while drawing
 */
public record Settings(
        Paper paper,
        int scalePercent,
        UnitSystem units,
        List<String> recent,
        Optional<WindowFrame> window,
        SidePanels beside) {

    /** Fewest and most per cent of the usual size. */
    public static final int SMALLEST_PERCENT = 100;

    public static final int LARGEST_PERCENT = 200;

    private static final int MOST_RECENT = 12;

    /** Place and size of a window (screen units). */
    public record WindowFrame(double x, double y, double width, double height, boolean maximized) {}

    /**
     * What stands beside the paper while drawing.
     *
     * @param additions the list of what can be added, also where something is drawn already
     * @param values what is chosen, with its values, and the findings
     */
    public record SidePanels(boolean additions, boolean values) {
        /** As much as leaves the paper room for a drawing that can be read. */
        public static final SidePanels USUAL = new SidePanels(false, true);
    }

    /** What nobody has changed yet. */
    public static final Settings USUAL =
            new Settings(
                    Paper.LIGHT,
                    100,
                    UnitSystem.METRIC,
                    List.of(),
                    Optional.empty(),
                    SidePanels.USUAL);

    public Settings {
        recent = List.copyOf(recent.subList(0, Math.min(MOST_RECENT, recent.size())));
        scalePercent = Math.max(SMALLEST_PERCENT, Math.min(LARGEST_PERCENT, scalePercent));
    }

    /** The same on other paper. */
    public Settings with(Paper other) {
        return new Settings(other, scalePercent, units, recent, window, beside);
    }

    /** The same in other units. */
    public Settings with(UnitSystem other) {
        return new Settings(paper, scalePercent, other, recent, window, beside);
    }

    /** The same at another size (%). */
    public Settings scaled(int percent) {
        return new Settings(paper, percent, units, recent, window, beside);
    }

    /** The same with the window elsewhere. */
    public Settings with(WindowFrame other) {
        return new Settings(paper, scalePercent, units, recent, Optional.of(other), beside);
    }

    /** The same with more or less beside the paper. */
    public Settings with(SidePanels other) {
        return new Settings(paper, scalePercent, units, recent, window, other);
    }

    /** The same with a study opened just now. */
    public Settings opened(String folder) {
        List<String> all = new ArrayList<>(recent);
        all.remove(folder);
        all.add(0, folder);
        return new Settings(paper, scalePercent, units, all, window, beside);
    }

    /** The same without a folder that is no more. */
    public Settings forgotten(String folder) {
        return new Settings(
                paper,
                scalePercent,
                units,
                recent.stream().filter(f -> !f.equals(folder)).toList(),
                window,
                beside);
    }
}
