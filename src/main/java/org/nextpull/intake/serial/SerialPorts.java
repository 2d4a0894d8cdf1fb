package org.nextpull.intake.serial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;

/**
 * The serial ports of this computer. Where the library cannot be loaded, each answer is the same finding with the first cause: later
 * calls of a library that failed to load only say that it has failed.
 */
public final class SerialPorts implements Port.Opener {
    private final Library library;
    private Optional<Finding> unusable = Optional.empty();

    public SerialPorts() {
        this(new SerialCommLibrary());
    }

    SerialPorts(Library library) {
        this.library = library;
    }

    /** The ports, by name. */
    public Outcome<List<PortInfo>> list() {
        return asked(() -> Outcome.of(library.list()));
    }

    @Override
    public Outcome<Port> open(Port.Settings settings) {
        if (settings.device().isBlank()) {
            return Outcome.failed(Finding.error(FindingCode.WIRE_WITHOUT_NAME, Place.nowhere()));
        }
        return asked(() -> library.open(settings));
    }

    @Override
    public Optional<Finding> missing(Port.Settings settings) {
        Outcome<Boolean> there =
                asked(() -> Outcome.of(settings.device().isBlank() || library.isThere(settings.device())));
        return there.value()
                .filter(is -> !is)
                .map(not -> notThere(settings, list().value().orElse(List.of())));
    }

    static Finding notThere(Port.Settings settings, List<PortInfo> there) {
        String ports = there.stream().map(PortInfo::name).collect(Collectors.joining(", "));
        return Finding.error(
                FindingCode.WIRE_NOT_THERE,
                Place.inFile(settings.device()),
                Detail.of("ports", ports.isEmpty() ? "none" : ports));
    }

    private <T> Outcome<T> asked(java.util.function.Supplier<Outcome<T>> question) {
        Optional<Finding> known = unusable();
        if (known.isPresent()) {
            return Outcome.failed(known.get());
        }
        try {
            return question.get();
        } catch (LinkageError e) {
            return Outcome.failed(unusable(e));
        }
    }

    private synchronized Optional<Finding> unusable() {
        return unusable;
    }

    private synchronized Finding unusable(LinkageError e) {
        if (unusable.isEmpty()) {
            String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            unusable = Optional.of(
                    Finding.error(FindingCode.WIRE_LIBRARY_UNUSABLE, Place.nowhere(), Detail.of("why", why)));
        }
        return unusable.get();
    }

    /** What is needed of the serial library. Any call may throw a {@link LinkageError} when its native part cannot be loaded. */
    interface Library {
        List<PortInfo> list();

        /** Whether there is such a port; it is not opened. */
        boolean isThere(String device);

        Outcome<Port> open(Port.Settings settings);
    }

    /**
     * A serial port of this computer.
     *
     * @param name the name to open it by: {@code COM3} or {@code /dev/ttyUSB0}
     * @param description what the system says that is plugged in there; may be the name again
     */
    public record PortInfo(String name, String description) {}
}
