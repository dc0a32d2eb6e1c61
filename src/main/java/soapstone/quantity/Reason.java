package soapstone.quantity;

import soapstone.source.Message;

/** Why an answer is asked again; each has its sentence in the words files. What goes into its places stands beside it. */
enum Reason {
    /** {0} signs at most. */
    TOO_LONG("too-long"),
    /** {0} values at most. */
    TOO_MANY("too-many"),
    /** {0} the sign. */
    STRANGE_SIGN("strange-sign"),
    NO_NUMBER("no-number"),
    /** {0} the word. */
    NOT_A_NUMBER("not-a-number"),
    /** {0} the word, {1} an example. */
    DIGITS_PLEASE("digits-please"),
    /** {0} the word, {1} the asked unit. */
    UNKNOWN_WORD("unknown-word"),
    /** {0} the word. */
    ONLY_A_NUMBER("only-a-number"),
    /** {0} the word, {1} words that are near. */
    NEARLY_A_WORD("nearly-a-word"),
    /** {0} what was typed, {1} its dimension, {2} the asked dimension, {3} the asked unit. */
    WRONG_DIMENSION("wrong-dimension"),
    /** {0} what was typed, {1} its dimension. */
    NUMBER_ASKED("number-asked"),
    /** {0} the number it stands in, with a zero for it. */
    LETTER_O("letter-o"),
    /** {0} one unit, {1} the other. */
    TWO_UNITS("two-units"),
    /** {0} the unit. */
    UNIT_FIRST("unit-first"),
    /** {0} the amount before the unit, {1} what follows it, {2} both and then the unit. */
    UNIT_INSIDE("unit-inside"),
    /** {0} one way to read it, {1} the other. */
    TWO_WAYS("two-ways"),
    /** {0} what was typed, {1} with the gap that may be missing, {2} as it stands. */
    MIXED_OR_FRACTION("mixed-or-fraction"),
    /** {0} one, {1} the other. */
    TWO_NUMBERS("two-numbers"),
    /** {0} the number without its gap. */
    GAP_IN_NUMBER("gap-in-number"),
    TWO_FRACTIONS("two-fractions"),
    TWO_SLASHES("two-slashes"),
    /** {0} what was typed. */
    DECIMAL_AND_FRACTION("decimal-and-fraction"),
    UNFINISHED_FRACTION("unfinished-fraction"),
    /** {0} as a mixed number or fraction without the gap. */
    GAP_AT_SLASH("gap-at-slash"),
    BACKSLASH("backslash"),
    ZERO_BOTTOM("zero-bottom"),
    /** {0} the fraction, {1} the unit. */
    METRIC_FRACTION("metric-fraction"),
    /** {0} the fraction. */
    TOP_HEAVY("top-heavy"),
    /** {0} the bottom. */
    NO_SUCH_RULE("no-such-rule"),
    TOO_BIG("too-big"),
    TOO_SMALL("too-small"),
    /** {0} what was typed, {1} the mark of this class, {2} a decimal, {3} a whole number of thousands. */
    DECIMAL_MARK("decimal-mark"),
    /** {0} what was typed, {1} the mark of this class, {2} how it would be written here. */
    OTHER_MARK("other-mark"),
    /** {0} what was typed, {1} the mark of this class. */
    TWO_MARKS("two-marks"),
    /** {0} the sign. */
    LONE_SIGN("lone-sign"),
    SUM("sum"),
    RANGE("range"),
    ONE_ANSWER("one-answer"),
    /** {0} what was typed. */
    COLON("colon"),
    /** {0} the amount with its unit. */
    PART_NOT_WHOLE("part-not-whole"),
    /** {0} the part, {1} one of the larger unit. */
    PART_TOO_BIG("part-too-big"),
    /** {0} the larger unit, {1} the smaller. */
    PARTS_ORDER("parts-order"),
    /** {0} the word. */
    WHICH_TON("which-ton"),
    WHOLE_COUNT("whole-count"),
    /** {0} what was typed. */
    COUNT_ASKED("count-asked"),
    FRACTION_ASKED("fraction-asked"),
    LIST_SEPARATOR("list-separator"),
    LIST_GAP("list-gap"),
    /** {0} one unit, {1} the asked one. */
    MIXED_UNITS("mixed-units"),
    TWO_COORDINATES("two-coordinates"),
    POINTS_FORM("points-form"),
    BRACKET("bracket");

    private final String key;

    Reason(String name) {
        this.key = "reading." + name;
    }

    String key() {
        return key;
    }

    boolean isWhyOf(Reading.Again again) {
        return key.equals(again.why().key());
    }

    Reading.Again at(int at, String... with) {
        return new Reading.Again(Message.of(key, with), at);
    }
}
