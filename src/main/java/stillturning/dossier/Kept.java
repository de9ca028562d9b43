package stillturning.dossier;

import java.util.Optional;
import stillturning.reliability.cutset.SearchBlock;
import stillturning.reliability.cutset.Searched;

/**
 * Where finished blocks of a search are kept, so that work which was called off goes on where it
 * was. Asked and told from any thread.
 */
public interface Kept {

    /** Keeps nothing. */
    Kept NOTHING =
            new Kept() {
                @Override
                public Optional<Searched> known(String events, int count, SearchBlock block) {
                    return Optional.empty();
                }

                @Override
                public void done(String events, Searched searched) {
                    // nobody asks for it again
                }
            };

    /**
     * What is known of a block.
     *
     * @param events whose events these are, and which
     * @param count how many there are
     */
    Optional<Searched> known(String events, int count, SearchBlock block);

    /** A block is done. */
    void done(String events, Searched searched);
}
