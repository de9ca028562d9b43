package stillturning.files.entry;

import stillturning.parts.RatedChannel;
import stillturning.yaml.shape.Binder;

/** The binder that knows every one-line notation of the files. */
public final class FileNotations {

    private static final Binder BINDER =
            new Binder()
                    .with(NeedsText.class, NeedsForm::read, NeedsForm.EXAMPLE)
                    .with(RunText.class, RunForm::read, RunForm.EXAMPLE)
                    .withWritten(RatedChannel.class, ChannelText::read, ChannelText.EXAMPLE)
                    .with(PartEntry.class, PartEntry.KINDS)
                    .with(RateText.class, RateText::read, RateText.EXAMPLE)
                    .with(Price.class, Price::read, Price.EXAMPLE);

    private FileNotations() {}

    /** A binder for {@link StudyEntry}, {@link CandidateEntry} and whatever else holds parts. */
    public static Binder binder() {
        return BINDER;
    }
}
