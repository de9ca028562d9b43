package stillturning.reliability.cutset;

/** Answers for sets of events. Asked by several threads at once. */
public interface SetOracle {

    /**
     * What these events come to together, and always the same.
     *
     * @param events numbers in rising order, at least one
     */
    SetVerdict of(int[] events);
}
