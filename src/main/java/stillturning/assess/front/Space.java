package stillturning.assess.front;

import java.util.List;
import java.util.Optional;

/**
 * What is searched. Asked from any thread but for {@link #steps}; always the same for the same
 * thing.
 *
 * @param <C> what is looked at
 */
public interface Space<C> {

    /** Where one stands: at least one. */
    List<C> starts();

    /** Every step from a thing, in a fixed order. */
    List<Step<C>> steps(C from);

    /** Whether every step from a start is taken before any from elsewhere. */
    default boolean nearestFirst() {
        return false;
    }

    /** What makes two things one: equal exactly if it makes no difference which is looked at. */
    Object form(C thing);

    /**
     * Looks at a thing.
     *
     * @param evidence what decided of the thing that it was made from
     */
    FirstLook look(C thing, List<String> evidence);

    /** A thing looked at, first from afar. */
    interface FirstLook {

        /** Values, less is better, that it does not fall below, whatever the trial would say. */
        List<Double> atBest();

        TrialResult trial();
    }

    /**
     * A step to something else.
     *
     * @param <C> what is looked at
     */
    interface Step<C> {

        /** In words, one of its kind among the steps from one thing. */
        String words();

        StepEffect turn();

        /** Where it leads; empty if it cannot be taken after all. */
        Optional<C> taken();
    }

    /** What a step does to the thing as a whole. */
    enum StepEffect {
        LESS,
        OTHER,
        MORE
    }
}
