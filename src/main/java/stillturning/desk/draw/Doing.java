package stillturning.desk.draw;

import stillturning.draft.Change;
import stillturning.draft.ChangeRefused;

/** Works out a change from the texts as they are now. */
@FunctionalInterface
interface Doing {
    /** The change. */
    Change change() throws ChangeRefused;
}
