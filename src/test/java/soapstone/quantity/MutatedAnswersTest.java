package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.One;
import soapstone.quantity.TypedAnswers.Row;

/** Broken answers: whatever is typed, there is a reading or a reason, in bounded length, and never an exception. */
class MutatedAnswersTest {

    private static final long SEED = 20240517;
    private static final int HOW_MANY = 100_000;
    private static final int LONGEST_WITH = 240;
    private static final String SIGNS = "0123456789  //..,,;;'\"-–−½⅝⅟³⁄₈°′″″%$#()[]xyeE+*×=≈~&|\\_?!µñáO\n\t\r\u0000\u0007\u00A0\u200B\u202E"
            + "\uFEFF\u0301\uD83D\uDE00٣５，．¼";

    @Test
    @Timeout(value = 120, unit = TimeUnit.SECONDS)
    void everyMutationIsReadOrAskedAgain() {
        List<Row> rows = TypedAnswers.rows();
        Random random = new Random(SEED);
        int read = 0;
        for (int i = 0; i < HOW_MANY; i++) {
            Row row = rows.get(random.nextInt(rows.size()));
            ReadAs as = random.nextInt(4) == 0 ? rows.get(random.nextInt(rows.size())).as() : row.as();
            read += check(mutated(row.text(), rows, random), as, i);
        }
        assertThat(read).as("readings among the mutations").isBetween(HOW_MANY / 10, HOW_MANY * 9 / 10);
    }

    @Test
    void everyPrefixAndSuffixIsReadOrAskedAgain() {
        for (Row row : TypedAnswers.rows()) {
            for (int cut = 0; cut <= row.text().length(); cut++) {
                check(row.text().substring(0, cut), row.as(), -1);
                check(row.text().substring(cut), row.as(), -1);
            }
        }
    }

    private static String mutated(String text, List<Row> rows, Random random) {
        StringBuilder out = new StringBuilder(text);
        int edits = random.nextInt(3) > 0 ? 1 : 1 + random.nextInt(5);
        for (int e = 0; e < edits; e++) {
            int at = random.nextInt(out.length() + 1);
            int to = Math.min(out.length(), at + 1 + random.nextInt(4));
            switch (random.nextInt(7)) {
                case 0 -> out.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
                case 1 -> out.delete(at, Math.min(out.length(), at + 1));
                case 2 -> out.insert(at, out.substring(at, to));
                case 3 -> swap(out, at, random);
                case 4 -> out.replace(at, Math.min(out.length(), at + 1), SIGNS.substring(random.nextInt(SIGNS.length())).substring(0, 1));
                case 5 -> out.insert(at, rows.get(random.nextInt(rows.size())).text());
                default -> out.insert(at, (char) random.nextInt(Character.MAX_VALUE + 1));
            }
        }
        return out.toString();
    }

    private static void swap(StringBuilder out, int at, Random random) {
        if (out.length() > 1) {
            int a = Math.min(at, out.length() - 1);
            int b = random.nextInt(out.length());
            char c = out.charAt(a);
            out.setCharAt(a, out.charAt(b));
            out.setCharAt(b, c);
        }
    }

    /** 1 when it was read, 0 when it is asked again. */
    private static int check(String text, ReadAs as, int number) {
        Reading reading;
        try {
            reading = ShopReader.read(text, as);
        } catch (RuntimeException e) {
            return fail("mutation " + number + " <" + text + "> " + as, e);
        }
        if (reading instanceof Again again) {
            assertThat(again.at()).as("<%s> %s", text, again).isBetween(0, text.length());
            assertThat(again.why().with()).allSatisfy(w -> assertThat(w).hasSizeLessThan(LONGEST_WITH));
            return 0;
        }
        assertThat(ShopReader.read(reading.text(), as)).as("<%s> %s printed as <%s>", text, as, reading.text()).hasSameClassAs(reading);
        for (One one : TypedAnswersTest.ones(reading)) {
            checkOne(text, as, one);
        }
        return 1;
    }

    private static void checkOne(String text, ReadAs as, One one) {
        ReadAs.Kind kind = as.partsValues() ? ReadAs.Kind.QUANTITY : as.kind();
        assertThat(one.text()).hasSizeLessThan(LONGEST_WITH);
        assertThat(Math.abs(one.base())).as(text).isLessThanOrEqualTo(Value.LARGEST_BASE);
        assertThat(one.place()).as(text).isPositive().isFinite();
        Reading again = ShopReader.read(one.text(), as.as(kind));
        assertThat(again).as("<%s> %s printed as <%s>", text, as, one.text()).isInstanceOf(One.class);
        double noise = 1e-12 * Math.max(1, Math.abs(one.base()));
        assertThat(Math.abs(((One) again).base() - one.base())).as("<%s> printed as <%s>", text, one.text()).isLessThanOrEqualTo(noise);
    }
}
