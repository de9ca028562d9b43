package stillturning.desktop.view.decide;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import stillturning.desktop.view.Labels;
import stillturning.desktop.viewmodel.decide.RankRow.PointsShare;
import stillturning.quantity.Formats;

/** A candidate's points, a piece for each criterion; the whole width is one point. */
final class PointsBar extends Region {

    /** Pieces narrower than this are left without their number (em). */
    private static final double NUMBERED = 1.1;

    private List<PointsShare> pieces = List.of();

    PointsBar() {
        getStyleClass().add("points-bar");
        setAccessibleRole(AccessibleRole.TEXT);
    }

    void show(List<PointsShare> now) {
        pieces = now;
        // labels are kept, since this follows a slider
        while (getChildren().size() > now.size()) {
            getChildren().remove(now.size());
        }
        while (getChildren().size() < now.size()) {
            getChildren().add(label(getChildren().size()));
        }
        for (int i = 0; i < now.size(); i++) {
            Label label = (Label) getChildren().get(i);
            label.setAccessibleText(words(now.get(i)));
            label.getTooltip().setText(words(now.get(i)));
        }
        requestLayout();
    }

    private static Label label(int index) {
        Label label = Labels.of("", "criterion", "criterion-" + (index + 1));
        label.setMinWidth(0);
        label.setTooltip(new Tooltip());
        return label;
    }

    private static String words(PointsShare piece) {
        return piece.criterion().words()
                + ": "
                + piece.value()
                + ", "
                + Formats.fixed(piece.points(), 3)
                + " points";
    }

    @Override
    protected double computePrefHeight(double width) {
        return snapSizeY(1.25 * em());
    }

    @Override
    protected void layoutChildren() {
        double from = 0;
        for (int i = 0; i < pieces.size(); i++) {
            double to = from + pieces.get(i).points() * getWidth();
            double left = snapPositionX(from);
            double wide = snapPositionX(to) - left;
            Label label = (Label) getChildren().get(i);
            label.setText(wide >= NUMBERED * em() ? String.valueOf(i + 1) : "");
            label.resizeRelocate(left, 0, wide, getHeight());
            from = to;
        }
    }

    private double em() {
        return getChildren().isEmpty()
                ? javafx.scene.text.Font.getDefault().getSize()
                : ((Label) getChildren().get(0)).getFont().getSize();
    }
}
