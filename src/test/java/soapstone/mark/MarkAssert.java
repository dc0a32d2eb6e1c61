package soapstone.mark;

import java.util.List;
import org.assertj.core.api.AbstractAssert;

/** Says in the words of the trade what a mark has to be: {@code assertThat(mark).isSlip("shared-over-holes").ofFamily("fence-post")}. */
public final class MarkAssert extends AbstractAssert<MarkAssert, AskMark> {

    private MarkAssert(AskMark mark) {
        super(mark, MarkAssert.class);
    }

    public static MarkAssert assertThat(AskMark mark) {
        return new MarkAssert(mark);
    }

    private MarkAssert is(Verdict verdict) {
        isNotNull();
        if (actual.verdict() != verdict) {
            failWithMessage("Expected <%s> to be marked %s, but it is %s: %s, fits %s, families %s", actual.typed().text(), verdict.word(),
                    actual.verdict().word(), actual.say(), names(), actual.families());
        }
        return this;
    }

    private List<String> names() {
        return actual.fits().stream().map(Fit::name).toList();
    }

    public MarkAssert isRight() {
        return is(Verdict.RIGHT).says("mark.right").ofNoFamily();
    }

    /** Right, and something about it is worth a word. */
    public MarkAssert isRightBut(String key) {
        return is(Verdict.RIGHT_BUT).says(key);
    }

    public MarkAssert isCarried() {
        return is(Verdict.CARRIED).says("mark.carried");
    }

    /** Exactly this slip of the bank gives the answer. */
    public MarkAssert isSlip(String name) {
        is(Verdict.SLIP).says("mark.fits").named(name);
        if (!actual.counts()) {
            failWithMessage("Expected the slip %s to count", name);
        }
        return this;
    }

    /** Each of these slips gives the answer. */
    public MarkAssert isAnyOf(String... slips) {
        return is(Verdict.SLIP).says("mark.fits-several").named(slips);
    }

    /** Both slips together give the answer. */
    public MarkAssert isPair(String one, String other) {
        return is(Verdict.SLIP).says("mark.fits-pair").named(one + "+" + other);
    }

    /** A mistake that needs no bank file. */
    public MarkAssert isOfThePen(String family, String key) {
        is(Verdict.SLIP).named(family).ofFamily(family).says(key);
        if (actual.counts()) {
            failWithMessage("Expected %s not to count as a slip of the bank", family);
        }
        return this;
    }

    public MarkAssert isNear() {
        return is(Verdict.NEAR).ofNoFamily();
    }

    public MarkAssert isUnexplained() {
        return is(Verdict.UNEXPLAINED).says("mark.unexplained").ofNoFamily();
    }

    public MarkAssert isAskedAgain(String key) {
        return is(Verdict.ASK_AGAIN).says(key).ofNoFamily().earns(0);
    }

    public MarkAssert isBlank() {
        return is(Verdict.BLANK).says("mark.blank").ofNoFamily().earns(0);
    }

    public MarkAssert named(String... names) {
        if (!names().equals(List.of(names))) {
            failWithMessage("Expected <%s> to fit %s, but it fits %s", actual.typed().text(), List.of(names), names());
        }
        return this;
    }

    public MarkAssert ofFamily(String... families) {
        if (!actual.families().equals(List.of(families))) {
            failWithMessage("Expected the families %s, but they are %s", List.of(families), actual.families());
        }
        return this;
    }

    public MarkAssert ofNoFamily() {
        return ofFamily();
    }

    /** Whether the fit stands on the student's own earlier values. */
    public MarkAssert onOwnValues() {
        if (!actual.fits().get(0).carried()) {
            failWithMessage("Expected %s to fit on the student's own values", names());
        }
        return this;
    }

    public MarkAssert says(String key) {
        if (!actual.say().key().equals(key)) {
            failWithMessage("Expected <%s> to be told %s, but it is told %s", actual.typed().text(), key, actual.say());
        }
        return this;
    }

    /** What stands in the places of the sentence; spaces inside of a value do not break a line. */
    public MarkAssert saysOf(String... with) {
        List<String> told = actual.say().with().stream().map(w -> w.replace('\u00a0', ' ')).toList();
        if (!told.equals(List.of(with))) {
            failWithMessage("Expected the sentence to speak of %s, but it speaks of %s", List.of(with), told);
        }
        return this;
    }

    public MarkAssert earns(double points) {
        if (actual.points() != points) {
            failWithMessage("Expected <%s> to earn %s points, but it earns %s", actual.typed().text(), points, actual.points());
        }
        return this;
    }
}
