package stillturning.story;

import java.util.Optional;

/** Which of the loads that run now and then is switched on in a story, and when. */
public sealed interface MotorStart {

    /** The one that is supposed to start, if it is known. */
    default Optional<Of> one() {
        return Optional.empty();
    }

    /** The one, at the moment, that does the engine most harm; none where none does any. */
    record AtWorst() implements MotorStart {}

    /** None: each draws its average all along. */
    record Never() implements MotorStart {}

    /**
     * This one.
     *
     * @param atSeconds when (s after the failure)
     */
    record Of(String load, double atSeconds) implements MotorStart {
        @Override
        public Optional<Of> one() {
            return Optional.of(this);
        }
    }
}
