package stillturning.files.entry;

import stillturning.yaml.shape.Binder;

/** The binder that knows every one-line notation of the files. */
public final class FileNotations {

    private FileNotations() {}

    /** A binder for {@link StudyEntry}, {@link CandidateEntry} and whatever else holds parts. */
    public static Binder binder() {
        return new Binder()
                .with(NeedsText.class, NeedsForm::read, NeedsForm.EXAMPLE)
                .with(RunText.class, RunForm::read, RunForm.EXAMPLE)
                .with(ChannelText.class, ChannelText::read, ChannelText.EXAMPLE)
                .with(RateText.class, RateText::read, RateText.EXAMPLE)
                .with(Price.class, Price::read, Price.EXAMPLE);
    }
}
