package stillturning.files.move;

import java.util.stream.Stream;

/** Finds every move of one kind in a drawing, in the order of its file. */
interface Finder {
    Stream<Move> in(Drawn drawn);
}
