package soapstone.mark;

import java.util.Locale;

/** What is said of one answer. A closed list: what is behind a verdict is always a family. */
public enum Verdict {
    RIGHT, RIGHT_BUT, CARRIED, NEAR, SLIP, UNEXPLAINED, ASK_AGAIN, BLANK;

    /** As it stands in records and JSON: {@code right-but}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public boolean isRight() {
        return this == RIGHT || this == RIGHT_BUT;
    }

    /** Whether it was an answer that can be wrong. */
    public boolean isMarked() {
        return this != ASK_AGAIN && this != BLANK;
    }
}
