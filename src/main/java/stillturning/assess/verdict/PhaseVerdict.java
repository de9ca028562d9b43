package stillturning.assess.verdict;

import stillturning.story.Moment;

/** What a failure comes to at one moment of the flight, the rest of it being flown. */
public record PhaseVerdict(Moment moment, Verdict verdict) {}
