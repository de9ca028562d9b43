package stillturning.desktop.view;

import java.net.URI;
import javafx.stage.Stage;
import stillturning.desktop.viewmodel.Notice;

/** What areas may ask of the window. */
public interface AreaHost {

    /** The window, for choosers that belong to it. */
    Stage stage();

    /** Shows something that the user should know. */
    void tell(Notice news);

    /** Opens an address in the user's browser. */
    void browse(URI address);
}
