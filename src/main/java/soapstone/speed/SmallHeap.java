package soapstone.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;

/**
 * The site in 64 megabytes of heap: every exercise's page in both unit systems, and an answer handed in to each.
 *
 * @param pages     how many were asked for
 * @param good      how many came as they should
 * @param megabytes the most memory that the whole process had, heap and all else; empty where the system does not tell
 */
public record SmallHeap(int pages, int good, Optional<Integer> megabytes) {

    private static final String HEAP = "-Xmx64m";

    public boolean isGood() {
        return good == pages;
    }

    static SmallHeap try64(Bank bank, List<String> bankOptions) throws IOException {
        List<String> serve = new ArrayList<>(List.of("serve", "--port", "0"));
        serve.addAll(bankOptions);
        int pages = 0;
        int good = 0;
        try (Child child = Child.start(List.of(HEAP), "soapstone.Main", serve); PlainClient client = new PlainClient(child.port())) {
            for (Exercise exercise : bank.exercises().values()) {
                for (String units : List.of("us", "metric")) {
                    String path = "/exercises/" + exercise.id() + "?seed=7&units=" + units;
                    good += client.get(path).status() == 200 ? 1 : 0;
                    good += client.post(path, "box-a=5&seen-a=5&action=mark").status() == 200 ? 1 : 0;
                    pages += 2;
                }
            }
            return new SmallHeap(pages, good, child.megabytes());
        }
    }
}
