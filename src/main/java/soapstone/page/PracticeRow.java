package soapstone.page;

import java.util.List;

/**
 * A sheet that was kept as practice, in a list.
 *
 * @param when     it was kept
 * @param exercise its title
 * @param path     of the same numbers
 * @param right    so many of {@code asked} answers
 */
public record PracticeRow(String when, String exercise, String path, int right, int asked, List<Answer> answers) {

    public PracticeRow {
        answers = List.copyOf(answers);
    }

    /**
     * One answer.
     *
     * @param typed   as it was typed; empty when it was left out
     * @param verdict in words
     */
    public record Answer(String letter, String typed, String readAs, String verdict, String says) {}
}
