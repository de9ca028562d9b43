package stillturning.desktop.view.picture;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import stillturning.report.drawing.Mark;

/** The nodes of one part of a picture; a screen reader calls it by its full name. */
final class PartNode extends Group {
    private Mark.PartMarks part;

    PartNode(Mark.PartMarks part, MarkNodes maker) {
        this.part = part;
        setAutoSizeChildren(false);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(part.title());
        getChildren().setAll(maker.of(part.marks()));
        // as a bitmap of its own, moved and not painted while the picture is moved
        setCache(true);
    }

    Mark.PartMarks part() {
        return part;
    }

    /** Shows another state; nothing happens if it is the same. */
    void show(Mark.PartMarks other, MarkNodes maker) {
        if (!part.equals(other)) {
            part = other;
            setAccessibleText(other.title());
            renew(maker);
        }
    }

    /** Paints everything again, as after a change of colours. */
    void renew(MarkNodes maker) {
        List<Mark> marks = part.marks();
        if (!maker.renewed(getChildren(), marks)) {
            getChildren().setAll(maker.of(marks));
        }
    }
}
