package soapstone.web;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Convention;
import soapstone.page.SheetView;
import soapstone.school.ClassSettings;

/** What the pages of a class ask about the conventions of the bank. For many threads. */
public interface ShopDesk {

    /** In the order of the bank. */
    List<Convention> conventions();

    /**
     * An exercise that is not dealt to a class.
     *
     * @param set what the class has set of the conventions that it follows, as a sheet would say it
     */
    record Refused(String exercise, String title, String set) {}

    /** Of these exercises, those of which no fair numbers come with what a class has set. Unknown ones are passed over. */
    List<Refused> refused(Collection<String> exercises, ClassSettings settings);

    /**
     * An exercise as a sheet of the class shows it, not answered yet; empty when the bank has no such exercise.
     *
     * @throws Desk.NoDraw if no numbers come from this seed
     */
    Optional<SheetView> trial(String exercise, ClassSettings settings, long seed);
}
