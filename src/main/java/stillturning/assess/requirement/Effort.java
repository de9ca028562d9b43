package stillturning.assess.requirement;

import stillturning.model.Requirement;

/** What it takes to hold a candidate against a requirement, cheapest first. */
public enum Effort {
    /** Adding up what stands in its file. */
    COUNTING,
    /** One story or two. */
    ONE_STORY,
    /** A story of each single failure; any one of them may show that it is missed. */
    EVERY_SINGLE_FAILURE,
    /** Trying to start the engine, in the cold or after each single failure. */
    STARTS,
    /** What other rooms have to look at. */
    SURVEY;

    /** What it takes for a requirement. */
    public static Effort of(Requirement requirement) {
        return requirement.accept(new Asked());
    }

    private static final class Asked implements Requirement.Visitor<Effort> {
        @Override
        public Effort visit(Requirement.NoSingleFailureStopsEngine requirement) {
            return EVERY_SINGLE_FAILURE;
        }

        @Override
        public Effort visit(Requirement.RunsWithMasterOff requirement) {
            return ONE_STORY;
        }

        @Override
        public Effort visit(Requirement.EnduranceWithoutCharging requirement) {
            return ONE_STORY;
        }

        @Override
        public Effort visit(Requirement.InterruptionBelow requirement) {
            return EVERY_SINGLE_FAILURE;
        }

        @Override
        public Effort visit(Requirement.RestartsInFlight requirement) {
            return STARTS;
        }

        @Override
        public Effort visit(Requirement.StartsCold requirement) {
            return STARTS;
        }

        @Override
        public Effort visit(Requirement.WeightAtMost requirement) {
            return COUNTING;
        }

        @Override
        public Effort visit(Requirement.NoSingleFailureDarkens requirement) {
            return EVERY_SINGLE_FAILURE;
        }

        @Override
        public Effort visit(Requirement.NoSizeLimitBroken requirement) {
            return SURVEY;
        }

        @Override
        public Effort visit(Requirement.ActsAtMost requirement) {
            return COUNTING;
        }

        @Override
        public Effort visit(Requirement.CostAtMost requirement) {
            return COUNTING;
        }

        @Override
        public Effort visit(Requirement.ArmBetween requirement) {
            return SURVEY;
        }

        @Override
        public Effort visit(Requirement.NoLatentPair requirement) {
            return SURVEY;
        }

        @Override
        public Effort visit(Requirement.DeparturesAtMost requirement) {
            return COUNTING;
        }
    }
}
