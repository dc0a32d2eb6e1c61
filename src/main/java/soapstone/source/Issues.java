package soapstone.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Collects the issues of a reading, up to a bound, so that an author sees all faults at once and a broken file ends. */
public final class Issues {

    private static final int MOST = 500;

    private final List<Issue> found = new ArrayList<>();

    public void add(String rule, Place place, String what, String fits) {
        if (found.size() < MOST) {
            found.add(new Issue(rule, place, what, fits));
        }
    }

    public void add(String rule, Place place, String what) {
        add(rule, place, what, "");
    }

    /** Takes the issues of another reading over. */
    public void addAll(Issues others) {
        others.found.forEach(i -> add(i.rule(), i.place(), i.found(), i.fits()));
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public int size() {
        return found.size();
    }

    public List<Issue> all() {
        return Collections.unmodifiableList(found);
    }
}
