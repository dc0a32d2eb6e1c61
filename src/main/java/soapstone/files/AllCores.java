package soapstone.files;

import java.util.List;
import soapstone.bank.Workers;

/** Uses all cores of the machine: reading a bank is most of what the program does when it starts. */
public final class AllCores implements Workers {

    @Override
    public void all(List<Runnable> pieces) {
        pieces.parallelStream().forEach(Runnable::run);
    }
}
