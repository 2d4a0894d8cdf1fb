package org.nextpull.cli;

import java.util.Optional;
import picocli.CommandLine;

/** The version of the jar. */
final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                .orElse("built from sources");
        return new String[] {"nextpull " + version};
    }
}
