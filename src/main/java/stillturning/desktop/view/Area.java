package stillturning.desktop.view;

import javafx.scene.layout.Region;
import stillturning.desktop.viewmodel.Destination;

/** One work area of the window. */
public interface Area {

    /** What fills the window while it is shown; always the same. */
    Region view();

    /** To show what the destination names; called each time the area comes to the front. */
    void show(Destination destination);
}
