package org.nextpull.intake.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.nextpull.intake.wire.Arrival;

/** What a session knew of its folder before the program was started again, gathered from its capture. */
public final class FolderMemory {
    private final List<Arrival.FileComplete> taken = new ArrayList<>();
    private final Map<String, Long> passedOver = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private boolean resumed;

    /** Takes what the capture holds, in its order. */
    public void see(Arrival arrival) {
        if (arrival instanceof Arrival.Connected) {
            resumed = true;
        } else if (arrival instanceof Arrival.FromFile from) {
            if (seen.add(from.file()) && from.atByte() > 0) {
                passedOver.put(from.file(), from.atByte());
            }
        } else if (arrival instanceof Arrival.FileComplete complete) {
            taken.add(complete);
            passedOver.remove(complete.file());
        }
    }

    /** Whether the session had looked at the folder: what came into it since is new. */
    boolean isResumed() {
        return resumed;
    }

    List<Arrival.FileComplete> taken() {
        return List.copyOf(taken);
    }

    /** How long a file was that had been there before the session began; empty for any other. */
    OptionalLong passedOver(String file) {
        Long size = passedOver.get(file);
        return size == null ? OptionalLong.empty() : OptionalLong.of(size);
    }
}
