package stillturning.story.timeline.stride;

/** Follows no step at all. */
final class Heedless implements Integrator.Follower {
    @Override
    public void read(int stage) {}

    @Override
    public void taken(double seconds, double[] weights) {}
}
