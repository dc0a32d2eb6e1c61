package soapstone.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text as string code would write it that was made by hand for it alone: pieces that stay, and numbers between them. */
final class WrittenText {

    private static final Pattern NUMBER = Pattern.compile("(?<![0-9a-z_.#&])-?(?:0|[1-9]\\d{0,6})(?:\\.\\d?[1-9])?(?![0-9a-z_.;])");
    private static final int HUNDREDTHS = 100;

    private final String[] pieces;
    private final double[] numbers;
    private final int length;

    private WrittenText(List<String> pieces, List<Double> numbers, int length) {
        this.pieces = pieces.toArray(String[]::new);
        this.numbers = numbers.stream().mapToDouble(d -> d).toArray();
        this.length = length;
    }

    static WrittenText of(String text) {
        List<String> pieces = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        int from = 0;
        Matcher m = NUMBER.matcher(text);
        while (m.find()) {
            if (!m.group().equals("-0")) {
                pieces.add(text.substring(from, m.start()));
                numbers.add(Double.valueOf(m.group()));
                from = m.end();
            }
        }
        pieces.add(text.substring(from));
        return new WrittenText(pieces, numbers, text.length());
    }

    String write() {
        StringBuilder out = new StringBuilder(length);
        for (int i = 0; i < numbers.length; i++) {
            number(out.append(pieces[i]), numbers[i]);
        }
        return out.append(pieces[numbers.length]).toString();
    }

    /** With as many decimals as it needs, two at most. */
    private static void number(StringBuilder out, double v) {
        long all = Math.round(Math.abs(v) * HUNDREDTHS);
        out.append(v < 0 ? "-" : "").append(all / HUNDREDTHS);
        int rest = (int) (all % HUNDREDTHS);
        if (rest != 0) {
            out.append('.').append(rest / 10);
            if (rest % 10 != 0) {
                out.append(rest % 10);
            }
        }
    }

    int numbers() {
        return numbers.length;
    }
}
