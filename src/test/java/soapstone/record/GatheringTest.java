package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GatheringTest {

    private final List<List<Integer>> groups = Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch firstMayGo = new CountDownLatch(1);

    @Test
    void somebodyAloneIsWrittenAtOnce() {
        Gathering<Integer, String> gathering = new Gathering<>(this::write);
        firstMayGo.countDown();

        assertThat(gathering.share(7)).contains("wrote 7");
        assertThat(groups).containsExactly(List.of(7));
    }

    @Test
    void whatComesWhileOneIsWritingIsWrittenTogether() throws Exception {
        Gathering<Integer, String> gathering = new Gathering<>(this::write);

        List<Optional<String>> results = shareAtOnce(gathering, 100);

        assertThat(results).containsExactlyElementsOf(IntStream.range(0, 100).mapToObj(i -> Optional.of("wrote " + i)).toList());
        assertThat(groups.get(0)).hasSize(1);
        assertThat(groups).as("the other 99, at most 64 at once").hasSize(3);
        assertThat(groups.stream().mapToInt(List::size).max()).hasValue(64);
    }

    @Test
    void aGroupThatIsTakenBackIsToBeTriedOneByOneAndTheNextGoesOn() throws Exception {
        Gathering<Integer, String> gathering = new Gathering<>(work -> {
            List<String> written = write(work);
            if (work.contains(3)) {
                throw new IllegalStateException("three is there already");
            }
            return written;
        });

        List<Optional<String>> results = shareAtOnce(gathering, 10);

        assertThat(results.get(3)).isEmpty();
        assertThat(gathering.share(11)).contains("wrote 11");
        List<Integer> withThree = groups.stream().filter(g -> g.contains(3)).findFirst().orElseThrow();
        assertThat(IntStream.range(0, 10).filter(i -> results.get(i).isEmpty()).boxed().toList()).containsExactlyInAnyOrderElementsOf(withThree);
    }

    private List<String> write(List<Integer> work) {
        groups.add(List.copyOf(work));
        try {
            firstMayGo.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return work.stream().map(w -> "wrote " + w).toList();
    }

    /** One thread for each; the first write is held until all others wait. */
    private List<Optional<String>> shareAtOnce(Gathering<Integer, String> gathering, int many) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(many);
        try {
            List<Future<Optional<String>>> futures = IntStream.range(0, many).mapToObj(i -> threads.submit(() -> gathering.share(i))).toList();
            while (gathering.waiting() < many - 1) {
                Thread.onSpinWait();
            }
            firstMayGo.countDown();
            List<Optional<String>> results = new ArrayList<>();
            for (Future<Optional<String>> f : futures) {
                results.add(f.get());
            }
            return results;
        } finally {
            threads.shutdown();
        }
    }
}
