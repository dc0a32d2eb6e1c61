package soapstone.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A student at a browser who works through a sheet as the pages lead, one connection for all. */
final class WorkingStudent implements AutoCloseable {

    private static final Pattern BOX = Pattern.compile("name=\"box-([a-z]+)\"");
    private static final int FOUND = 302;
    private static final int OK = 200;

    /** What a student asks for, one after the other, for one problem. */
    enum Step { PROBLEM, DRAFT, LOOK_OVER, REVIEW, HAND_IN, RESULT }

    /** One request, from the first byte sent to the last one read. */
    record Asked(Step step, double millis, boolean good) {}

    private final CrowdedClass.Seat seat;
    private final PlainClient client;
    private final RandomGenerator chance;
    private final List<Asked> asked = new ArrayList<>();
    private String review = "";

    WorkingStudent(int port, CrowdedClass.Seat seat, RandomGenerator chance) throws IOException {
        this.seat = seat;
        this.client = new PlainClient(port, seat.cookie());
        this.chance = chance;
    }

    /** Waits between two pages. */
    interface Pause {
        void take() throws InterruptedException;
    }

    /** Works a problem and hands it in. */
    void work(int place, Pause pause) throws IOException, InterruptedException {
        prepare(place, pause);
        pause.take();
        PlainClient.Reply handed = handIn(place);
        pause.take();
        ask(Step.RESULT, OK, () -> client.get(handed.location()));
    }

    /** Works a problem up to the page from which it is handed in. */
    void prepare(int place, Pause pause) throws IOException, InterruptedException {
        String path = "/sheets/" + seat.sheet() + "/" + place;
        String page = ask(Step.PROBLEM, OK, () -> client.get(path)).text();
        String form = answered(page) + "&round=" + value(page, "round") + "&form-key=" + seat.key();
        pause.take();
        String draft = field(ask(Step.DRAFT, OK, () -> client.post(path + "/draft", form + "&draft=" + value(page, "draft"))).text(), "draft");
        pause.take();
        ask(Step.LOOK_OVER, FOUND, () -> client.post(path, form + "&action=review&draft=" + draft));
        review = form + "&receipt=" + value(ask(Step.REVIEW, OK, () -> client.get(path + "/review")).text(), "receipt");
    }

    /** Sends what was looked over. */
    PlainClient.Reply handIn(int place) throws IOException {
        return ask(Step.HAND_IN, FOUND, () -> client.post("/sheets/" + seat.sheet() + "/" + place + "/review", review));
    }

    private String answered(String page) {
        Set<String> letters = new TreeSet<>();
        for (Matcher m = BOX.matcher(page); m.find();) {
            letters.add(m.group(1));
        }
        StringBuilder form = new StringBuilder();
        for (String letter : letters) {
            form.append(form.length() == 0 ? "" : "&").append("box-").append(letter).append('=').append(chance.nextInt(1, 90)).append('.').append(chance.nextInt(10, 99));
        }
        return form.toString();
    }

    /** Of the few words of JSON that answer a script. */
    private static String field(String json, String name) {
        Matcher m = Pattern.compile("\"" + name + "\":\"([^\"]*)\"").matcher(json);
        return m.find() ? m.group(1) : "";
    }

    private static String value(String page, String name) {
        Matcher m = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
        return m.find() ? m.group(1) : "";
    }

    private interface Call {
        PlainClient.Reply make() throws IOException;
    }

    private PlainClient.Reply ask(Step step, int status, Call call) throws IOException {
        long start = System.nanoTime();
        PlainClient.Reply reply = call.make();
        double millis = (System.nanoTime() - start) / 1e6;
        asked.add(new Asked(step, millis, reply.status() == status));
        return reply;
    }

    /** Takes the last request out, which has a place of its own. */
    Asked forget(int number) {
        return asked.remove(number);
    }

    List<Asked> asked() {
        return List.copyOf(asked);
    }

    @Override
    public void close() throws IOException {
        client.close();
    }
}
