package hushmaze.sound.quick;

/**
 * Everything the field at a turn depends on.
 *
 * @param mouth where the passes meet
 * @param gap from tip to end, m
 */
record TurnPlace(TurnMouth.Shape mouth, double gap) {}
