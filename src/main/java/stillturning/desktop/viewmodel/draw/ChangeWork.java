package stillturning.desktop.viewmodel.draw;

import stillturning.desktop.draft.Change;
import stillturning.files.edit.ChangeRefused;

/** Works out a change from the texts as they are now. */
@FunctionalInterface
interface ChangeWork {
    /** The change. */
    Change change() throws ChangeRefused;
}
