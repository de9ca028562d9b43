package stillturning.story.timeline;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import stillturning.story.AdverseEffect;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/** Moves that the pilot makes from some instant on, one after the other. */
final class DrillDevice implements Device {

    private final Deque<Map.Entry<String, String>> left;
    private final double fromSeconds;
    private final MoveQueue hands;
    private final Situation now;

    /**
     * @param fromSeconds when he begins (s)
     */
    DrillDevice(Map<String, String> moves, double fromSeconds, MoveQueue hands, Situation now) {
        this.left = new ArrayDeque<>(moves.entrySet());
        this.fromSeconds = fromSeconds;
        this.hands = hands;
        this.now = now;
    }

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public double deadline() {
        return left.isEmpty() ? NO_DEADLINE : Math.max(fromSeconds, hands.freeAt());
    }

    @Override
    public void expire() {
        if (hands.free()) {
            Map.Entry<String, String> move = left.removeFirst();
            String words = hands.move(move.getKey(), move.getValue());
            now.log(StoryEvent.Kind.PILOT, AdverseEffect.COCKPIT, words);
        }
    }

    @Override
    public boolean isSlow() {
        return fromSeconds > 0;
    }

    @Override
    public void adopt(Device healthy) {}
}
