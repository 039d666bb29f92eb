package hushmaze.sound.room;

import hushmaze.sound.criterion.TargetMargin;

/**
 * What is heard at the end of a way, held against what may be heard.
 *
 * @param chain the way, step by step
 * @param margin to the limit
 */
public record Received(LevelChain chain, TargetMargin margin) {
    /** Whether it is within the limit. */
    public boolean ok() {
        return margin.ok();
    }
}
