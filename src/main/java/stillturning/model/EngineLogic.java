package stillturning.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Which loads must work for the engine to run. */
public sealed interface EngineLogic {

    /** Whether the engine runs while just these loads work. */
    boolean runsOn(Predicate<String> works);

    /** Every load named, in order, once. */
    List<String> loads();

    /** In words: {@code "computer-a or computer-b"}. */
    String inWords();

    /** In words that may stand among others. */
    String asTerm();

    /** What must all work, nothing of it joined by "and" any more. */
    List<EngineLogic> needed();

    /** Whether any one of its loads is enough. */
    boolean anyLoadIsEnough();

    /** One load. */
    record One(String load) implements EngineLogic {
        @Override
        public boolean runsOn(Predicate<String> works) {
            return works.test(load);
        }

        @Override
        public List<String> loads() {
            return List.of(load);
        }

        @Override
        public String inWords() {
            return load;
        }

        @Override
        public String asTerm() {
            return load;
        }

        @Override
        public List<EngineLogic> needed() {
            return List.of(this);
        }

        @Override
        public boolean anyLoadIsEnough() {
            return true;
        }
    }

    /** At least {@code least} of the terms: all of them, any one, or a number between. */
    record AtLeast(int least, List<EngineLogic> of) implements EngineLogic {
        public AtLeast {
            of = List.copyOf(of);
            if (least < 1 || least > of.size()) {
                throw new IllegalArgumentException(
                        "engine logic: "
                                + least
                                + " of "
                                + of.size()
                                + " terms is neither possible nor needed");
            }
        }

        @Override
        public boolean runsOn(Predicate<String> works) {
            int running = 0;
            for (int i = 0; i < of.size() && running < least; i++) {
                running += of.get(i).runsOn(works) ? 1 : 0;
            }
            return running >= least;
        }

        @Override
        public List<String> loads() {
            Set<String> loads = new LinkedHashSet<>();
            for (EngineLogic term : of) {
                loads.addAll(term.loads());
            }
            return List.copyOf(loads);
        }

        @Override
        public String inWords() {
            if (of.size() == 1) {
                return of.get(0).inWords();
            }
            if (least == of.size()) {
                return joined(" and ");
            }
            return least == 1 ? joined(" or ") : least + " of (" + joined(", ") + ")";
        }

        @Override
        public String asTerm() {
            return "(" + inWords() + ")";
        }

        @Override
        public List<EngineLogic> needed() {
            return least == of.size()
                    ? of.stream().flatMap(term -> term.needed().stream()).distinct().toList()
                    : List.of(this);
        }

        @Override
        public boolean anyLoadIsEnough() {
            return least == 1 && of.stream().allMatch(EngineLogic::anyLoadIsEnough);
        }

        private String joined(String word) {
            return of.stream().map(EngineLogic::asTerm).collect(Collectors.joining(word));
        }
    }

    static EngineLogic allOf(List<EngineLogic> terms) {
        return new AtLeast(terms.size(), terms);
    }

    static EngineLogic anyOf(List<EngineLogic> terms) {
        return new AtLeast(1, terms);
    }
}
