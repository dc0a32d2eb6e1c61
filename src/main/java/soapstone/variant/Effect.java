package soapstone.variant;

/** What a slip does to one ask in one draw. */
public enum Effect {
    /** The value is not defined, or the slip makes no sense here. */
    NONE,
    /** No effect here: the slip is hidden, never a reason to refuse. */
    SAME,
    /** Another value, but too near to the right one to be told apart at the rounding that is asked for. */
    NEAR,
    /** Told apart from the right one. */
    SEEN
}
